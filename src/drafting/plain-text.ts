/** Signs that stand for a plainer one of the same length, so that places in the text stay what they are. */
const PLAINER: Readonly<Record<string, string>> = {
  '\u2018': "'",
  '\u2019': "'",
  '\u201c': '"',
  '\u201d': '"',
  '\u00ab': '"',
  '\u00bb': '"',
  '\u00a0': ' ',
  '\u2007': ' ',
  '\u202f': ' ',
  '\t': ' ',
  '\u2010': '-',
  '\u2011': '-',
};

export function plainSigns(text: string): string {
  return text.replace(/[\u2018\u2019\u201c\u201d\u00ab\u00bb\u00a0\u2007\u202f\t\u2010\u2011]/g, c => PLAINER[c]!);
}

/**
 * Blanks what stands between double quotes: a label "Keep clear where necessary" is shown, not said. Quotes over 200
 * characters apart are inch marks or a slip, and stay.
 */
export function withoutQuoted(plain: string): string {
  return plain.replace(/(?<!\d)"[^"\n]{1,200}"/g, quoted => `"${'_'.repeat(quoted.length - 2)}"`);
}

/** A capital at the beginning makes a name of a verb; capitals that go on (PVC) are left alone. */
export function lowerFirst(segment: string): string {
  return /^\p{Lu}(?!\p{Lu}|\p{N})/u.test(segment) ? segment[0]!.toLowerCase() + segment.slice(1) : segment;
}
