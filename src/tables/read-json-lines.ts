import { CatalogError } from '../model/errors.ts';
import { joinBytes } from './join-bytes.ts';

/** One object of a JSON Lines file, with its own bytes. */
export interface JsonLine {
  readonly fields: Readonly<Record<string, unknown>>;
  /** As they stand in the file, without the line end; `undefined` fields of a blank line have none. */
  readonly bytes: Uint8Array;
  readonly lineEnd: Uint8Array;
  /** From 1. */
  readonly line: number;
}

/** A longer line is taken for a file that is not JSON Lines, before it fills the memory. Bytes. */
const LONGEST = 32 * 1024 * 1024;

/**
 * Reads JSON Lines as a stream: at any time one chunk and one unfinished line are held. A byte order mark before the
 * first line belongs to its bytes.
 *
 * @throws CatalogError BadTable with the line: no JSON, no object, not UTF-8, or longer than 32 MB
 */
export async function* readJsonLines(
  source: AsyncIterable<Uint8Array>,
  file: string,
): AsyncGenerator<JsonLine, void, undefined> {
  let held: Uint8Array = new Uint8Array();
  let line = 0;
  for await (const chunk of source) {
    held = held.length === 0 ? chunk : joinBytes([held, chunk]);
    let start = 0;
    for (let end = held.indexOf(10); end >= 0; end = held.indexOf(10, start)) {
      line++;
      yield lineOf(held.subarray(start, end + 1), line, file);
      start = end + 1;
    }
    held = held.subarray(start);
    if (held.length > LONGEST) throw bad(file, line + 1, 'is longer than 32 MB; give one object a line');
  }
  if (held.length > 0) yield lineOf(held, line + 1, file);
}

const NOTHING = {};
const UTF8 = new TextDecoder('utf-8', { fatal: true });

function lineOf(bytes: Uint8Array, line: number, file: string): JsonLine {
  let end = bytes.length;
  if (bytes[end - 1] === 10) end--;
  if (bytes[end - 1] === 13) end--;
  const own = bytes.subarray(0, end);
  let text: string;
  try {
    text = UTF8.decode(own);
  } catch {
    throw bad(file, line, 'is not UTF-8; save the file in UTF-8 and run again');
  }
  let fields: unknown = NOTHING;
  if (text.trim() !== '') {
    try {
      fields = JSON.parse(text);
    } catch {
      throw bad(file, line, 'is not valid JSON; mend that line and run again');
    }
  }
  if (typeof fields !== 'object' || fields === null || Array.isArray(fields)) {
    throw bad(file, line, 'is no object; give one object a line');
  }
  return { fields: fields as Record<string, unknown>, bytes: own, lineEnd: bytes.subarray(end), line };
}

function bad(file: string, line: number, what: string): CatalogError {
  return new CatalogError('BadTable', `Line ${line} of ${file} ${what}.`, { file, line });
}
