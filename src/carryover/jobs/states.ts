/**
 * The words by which a job table says that a line is finished: its work was looked at, signed for or paid under the
 * edition it cites, so it is annotated and otherwise left alone. One list, so that a new word is added in one place: English, German and French.
 */
const CLOSED: readonly (readonly [word: string, pattern: RegExp])[] = [
  ['inspected', /^(?:inspected|passed|accepted|approved)\b/],
  ['inspected', word('geprüft|abgenommen|freigegeben|contrôlé|réceptionné')],
  ['signed', /^sign(?:ed|ed off|-off|off)?\b/],
  ['signed', word('unterschrieben|unterzeichnet|signée?')],
  ['invoiced', /^(?:invoiced|billed|paid)\b/],
  ['invoiced', word('abgerechnet|berechnet|bezahlt|facturée?|payée?')],
  ['complete', /^(?:completed?|closed|done|finished|handed over)\b/],
  ['complete', word('erledigt|abgeschlossen|fertig(?:gestellt)?|beendet|übergeben|terminée?|achevée?|clos')],
];

const OPEN_ELSEWHERE = word(
  'offen|neu|geplant|beauftragt|bestellt|begonnen|laufend|läuft|in arbeit|in bearbeitung|nicht .*|teilweise .*|noch .*|zu erledigen|ouverte?|nouveau|prévue?|en cours|en attente|à faire',
);

const OPEN =
  /^(?:open|new|planned|proposed|scheduled|ordered|requested|issued|assigned|started|draft|pending|waiting|awaiting|on hold|in progress|in work|to do|todo|active|underway|under way|ongoing|not|un|in|to be|ready|partly|partially|part)/;

/** `open`, the word for the way in which a line is closed, or undefined for words that are on neither list. */
export function stateOf(cell: string): string | undefined {
  const text = foldedState(cell);
  const closed = CLOSED.find(([, pattern]) => pattern.test(text));
  if (closed) return closed[0];
  return OPEN_ELSEWHERE.test(text) || OPEN.test(text) ? 'open' : undefined;
}

export function foldedState(cell: string): string {
  return cell
    .trim()
    .toLowerCase()
    .replace(/[_\s]+/g, ' ');
}

/** Words of other languages count as the whole cell only: what stands behind them may turn them round. */
function word(words: string): RegExp {
  return new RegExp(`^(?:${words})[.!]?$`, 'u');
}
