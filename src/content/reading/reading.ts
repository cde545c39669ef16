import { type Quantity, quantitiesLately } from '../quantities/quantities.ts';
import { isEmptyWord } from './empty-words.ts';
import { type Force, forceOf } from './force.ts';
import { lately } from './lately.ts';
import { meaning } from './meaning.ts';
import { type Tag, tagsOf } from './parts-of-speech.ts';
import { phraseAt } from './phrases.ts';
import { type Reference, referencesOf } from './references.ts';
import { type Segment, segmentsOf } from './segments.ts';
import { type Stretch, sentencesOf } from './sentences.ts';
import { writtenOut } from './spelling.ts';
import { type Token, tokensLately } from './tokens.ts';

/** A clause that obliges, permits or states, with the segments of its sentence that belong to it. */
export interface Clause extends Stretch {
  readonly force: Force;
  /** Places of its tokens outside segments. */
  readonly main: readonly number[];
  readonly segments: readonly Segment[];
  /** What it talks about, segments included. */
  readonly meanings: ReadonlySet<string>;
  /** Place of the first token behind the subject: the modal, or the first word of an imperative. */
  readonly predicate: number;
}

/** A text taken apart. All places are indexes into `tokens`. */
export interface Reading {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly tags: readonly Tag[];
  readonly quantities: readonly Quantity[];
  readonly references: readonly Reference[];
  readonly sentences: readonly Stretch[];
  readonly clauses: readonly Clause[];
  readonly segments: readonly Segment[];
  /** For each token what it means, or `` for words without a content of their own, marks, and parts of quantities. */
  readonly meanings: readonly string[];
}

/** Takes a text apart. What it gives is shared by all who ask for the same text, and not to be changed. */
export const readText = lately(1_000, (text: string) => takenApart(text));

/** A text without some of its sentences; the others keep the parts of speech that they had among them. */
export function withoutStretches({ text, tokens, tags }: Reading, gone: readonly Stretch[]): Reading {
  let left = text;
  for (const { first, next } of gone.toReversed()) {
    left = `${left.slice(0, tokens[first]!.start)} ${left.slice(tokens[next - 1]!.end)}`;
  }
  const kept = tags.filter((_, at) => !gone.some(s => at >= s.first && at < s.next));
  return takenApart(left.trim(), kept);
}

function takenApart(text: string, known?: readonly Tag[]): Reading {
  const tokens = tokensLately(text);
  const tags = known?.length === tokens.length ? known : tagsOf(text, tokens);
  const quantities = quantitiesLately(text);
  const references = referencesOf(tokens);
  const measured = new Set<number>();
  for (const q of quantities) for (let at = q.spanFirst; at < q.spanNext; at++) measured.add(at);
  const meanings = tokens.map((token, at) =>
    measured.has(at) || !isContent(token, tags[at]!) ? '' : meaning(writtenOut(token.low)[0]!),
  );
  for (let at = 0; at < tokens.length; at++) {
    const phrase = measured.has(at) ? undefined : phraseAt(tokens, at);
    if (!phrase) continue;
    meanings.fill('', at, phrase.next);
    meanings[at] = phrase.one;
  }
  const sentences = sentencesOf(text, tokens);
  const clauses: Clause[] = [];
  const segments: Segment[] = [];
  for (const sentence of sentences) {
    const inside = segmentsOf(tokens, tags, sentence);
    segments.push(...inside);
    for (const part of clausesIn(tokens, sentence, inside)) {
      const own = inside.filter(s => s.first >= part.first && s.first < part.next);
      const main = placesOutside(part, own);
      const force = forceOf(tokens, tags, main);
      const said = meanings.slice(part.first, part.next).filter(Boolean);
      clauses.push({
        ...part,
        force,
        main,
        segments: own,
        meanings: new Set(said),
        predicate: force.at ?? main[0] ?? part.first,
      });
    }
  }
  return { text, tokens, tags, quantities, references, sentences, clauses, segments, meanings };
}

/** The words of a stretch as they stand in the text. */
export function said(reading: Reading, { first, next }: Stretch): string {
  const [from, to] = [reading.tokens[first], reading.tokens[next - 1]];
  if (!from || !to) return '';
  let { end } = to;
  while (end > from.start && /[\s,;.:]/.test(reading.text[end - 1]!)) end--;
  return reading.text.slice(from.start, end);
}

function isContent(token: Token, tag: Tag): boolean {
  if (token.kind === 'number') return true;
  return token.kind === 'word' && !isEmptyWord(token.low) && !(tag === 'AUX' && FORMS_OF_BE.has(token.low));
}

const FORMS_OF_BE = new Set('is are be been being was were'.split(' '));

const MODALS = new Set('shall must should may can will'.split(' '));

/** "A shall …, and B must …" and "shall … and shall …" are two clauses of one sentence. */
function clausesIn(tokens: readonly Token[], sentence: Stretch, segments: readonly Segment[]): Stretch[] {
  const outside = placesOutside(sentence, segments);
  const modals = outside.filter(at => MODALS.has(tokens[at]!.low));
  const cuts: number[] = [];
  for (let i = 1; i < modals.length; i++) {
    const between = outside.filter(at => at > modals[i - 1]! && at < modals[i]!);
    const cut = between.findLast(at => /^(and|but|or|,|;)$/.test(tokens[at]!.low) && tokens[at + 1]?.low !== 'not');
    if (cut !== undefined) cuts.push(cut);
  }
  const bounds = [sentence.first, ...cuts, sentence.next];
  return bounds.slice(0, -1).map((first, i) => ({ first, next: bounds[i + 1]! }));
}

/** Segments are in order and do not nest. */
function placesOutside({ first, next }: Stretch, segments: readonly Segment[]): number[] {
  const places: number[] = [];
  let at = first;
  for (const segment of segments) {
    for (; at < Math.min(next, segment.first); at++) places.push(at);
    at = Math.max(at, segment.next);
  }
  for (; at < next; at++) places.push(at);
  return places;
}
