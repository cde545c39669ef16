/**
 * The words by which a job table says that a line is finished: its work was looked at, signed for or paid under the
 * edition it cites, so it is annotated and otherwise left alone. One list, so that a new word is added in one place.
 */
const CLOSED: readonly (readonly [word: string, pattern: RegExp])[] = [
  ['inspected', /^(?:inspected|passed|accepted|approved)\b/],
  ['signed', /^sign(?:ed|ed off|-off|off)?\b/],
  ['invoiced', /^(?:invoiced|billed|paid)\b/],
  ['complete', /^(?:completed?|closed|done|finished|handed over)\b/],
];

const OPEN =
  /^(?:open|new|planned|proposed|scheduled|ordered|requested|issued|assigned|started|draft|pending|waiting|awaiting|on hold|in progress|in work|to do|todo|active|underway|under way|ongoing|not|un|in|to be|ready|partly|partially|part)/;

/** `open`, the word for the way in which a line is closed, or undefined for words that are on neither list. */
export function stateOf(cell: string): string | undefined {
  const text = cell
    .trim()
    .toLowerCase()
    .replace(/[_\s]+/g, ' ');
  const closed = CLOSED.find(([, pattern]) => pattern.test(text));
  if (closed) return closed[0];
  return OPEN.test(text) ? 'open' : undefined;
}
