import type { Wording } from '../../model/crosswalk.ts';
import { numberAt } from '../quantities/numbers.ts';
import { type Quantity, quantitiesLately } from '../quantities/quantities.ts';
import { unitAt } from '../quantities/read-unit.ts';
import { spelled, writtenOut } from '../reading/spelling.ts';
import { type Token, tokensLately } from '../reading/tokens.ts';
import { voiceTurned } from './voice.ts';

/**
 * Whether two texts differ at all (`same`), only in how they are written (`editorial`: capitals, punctuation, hyphens,
 * spelling, digits for number words, spelling of a unit, order of a list, active for passive) or in more.
 */
export function wordingOfTexts(from: string, to: string): Wording {
  if (from.trim() === to.trim()) return 'same';
  if (!sameQuantities(quantitiesLately(from), quantitiesLately(to))) return 'substantive';
  const [a, b] = [writtenWords(from), writtenWords(to)];
  if (glued(a) === glued(b)) return 'editorial';
  // (a) … (b) … (c) … stands for "… and …"; where an "or" is about, the joint is part of what is asked.
  if (a.listed !== b.listed && !a.words.includes('or') && !b.words.includes('or')) {
    const withoutAnd = (t: Written) => glued({ ...t, words: t.words.filter(w => w !== 'and') });
    if (withoutAnd(a) === withoutAnd(b)) return 'editorial';
  }
  const turned = reordered(a.words, b.words) || fronted(a, b) || fronted(b, a) || voiceTurned(plain(a), plain(b));
  return turned ? 'editorial' : 'substantive';
}

interface Written {
  /** One spelling for each word; `,` for every mark that parts words; numbers as `#5`, units as `#mm`. */
  readonly words: readonly string[];
  readonly listed: boolean;
}

/** (a) · b) · (2) · • */
const LIST_MARK = /(^|[\s;:,])(?:\((?:[a-z]|\d{1,2}|[ivx]{1,4})\)|(?:[a-z]|\d{1,2})\)|•)\s/giu;
const PARTING = new Set(', ; : . ! ? ( ) [ ] - " •'.split(' '));

function writtenWords(text: string): Written {
  const bare = text.replace(LIST_MARK, '$1 , ');
  const tokens = tokensLately(bare);
  const words: string[] = [];
  const part = () => {
    if (words.length > 0 && words.at(-1) !== ',') words.push(',');
  };
  for (let at = 0; at < tokens.length; ) {
    const token = tokens[at]!;
    const number = token.low === 'a' || token.low === 'an' ? undefined : numberAt(tokens, at);
    if (number) {
      words.push(`#${Math.round(number.value * 1e9) / 1e9}`);
      at = number.next;
      const unit = unitAt(tokens, at);
      if (unit && (wordsBetween(tokens, at, unit.next) === 1 || /^(°|deg|degrees?|per)$/.test(tokens[at]!.low))) {
        words.push(`#${unit.unit.name}`);
        at = unit.next;
      }
      continue;
    }
    if (token.kind === 'word') {
      for (const word of writtenOut(token.low)) words.push(spelled(word));
    } else if (isHyphen(tokens, at)) {
      // fire-stopping = firestopping: nothing
    } else if (token.low === '&') words.push('and');
    else if (PARTING.has(token.low) || token.low === "'") part();
    else words.push(token.low);
    at++;
  }
  // "; the log" = ", and the log"
  const joined = words.filter((w, i) => !(w === 'and' && words[i - 1] === ','));
  if (joined.at(-1) === ',') joined.pop();
  return { words: joined, listed: bare !== text };
}

function wordsBetween(tokens: readonly Token[], first: number, next: number): number {
  return tokens.slice(first, next).filter(t => t.low !== '-' && t.low !== '.').length;
}

function isHyphen(tokens: readonly Token[], at: number): boolean {
  return tokens[at]!.low === '-' && tokens[at]!.glued && (tokens[at + 1]?.glued ?? false);
}

const glued = ({ words }: Written) => words.filter(w => w !== ',').join('');
const plain = ({ words }: Written) => words.filter(w => w !== ',');

export function sameQuantities(a: readonly Quantity[], b: readonly Quantity[]): boolean {
  if (a.length !== b.length) return false;
  const key = (q: Quantity) => [q.dimension, q.low.toPrecision(9), q.high.toPrecision(9), q.open].join(' ');
  const sorted = (list: readonly Quantity[]) => list.map(key).sort();
  const [left, right] = [sorted(a), sorted(b)];
  return left.every((k, i) => k === right[i]);
}

const FRONT = new Set(
  'before after when where if once while during until unless on at in for whenever wherever upon within every each'.split(
    ' ',
  ),
);

/** "Before it starts, close the guard" for "Close the guard before it starts". */
function fronted(front: Written, other: Written): boolean {
  const comma = front.words.indexOf(',');
  if (comma < 2 || !FRONT.has(front.words[0]!) || front.words.length > 120) return false;
  const rest = front.words.slice(comma + 1).filter(w => w !== ',');
  return [...rest, ...front.words.slice(0, comma)].join(' ') === plain(other).join(' ');
}

const VERBAL = new Set('shall must should may can will is are be need needs has have'.split(' '));
const ARTICLES = new Set('the a an its their his her'.split(' '));

/** "bolts, washers and nuts" for "nuts, washers and bolts"; steps of work ("clean, prime and paint") keep their order. */
function reordered(a: readonly string[], b: readonly string[]): boolean {
  let head = 0;
  while (head < a.length && head < b.length && a[head] === b[head]) head++;
  let tail = 0;
  while (tail < a.length - head && tail < b.length - head && a.at(-1 - tail) === b.at(-1 - tail)) tail++;
  const [left, right] = [a, b].map(words => listItems(words.slice(head, words.length - tail)));
  if (left!.items.length < 2 || left!.joints !== right!.joints) return false;
  // Deeds keep their order, since what is done first matters: an imperative, or what follows a modal verb.
  const [before, behind] = [a[head - 1] ?? '', a[a.length - tail] ?? ''];
  if (head === 0 && !VERBAL.has(behind)) return false;
  if (VERBAL.has(before) || before === 'to' || before === 'not') return false;
  return left!.items.toSorted().join('|') === right!.items.toSorted().join('|') && !/\bthen\b/.test(a.join(' '));
}

function listItems(words: readonly string[]): { items: string[]; joints: string } {
  const items: string[][] = [[]];
  const joints: string[] = [];
  for (const word of words) {
    if (word === ',' || word === 'and' || word === 'or') {
      if (word !== ',') joints.push(word);
      if (items.at(-1)!.length > 0) items.push([]);
    } else if (!ARTICLES.has(word)) items.at(-1)!.push(word);
  }
  return { items: items.filter(i => i.length > 0).map(i => i.join(' ')), joints: joints.sort().join() };
}
