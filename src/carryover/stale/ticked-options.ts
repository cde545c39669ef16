import type { Passage } from '../../model/document.ts';
import { isHeading, isKey, type Piece } from './stale-answers.ts';

interface Line {
  readonly text: string;
  readonly start: number;
  readonly passage: Passage;
}

/** A box, with or without its cross. Readers leave the marks of lists away, plain text keeps them. */
const BOX = /^[ \t]*(?:[-*•+]|\d{1,2}[.)])?[ \t]*(?:\[([ xX]?)\]|([☐□])|[☑☒✅])[ \t]+(?=\S)/u;
const TICK = /[✓✔☑✅]|\((?:correct|right)\)/iu;
/** Where all of a paragraph stands in bold, a reader of markdown leaves two spaces for the marks on either side. */
const BOLD = /^( {2,3})\S(?:[^\n]*\S)?\1$/;
/** Farther away a question is another's. */
const MOST_OPTIONS = 8;
/** What is longer is a paragraph of the lesson. */
const LONGEST = 120;

/**
 * The options without letters that are marked as the right ones, each with its question:
 *
 *   How long is the curing (2.2.2)?     - [ ] 3 days    - [x] 7 days
 *   How long is the curing (2.2.2)?     - 3 days        - 7 days ✓
 *   How long is the curing (2.2.2)?     - 3 days        - **7 days**
 *
 * A list of things to do has boxes too, and items in bold are common: without a line before it that asks, a tick or bold
 * words name no answer.
 *
 * @param isLettered whether a line holds options by letter, which are read elsewhere
 */
export function tickedOptions(passages: readonly Passage[], isLettered: (line: string) => boolean): readonly Piece[] {
  const found: Piece[] = [];
  let question: Line | undefined;
  let before: Line | undefined;
  let options: Line[] = [];
  const close = () => {
    if (question) found.push(...rightOf(options, question));
    options = [];
  };
  for (const line of linesOf(passages)) {
    const isBox = BOX.test(line.text);
    if (!isBox && (line.text.includes('?') || isHeading(line.passage))) {
      close();
      question = line.text.includes('?') ? line : undefined;
    } else if (isLettered(line.text)) {
      close();
      question = undefined;
    } else if (isBox && (options.length === 0 || !BOX.test(options.at(-1)!.text))) {
      // "Tick one." may stand between; and a sentence may be there to be completed: "The bed is at least".
      if (!question || options.length > 1) question = before;
      options = [line];
    } else if (options.length > 0 && !isBox && BOX.test(options.at(-1)!.text)) {
      close();
      question = undefined;
    } else options.push(line);
    before = line;
  }
  close();
  return found;
}

function* linesOf(passages: readonly Passage[]): Generator<Line> {
  for (const passage of passages) {
    if (passage.text.trim() === '' || isKey(passage)) continue;
    let start = passage.start;
    for (const text of passage.text.split('\n')) {
      if (text.trim() !== '') yield { text, start, passage };
      start += text.length + 1;
    }
  }
}

function rightOf(options: readonly Line[], { text: question, passage: beside }: Line): readonly Piece[] {
  const long = options.findIndex(o => o.text.length > LONGEST);
  const near = options.slice(0, Math.min(MOST_OPTIONS, long < 0 ? options.length : long));
  if (near.length < 2) return [];
  const boxed = near.map(o => BOX.exec(o.text));
  const marked = boxed.every(b => b !== null)
    ? near.filter((_, at) => boxed[at]![1]?.trim() !== '' && boxed[at]![2] === undefined)
    : near.filter(o => TICK.test(o.text));
  const bold = near.filter(o => BOLD.test(o.text) && o.text.length === o.passage.text.length);
  const named = marked.length > 0 || boxed.some(b => b !== null) ? marked : bold;
  // Where all are marked, or half of a page, it is no question with one answer.
  if (named.length !== 1) return [];
  const [{ text, start, passage }] = named as [Line];
  const skipped = BOX.exec(text)?.[0].length ?? 0;
  return [{ start: start + skipped, text: text.slice(skipped), passage, question, beside }];
}
