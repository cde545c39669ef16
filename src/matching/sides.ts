import { type Bag, type Vocabulary, vocabularyOf } from './bags.ts';
import type { BareRow } from './bare-row.ts';
import { type Meaning, meaningReader } from './meaning.ts';
import { segmentsOf } from './segments.ts';
import { letterRuns, type Terms, termsOf } from './terms.ts';

/** One edition, ready to be compared: every list is by the row's position. */
export interface Side {
  readonly rows: readonly BareRow[];
  readonly children: readonly (readonly number[])[];
  readonly depth: Int32Array;
  /** The top of the row's branch; the row itself where it has no parent. */
  readonly part: Int32Array;
  /** The row before and after it among the rows of its depth, in document order; -1 where there is none. */
  readonly before: Int32Array;
  readonly after: Int32Array;
  /** Titles and texts folded, to see at once that two are equal. */
  readonly foldedTitle: readonly string[];
  readonly foldedText: readonly string[];
  /** The title up to its first bracket, dash, colon or comma: what follows is often spelt out in one edition only. */
  readonly titleHead: readonly string[];
  readonly title: readonly Bag[];
  readonly body: readonly Bag[];
  /** Title and text together. */
  readonly all: readonly Bag[];
  /** The sentences and list items of the text; of the title where there is no text. */
  readonly segments: readonly (readonly Bag[])[];
  /** What the row, its title and its sentences are about. */
  readonly meaning: readonly Meaning[];
  readonly titleMeaning: readonly Meaning[];
  readonly segmentMeanings: readonly (readonly Meaning[])[];
  readonly phrases: readonly Bag[];
  readonly quantities: readonly Bag[];
  readonly letters: readonly Bag[];
  /** The titles above the row. */
  readonly headings: readonly Bag[];
  /** All that stands below the row. */
  readonly below: readonly Bag[];
}

export interface Sides {
  readonly from: Side;
  readonly to: Side;
  readonly words: Vocabulary;
  readonly phrases: Vocabulary;
  readonly quantities: Vocabulary;
  readonly letters: Vocabulary;
}

/** Prepares two editions. Both share their vocabularies, so that a word is as rare as it is in the two together. */
export function sidesOf(from: readonly BareRow[], to: readonly BareRow[]): Sides {
  const english = isEnglish([...from, ...to]);
  const told = (rows: readonly BareRow[]) =>
    rows.map(row => ({ title: termsOf(row.title, english), body: termsOf(row.text, english) }));
  const [old, next] = [told(from), told(to)];
  const both = [...old, ...next];
  const all = ({ title, body }: Told) => [...title.stems, ...body.stems];
  const words = vocabularyOf(both.map(all));
  const phrases = vocabularyOf(both.map(t => [...t.title.phrases, ...t.body.phrases]));
  const quantities = vocabularyOf(both.map(t => [...t.title.quantities, ...t.body.quantities]));
  const runs = [...from, ...to].map(row => letterRuns(row.title || row.text));
  const letters = vocabularyOf(runs);
  const meaningOf = meaningReader(words);
  const side = (rows: readonly BareRow[], texts: readonly Told[], firstRun: number): Side => {
    const outline = outlineOf(rows);
    const above = (at: number): string[] => {
      const up = rows[at]!.parent;
      return up < 0 ? [] : [...texts[up]!.title.stems, ...above(up)];
    };
    const below: string[][] = rows.map(() => []);
    for (let at = rows.length - 1; at >= 0; at--) {
      const up = rows[at]!.parent;
      // Enough to know a section by; all of it would make the work quadratic in the depth.
      if (up >= 0 && below[up]!.length < MOST_BELOW) below[up] = below[up]!.concat(all(texts[at]!), below[at]!);
    }
    const titles = texts.map(t => words.bag(t.title.stems));
    const whole = texts.map(t => words.bag(all(t)));
    const segments = rows.map(row =>
      segmentsOf(row.text || row.title)
        .map(piece => words.bag(termsOf(piece, english).stems))
        .filter(bag => bag.mass > 0),
    );
    return {
      rows,
      ...outline,
      foldedTitle: rows.map(row => fold(row.title)),
      foldedText: rows.map(row => fold(row.text)),
      titleHead: rows.map(row => fold(row.title.split(TITLE_HEAD_ENDS)[0] || row.title)),
      title: titles,
      body: texts.map(t => words.bag(t.body.stems)),
      all: whole,
      segments,
      meaning: whole.map(meaningOf),
      titleMeaning: titles.map(meaningOf),
      segmentMeanings: segments.map(list => list.map(meaningOf)),
      phrases: texts.map(t => phrases.bag([...t.title.phrases, ...t.body.phrases])),
      quantities: texts.map(t => quantities.bag([...t.title.quantities, ...t.body.quantities])),
      letters: rows.map((_, at) => letters.bag(runs[firstRun + at]!)),
      headings: rows.map((_, at) => words.bag(above(at))),
      below: below.map(terms => words.bag(terms)),
    };
  };
  return { from: side(from, old, 0), to: side(to, next, from.length), words, phrases, quantities, letters };
}

interface Told {
  readonly title: Terms;
  readonly body: Terms;
}

const MOST_BELOW = 400;

const TITLE_HEAD_ENDS = /\s*[([,;]|:\s|\s[\u2013\u2014-]\s/u;

const fold = (text: string) => (text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).join(' ');

/** Whether endings may be stripped: English has its small words in nearly every sentence. */
export function isEnglish(rows: readonly BareRow[]): boolean {
  let all = 0;
  let small = 0;
  for (const { title, text } of rows.slice(0, 2000)) {
    for (const word of `${title} ${text}`.toLowerCase().match(/\p{L}+/gu) ?? []) {
      all++;
      if (SMALL.has(word)) small++;
    }
  }
  return small > all * 0.02;
}

const SMALL = new Set(['the', 'of', 'and', 'to', 'is', 'or', 'for', 'with', 'shall', 'are', 'be', 'by', 'from', 'not']);

function outlineOf(rows: readonly BareRow[]) {
  const children: number[][] = rows.map(() => []);
  const depth = new Int32Array(rows.length);
  const part = new Int32Array(rows.length);
  const before = new Int32Array(rows.length).fill(-1);
  const after = new Int32Array(rows.length).fill(-1);
  const up = (at: number): void => {
    // A parent may stand below its child in the table; cycles were cut when the table was read.
    for (let top = at, steps = 0; ; steps++) {
      const parent = rows[top]!.parent;
      if (parent < 0) {
        depth[at] = steps;
        part[at] = top;
        return;
      }
      top = parent;
    }
  };
  const last: number[] = [];
  rows.forEach((row, at) => {
    if (row.parent >= 0) children[row.parent]!.push(at);
    up(at);
    const previous = last[depth[at]!];
    if (previous !== undefined) {
      before[at] = previous;
      after[previous] = at;
    }
    last[depth[at]!] = at;
  });
  return { children, depth, part, before, after };
}
