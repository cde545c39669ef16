import type { CitedBook } from './cited-book.ts';
import { type EditionReader, editionReader, type SaidEdition } from './edition-said.ts';

/** Which edition came before, and which is the newest of those at hand. */
interface EditionOrder {
  readonly own: string;
  readonly older: string | undefined;
  readonly newest: string;
}

export interface MeantEditions {
  /**
   * The edition that a text says a number is of: right beside it ("3.2.1 (2014)"), by an old or a new one ("formerly
   * 3.2.1"), by the head of its column or row, or by the edition that was named last before it.
   */
  of(text: string, start: number, end: number, titleEnd: number, head: string | undefined): SaidEdition | undefined;
  /** The edition that a passage names for the list that it opens: "Codes below as in the 2014 edition:". */
  forList(text: string): string | undefined;
}

/** @param names of further editions that a text may name, whether or not their numbers are known */
export function meantEditions(own: CitedBook, others: readonly CitedBook[], names: readonly string[]): MeantEditions {
  const known = [own, ...others].map(b => b.edition.header.name);
  const all = [...new Set([...known, ...names])];
  const beside = editionReader(all);
  const order = orderOf(own, others);
  const any = [...all]
    .sort((a, b) => b.length - a.length)
    .map(e => e.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
    .join('|');
  const name = new RegExp(`(?<![\\p{L}\\p{N}.])(?:${any || '(?!)'})(?![\\p{L}\\p{N}]|\\.\\p{N})`, 'gu');
  return {
    forList: text => (/:\s*$/.test(text) ? namedBefore(text, text.length, name) : undefined),
    of: (text, start, end, titleEnd, head) =>
      saidBeside(beside, text, start, end, titleEnd) ??
      saidAs(
        relative(text, start, end, order) ??
          byArrow(text, start, end, name, known) ??
          byTable(text, start, end, head, name, known) ??
          namedBefore(text, start, name),
      ),
  };
}

function saidAs(edition: string | undefined, beside = false): SaidEdition | undefined {
  return edition === undefined ? undefined : { edition, bracketed: false, beside };
}

function saidBeside(
  editions: EditionReader,
  text: string,
  start: number,
  end: number,
  titleEnd: number,
): SaidEdition | undefined {
  return (
    editions.after(text.slice(end, end + 80)) ??
    editions.after(text.slice(titleEnd, titleEnd + 80)) ??
    saidAs(editions.before(text.slice(Math.max(0, start - 120), start)), true)
  );
}

function orderOf(own: CitedBook, others: readonly CitedBook[]): EditionOrder {
  const header = own.edition.header;
  const replaced = (name: string) => others.find(b => b.edition.header.replaces === name)?.edition.header.name;
  let newest = header.name;
  const seen = new Set([newest]);
  for (let next = replaced(newest); next !== undefined && !seen.has(next); next = replaced(next)) {
    newest = next;
    seen.add(next);
  }
  return { own: header.name, older: header.replaces ?? undefined, newest };
}

const OLD =
  /(?<![\p{L}])(?:(?:the|their|our|your)\s+)?(?:old|older|former|formerly|previous|previously|earlier|ex)[\s.:]+(?:(?:no\.?|number|item|rule|clause|requirement|section)\s+)?["“(]?$/iu;
const NEW =
  /(?<![\p{L}])(?:now|new|newer|present|current|today['’]s)[\s:]+(?:(?:no\.?|number|item|rule|clause|requirement|section)\s+)?["“(]?$/iu;

const OF =
  '^["”)]?\\s*,?\\s*\\(?(?:of|in|from|under|per)\\s+(?:the|their|our|your)\\s+(WHICH)\\s+(?:\\p{L}+\\s+)?(?:edition|book|catalog(?:ue)?|version|numbering|text|rules|requirements|issue)(?![\\p{L}])';
const OF_OLD = new RegExp(OF.replace('WHICH', 'old|older|former|previous|earlier|last|superseded'), 'iu');
const OF_NEW = new RegExp(OF.replace('WHICH', 'new|newer|newest|present|current|latest'), 'iu');

/**
 * "formerly 3.2.1", "old 3.2.1", "3.2.1 of the old edition": of the edition before; "now 3.2.1": of the newest. Nothing
 * where there is no other.
 */
function relative(text: string, start: number, end: number, { own, older, newest }: EditionOrder): string | undefined {
  const before = text.slice(Math.max(0, start - 60), start);
  const after = text.slice(end, end + 80);
  if (OLD.test(before) || OF_OLD.test(after)) return own === newest ? older : own;
  return (NEW.test(before) || OF_NEW.test(after)) && newest !== own ? newest : undefined;
}

/** How far before an arrow the two editions may be named between which it leads, in characters. */
const HEADED = 400;

/** "2016 → 2023: 3.1.3 → 3.1.4": what stands before an arrow is of the first edition, what stands behind of the second. */
function byArrow(text: string, start: number, end: number, name: RegExp, known: readonly string[]): string | undefined {
  const ahead = /(?:→|->|=>|⇒)\s*["“(]?$/.test(text.slice(Math.max(0, start - 8), start));
  const behind = /^["”)]?\s*(?:→|->|=>|⇒)/.test(text.slice(end, end + 8));
  if (ahead === behind) return undefined;
  const head = text.slice(Math.max(0, start - HEADED), start);
  const names = [...head.matchAll(name)].filter(m => known.includes(m[0]));
  const pair = names
    .slice(1)
    .map((second, at) => [names[at]!, second] as const)
    .findLast(([a, b]) => /^\s*(?:edition)?\s*(?:→|->|=>|⇒|to)\s*$/i.test(head.slice(a.index + a[0].length, b.index)));
  return pair?.[ahead ? 1 : 0][0];
}

/** How far above a row the head of its table is looked for, in characters. */
const TABLE = 2_000;

/** What the head of its column says, or the first cell of its row. */
function byTable(
  text: string,
  start: number,
  end: number,
  head: string | undefined,
  name: RegExp,
  known: readonly string[],
): string | undefined {
  const ofHead = head?.match(name)?.filter(n => known.includes(n)) ?? [];
  if (ofHead.length === 1) return ofHead[0];
  const from = text.lastIndexOf('\n', start - 1) + 1;
  const behind = text.indexOf('\n', end);
  const line = text.slice(from, behind < 0 ? undefined : behind);
  const rowHead = /^[\s|]*([^\s|]+)[ \t]*\|/.exec(line)?.[1];
  if (rowHead !== undefined && known.includes(rowHead)) return rowHead;
  for (const above of text
    .slice(Math.max(0, from - TABLE), from)
    .split('\n')
    .reverse()) {
    const heads = above.match(name)?.filter(n => known.includes(n)) ?? [];
    if (heads.length < 2) continue;
    if (!above.includes('|')) {
      const numbers = [...line.matchAll(/(?<![\p{L}\p{N}.-])\p{L}?[.-]?\p{N}+(?:[.-]\p{N}+)+/gu)].map(
        m => m.index + from,
      );
      return numbers.length === heads.length ? heads[numbers.indexOf(start)] : undefined;
    }
    const cell = line.slice(0, start - from).split('|').length - 1;
    const ofCell = above.split('|')[cell]?.match(name) ?? [];
    return ofCell.length === 1 ? ofCell[0] : undefined;
  }
  return undefined;
}

/**
 * The edition named last before a number, where a text names it as one: "the 2015 edition. Read therefore 7-1-1 as …",
 * "Today's number for each number of 2017: 2.1.3". A year that is no edition's name, or stands as a date, says nothing.
 */
function namedBefore(text: string, start: number, name: RegExp): string | undefined {
  const before = text.slice(Math.max(0, start - 300), start);
  const last = [...before.matchAll(name)].at(-1);
  if (!last) return undefined;
  const [ahead, behind] = [before.slice(0, last.index), before.slice(last.index + last[0].length)];
  const asEdition =
    /(?:edition|numbers|rules|book|version|issue|text|numbering)s?\s+(?:of|from)\s+(?:the\s+)?$/i.test(ahead) ||
    /^(?:['’]s)?\s+(?:\p{L}+\s+)?(?:edition|book|copy|numbering|numbers|version|issue|text|rules|catalog(?:ue)?)/iu.test(
      behind,
    );
  const overtaken = /(?<![\p{L}])(?:now|today|present|current|new)(?![\p{L}])/iu.test(behind);
  return asEdition && !overtaken ? last[0] : undefined;
}
