import { CatalogError } from '../../model/errors.ts';
import { headOf } from '../../release/comments-columns.ts';
import type { FormGrid } from '../../release/comments-form.ts';
import { type FormFile, fillsInOrder } from './comments-files.ts';

interface Cell {
  readonly text: string;
  /** Offsets in the source, quotes included. */
  readonly start: number;
  readonly end: number;
  /** Opens with a quote that nothing closes. */
  readonly unclosed: boolean;
}

interface Line {
  readonly line: number;
  readonly cells: readonly Cell[];
  /** Behind the last cell. */
  readonly end: number;
}

/**
 * A form saved as csv. The separator is the one with which a head is found: the first line, by which other tables are
 * judged, is often a title here.
 *
 * @throws CatalogError BadTable
 */
export function openCsvForm(file: string, bytes: Uint8Array): FormFile {
  const source = decode(file, bytes);
  const chosen = separated(source);
  const unclosed = chosen.lines.find(l => l.cells.some(c => c.unclosed));
  if (unclosed) {
    throw new CatalogError(
      'BadTable',
      `${file} is not well-formed csv at line ${unclosed.line}: a quoted cell is never closed; mend that line and try again.`,
      { file, line: unclosed.line },
    );
  }
  const { separator, lines } = chosen;
  const grid: FormGrid = {
    place: '',
    rows: lines.map(({ line, cells }) => {
      const texts = cells.map(c => c.text);
      return { line, cells: texts, own: new Set(texts.flatMap((t, at) => (t.trim() === '' ? [] : [at]))) };
    }),
  };
  return {
    kind: 'csv',
    grids: [grid],
    fill: fills => {
      const pieces: string[] = [];
      let done = 0;
      for (const { row, column, text, append } of fillsInOrder(fills)) {
        const { cells, end } = lines[row]!;
        const cell = cells[column];
        pieces.push(source.slice(done, cell?.start ?? end));
        // A line that ends early gets the cells in between.
        if (!cell) pieces.push(separator.repeat(column - cells.length + 1));
        pieces.push(quoted(append && cell ? `${cell.text}\n${text}` : text, separator));
        done = cell?.end ?? end;
      }
      return { bytes: new TextEncoder().encode(pieces.join('') + source.slice(done)), refused: [] };
    },
  };
}

function separated(source: string): { readonly separator: string; readonly lines: readonly Line[] } {
  for (const separator of [',', ';', '\t', '|']) {
    const lines = linesOf(source, separator);
    if (lines.some(l => headOf(l.cells.map(c => c.text)))) return { separator, lines };
  }
  return { separator: ',', lines: linesOf(source, ',') };
}

/** RFC 4180, lenient where a quote stands inside a bare cell. Offsets are kept, so that all other bytes can stay. */
function linesOf(source: string, separator: string): Line[] {
  const lines: Line[] = [];
  let cells: Cell[] = [];
  let [line, begins] = [1, 1];
  let at = source.charCodeAt(0) === 0xfeff ? 1 : 0;
  const close = (end: number) => {
    lines.push({ line: begins, cells, end });
    cells = [];
  };
  for (let open = true; open; ) {
    const start = at;
    let text: string;
    let unclosed = false;
    if (source[at] === '"') {
      let end = at + 1;
      for (; end < source.length; end++) {
        if (source[end] !== '"') continue;
        if (source[end + 1] !== '"') break;
        end++;
      }
      text = source.slice(at + 1, end).replaceAll('""', '"');
      unclosed = end >= source.length;
      at = Math.min(end + 1, source.length);
      // What follows a closing quote up to the next separator belongs to the cell.
      const rest = bareEnd(source, at, separator);
      text += source.slice(at, rest);
      at = rest;
    } else {
      at = bareEnd(source, at, separator);
      text = source.slice(start, at);
    }
    cells.push({ text, start, end: at, unclosed });
    line += text.split(/\r\n|\r|\n/).length - 1;
    if (source[at] === separator) at++;
    else {
      close(at);
      if (source.startsWith('\r\n', at)) at += 2;
      else if (at < source.length) at++;
      line++;
      begins = line;
      open = at < source.length;
    }
  }
  return lines;
}

function bareEnd(source: string, from: number, separator: string): number {
  let at = from;
  while (at < source.length && source[at] !== separator && source[at] !== '\n' && source[at] !== '\r') at++;
  return at;
}

/** Cells of ours that begin like a formula get an apostrophe, so that a spreadsheet shows and does not run them. */
function quoted(text: string, separator: string): string {
  const safe = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return safe.includes(separator) || /["\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

function decode(file: string, bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new CatalogError('BadTable', `${file} is not UTF-8 text; save it as "CSV UTF-8" and try again.`, { file });
  }
}
