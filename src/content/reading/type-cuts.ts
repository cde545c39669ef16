import type { Quantity } from '../quantities/quantities.ts';
import { bracketed, type Cut, JOINT, MODALS, type Named, phraseOf, SEPARATING, wordsOf } from './cuts.ts';
import type { Stretch } from './sentences.ts';
import type { Token } from './tokens.ts';
import type { Mention } from './type-names.ts';
import { type Choice, choose, cutsOfChoice, shortOf, valuesFrom } from './value-choices.ts';

/** What goes where a sentence that names types is read for one of them. */
export function cutsOf(named: Named, type: string, before: Stretch | undefined): Cut[] {
  return specialOf(named, type, before) ?? cutsIn(named, type);
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
    const choice = choices.find(c => c.values[0] === plain) ?? {
      values: valuesFrom(named, plain, lead.first),
      others: [],
    };
    if (!choices.includes(choice)) choices.push(choice);
    const chunk = shortOf(named, lead, q);
    choice.others.push({ values: valuesFrom(named, q, chunk.next), mention: lead, chunk });
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
    const from = before?.next ?? sentence.first;
    const q = named.quantities.findLast(o => o.spanNext <= mention.first && o.spanFirst >= from);
    const isBeside = q !== undefined && isValueOf(named, q, mention);
    const chunk = isBeside ? choose(named, choices, q, mention, from) : chunkOf(named, mention);
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

/** A full stop at the end stays. */
function withoutJoint({ tokens, sentence }: Named, { first, next }: Stretch): Stretch {
  let end = next;
  if (next < sentence.next) while (end > first && JOINT.test(tokens[end - 1]!.low)) end--;
  return { first, next: end };
}

/** A mention tells of a value that it follows within the same clause: no mark, no verb between them. */
function isValueOf({ tokens }: Named, q: Quantity, mention: Mention): boolean {
  return tokens.slice(q.spanNext, mention.first).every(t => t.low !== ',' && t.low !== ':' && !MODALS.has(t.low));
}
