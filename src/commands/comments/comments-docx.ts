import { followFields } from '../../documents/docx/fields.ts';
import { lockOf, readParagraph } from '../../documents/docx/read-paragraph.ts';
import { withLastChild } from '../../office/change-parts.ts';
import { isSigned, openPackage, textOfPart, treeOfPart } from '../../office/open-package.ts';
import { elementAt, elementsBelow, elementsIn, escapeXml, type XmlElement } from '../../office/read-xml.ts';
import { writeZip } from '../../office/write-zip.ts';
import type { FormGrid, FormGridRow } from '../../release/comments-form.ts';
import { type Fill, type FormFile, fillsInOrder } from './comments-files.ts';
import { refuseSigned } from './comments-xlsx.ts';

interface Cell {
  readonly element: XmlElement;
  readonly column: number;
  readonly span: number;
  /** Goes on from the cell above. */
  readonly continues: boolean;
  readonly text: string;
  /** Why nothing can be written into it. */
  readonly locked: string | undefined;
}

/**
 * A form as a Word document: each table of the body, those inside cells too. Deleted rows and words are not read,
 * inserted ones are.
 *
 * @throws CatalogError BadFile, see `openPackage`
 */
export function openDocxForm(file: string, bytes: Uint8Array): FormFile {
  const office = openPackage(bytes, file, { contentType: 'wordprocessingml.document.main+xml', ending: '.docx' });
  const tables = elementsBelow(treeOfPart(office, office.main)!, 'w:tbl').map(rowsOf);
  return {
    kind: 'docx',
    grids: tables.map((rows, at) => gridOf(rows, tables.length > 1 ? `table ${at + 1}` : '')),
    fill: fills => {
      refuseSigned(file, isSigned(office));
      const source = textOfPart(office, office.main);
      const refused: { fill: Fill; why: string }[] = [];
      const splices: { readonly start: number; readonly end: number; readonly markup: string }[] = [];
      for (const fill of fillsInOrder(fills)) {
        const cell = tables[fill.grid]![fill.row]!.find(c => c.column === fill.column);
        const why = !cell
          ? 'the row has no cell there'
          : cell.continues
            ? 'the cell is merged into the one above'
            : (cell.locked ?? (elementsBelow(cell.element, 'w:tbl').length > 0 ? 'the cell holds a table' : undefined));
        if (why !== undefined) refused.push({ fill, why });
        else splices.push(filled(source, cell!, fill));
      }
      const parts = new Map(office.parts);
      let text = source;
      // From the end, so that earlier places stay true; a table in a cell may come later in the list than its row.
      for (const { start, end, markup } of splices.sort((a, b) => b.start - a.start)) {
        text = text.slice(0, start) + markup + text.slice(end);
      }
      parts.set(office.main, new TextEncoder().encode(text));
      return { bytes: writeZip(parts), refused };
    },
  };
}

/** The cell with its new text, in the look of the paragraph and the run that begin it. */
function filled(source: string, { element, text: before }: Cell, { text, append }: Fill) {
  const paragraphs = elementsIn(element, 'w:p');
  const p = element.written.slice(0, element.written.indexOf(':') + 1);
  const model = append ? paragraphs.at(-1) : paragraphs[0];
  const look = (of: XmlElement | undefined, name: string) => {
    const found = of && elementAt(of, name);
    return found ? source.slice(found.start, found.end) : '';
  };
  const first = model && (elementsBelow(model, 'w:r')[0] ?? elementAt(model, 'w:pPr'));
  const run = (line: string) =>
    `<${p}r>${look(first, 'w:rPr')}<${p}t xml:space="preserve">${escapeXml(line)}</${p}t></${p}r>`;
  const lines = text.split('\n');
  const whole = lines.map(line => `<${p}p>${look(model, 'w:pPr')}${run(line)}</${p}p>`).join('');
  if (!model) {
    const cell = withLastChild(source, element, whole);
    return {
      start: element.start,
      end: element.end,
      markup: cell.slice(element.start, cell.length - source.length + element.end),
    };
  }
  if (append && before.trim() !== '') return { start: model.end, end: model.end, markup: whole };
  return { start: paragraphs[0]!.start, end: paragraphs.at(-1)!.end, markup: whole };
}

