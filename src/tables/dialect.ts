import { CatalogError } from '../model/errors.ts';

/** How a table separates its cells and lines. */
export interface Dialect {
  readonly delimiter: ',' | ';' | '\t' | '|';
  /** The first line's end; lines of ours use it, lines of the user keep their own. */
  readonly lineEnd: '\r\n' | '\n' | '\r';
}

const DELIMITERS = [',', ';', '\t', '|'] as const;

/**
 * Reads the dialect off the first line: the separator that stands in it most often, outside quotes. A file without any
 * separator is a table of one column.
 *
 * @throws CatalogError BadTable if the bytes are UTF-16, which a spreadsheet writes as "Unicode text".
 */
export function detectDialect(firstBytes: Uint8Array): Dialect {
  if ((firstBytes[0] === 0xff && firstBytes[1] === 0xfe) || (firstBytes[0] === 0xfe && firstBytes[1] === 0xff)) {
    throw new CatalogError('BadTable', 'The table is written in UTF-16; save it as CSV in UTF-8 and run again.');
  }
  const text = new TextDecoder().decode(firstBytes);
  const counts = new Map<string, number>();
  let quoted = false;
  let end = text.length;
  for (let at = 0; at < text.length; at++) {
    const char = text[at]!;
    if (char === '"') quoted = !quoted;
    else if (!quoted && (char === '\n' || char === '\r')) {
      end = at;
      break;
    } else if (!quoted) counts.set(char, (counts.get(char) ?? 0) + 1);
  }
  const delimiter = DELIMITERS.reduce((best, d) => ((counts.get(d) ?? 0) > (counts.get(best) ?? 0) ? d : best));
  const lineEnd = text.startsWith('\r\n', end) ? '\r\n' : text[end] === '\r' ? '\r' : '\n';
  return { delimiter, lineEnd };
}
