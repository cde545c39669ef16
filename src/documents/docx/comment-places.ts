import type { Paragraph } from './paragraph.ts';

/** A stretch of a paragraph's text. */
export interface Stretch {
  readonly paragraph: Paragraph;
  readonly start: number;
  readonly end: number;
}

/**
 * Tells where the comment about a stretch can stand: Word takes comments in the body only, so that one about a footnote
 * stands at the footnote's mark, one about a text box at the box, and one about a header or footer at the first paragraph.
 * About a comment there is none.
 */
export function commentPlaces(paragraphs: readonly Paragraph[]): (wanted: Stretch) => Stretch | undefined {
  const holders = new Map(
    paragraphs.flatMap(paragraph =>
      paragraph.pieces.map(({ child, at, text }) => [child, { paragraph, start: at, end: at + text.length }] as const),
    ),
  );
  const first = paragraphs.find(p => p.heldBy === undefined);
  const placeOf = (wanted: Stretch, steps: number): Stretch | undefined => {
    const { heldBy, pieces } = wanted.paragraph;
    if (heldBy === undefined) return wanted;
    if (heldBy === null) {
      return first && !pieces.some(p => p.fixed === 'in a comment')
        ? { paragraph: first, start: 0, end: first.text.length }
        : undefined;
    }
    const holder = holders.get(heldBy.child);
    return holder && steps < 10 ? placeOf(holder, steps + 1) : undefined;
  };
  return wanted => placeOf(wanted, 0);
}
