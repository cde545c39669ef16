import { counted } from '../model/counted.ts';
import { CatalogError } from '../model/errors.ts';
import type { Finding } from '../model/finding.ts';
import type { Table, TableRow } from '../model/table.ts';
import { cellAddress, columnName } from './cell-address.ts';
import { openWorkbook, type Workbook, type WorkbookSheet } from './open-workbook.ts';
import { readSheet, type Sheet, type SheetCell } from './read-sheet.ts';
import { type SheetHeader, sheetHeader, spans } from './sheet-header.ts';

/** A table with what there is to say about how it was read. */
export interface ReadTable extends Table {
  readonly findings: readonly Finding[];
}

/**
 * Reads one sheet of a workbook as a plain table: cells as they are shown, below the head that is found by its shape.
 * Hidden rows are read, hidden sheets are not; both are said.
 *
 * @param sheet its name; absent takes the first visible one that is filled
 * @throws CatalogError BadFile (see `openWorkbook`); BadTable: no such sheet, nothing in it, two columns of one name
 */
export function readXlsx(file: string, bytes: Uint8Array, sheet?: string): ReadTable {
  const workbook = openWorkbook(bytes, file);
  const { chosen, header, findings } = chooseSheet(workbook, sheet);
  const twice = header.names.find((name, at) => name !== '' && header.names.indexOf(name) !== at);
  if (twice !== undefined) {
    const isMerged = spans(chosen, chosen.rows[header.at]!).some(s => header.names[s.left] === twice);
    const what = isMerged
      ? `has a merged head: ${twice} is one cell over several columns; take the merge apart and give each its name.`
      : `has two columns named ${twice}; rename one of them.`;
    throw new CatalogError('BadTable', `${file} ${what}`, { file });
  }
  const rows = chosen.rows.slice(header.at + 1).flatMap((row): TableRow[] => {
    if (row.cells.length === 0) return [];
    const texts = new Map(row.cells.map(c => [c.column, c.text.trim()]));
    return [
      {
        file,
        line: row.row + 1,
        cells: new Map(header.names.flatMap((name, at) => (name === '' ? [] : [[name, texts.get(at) ?? '']]))),
      },
    ];
  });
  const columns = header.names.filter(name => name !== '');
  return { file, columns, rows, findings: [...findings, ...sheetFindings(file, chosen, header)] };
}

/**
 * The sheet to read, and where its head stands.
 *
 * @throws CatalogError BadTable
 */
export function chooseSheet(workbook: Workbook, name?: string) {
  const file = workbook.office.name;
  const named = name === undefined ? undefined : workbook.sheets.find(s => s.name === name);
  if (name !== undefined && !named) {
    const list = workbook.sheets.map(s => s.name).join(', ');
    throw new CatalogError('BadTable', `${file} has no sheet ${name}; its sheets are ${list}.`, { file });
  }
  const visible = workbook.sheets.filter(s => !s.hidden);
  const order: readonly WorkbookSheet[] = named ? [named] : visible.length > 0 ? visible : workbook.sheets;
  for (const candidate of order) {
    const chosen = readSheet(workbook, candidate);
    const header = sheetHeader(chosen);
    if (!header) continue;
    const others = workbook.sheets.filter(s => s !== candidate);
    const message = `Sheet ${candidate.name} is read; ${others.map(s => `${s.name}${s.hidden ? ' (hidden)' : ''}`).join(', ')} ${others.length === 1 ? 'is' : 'are'} not.`;
    const findings: Finding[] =
      named || others.length === 0 ? [] : [{ rule: 'other-sheets', severity: 'note', subject: file, message }];
    return { chosen, header, findings };
  }
  throw new CatalogError('BadTable', `${file} is empty; it needs a header line and at least one row.`, { file });
}

/** A day in words of digits: 2026-03-04, 4.3.2026, 04/03/26. With a year of two digits behind dots it is a number, 3.4.10. */
const DAY = /^\d{4}-\d\d-\d\d|^\d{1,2}[./]\d{1,2}[./]\d{4}$|^\d{1,2}\/\d{1,2}\/\d{2}$/;

/** What a spreadsheet may have done to cells, and what a reader does not see. */
export function sheetFindings(file: string, sheet: Sheet, header: SheetHeader): readonly Finding[] {
  const findings: Finding[] = [];
  const lines = sheet.rows.slice(header.at + 1).filter(r => r.cells.length > 0);
  const say = (rule: string, severity: Finding['severity'], line: number, message: string) =>
    findings.push({ rule, severity, subject: file, message, place: { file, line } });
  const hidden = lines.filter(r => r.hidden);
  if (hidden[0])
    say(
      'hidden-rows',
      'note',
      hidden[0].row + 1,
      `${counted(hidden.length, 'hidden row is', 'hidden rows are')} read like the others.`,
    );
  const head = sheet.rows[header.at]!;
  for (const { left, right } of spans(sheet, head)) {
    const over = `${columnName(left)} to ${columnName(right)}`;
    const message = `The head is merged: ${header.names[left]} is one cell over the columns ${over}, which are told apart by what is in them. Take the merge apart and give each its name.`;
    say('merged-head', 'warning', head.row + 1, message);
  }
  const below = sheet.merged.filter(m => m.top > sheet.rows[header.at]!.row);
  if (below[0]) {
    const message = `${counted(below.length, 'cell below the head is', 'cells below the head are')} merged; what stands in them counts for their first row and column only.`;
    say('merged-cells', 'warning', below[0].top + 1, message);
  }
  const byColumn = new Map<number, { cell: SheetCell; row: number }[]>();
  for (const { row, cells } of lines) {
    for (const cell of cells) {
      const column = byColumn.get(cell.column);
      if (column) column.push({ cell, row });
      else byColumn.set(cell.column, [{ cell, row }]);
    }
  }
  for (const [column, name] of header.names.entries()) {
    const cells = byColumn.get(column) ?? [];
    const of = (test: (c: (typeof cells)[number]) => boolean) => cells.filter(test);
    const at = (row: number) => cellAddress(row, column);
    const [dates, shown] = [of(c => c.cell.kind === 'date'), of(c => c.cell.stored !== undefined)];
    // Beside days that are written as text a date is what it should be.
    const days = of(c => c.cell.kind === 'text' && DAY.test(c.cell.text.trim()));
    if (dates[0] && dates.length + days.length < cells.length / 2) {
      const message = `${counted(dates.length, `cell of column ${name} is a date`, `cells of column ${name} are dates`)}, the first ${at(dates[0].row)} (${dates[0].cell.text}); a spreadsheet may have made dates of numbers.`;
      say('made-a-date', 'warning', dates[0].row + 1, message);
    }
    if (shown[0]) {
      const message = `${counted(shown.length, `cell of column ${name} shows another number than it stores`, `cells of column ${name} show another number than they store`)}; ${at(shown[0].row)} is read as it shows, ${shown[0].cell.text}, and stores ${shown[0].cell.stored}.`;
      say('shown-number', 'note', shown[0].row + 1, message);
    }
    const numbers = of(c => c.cell.kind === 'number');
    if (numbers[0] && cells.some(c => c.cell.kind === 'text' && /^\d+(?:\.\d+){2,}$/.test(c.cell.text.trim()))) {
      const message = `${counted(numbers.length, `cell of column ${name} is a number among texts`, `cells of column ${name} are numbers among texts`)}, the first ${at(numbers[0].row)} (${numbers[0].cell.text}); a spreadsheet may have cut a zero off its end.`;
      say('number-cell', 'warning', numbers[0].row + 1, message);
    }
  }
  return findings;
}
