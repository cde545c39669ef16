import { parseFragment } from 'parse5';
import { FILL } from './reading.ts';

/** A piece of a source, and what a reader sees in its place: padded to the same length. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** Whether it is text that an edit may replace; the others are masks and spaces. */
  readonly solid: boolean;
}

const TOKEN = /<!--[\s\S]*?-->|<\/?[a-z!?](?:"[^"]*"|'[^']*'|[^>"'])*>|&(?:#x?[0-9a-f]+|[a-z][a-z0-9]*);?/gi;

/**
 * Cuts the source of a text node into text and entities. The parser joins texts across tags that it ignores
 * (`3.2</x>.1`), so that a node's source can hold markup; that is left out.
 *
 * @param value what the parser read there
 * @returns undefined where the source does not read as that value: nothing may be edited by such offsets
 */
export function stretchesOf(source: string, start: number, end: number, value: string): readonly Stretch[] | undefined {
  const stretches: Stretch[] = [];
  let read = '';
  let at = start;
  const put = (to: number, text: string) => {
    if (to > at) stretches.push({ start: at, end: to, text: text.padEnd(to - at, FILL), solid: true });
    read += text;
    at = to;
  };
  for (const found of source.slice(start, end).matchAll(TOKEN)) {
    const opens = start + found.index;
    put(opens, source.slice(at, opens));
    if (found[0].startsWith('<')) at = opens + found[0].length;
    else {
      const entity = readEntity(found[0]);
      put(opens + entity.length, entity.text);
    }
  }
  put(end, source.slice(at, end));
  return read.replace(/\r\n?/g, '\n') === value.replace(/\r\n?/g, '\n') ? stretches : undefined;
}

const known = new Map<string, { readonly length: number; readonly text: string }>();

/** What an entity stands for. Of `&nbsp3`, written without its semicolon, only the first five characters are one. */
function readEntity(written: string): { readonly length: number; readonly text: string } {
  const before = known.get(written);
  if (before) return before;
  const node = parseFragment(written).childNodes[0];
  const value = node && 'value' in node ? node.value : written;
  let same = 0;
  while (same < value.length && value.at(-1 - same) === written.at(-1 - same)) same++;
  const entity = { length: written.length - same, text: value.slice(0, value.length - same) };
  if (known.size < 5000) known.set(written, entity);
  return entity;
}
