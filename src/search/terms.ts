/**
 * Words that carry nothing in a search. Deliberately short: not, must, should, shall, may, can, all, only, no, at,
 * least, most and the like turn a requirement into another one and are kept.
 */
const SILENT = new Set(['a', 'an', 'the', 'of', 'to', 'and', 'or', 'is', 'are', 'be', 'it', 'its', 'as', 'by', 'for']);

/**
 * What a text is found by: its words, folded, and its numbers and ids whole (3.2.1.4, A.1, 1:80, sec-map). A splitter
 * at every point or hyphen makes 3.2.14-c into 3.2.14 and c, and then finds every c of the catalog.
 */
export function searchTerms(text: string): string[] {
  const terms: string[] = [];
  for (const chunk of foldText(text).match(/[\p{L}\p{M}\p{N}]+(?:[.:_/-]+[\p{L}\p{M}\p{N}]+)*/gu) ?? []) {
    const pieces = chunk.split(/[_/-]+/);
    if (pieces.length > 1 && /\p{N}/u.test(chunk)) terms.push(chunk);
    for (const piece of pieces) {
      if (/\p{N}/u.test(piece)) terms.push(piece);
      else for (const word of piece.split(/[.:]+/)) if (!SILENT.has(word)) terms.push(word);
    }
  }
  return terms;
}

/** Lower case, one kind of dash, no soft hyphens; letters that only look different (ﬁ, full-width) made equal. */
export function foldText(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/\u00ad/g, '')
    .replace(/[\u2010-\u2015\u2212]/g, '-');
}

/** Whether a term is, or could be, a printed number: it has a digit, or is a letter with segments (A.1). */
export function looksLikeNumber(term: string): boolean {
  return /^[\p{L}]{0,3}[.-]?\p{N}[\p{L}\p{N}]*(?:[.:_/-][\p{L}\p{N}]+)*$/u.test(term);
}

/** The beginnings of a number by segment: 3.2.14-c has 3, 3.2 and 3.2.14, and not 3.2.1. */
export function numberPrefixes(number: string): string[] {
  const prefixes: string[] = [];
  for (const { index } of number.matchAll(/[.:_/-]+/g)) if (index > 0) prefixes.push(number.slice(0, index));
  return prefixes;
}
