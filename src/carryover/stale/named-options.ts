import type { Passage } from '../../model/document.ts';
import { isHeading, isKey, type Piece } from './stale-answers.ts';
import { tickedOptions } from './ticked-options.ts';

/** A question with the options that it offers, by letter in the order of the alphabet. */
interface Asked {
  readonly number: number;
  readonly text: string;
  readonly passage: Passage;
  readonly options: Map<string, Piece>;
  named?: string;
}

const OPTION = /(?<=^|\s)(?:[-*•] )?(?:\(([a-h])\)|([a-h])\)|(?<=^\s*(?:[-*•] )?)([a-h])[.:])[ \t]+/gi;
const ANSWER =
  /\b(?:answer|key|solution|correct|right)\b[ \t]*(?:is\b|[:=])[ \t]*\(?([a-h])(?=\)|[ \t]*(?:$|[.,;:–—(-]))/i;
/** "Answer b", on a line of its own or in brackets at its end: "give the answer a" names none. */
const ANSWER_ALONE =
  /(?:^[ \t]*(?:the[ \t]+)?(?:(?:correct|right)[ \t]+)?answer[ \t]+([a-h])|\banswer[ \t]+\(([a-h])\))[ \t]*\.?[ \t]*$/i;
const BOX_OF_NEXT = /\[[ x]\][ \t]*$/i;
const BOXED = /\[x\][ \t]*$/i;
const TICK = /[✓✔☑✅]|\((?:correct|right)\)/i;
const LETTER = /^\(?([a-h])(?:\)|[ \t]*(?:$|[.,;:–—-]))/i;
const ALONE = /^\s*\(?([a-h])\)?\s*$/i;
const KEYED = /(?<![\p{L}\p{N}.])(\d{1,3})[.):]?[ \t]*[-–]?[ \t]*\(?([a-h])(?=\)|[ \t]*(?:$|[.,;:–—-])|[ \t]+\d)/giu;
const NUMBER = /^\s*(\d{1,3})[.)][ \t]+/;

/**
 * The options of a quiz that are named as the right ones, each with its question:
 *
 *   How long is the curing (2.2.2)?   (a) 3 days  (b) 7 days      Answer: b      ─▶  "7 days", cited beside it 2.2.2
 *
 * Named are they by letter (behind the options, or in a key below, by number or by order), by a tick or by a crossed box;
 * options without letters by these or by standing in bold. A wrong option is none of ours: it says what it says because it
 * is wrong.
 */
export function namedOptions(passages: readonly Passage[]): readonly Piece[] {
  const asked: Asked[] = [];
  const keys: string[] = [];
  let before: Passage | undefined;
  for (const passage of passages) {
    if (passage.text.trim() === '' || isHeading(passage)) continue;
    if (isKey(passage)) keys.push(...passage.text.split('\n').filter(line => line.trim() !== ''));
    else readQuestions(passage, before, asked);
    before = passage;
  }
  readKeys(keys, asked);
  const lettered = asked.flatMap(({ text, passage, options, named }) => {
    const option = named === undefined ? undefined : options.get(named);
    return option ? [{ ...option, question: text, beside: passage }] : [];
  });
  return [...lettered, ...tickedOptions(passages, line => line.search(OPTION) >= 0)];
}

function readQuestions(passage: Passage, before: Passage | undefined, asked: Asked[]): void {
  const begin = (text: string, of: Passage) => {
    const number = Number(NUMBER.exec(text)?.[1] ?? asked.length + 1);
    asked.push({ number, text, passage: of, options: new Map() });
  };
  let at = passage.start;
  for (const line of passage.text.split('\n')) {
    const marks = [...line.matchAll(OPTION)];
    const head = line.slice(0, marks[0]?.index ?? line.length);
    if (head.includes('?') || (NUMBER.test(head) && marks.length > 0)) begin(head, passage);
    for (const [n, mark] of marks.entries()) {
      const letter = (mark[1] ?? mark[2] ?? mark[3]!).toLowerCase();
      if (letter === 'a' && (asked.at(-1)?.options.size ?? 1) > 0 && before) begin(before.text, before);
      const one = asked.at(-1);
      // "Step c)" in a sentence is no option: letters come in their order.
      if (!one || letter.charCodeAt(0) - 97 !== one.options.size) continue;
      const start = mark.index + mark[0].length;
      const rest = line.slice(start, marks[n + 1]?.index ?? line.length);
      const text = rest.slice(0, (ANSWER.exec(rest) ?? ANSWER_ALONE.exec(rest) ?? BOX_OF_NEXT.exec(rest))?.index);
      one.options.set(letter, { start: at + start, text, passage });
      if (TICK.test(text) || BOXED.test(line.slice(0, mark.index))) one.named = letter;
    }
    const one = asked.at(-1);
    // A cell of a table beside the question holds the letter alone.
    const alone = ANSWER_ALONE.exec(line);
    const named = (ANSWER.exec(line) ?? ALONE.exec(passage.text))?.[1] ?? alone?.[1] ?? alone?.[2];
    if (one && one.options.size > 0 && named !== undefined) one.named ??= named.toLowerCase();
    at += line.length + 1;
  }
}

/** Letters of a key below the questions, by number, or by order where it has as many answers as there are questions. */
function readKeys(lines: readonly string[], asked: readonly Asked[]): void {
  for (const [at, line] of lines.entries()) {
    const bare = LETTER.exec(line.trim())?.[1];
    if (bare !== undefined && lines.length === asked.length) asked[at]!.named ??= bare.toLowerCase();
    for (const [, number, letter] of line.matchAll(KEYED)) {
      const one = asked.find(a => a.number === Number(number));
      if (one) one.named ??= letter!.toLowerCase();
    }
  }
}
