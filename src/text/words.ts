/**
 * The words of a text, folded: lower case, accents kept, dashes and hyphens between words opened, punctuation dropped.
 * What changes a meaning stays: points, commas, colons and dashes inside numbers (1.5, 1:80, 3-5), a minus sign before
 * a digit, and the signs % ° < > = ± / ≤ ≥ ×.
 */
export function words(text: string): string[] {
  const folded = text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/\u00ad/g, '')
    .replace(/[\u2010-\u2015\u2212]/g, '-');
  return folded.match(/(?<![\p{L}\p{N}])-?\p{N}+(?:[.,:-]\p{N}+)*|[\p{L}\p{M}]+|\p{N}+|[%°<>=±/≤≥×]/gu) ?? [];
}
