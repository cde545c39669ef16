import { quantitiesLately } from '../quantities/quantities.ts';
import type { Cut, Named } from './cuts.ts';
import { lately } from './lately.ts';
import { type Tag, tagsOf } from './parts-of-speech.ts';
import { sentencesOf } from './sentences.ts';
import { type Token, tokensLately } from './tokens.ts';
import { cutsOf } from './type-cuts.ts';
import { type Mention, mentionsOf, type NamedType } from './type-names.ts';

/** A text as each of some types has to read it. */
export interface TypedText {
  /** What it says for one type, without what it says for others by name. */
  readonly text: string;
  /** The same with blanks for what goes, so that every word stays at its place. */
  readonly inPlace: string;
}

/** Reads a text for a type of the item it belongs to; `holdsFor` are the types of that item, all where nobody says. */
export type TypeReader = (text: string, type: string, holdsFor?: readonly string[]) => TypedText;

/**
 * Reads texts for one type. A sentence that names no type is said of all.
 *
 *   Mulch 50 mm deep, or 70 mm in shops. In villas sweep it.
 *   for shops:   Mulch 70 mm deep.
 *   for villas:  Mulch 50 mm deep. Sweep it.
 *
 * Only types that the item holds for are told apart: "kept in offices" is a place in an item for stables. And nothing is
 * dropped from all: what none of them would read, all of them read.
 */
export function typeReader(types: readonly NamedType[]): TypeReader {
  const mentions = mentionsOf(types);
  const ids = [...new Set(types.map(t => t.id))];
  const readings = lately(500, (key: string): ReadonlyMap<string, TypedText> => {
    const [text, own] = JSON.parse(key) as [string, string[]];
    return readForEach(text, own, mentions(tokensLately(text)));
  });
  return (text, type, holdsFor = ids) => {
    const asIs = { text, inPlace: text };
    if (types.length === 0 || mentions(tokensLately(text)).length === 0) return asIs;
    const own = holdsFor.includes(type) ? holdsFor : [...holdsFor, type];
    return readings(JSON.stringify([text, own])).get(type) ?? asIs;
  };
}

export function readerForType(type: string, types: readonly NamedType[]): (text: string) => TypedText {
  const read = typeReader(types);
  return text => read(text, type);
}

/** Whether a text names any of the types, so that it has to be read for each. */
export function namesTypes(types: readonly NamedType[]): (text: string) => boolean {
  const mentions = mentionsOf(types);
  return text => types.length > 0 && mentions(tokensLately(text)).length > 0;
}

/** The cuts of a text for one type, by the sentence that asks for them. */
type CutsBySentence = ReadonlyMap<number, readonly Cut[]>;

function readForEach(text: string, own: readonly string[], all: readonly Mention[]): Map<string, TypedText> {
  const named = all.filter(m => tellsApart(m, own));
  const tokens = tokensLately(text);
  const sentences = sentencesOf(text, tokens);
  const quantities = quantitiesLately(text);
  const tagAt = tagsLater(text, tokens);
  const cuts = new Map(own.map((type): [string, Map<number, readonly Cut[]>] => [type, new Map()]));
  sentences.forEach((sentence, at) => {
    const mentions = named.filter(m => m.first >= sentence.first && m.first < sentence.next);
    if (mentions.length === 0) return;
    const here = { text, tokens, quantities, sentence, mentions };
    for (const type of own) {
      const found = cutsOf(here, type, sentences[at - 1]);
      if (!leavesFragment(here, found, tagAt)) cuts.get(type)!.set(at, found);
    }
  });
  keepWhatNoneReads(tokens, named, cuts);
  return new Map(
    [...cuts].map(([type, bySentence]) => {
      const left = [...bySentence.values()].flat();
      return [type, { text: cutOut(text, left), inPlace: blanked(text, left) }];
    }),
  );
}

/** Whether a mention parts the types of an item. "Except in shops" parts nothing of what holds for no shop. */
function tellsApart({ types, excepts }: Mention, own: readonly string[]): boolean {
  return excepts ? own.some(type => !types.has(type)) : own.some(type => types.has(type));
}

function tagsLater(text: string, tokens: readonly Token[]): (at: number) => Tag | undefined {
  let tags: readonly Tag[] | undefined;
  return at => {
    tags ??= tagsOf(text, tokens);
    return tags[at];
  };
}

/** ", before digging is begun." and "with a padlock." are no sentences: what a cut would leave so is not cut at all. */
function leavesFragment(named: Named, cuts: readonly Cut[], tagAt: (at: number) => Tag | undefined): boolean {
  const { tokens, sentence, mentions } = named;
  const places = [...tokens.keys()].slice(sentence.first, sentence.next);
  const left = places.filter(at => !cuts.some(c => c.kind !== 'value' && isWithin(tokens[at]!, c)));
  const isWord = (at: number) => tokens[at]!.kind !== 'mark' && !mentions.some(m => at >= m.first && at < m.next);
  const [words, stay] = [places.filter(isWord), left.filter(isWord)];
  if (stay.length === words.length || stay.length === 0) return false;
  if (tokens[left[0]!]!.low === ',' && left[0] !== sentence.first) return true;
  const isVerb = (at: number) => /^(?:VERB|AUX)$/.test(tagAt(at) ?? '');
  const isHeadless = stay[0] !== words[0];
  return (isHeadless && tagAt(stay[0]!) === 'ADP') || (!stay.some(isVerb) && (isHeadless || words.some(isVerb)));
}

const isWithin = ({ start, end }: Token, cut: Cut) => start >= cut.start && end <= cut.end;

/** Takes back what would be cut for every type, with all that the same sentence asks to cut. */
function keepWhatNoneReads(
  tokens: readonly Token[],
  named: readonly Mention[],
  cuts: ReadonlyMap<string, Map<number, readonly Cut[]>>,
): void {
  const isMention = (at: number) => named.some(m => at >= m.first && at < m.next);
  const cutting = (each: CutsBySentence, token: Token) =>
    [...each].filter(([, list]) => list.some(c => c.kind !== 'own' && isWithin(token, c))).map(([at]) => at);
  tokens.forEach((token, at) => {
    if (token.kind === 'mark' || isMention(at) || JOINING.test(token.low)) return;
    const by = [...cuts.values()].map(each => cutting(each, token));
    if (by.some(list => list.length === 0)) return;
    for (const sentence of by.flat()) for (const each of cuts.values()) each.delete(sentence);
  });
}

const JOINING = /^(?:and|or|but)$/;

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
