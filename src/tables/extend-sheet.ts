import { CatalogError } from '../model/errors.ts';
import { relationsOf, textOfPart } from '../office/open-package.ts';
import { cellAddress, cellRange, columnName } from './cell-address.ts';
import { joinBytes } from './join-bytes.ts';
import type { Workbook } from './open-workbook.ts';
import { SHEET_SIZE, textCell } from './plain-sheet.ts';
import type { Sheet } from './read-sheet.ts';
import type { SheetHeader } from './sheet-header.ts';
import { attribute, sheetDataOf } from './sheet-scan.ts';

/** Columns put at the right of a table that somebody else made. */
export interface NewColumns {
  readonly headers: readonly string[];
  readonly widths: readonly number[];
  /** Cells for a row of the sheet, by its index; undefined leaves the row as it is. */
  cells(row: number): readonly string[] | undefined;
}

/**
 * The first column, from 0, that nothing of the sheet reaches: no cell, merged cell, filter or table of its own, and no
 * picture or chart beside the rows, which would hide ours.
 */
export function freeColumn(workbook: Workbook, sheet: Sheet): { readonly at: number; readonly behindDrawing: boolean } {
  const { office } = workbook;
  let last = -1;
  for (const { right } of sheet.merged) last = Math.max(last, right);
  for (const row of sheet.rows) last = Math.max(last, row.lastColumn);
  const reach = (reference: string | undefined) => {
    last = Math.max(last, cellRange(reference ?? '')?.right ?? -1);
  };
  const ref = (xml: string, element: string) =>
    attribute(new RegExp(`<(?:[\\w.-]+:)?${element}\\s([^<>]*)`).exec(xml)?.[1] ?? '', 'ref');
  reach(ref(sheet.xml, 'autoFilter'));
  const relations = relationsOf(office, sheet.part).filter(r => office.parts.has(r.target));
  for (const { type, target } of relations) if (type === 'table') reach(ref(textOfPart(office, target), 'table'));
  let drawn = -1;
  const lastRow = sheet.rows.at(-1)?.row ?? 0;
  for (const { type, target } of relations) {
    if (type !== 'drawing') continue;
    for (const anchor of textOfPart(office, target)
      .split(/<(?:[\w.-]+:)?(?:oneCell|twoCell)Anchor[\s>]/)
      .slice(1)) {
      const corners = [...anchor.matchAll(/<(?:[\w.-]+:)?(col|row)>(\d+)</g)].map(found => Number(found[2]));
      const width = Number(/<(?:[\w.-]+:)?ext\s[^<>]*cx="(\d+)"/.exec(anchor)?.[1] ?? 0);
      const right = corners[2] ?? (corners[0] ?? 0) + Math.ceil(width / EMU_OF_A_COLUMN);
      if ((corners[1] ?? 0) <= lastRow) drawn = Math.max(drawn, right);
    }
  }
  return { at: Math.max(last, drawn) + 1, behindDrawing: drawn > last };
}

/** A narrow column, in the units of drawings; only for pictures that say where they begin and how wide they are. */
const EMU_OF_A_COLUMN = 500_000;

/**
 * The sheet's XML with new columns; every other byte of it stays, but for the extents that it states of itself and its
 * rows. The head looks like the cell of the user's head beside it.
 *
 * @throws CatalogError BadTable where the sheet has no room at its right
 */
export function extendSheet(workbook: Workbook, sheet: Sheet, header: SheetHeader, columns: NewColumns): Uint8Array {
  const { at: first } = freeColumn(workbook, sheet);
  const last = first + columns.headers.length - 1;
  if (last >= SHEET_SIZE.columns) {
    throw new CatalogError(
      'BadTable',
      `${workbook.office.name}: sheet ${sheet.name} is filled up to its last column; delete the empty coloured columns at its right.`,
      { sheet: sheet.name },
    );
  }
  const { xml } = sheet;
  const encoder = new TextEncoder();
  const name = `${workbook.office.name}: ${sheet.name}`;
  const data = sheetDataOf(xml, name);
  const style = sheet.rows[header.at]?.cells.at(-1)?.style ?? 0;
  const chunks: Uint8Array[] = [];
  let pieces: string[] = [beforeRows(xml.slice(0, data.start), data.prefix, first, columns.widths)];
  let done = data.start;
  for (const [index, row] of sheet.rows.entries()) {
    const isHead = index === header.at;
    const cells = isHead ? columns.headers : columns.cells(index);
    if (!cells || row.innerStart === row.end) continue;
    pieces.push(xml.slice(done, row.start), withSpans(xml.slice(row.start, row.innerStart), last));
    pieces.push(xml.slice(row.innerStart, row.innerEnd));
    for (const [at, text] of cells.entries()) {
      if (text !== '') pieces.push(textCell(cellAddress(row.row, first + at), text, isHead ? style : 0, data.prefix));
    }
    done = row.innerEnd;
    if (pieces.length < AT_ONCE) continue;
    chunks.push(encoder.encode(pieces.join('')));
    pieces = [];
  }
  pieces.push(xml.slice(done));
  chunks.push(encoder.encode(pieces.join('')));
  return joinBytes(chunks);
}

/** Millions of short texts take many times the room of their bytes, and one text of all of them has a bound of its own. */
const AT_ONCE = 10_000;

/** A row may state from which column to which it is filled. */
function withSpans(tag: string, last: number): string {
  return tag.replace(/(\sspans\s*=\s*["']\d+:)\d+/, `$1${last + 1}`);
}

/** What stands before the rows: the sheet's extent, and the widths of columns, which must not overlap. */
function beforeRows(head: string, prefix: string, first: number, widths: readonly number[]): string {
  const last = columnName(first + widths.length - 1);
  const wider = head.replace(
    /(<(?:[\w.-]+:)?dimension\s[^<>]*ref\s*=\s*["'][A-Z]+\d+:)[A-Z]+(\d+)/,
    (_, before: string, row: string) => `${before}${last}${row}`,
  );
  const cols = widths
    .map((width, at) => [first + at + 1, width] as const)
    .map(([at, width]) => `<${prefix}col min="${at}" max="${at}" width="${width}" customWidth="1"/>`)
    .join('');
  const closing = `</${prefix}cols>`;
  if (!wider.includes(closing)) return `${wider}<${prefix}cols>${cols}${closing}`;
  const taken = [...wider.matchAll(/<(?:[\w.-]+:)?col\s([^<>]*)/g)].map(c => Number(attribute(c[1]!, 'max') ?? 0));
  return Math.max(0, ...taken) > first ? wider : wider.replace(closing, `${cols}${closing}`);
}
