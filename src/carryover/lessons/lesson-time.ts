const STATED = /\b(?:time|duration|length)\s*:\s*["']?(\d{1,3}(?:[.,]\d{1,2})?)\s*(h\b|hours?\b|min\b|minutes?\b)/i;
const BARE = /^[ \t]*(hours|minutes)\s*:\s*["']?(\d{1,3}(?:[.,]\d{1,2})?)["']?[ \t]*$/im;
const OF_SECTION = /[([](\d{1,3}(?:[.,]\d{1,2})?)\s*(h|hours?|min|minutes?)[)\]]\s*#*\s*$/i;

/**
 * The minutes that a lesson says it takes ("Time: 45 minutes", "Duration: 1.5 hours", "hours: 1.5"): the first such line or,
 * where there is none, the sum of what its headings say ("Slides (1.5 h)"); undefined where it does not say. Nothing is
 * estimated.
 *
 * @param headings among the texts, those that are headings
 */
export function minutesStated(texts: readonly string[], headings: readonly string[] = []): number | undefined {
  for (const text of texts) {
    const [, value, unit] = STATED.exec(text) ?? [];
    const [, word, bare] = BARE.exec(text) ?? [];
    if (value !== undefined) return minutesOf(value, unit!);
    if (bare !== undefined) return minutesOf(bare, word!);
  }
  const sections = headings.flatMap(heading => {
    const found = OF_SECTION.exec(heading);
    return found ? [minutesOf(found[1]!, found[2]!)] : [];
  });
  return sections.length > 0 ? sections.reduce((a, b) => a + b) : undefined;
}

function minutesOf(written: string, unit: string): number {
  const value = Number(written.replace(',', '.'));
  return Math.round(/^h/i.test(unit) ? value * 60 : value);
}
