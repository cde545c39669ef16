import { CatalogError } from '../model/errors.ts';
import { textOfPart } from '../office/open-package.ts';
import { type CellRange, cellRange } from './cell-address.ts';
import { shownDate, shownNumber } from './number-format.ts';
import { WORKBOOK_LIMITS, type Workbook, type WorkbookSheet } from './open-workbook.ts';
import { attribute, type ScannedCell, scanRows } from './sheet-scan.ts';

export interface SheetCell {
  readonly column: number;
  /** As the sheet shows it; dates as 2024-05-04, in whatever order the sheet shows them. */
  readonly text: string;
  readonly kind: 'text' | 'number' | 'date' | 'other';
  /** The number that the cell stores, where it shows another: it stores 3.1 and shows 3.10. */
  readonly stored?: string;
  /** The number of its format in the workbook's styles. */
  readonly style: number;
}

export interface SheetRow {
  /** From 0. */
  readonly row: number;
  readonly hidden: boolean;
  /** Filled cells only, from left to right. */
  readonly cells: readonly SheetCell[];
  /** Of all cells, those that are only coloured or framed included; -1 where there is none. */
  readonly lastColumn: number;
  /** See `ScannedRow`. */
  readonly start: number;
  readonly innerStart: number;
  readonly innerEnd: number;
  readonly end: number;
}

export interface Sheet {
  readonly name: string;
  readonly part: string;
  readonly xml: string;
  /** Every row that the sheet has, blank ones included. */
  readonly rows: readonly SheetRow[];
  readonly merged: readonly CellRange[];
}

/**
 * Reads the cells of a sheet as people see them.
 *
 * @throws CatalogError BadFile: damaged, or more filled cells than `WORKBOOK_LIMITS.cells`
 */
export function readSheet(workbook: Workbook, sheet: WorkbookSheet): Sheet {
  const xml = textOfPart(workbook.office, sheet.part);
  const rows: SheetRow[] = [];
  let filled = 0;
  for (const { cells, ...row } of scanRows(xml, `${workbook.office.name}: ${sheet.name}`)) {
    const shown = cells.flatMap(cell => shownCell(workbook, cell) ?? []);
    filled += shown.length;
    if (filled > WORKBOOK_LIMITS.cells) throw tooMany(workbook.office.name, sheet.name);
    rows.push({ ...row, cells: shown, lastColumn: cells.at(-1)?.column ?? -1 });
  }
  const merged = [...xml.matchAll(/<(?:[\w.-]+:)?mergeCell\s([^<>]*?)\/?>/g)].flatMap(
    found => cellRange(attribute(found[1]!, 'ref') ?? '') ?? [],
  );
  return { name: sheet.name, part: sheet.part, xml, rows, merged };
}

function shownCell(workbook: Workbook, cell: ScannedCell): SheetCell | undefined {
  const { column, value, style } = cell;
  if (value === undefined) return undefined;
  const text = (shown: string): SheetCell | undefined =>
    shown.trim() === '' ? undefined : { column, style, text: unescaped(shown), kind: 'text' };
  switch (cell.type) {
    case 's':
      return text(workbook.texts[Number(value)] ?? '');
    case 'inlineStr':
    case 'str':
      return text(value);
    case 'b':
      return { column, style, text: value === '1' ? 'TRUE' : 'FALSE', kind: 'other' };
    case 'e':
      return { column, style, text: value, kind: 'other' };
    case 'd':
      return { column, style, text: value.replace(/T00:00(?::00)?.*$/, ''), kind: 'date' };
    default: {
      if (value.trim() === '') return undefined;
      const format = workbook.formats[cell.style] ?? { kind: 'plain' };
      if (format.kind === 'date') return { column, style, text: shownDate(value, workbook.since1904), kind: 'date' };
      const [shown, stored] = [shownNumber(value, format), String(Number(value))];
      return { column, style, text: shown, kind: 'number', ...(shown === stored ? {} : { stored }) };
    }
  }
}

/** `_x000D_` stands for a character that XML cannot hold as it is. */
function unescaped(text: string): string {
  if (!text.includes('_x')) return text;
  return text.replace(/_x([0-9a-f]{4})_/gi, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
}

function tooMany(path: string, sheet: string): CatalogError {
  const most = `${WORKBOOK_LIMITS.cells / 1e6} million`;
  return new CatalogError(
    'BadFile',
    `${path}: sheet ${sheet} has more than ${most} filled cells; save it as csv, which has no bound.`,
    { path },
  );
}
