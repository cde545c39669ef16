import { inMainClause } from './clauses.ts';
import type { Segment, Sentence, Word } from './read-text.ts';

export type Modal = 'shall' | 'must' | 'should' | 'is to' | 'has to' | 'order';

/** One thing that a text obliges to. `ask` groups those that hang on one modal verb or order. */
export interface Obligation {
  readonly modal: Modal;
  readonly verb: Word;
  readonly passive: boolean;
  /** Forbids. */
  readonly negative: boolean;
  /** From the modal verb, or the verb itself, to the end of what belongs to it. */
  readonly start: number;
  readonly end: number;
  /** Words behind the verb that belong to it. */
  readonly rest: readonly Word[];
  /** Words before the modal verb; of an order none. */
  readonly subject: readonly Word[];
  readonly ask: number;
  /** Follows another of the same ask: `and` with or without a subject of its own. */
  readonly follows: boolean;
}

const known = new WeakMap<Sentence, Obligation[]>();

/** The obligations of a sentence's main clauses, in order. Several rules ask, so they are found once. */
export function obligationsOf(sentence: Sentence): readonly Obligation[] {
  let found = known.get(sentence);
  if (!found) {
    found = findObligations(sentence);
    known.set(sentence, found);
  }
  return found;
}

function findObligations(sentence: Sentence): Obligation[] {
  const found: Obligation[] = [];
  let ask = 0;
  for (const segment of sentence.segments) {
    const main = inMainClause(segment);
    const starts = askStarts(segment, main);
    starts.forEach((start, i) => {
      const until = starts[i + 1]?.from ?? segment.words.length;
      found.push(...oneAsk(segment, main, start, until, ask++));
    });
  }
  return found;
}

interface AskStart {
  readonly from: number;
  readonly verbAt: number;
  readonly modal: Modal;
}

function askStarts({ words, orderAt }: Segment, main: readonly boolean[]): AskStart[] {
  const starts: AskStart[] = [];
  if (orderAt !== undefined) {
    const verbAt = words[orderAt]!.lower === 'do' ? nextVerb(words, orderAt + 1) : orderAt;
    if (verbAt !== undefined) starts.push({ from: orderAt, verbAt, modal: 'order' });
  }
  words.forEach((_, i) => {
    if (!main[i]) return;
    const modal = modalAt(words, i);
    const verbAt = modal && nextVerb(words, i + (modal === 'is to' || modal === 'has to' ? 2 : 1));
    if (modal && verbAt !== undefined && !starts.some(s => s.verbAt === verbAt))
      starts.push({ from: i, verbAt, modal });
  });
  return starts.sort((a, b) => a.from - b.from);
}

export function modalAt(words: readonly Word[], at: number): Modal | undefined {
  const { lower } = words[at]!;
  if (lower === 'shall' || lower === 'must') return lower;
  // "Should a leak be found" asks for nothing.
  if (lower === 'should') return at === 0 || words[at - 1]!.lower === ',' ? undefined : lower;
  const next = words[at + 1]?.lower;
  if ((lower === 'is' || lower === 'are') && next === 'to') return 'is to';
  if (/^(?:has|have|needs?)$/.test(lower) && next === 'to') return 'has to';
  return undefined;
}

