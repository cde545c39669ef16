import { type Quantity, quantitiesLately } from '../quantities/quantities.ts';
import { type Stretch, sentencesOf } from './sentences.ts';
import { type Token, tokensLately } from './tokens.ts';
import { type Mention, mentionsOf, type NamedType } from './type-names.ts';

/** Signs of a text that go, and what stands in their place. */
interface Cut {
  readonly start: number;
  readonly end: number;
  readonly instead: string;
  /** `value`: the value that is told to all, in the place of which the type has its own; `own`: where its own stands. */
  readonly kind: 'words' | 'value' | 'own';
}

/** A text as each of some types has to read it. */
export interface TypedText {
  /** What it says for one type, without what it says for others by name. */
  readonly text: string;
  /** The same with blanks for what goes, so that every word stays at its place. */
  readonly inPlace: string;
}

/**
 * Reads texts for one type. A sentence that names no type is said of all.
 *
 *   Mulch 50 mm deep, or 70 mm in shops. In villas sweep it.
 *   for shops:   Mulch 70 mm deep.
 *   for villas:  Mulch 50 mm deep. Sweep it.
 */
export function readerForType(type: string, types: readonly NamedType[]): (text: string) => TypedText {
  const mentions = mentionsOf(types);
  return text => {
    const tokens = tokensLately(text);
    const named = types.length === 0 ? [] : mentions(tokens);
    if (named.length === 0) return { text, inPlace: text };
    const quantities = quantitiesLately(text);
    const sentences = sentencesOf(text, tokens);
    const cuts = sentences.flatMap((sentence, at) => {
      const own = named.filter(m => m.first >= sentence.first && m.first < sentence.next);
      if (own.length === 0) return [];
      const here = { text, tokens, quantities, sentence, mentions: own };
      return specialOf(here, type, sentences[at - 1]) ?? cutsIn(here, type);
    });
    return { text: cutOut(text, cuts), inPlace: blanked(text, cuts) };
  };
}

/**
 * "Lap it 80 mm. In shops it shall be 100 mm.", "…; in shops 100 mm": the type's own value for the one that the sentence before
 * tells to all.
 */
function specialOf(named: Named, type: string, before: Stretch | undefined): Cut[] | undefined {
  const { text, tokens, quantities, sentence, mentions } = named;
  const [mention] = mentions;
  if (!before || !mention || mentions.length > 1 || mention.first > sentence.first || !mention.types.has(type))
    return undefined;
  const own = quantities.filter(q => q.first >= mention.next && q.first < sentence.next);
  const told = quantities.filter(
    q => q.first >= before.first && q.first < before.next && q.dimension === own[0]?.dimension,
  );
  const [first] = own;
  const [plain] = told;
  if (!first || !plain || own.length > 1 || told.length > 1) return undefined;
  const lead = tokens.slice(mention.next, first.spanFirst).filter(t => t.kind === 'word');
  if (lead.length > 3 || !lead.every(t => POINTING.test(t.low))) return undefined;
  // "200 mm is enough under lawn": not the value of all of it.
  if (tokens.slice(first.spanNext, sentence.next).filter(t => t.kind === 'word').length > 3) return undefined;
  const [from, place] = [tokens.slice(first.spanFirst, first.spanNext), tokens.slice(plain.spanFirst, plain.spanNext)];
  const instead = text.slice(from[0]!.start, from.at(-1)!.end);
  return [
    { ...wordsOf(named, sentence), kind: 'own' },
    { start: place[0]!.start, end: place.at(-1)!.end, instead, kind: 'value' },
  ];
}

const POINTING = /^(?:it|they|this|these|shall|must|should|is|are|be|at|of|to)$/;

/** Whether a text names any of the types, so that it has to be read for each. */
export function namesTypes(types: readonly NamedType[]): (text: string) => boolean {
  const mentions = mentionsOf(types);
  return text => types.length > 0 && mentions(tokensLately(text)).length > 0;
}

function cutOut(text: string, cuts: readonly Cut[]): string {
  let [left, end] = ['', 0];
  for (const cut of inOrder(cuts)) {
    if (cut.end <= end) continue;
    if (cut.start >= end) left += text.slice(end, cut.start) + cut.instead;
    end = cut.end;
  }
  return (left + text.slice(end))
    .replace(/[ \t]{2,}/g, ' ')
    .replace(/,(?=\s?[,.;])/g, '')
    .replace(/ (?=[,.;)])/g, '');
}

function blanked(text: string, cuts: readonly Cut[]): string {
  const signs = [...cuts].filter(c => c.kind !== 'own');
  return signs.reduce(
    (left, { start, end }) => left.slice(0, start) + left.slice(start, end).replace(/[^\n]/g, ' ') + left.slice(end),
    text,
  );
}

const inOrder = (cuts: readonly Cut[]) => [...cuts].sort((a, b) => a.start - b.start || b.end - a.end);

interface Named {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly quantities: readonly Quantity[];
  readonly sentence: Stretch;
  readonly mentions: readonly Mention[];
}

