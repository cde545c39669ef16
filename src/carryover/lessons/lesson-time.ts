/**
 * The minutes that a lesson says it takes ("Time: 45 minutes", "Duration: 1.5 hours"): the first such line; undefined
 * where it does not say. Nothing is estimated.
 */
export function minutesStated(texts: readonly string[]): number | undefined {
  for (const text of texts) {
    const found = /\b(?:time|duration|length)\s*:\s*(\d{1,3}(?:[.,]\d{1,2})?)\s*(h\b|hours?\b|min\b|minutes?\b)/i.exec(
      text,
    );
    if (!found) continue;
    const value = Number(found[1]!.replace(',', '.'));
    return Math.round(/^h/i.test(found[2]!) ? value * 60 : value);
  }
  return undefined;
}