/** The verb that a modal verb governs: over adverbs, "not" and, where a participle follows, "be". */
function nextVerb(words: readonly Word[], from: number): number | undefined {
  let be: number | undefined;
  for (let i = from; i < Math.min(words.length, from + 7); i++) {
    const { lower, tag } = words[i]!;
    if (lower === 'be' || lower === 'have' || lower === 'been') be ??= i;
    else if (tag === 'VERB' || (be !== undefined && isParticiple(words[i]!))) return i;
    else if (!(tag === 'ADV' || tag === 'PART' || /^(?:not|also|n't|,|either|both|always|never)$/.test(lower))) break;
  }
  return be;
}

/** A subject longer than this is a sentence gone wrong. Words. */
const LONGEST_SUBJECT = 40;

function oneAsk(
  { words }: Segment,
  main: readonly boolean[],
  { from, verbAt, modal }: AskStart,
  until: number,
  ask: number,
): Obligation[] {
  const subjectFrom = Math.max(0, from - LONGEST_SUBJECT);
  const passive = isParticiple(words[verbAt]!) && words.slice(from, verbAt).some(w => w.lower === 'be');
  const heads = [verbAt];
  for (let i = verbAt + 1; i < until; i++) {
    if (main[i] && joins(words, i - 1) && sameForm(words, i, modal, passive)) heads.push(i);
    else if (main[i] && !passive && asksAgain(words, i, words[heads[0]!]!)) heads.push(i);
    else if (main[i] && passive && gapped(words, i, heads.at(-1)!)) heads.push(i);
  }
  dropDescriptions(words, heads, passive);
  return heads.map((at, n) => {
    const end = (heads[n + 1] ?? until) - 1;
    return {
      modal,
      verb: words[at]!,
      passive,
      negative: words.slice(from, at).some(w => /^(?:not|n't|never|no)$/.test(w.lower)),
      start: words[n === 0 ? from : at]!.start,
      end: words[Math.max(at, end)]!.end,
      rest: words.slice(at + 1, end + 1),
      subject: modal === 'order' ? [] : words.slice(subjectFrom, from).filter((_, i) => main[subjectFrom + i]),
      ask,
      follows: n > 0,
    };
  });
}

/** "soil, made up of sand": behind a comma a participle describes, unless the list ends in "and" and another one. */
function dropDescriptions(words: readonly Word[], heads: number[], passive: boolean): void {
  if (!passive) return;
  for (let n = heads.length - 1; n > 0 && words[heads[n]! - 1]!.lower === ','; n--) heads.pop();
}

/** A conjunction or a list's comma ends at `at`, adverbs and a repeated "be" or "to" let through. */
function joins(words: readonly Word[], at: number): boolean {
  let i = at;
  while (
    i > 0 &&
    (words[i]!.tag === 'ADV' || /^(?:then|also|not|be|to|subsequently|immediately)$/.test(words[i]!.lower))
  )
    i--;
  return /^(?:and|or|then|but|,)$/.test(words[i]?.lower ?? '');
}

function sameForm(words: readonly Word[], at: number, modal: Modal, passive: boolean): boolean {
  const word = words[at]!;
  // "taped and staggered joints": a participle right before a noun describes it.
  if (passive) return isParticiple(word) && words[at + 1]?.tag !== 'NOUN';
  if (word.tag !== 'VERB') return word.lower === 'be' && words[at + 1]?.tag !== 'VERB' && modal !== 'order';
  return word.lemma === word.lower && !/(?:ing|ed)$/.test(word.lower);
}

/** Behind these a second noun is one more receiver: "give the owner and manager a copy". */
const GIVING = new Set('give hand show send offer tell allow issue grant leave pass lend bring'.split(' '));

/**
 * "skim the pool, backwash the filter", "shall drain the vat and rinse it": nothing but a verb stands between a comma or
 * "and" and a determiner or "it", whatever the tagger takes it for.
 */
function asksAgain(words: readonly Word[], at: number, first: Word): boolean {
  if (!/NOUN|ADJ|PROPN/.test(words[at]!.tag) || !joins(words, at - 1) || GIVING.has(first.lemma)) return false;
  const behind = /^(?:up|out|off|down|in|back|away)$/.test(words[at + 1]?.lower ?? '') ? words[at + 2] : words[at + 1];
  return behind?.tag === 'DET' || /^(?:it|them)$/.test(behind?.lower ?? '');
}

/** "the pipe shall be lagged and the valve labelled": a participle whose "shall be" is left out. */
function gapped(words: readonly Word[], at: number, lastHead: number): boolean {
  if (!isParticiple(words[at]!) || words[at - 1]?.tag !== 'NOUN') return false;
  for (let i = at - 1; i > lastHead && i > at - 8; i--) {
    if (words[i]!.lower === 'and') return words[i + 1]!.tag === 'DET' || words[i + 1]!.lower === 'all';
    if (!/NOUN|DET|ADJ|NUM|PROPN|ADP/.test(words[i]!.tag)) return false;
  }
  return false;
}

const IRREGULAR = new Set(
  'made kept given put set laid cut held left built taken bent brought bound driven drawn done fed found hung led let lit met read sent shown shut split spread stuck told worn written wound ground known begun chosen shed sworn sought swept dug'.split(
    ' ',
  ),
);

const NO_PARTICIPLE = new Set(
  'open even wooden golden green keen often seven ten oxygen kitchen need speed feed bed reed weed seed bleed heed exceed proceed embed'.split(
    ' ',
  ),
);

export function isParticiple(word: Word): boolean {
  if (NO_PARTICIPLE.has(word.lower)) return false;
  return (word.tag === 'VERB' || word.tag === 'ADJ') && (/ed$|en$/.test(word.lower) || IRREGULAR.has(word.lower));
}