/** A value with those that stand for it elsewhere: 100 mm, or 150 mm in shops. */
interface Choice {
  readonly q: Quantity;
  readonly own?: Mention;
  readonly others: { readonly q: Quantity; readonly mention: Mention; readonly chunk: Stretch }[];
}

function cutsIn(named: Named, type: string): Cut[] {
  const { sentence, mentions } = named;
  const cuts: Cut[] = [];
  const choices: Choice[] = [];
  const leads = mentions.filter(m => isLead(named, m));
  // "In villas 5 bolts are set, in shops 3": the second has no verb, and one value stands for the other.
  const short = leads.filter(l => l.first > sentence.first && !isSubject(named, l) && !hasVerb(named, l, leads));
  for (const lead of short) {
    const q = named.quantities.find(o => o.spanFirst >= lead.next)!;
    const plain = named.quantities.find(
      o => o.first >= sentence.first && o.spanNext <= lead.first && o.dimension === q.dimension,
    );
    if (!plain) continue;
    const choice = choices.find(c => c.q === plain) ?? { q: plain, others: [] };
    if (!choices.includes(choice)) choices.push(choice);
    choice.others.push({ q, mention: lead, chunk: shortOf(named, lead, q) });
  }
  const alone = leads.filter(l => !short.includes(l));
  for (const mention of mentions) {
    if (short.includes(mention)) continue;
    const next = alone.find(l => l.first > mention.first)?.first ?? sentence.next;
    const holds =
      mention.types.has(type) ||
      short.some(l => l.first > mention.first && l.first < next && alone.includes(mention) && l.types.has(type));
    if (alone.includes(mention)) {
      const first = mention === alone[0] && isSubject(named, mention) ? sentence.first : mention.first;
      cuts.push(wordsOf(named, holds ? phraseOf(named, mention) : withoutJoint(named, { first, next })));
      continue;
    }
    const before = mentions.findLast(m => m.first < mention.first);
    const q = named.quantities.findLast(
      o => o.spanNext <= mention.first && o.spanFirst >= (before?.next ?? sentence.first),
    );
    const chunk = q ? choose(named, choices, q, mention) : chunkOf(named, mention);
    if (chunk) cuts.push(wordsOf(named, holds ? phraseOf(named, mention) : chunk));
  }
  return [...cuts, ...choices.flatMap(choice => cutsOfChoice(named, choice, type))];
}

const endOf = ({ sentence }: Named, lead: Mention, leads: readonly Mention[]) => {
  const next = leads.find(l => l.first > lead.first)?.first;
  return next ?? sentence.next;
};

function hasVerb(named: Named, lead: Mention, leads: readonly Mention[]): boolean {
  const next = endOf(named, lead, leads);
  const q = named.quantities.find(o => o.spanFirst >= lead.next && o.spanFirst < next);
  // Nothing but small words before the value.
  return !q || named.tokens.slice(lead.next, q.spanFirst).some(isTelling);
}

/** From the comma or joint before it to the end of what the value is said of: the next mark, joint or verb. */
function shortOf({ tokens, sentence }: Named, lead: Mention, q: Quantity): Stretch {
  let { first } = lead;
  while (first > sentence.first && JOINT.test(tokens[first - 1]!.low)) first--;
  let next = q.spanNext;
  while (
    next < sentence.next &&
    tokens[next]!.kind !== 'mark' &&
    !JOINT.test(tokens[next]!.low) &&
    !MODALS.has(tokens[next]!.low)
  )
    next++;
  return { first, next };
}

const MODALS = new Set('shall must should may can will is are'.split(' '));
const JOINT = /^(?:,|and|or|but|;|:)$/;

/** At the head of a sentence or clause, or in front of its verb: all that follows is said of these types. */
function isLead(named: Named, mention: Mention): boolean {
  const { tokens, sentence, quantities, mentions } = named;
  if (isSubject(named, mention)) return true;
  let at = mention.first;
  while (at > sentence.first && JOINT.test(tokens[at - 1]!.low)) at--;
  if (at === sentence.first) return true;
  if (at === mention.first) return false;
  // ", in shops 3 bolts", "and in shops they shall": behind a joint, with a value or verb of its own.
  const until = mentions.find(m => m.first > mention.first)?.first ?? sentence.next;
  const follows = quantities.find(q => q.spanFirst >= mention.next && q.spanFirst < until);
  const isNext = follows !== undefined && !tokens.slice(mention.next, follows.spanFirst).some(isTelling);
  return isNext || tokens.slice(mention.next, until).some(t => MODALS.has(t.low));
}

const isTelling = (t: Token) => (t.kind === 'word' && !SEPARATING.test(t.low)) || t.low === '(';

/** "Sockets in shops shall be": the mention stands before the verb, and no value before it. */
function isSubject({ tokens, sentence, quantities }: Named, mention: Mention): boolean {
  const verb = tokens.findIndex((t, i) => i >= sentence.first && i < sentence.next && MODALS.has(t.low));
  const isFirst = !quantities.some(q => q.first >= sentence.first && q.first < mention.first);
  return verb > mention.first && isFirst && mention.first > sentence.first;
}

