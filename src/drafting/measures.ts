/** A number that can be held against the work: with a unit, a ratio, a per cent, or a count. Clause numbers are none. */
const MEASURE =
  /(?<![\p{L}\p{N}.-])[\u00b1+-]?\d{1,9}(?:[.,/]\d{1,9})?(?:\s?-\s?\d{1,9}(?:[.,]\d{1,9})?)?(?:\s?(?:%|\u00b0|"|')|\s?:\s?\d{1,6}|\s?-?\p{L}{1,12}\b)/u;

const NUMBER_WORD =
  /\b(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve|once|twice|half|third|quarter|dozen|daily|weekly|monthly|quarterly|yearly|annually|hourly|nightly)\b/i;

const UNTIL =
  /\b(?:every|each|per)\s(?:\p{L}{1,12}\s){0,2}?(?:hour|shift|day|week|month|year|quarter|morning|night|lift|load|batch)s?\b/iu;

export function hasMeasure(text: string): boolean {
  return MEASURE.test(text) || NUMBER_WORD.test(text) || UNTIL.test(text);
}

/** Only digits with something behind them: "two" and "once" do not count. */
export function hasNumber(text: string): boolean {
  return MEASURE.test(text);
}
