import { escapeXml } from '../office/read-xml.ts';
import { cellAddress, columnName } from './cell-address.ts';

export type CellValue = string | number | null | undefined;

/** One sheet of plain cells below a header. */
export interface PlainSheet {
  readonly name: string;
  readonly header: readonly string[];
  readonly rows: readonly (readonly CellValue[])[];
  /** Widths of the columns in characters; what is not said is measured from the cells. */
  readonly widths?: readonly (number | undefined)[];
  /** Bars beside the table, one a row. */
  readonly bars?: Bars;
}

/** A bar chart of a sheet's own cells. */
export interface Bars {
  readonly title: string;
  /** Column of the names, and column of the lengths, from 0. */
  readonly labels: number;
  readonly values: number;
  /** How many rows, from the first; absent means all. */
  readonly rows?: number;
}

/** The numbers of the cell formats that a sheet's cells take, in the styles of its workbook. */
export interface SheetStyles {
  readonly head: number;
  readonly text: number;
  /** A text that begins like a formula; the program shows and keeps it as text, also when it is edited. */
  readonly quoted: number;
  readonly number: number;
}

/** What a sheet of this format can hold at most. */
export const SHEET_SIZE = { rows: 1_048_576, columns: 16_384, cell: 32_767 };

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const RELATIONS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
export const XML_HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/**
 * A sheet as XML: a header that stays in sight, filters, widths. Texts are cells with the text inside: shared ones would
 * need a place in the list of texts of the workbook, which is the user's own where a sheet is added to theirs.
 *
 * @param drawing the relation by which the sheet reaches its chart, where it has one
 */
export function sheetXml(sheet: PlainSheet, styles: SheetStyles, drawing?: string): string {
  const columns = sheet.header.length;
  const last = cellAddress(sheet.rows.length, Math.max(columns, 1) - 1);
  const widths = sheet.header.map((name, at) => sheet.widths?.[at] ?? widthOf(sheet, name, at));
  const cols = widths.map((w, at) => `<col min="${at + 1}" max="${at + 1}" width="${w}" customWidth="1"/>`);
  const head = sheet.header.map((name, at) => textCell(cellAddress(0, at), name, styles.head));
  const rows = sheet.rows.map((row, at) => {
    const cells = row.map((value, column) => cellXml(cellAddress(at + 1, column), value, styles));
    return `<row r="${at + 2}">${cells.join('')}</row>`;
  });
  return [
    XML_HEAD,
    `<worksheet xmlns="${MAIN}" xmlns:r="${RELATIONS}">`,
    '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>',
    `<dimension ref="A1:${last}"/>`,
    '<sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>',
    `<sheetFormatPr defaultRowHeight="15"/>`,
    columns > 0 ? `<cols>${cols.join('')}</cols>` : '',
    `<sheetData><row r="1">${head.join('')}</row>${rows.join('')}</sheetData>`,
    columns > 0 ? `<autoFilter ref="A1:${last}"/>` : '',
    '<pageSetup orientation="landscape" fitToHeight="0"/>',
    drawing === undefined ? '' : `<drawing r:id="${drawing}"/>`,
    '</worksheet>',
  ].join('');
}

/** One cell; nothing for an absent value. */
export function cellXml(address: string, value: CellValue, styles: SheetStyles): string {
  if (value === null || value === undefined || value === '') return '';
  if (typeof value === 'string') {
    return textCell(address, value, /^[=+\-@\t\r]/.test(value) ? styles.quoted : styles.text);
  }
  if (!Number.isFinite(value)) return textCell(address, String(value), styles.text);
  return `<c r="${address}" s="${styles.number}"><v>${value}</v></c>`;
}

/** A cell with its text inside, in the prefix that its sheet uses (`x:` or none). */
export function textCell(address: string, text: string, style: number, prefix = ''): string {
  const p = prefix;
  return `<${p}c r="${address}" s="${style}" t="inlineStr"><${p}is><${p}t xml:space="preserve">${cellText(text)}</${p}t></${p}is></${p}c>`;
}

/** Longer texts are cut, since a program refuses the whole file otherwise; `_x000D_` would be read as a line end. */
function cellText(text: string): string {
  const lines = text.replace(/\r\n?/g, '\n');
  const short = lines.length > SHEET_SIZE.cell ? `${lines.slice(0, SHEET_SIZE.cell - 1)}…` : lines;
  return escapeXml(short.replace(/_(?=x[0-9a-f]{4}_)/gi, '_x005F_'));
}

const MEASURED = 200;
const [NARROW, WIDE] = [8, 60];

function widthOf(sheet: PlainSheet, name: string, column: number): number {
  let longest = name.length + 3;
  for (const row of sheet.rows.slice(0, MEASURED)) {
    for (const line of String(row[column] ?? '').split('\n')) longest = Math.max(longest, line.length);
  }
  return Math.min(Math.max(longest + 1, NARROW), WIDE);
}

/** A name that a sheet may bear, unlike those that are taken: at most 31 characters and none of []:*?/\ in it. */
export function sheetName(wanted: string, taken: readonly string[]): string {
  const used = new Set(taken.map(n => n.toLowerCase()));
  const clean =
    wanted
      .replace(/[[\]:*?/\\\p{Cc}\s]+/gu, ' ')
      .replace(/^'+|'+$/g, '')
      .trim() || 'Sheet';
  for (let n = 1; ; n++) {
    const behind = n === 1 ? '' : ` ${n}`;
    const name = clean.slice(0, 31 - behind.length).trimEnd() + behind;
    if (!used.has(name.toLowerCase())) return name;
  }
}

/** A stretch of one column of a sheet, as formulas name it. */
export function columnReference(sheet: string, column: number, rows: number): string {
  const letters = columnName(column);
  return `'${sheet.replaceAll("'", "''")}'!$${letters}$2:$${letters}$${rows + 1}`;
}
