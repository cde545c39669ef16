import { CatalogError } from '../model/errors.ts';
import { readEntities } from '../office/read-xml.ts';
import { cellPlace } from './cell-address.ts';

/** A cell as the sheet's XML has it, with its place there. */
export interface ScannedCell {
  readonly column: number;
  /** `s` shared, `inlineStr`, `str`, `b`, `e`, `d`; absent means a number. */
  readonly type: string | undefined;
  readonly style: number;
  /** The stored value, or the text of a cell with the text inside; absent where the cell is empty. */
  readonly value: string | undefined;
  readonly formula: boolean;
}

export interface ScannedRow {
  /** From 0. */
  readonly row: number;
  readonly hidden: boolean;
  readonly cells: readonly ScannedCell[];
  /** Offsets in the XML: of the row, behind its opening tag, of its closing tag, behind it. */
  readonly start: number;
  readonly innerStart: number;
  readonly innerEnd: number;
  readonly end: number;
}

/** Attribute values hold no `<`, so that a quote left open costs no second look at the rest. */
const TAG = /<(\/?)((?:[\w.-]+:)?)([\w.-]+)((?:\s+[^\s=<>/"'&]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?)>/g;

/**
 * Goes through the rows of a sheet. A tree of a sheet takes ten times the room of its XML, so none is built; offsets are
 * told, so that a row can be added to and the rest stay as it is.
 *
 * @param name of file and part, for messages
 * @throws CatalogError BadFile: no well-formed sheet
 */
export function* scanRows(xml: string, name: string): Generator<ScannedRow, void, undefined> {
  const data = sheetDataOf(xml, name);
  const tag = new RegExp(TAG);
  tag.lastIndex = data.innerStart;
  let row: (ScannedRow & { cells: ScannedCell[] }) | undefined;
  let cell: { column: number; type: string | undefined; style: number; formula: boolean; start: number } | undefined;
  let value: string | undefined;
  let phonetic = false;
  let [nextRow, nextColumn] = [0, 0];
  const closeCell = () => {
    if (cell)
      row?.cells.push({ column: cell.column, type: cell.type, style: cell.style, value, formula: cell.formula });
    cell = undefined;
    value = undefined;
  };
  for (let found = tag.exec(xml); found && found.index < data.innerEnd; found = tag.exec(xml)) {
    const [, slash, , local, attributes] = found;
    const closes = slash === '/';
    const empty = found[5] === '/';
    const end = found.index + found[0].length;
    if (local === 'row' && !closes) {
      const said = attribute(attributes!, 'r');
      const at: number = said === undefined ? nextRow : Number(said) - 1;
      if (!(at >= nextRow) || row) throw damaged(name, found.index);
      [nextRow, nextColumn] = [at + 1, 0];
      const hidden = /^(?:1|true)$/.test(attribute(attributes!, 'hidden') ?? '');
      row = { row: at, hidden, cells: [], start: found.index, innerStart: end, innerEnd: end, end };
      if (empty) {
        yield row;
        row = undefined;
      }
    } else if (local === 'row') {
      if (!row || cell) throw damaged(name, found.index);
      yield { ...row, innerEnd: found.index, end };
      row = undefined;
    } else if (local === 'c' && !closes) {
      if (!row || cell) throw damaged(name, found.index);
      const said = attribute(attributes!, 'r');
      const column: number | undefined = said === undefined ? nextColumn : cellPlace(said)?.column;
      if (column === undefined || column < nextColumn) throw damaged(name, found.index);
      nextColumn = column + 1;
      const style = Number(attribute(attributes!, 's') ?? 0);
      cell = { column, type: attribute(attributes!, 't'), style, formula: false, start: found.index };
      if (empty) closeCell();
    } else if (local === 'c') closeCell();
    else if (cell && local === 'f' && !closes) cell.formula = true;
    else if (cell && local === 'rPh') phonetic = !closes && !empty;
    else if (cell && (local === 'v' || local === 't') && !closes && !empty && !phonetic) {
      const until = xml.indexOf('<', end);
      const text = readEntities(xml.slice(end, until), name, end);
      value = local === 't' ? (value ?? '') + text : text;
    }
  }
  if (row || cell) throw damaged(name, data.innerEnd);
}

/** Where the rows stand in a sheet's XML; of `<sheetData/>` both ends of the inside are its end. */
export function sheetDataOf(xml: string, name: string) {
  if (xml.includes('<!DOCTYPE')) throw refused(name, 'brings a document type of its own, which no program writes');
  // Either could hold what looks like a row; no program writes them into a sheet.
  if (xml.includes('<!--') || xml.includes('<![CDATA[')) throw refused(name, 'holds comments or raw text in its XML');
  const found = /<((?:[\w.-]+:)?)sheetData\s*(\/?)>/.exec(xml);
  if (!found) throw refused(name, 'has no rows where a sheet has them');
  const innerStart = found.index + found[0].length;
  if (found[2] === '/')
    return { start: found.index, innerStart, innerEnd: innerStart, end: innerStart, prefix: found[1]! };
  const close = `</${found[1]}sheetData>`;
  const innerEnd = xml.indexOf(close, innerStart);
  if (innerEnd < 0) throw refused(name, 'is cut off');
  return { start: found.index, innerStart, innerEnd, end: innerEnd + close.length, prefix: found[1]! };
}

const PATTERNS = new Map<string, RegExp>();

/** An attribute without prefix, as it is written between tags. */
export function attribute(attributes: string, name: string): string | undefined {
  let pattern = PATTERNS.get(name);
  if (!pattern) {
    pattern = new RegExp(`(?:^|\\s)${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`);
    PATTERNS.set(name, pattern);
  }
  const found = pattern.exec(attributes);
  return found ? (found[1] ?? found[2]) : undefined;
}

/** The texts that cells share, in order. Readings above the line (phonetic runs) are no part of a text. */
export function sharedTexts(xml: string, name: string): readonly string[] {
  const tag = new RegExp(TAG);
  const texts: string[] = [];
  let text: string | undefined;
  let phonetic = false;
  for (let found = tag.exec(xml); found; found = tag.exec(xml)) {
    const [, slash, , local] = found;
    const opens = slash === '' && found[5] === '';
    if (local === 'si') {
      if (slash === '') text = '';
      if (!opens) {
        texts.push(text ?? '');
        text = undefined;
      }
    } else if (local === 'rPh') phonetic = opens;
    else if (local === 't' && opens && !phonetic && text !== undefined) {
      const end = found.index + found[0].length;
      const until = xml.indexOf('<', end);
      text += readEntities(xml.slice(end, until < 0 ? xml.length : until), name, end);
    }
  }
  return texts;
}

function damaged(name: string, at: number): CatalogError {
  return refused(name, `is damaged at ${at}`);
}

function refused(name: string, what: string): CatalogError {
  return new CatalogError('BadFile', `${name} ${what}; open the workbook in its program and save it again.`, {
    path: name,
  });
}
