import { cellAddress } from './cell-address.ts';
import { textCell } from './plain-sheet.ts';
import type { Sheet } from './read-sheet.ts';
import { attribute } from './sheet-scan.ts';

/** A text for one cell of somebody else's sheet. */
export interface CellText {
  /** Index into the sheet's rows. */
  readonly row: number;
  /** From 0. */
  readonly column: number;
  readonly text: string;
}

const CELL = /<((?:[\w.-]+:)?)c((?:\s+[^\s=<>/"'&]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?)>/g;

/**
 * The sheet's XML with texts put into cells. Each cell keeps its format, one that was not there takes that of its
 * left-hand neighbour, and every other byte stays. A formula is left alone: its cell is what it works out.
 *
 * @param texts in the order of rows and columns
 */
export function setCells(
  sheet: Sheet,
  texts: readonly CellText[],
): { readonly xml: string; readonly formulas: readonly CellText[] } {
  const { xml } = sheet;
  const formulas: CellText[] = [];
  const pieces: string[] = [];
  let done = 0;
  for (const wanted of texts) {
    const row = sheet.rows[wanted.row]!;
    const address = cellAddress(row.row, wanted.column);
    let [style, at, end, prefix] = [0, row.innerStart, row.innerStart, ''];
    for (const cell of cellsOf(xml, row)) {
      if (cell.column > wanted.column) break;
      [style, prefix] = [cell.style, cell.prefix];
      [at, end] = cell.column === wanted.column ? [cell.start, cell.end] : [cell.end, cell.end];
    }
    if (/<(?:[\w.-]+:)?f[\s>/]/.test(xml.slice(at, end))) {
      formulas.push(wanted);
      continue;
    }
    // Behind an earlier cell of ours in the same row, the row's tag stands in what is written already.
    if (done <= row.start) {
      pieces.push(xml.slice(done, row.start), withSpan(xml.slice(row.start, row.innerStart), wanted.column));
      done = row.innerStart;
    }
    pieces.push(xml.slice(done, at), textCell(address, wanted.text, style, prefix));
    done = end;
  }
  pieces.push(xml.slice(done));
  return { xml: pieces.join(''), formulas };
}

function* cellsOf(xml: string, row: Sheet['rows'][number]) {
  const tag = new RegExp(CELL);
  tag.lastIndex = row.innerStart;
  let next = 0;
  for (let found = tag.exec(xml); found && found.index < row.innerEnd; found = tag.exec(xml)) {
    const [written, prefix, attributes, empty] = found;
    const said = /^([A-Z]+)/.exec(attribute(attributes!, 'r') ?? '')?.[1];
    const column: number = said === undefined ? next : columnAt(said);
    next = column + 1;
    const close = `</${prefix}c>`;
    const end: number =
      empty === '/' ? found.index + written.length : xml.indexOf(close, found.index + written.length) + close.length;
    tag.lastIndex = end;
    yield { column, prefix: prefix!, style: Number(attribute(attributes!, 's') ?? 0), start: found.index, end };
  }
}

function columnAt(letters: string): number {
  return [...letters].reduce((at, letter) => at * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

/** A row may state from which column to which it is filled. */
function withSpan(tag: string, column: number): string {
  return tag.replace(/(\sspans\s*=\s*["']\d+:)(\d+)/, (_, before: string, last: string) => {
    return `${before}${Math.max(Number(last), column + 1)}`;
  });
}
