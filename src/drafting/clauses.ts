import type { Segment, Word } from './read-text.ts';

/** Words of a segment, each with whether it stands in the main clause. */
export function inMainClause({ words, orderAt }: Segment): boolean[] {
  const main = new Array<boolean>(words.length).fill(true);
  const opening = words[0] && opensClause(words, 0) ? openingEnd(words, orderAt) : 0;
  main.fill(false, 0, opening);
  let inside = false;
  for (let i = opening; i < words.length; i++) {
    if (inside && closes(words, i)) inside = false;
    if (!inside && i > opening && opensClause(words, i)) inside = true;
    main[i] = !inside;
  }
  return main;
}

const ALWAYS = new Set(
  'if when where wherever whenever unless until while because whereas although though which who whom whose whether once lest'.split(
    ' ',
  ),
);
const MAYBE = new Set(['before', 'after', 'since', 'as', 'that', 'so']);

function opensClause(words: readonly Word[], at: number): boolean {
  const { lower, tag } = words[at]!;
  if (ALWAYS.has(lower)) return true;
  if (lower === 'so') return words[at + 1]?.lower === 'that' || words[at + 1]?.lower === 'as';
  if (lower === 'in') return words[at + 1]?.lower === 'order';
  if (lower === 'that') return tag === 'SCONJ' || tag === 'PRON' || /AUX|VERB/.test(words[at + 1]?.tag ?? '');
  return MAYBE.has(lower);
}

/** An opening clause ends where the order begins, else at the first comma. */
function openingEnd(words: readonly Word[], orderAt: number | undefined): number {
  if (orderAt !== undefined) return orderAt;
  for (let i = 1; i < words.length; i++) {
    if (words[i]!.lower === ',' && !/^(?:and|or)$/.test(words[i + 1]?.lower ?? '')) return i + 1;
  }
  return 0;
}

/** A later clause ends at a comma that no list goes on from, or where "and" takes up the modal verb or an order again. */
function closes(words: readonly Word[], at: number): boolean {
  const { lower } = words[at]!;
  if (lower === ',') return true;
  return (lower === 'and' || lower === 'but') && OBLIGING.has(words[at + 1]?.lower ?? '');
}

export const OBLIGING: ReadonlySet<string> = new Set(['shall', 'must', 'should', 'will']);