function rowsOf(table: XmlElement): Cell[][] {
  const rows: Cell[][] = [];
  const collect = (parent: XmlElement, locked: string | undefined) => {
    for (const child of elementsIn(parent)) {
      if (child.name === 'w:tr') {
        if (!elementAt(child, 'w:trPr', 'w:del')) rows.push(cellsOf(child, locked));
      } else if (child.name === 'w:sdt') collect(elementAt(child, 'w:sdtContent') ?? child, locked ?? lockOf(child));
      else if (child.name === 'w:ins' || child.name === 'w:customXml') collect(child, locked);
    }
  };
  collect(table, undefined);
  return rows;
}

function cellsOf(row: XmlElement, lockedRow: string | undefined): Cell[] {
  const cells: Cell[] = [];
  let column = Number(elementAt(row, 'w:trPr', 'w:gridBefore')?.attributes.get('w:val') ?? 0) || 0;
  const collect = (parent: XmlElement, locked: string | undefined) => {
    for (const child of elementsIn(parent)) {
      if (child.name === 'w:tc') {
        const properties = elementAt(child, 'w:tcPr');
        const said = Number(elementAt(properties, 'w:gridSpan')?.attributes.get('w:val') ?? 1);
        const span = said >= 1 && said <= 200 ? said : 1;
        const merge = elementAt(properties, 'w:vMerge');
        const continues = merge !== undefined && merge.attributes.get('w:val') !== 'restart';
        const controls = elementsIn(child, 'w:sdt');
        const own = controls.length > 0 ? 'the cell is a control of the form' : undefined;
        cells.push({ element: child, column, span, continues, text: textOf(child), locked: locked ?? own });
        column += span;
      } else if (child.name === 'w:sdt') collect(elementAt(child, 'w:sdtContent') ?? child, locked ?? lockOf(child));
      else if (child.name === 'w:customXml') collect(child, locked);
    }
  };
  collect(row, lockedRow);
  return cells;
}

/** The paragraphs of a cell, one a line; those of a table inside it are read with that table. */
function textOf(parent: XmlElement): string {
  const lines: string[] = [];
  const fields = followFields();
  const collect = (element: XmlElement) => {
    for (const child of elementsIn(element)) {
      if (child.name === 'w:p') lines.push(readParagraph(child, fields).text);
      else if (child.name === 'w:sdt') collect(elementAt(child, 'w:sdtContent') ?? child);
      else if (child.name === 'w:customXml' || child.name === 'w:ins') collect(child);
    }
  };
  collect(parent);
  return lines
    .join('\n')
    .replace(/\u00ad/g, '')
    .trim();
}

function gridOf(rows: readonly (readonly Cell[])[], place: string): FormGrid {
  const width = Math.max(0, ...rows.map(r => (r.at(-1)?.column ?? -1) + (r.at(-1)?.span ?? 0)));
  const above = new Map<number, string>();
  return {
    place,
    rows: rows.map((row, at): FormGridRow => {
      const cells: string[] = Array(width).fill('');
      const own = new Set<number>();
      for (const { column, continues, text } of row) {
        cells[column] = continues ? (above.get(column) ?? '') : text;
        if (!continues && text !== '') own.add(column);
        above.set(column, cells[column]!);
      }
      const only = own.size === 1 ? row.find(c => own.has(c.column)) : undefined;
      const isAcross = only && only.span > 1 && only.span * 2 >= width;
      return { line: at + 1, cells, own, ...(isAcross ? { across: only.text } : {}) };
    }),
  };
}