function phraseOf({ tokens }: Named, { first, next }: Mention): Stretch {
  if (tokens[first - 1]?.low === ',' && /^(?:[.;)]|)$/.test(tokens[next]?.low ?? '')) return { first: first - 1, next };
  return { first, next: /^[,:]$/.test(tokens[next]?.low ?? '') ? next + 1 : next };
}

/** What goes with a mention that has no value of its own: in brackets, behind a comma or joint, or the whole sentence. */
function chunkOf(named: Named, mention: Mention): Stretch {
  const { tokens, sentence } = named;
  if (mention.excepts) return withoutJoint(named, sentence);
  for (let at = mention.first - 1; at >= sentence.first && at > mention.first - BACK; at--) {
    const low = tokens[at]!.low;
    if (low === '(') return bracketed(tokens, at, mention.next, sentence.next);
    if (/^(?:,|or|and)$/.test(low)) return { first: at, next: mention.next };
  }
  return withoutJoint(named, sentence);
}

const BACK = 8;

function bracketed(tokens: readonly Token[], first: number, from: number, end: number): Stretch {
  let next = from;
  while (next < end && tokens[next]!.low !== ')') next++;
  return { first, next: Math.min(end, next + 1) };
}

/** A full stop at the end stays. */
function withoutJoint({ tokens, sentence }: Named, { first, next }: Stretch): Stretch {
  let end = next;
  if (next < sentence.next) while (end > first && JOINT.test(tokens[end - 1]!.low)) end--;
  return { first, next: end };
}

/** Puts a value to what it stands for; gives its words back where it stands for nothing but itself. */
function choose(named: Named, choices: Choice[], q: Quantity, mention: Mention): Stretch | undefined {
  const { tokens, quantities, sentence } = named;
  let first = q.spanFirst;
  while (first > sentence.first && q.spanFirst - first < 4 && SEPARATING.test(tokens[first - 1]!.low)) first--;
  const parted = tokens.slice(first, q.spanFirst).some(t => /^(?:,|or|and|\()$/.test(t.low));
  const last = choices.at(-1);
  const isOfLast = last?.q.dimension === q.dimension;
  const plain = quantities.findLast(
    o => o.first >= sentence.first && o.spanNext <= first && o.dimension === q.dimension && o !== last?.q,
  );
  const chunk =
    tokens[first]?.low === '(' ? bracketed(tokens, first, mention.next, sentence.next) : { first, next: mention.next };
  // "and at least 300 mm against walls in shops" is one more value, and no other one.
  const isTight = tokens
    .slice(q.spanNext, mention.first)
    .every(t => !/^(?:against|at|on|in|to|of|under|over|above|below|beside)$/.test(t.low));
  if (parted && !isTight && (isOfLast || plain)) return chunk;
  if (parted && isOfLast) last.others.push({ q, mention, chunk });
  else if (parted && plain) choices.push({ q: plain, others: [{ q, mention, chunk }] });
  else choices.push({ q, own: mention, others: [] });
  return undefined;
}

const SEPARATING = /^(?:,|or|and|\(|at|by|of|with|to)$/;

function cutsOfChoice(named: Named, { q, own, others }: Choice, type: string): Cut[] {
  const { text, tokens, sentence } = named;
  const gone = others.map(o => wordsOf(named, o.chunk));
  const phrase = own ? [wordsOf(named, phraseOf(named, own))] : [];
  const other = own?.types.has(type) ? undefined : others.find(o => o.mention.types.has(type));
  if (other) {
    const isBare = other.q.comparator === 'exact' && q.comparator !== 'exact';
    const [from, place] = isBare
      ? [tokens.slice(other.q.first, other.q.next), tokens.slice(q.first, q.next)]
      : [tokens.slice(other.q.spanFirst, other.q.spanNext), tokens.slice(q.spanFirst, q.spanNext)];
    const instead = text.slice(from[0]!.start, from.at(-1)!.end);
    return [
      ...others.map(o => ({ ...wordsOf(named, o.chunk), kind: o === other ? ('own' as const) : ('words' as const) })),
      ...phrase,
      { start: place[0]!.start, end: place.at(-1)!.end, instead, kind: 'value' },
    ];
  }
  if (!own || own.types.has(type)) return [...gone, ...phrase];
  // Said of others only: from the comma before it, else the sentence.
  const comma = tokens.slice(sentence.first, q.spanFirst).findLastIndex(t => t.low === ',' || t.low === ':');
  const first = comma < 0 ? sentence.first : sentence.first + comma;
  const last = others.at(-1)?.chunk.next ?? own.next;
  return [wordsOf(named, { first, next: last })];
}

function wordsOf({ tokens }: Named, { first, next }: Stretch): Cut {
  const [from, to] = [tokens[first], tokens[next - 1]];
  return { start: from?.start ?? 0, end: to && next > first ? to.end : (from?.start ?? 0), instead: '', kind: 'words' };
}
