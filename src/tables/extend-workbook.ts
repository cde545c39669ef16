import { type NewPart, withLastChild, withNewPart } from '../office/change-parts.ts';
import { relationsOf, textOfPart } from '../office/open-package.ts';
import { elementAt, elementsIn, escapeXml, readXml } from '../office/read-xml.ts';
import { writeZip } from '../office/write-zip.ts';
import { chartXml, drawingXml } from './bar-chart.ts';
import type { Workbook } from './open-workbook.ts';
import { type PlainSheet, sheetName, sheetXml } from './plain-sheet.ts';

const RELATIONS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const SHEET_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml';
const DRAWING_TYPE = 'application/vnd.openxmlformats-officedocument';

/**
 * A workbook with some parts replaced and some sheets more behind its own. Every other part keeps its bytes; styles,
 * shared texts and the user's own names among them.
 *
 * @param head the format of a head in the user's styles, which the new sheets use as well
 */
export function extendWorkbook(
  workbook: Workbook,
  replaced: ReadonlyMap<string, Uint8Array>,
  sheets: readonly PlainSheet[],
  head: number,
): Uint8Array {
  const parts = new Map(workbook.office.parts);
  for (const [part, bytes] of replaced) parts.set(part, bytes);
  let office = { ...workbook.office, parts: parts as ReadonlyMap<string, Uint8Array> };
  const add = (from: string, part: NewPart) => {
    office = { ...office, parts: withNewPart(office, from, part) };
  };
  const names = workbook.sheets.map(s => s.name);
  for (const plain of sheets) {
    const sheet = { ...plain, name: sheetName(plain.name, allNames(office, names)) };
    names.push(sheet.name);
    const drawn = sheet.bars !== undefined && sheet.rows.length > 0;
    const part = freePart(office.parts, 'xl/worksheets/sheet');
    const styles = { head, text: 0, quoted: 0, number: 0 };
    add(office.main, {
      name: part,
      content: sheetXml(sheet, styles, drawn ? FIRST_RELATION : undefined),
      contentType: SHEET_TYPE,
      relationType: `${RELATIONS}/worksheet`,
    });
    if (drawn) {
      const drawing = freePart(office.parts, 'xl/drawings/drawing');
      const content = drawingXml(sheet, FIRST_RELATION);
      add(part, {
        name: drawing,
        content,
        contentType: `${DRAWING_TYPE}.drawing+xml`,
        relationType: `${RELATIONS}/drawing`,
      });
      add(drawing, {
        name: freePart(office.parts, 'xl/charts/chart'),
        content: chartXml(sheet),
        contentType: `${DRAWING_TYPE}.drawingml.chart+xml`,
        relationType: `${RELATIONS}/chart`,
      });
    }
    const relation = relationsOf(office, office.main).find(r => r.target === part)!.id;
    const text = withSheet(textOfPart(office, office.main), office.name, sheet.name, relation);
    office = { ...office, parts: new Map([...office.parts, [office.main, new TextEncoder().encode(text)]]) };
  }
  return writeZip(office.parts);
}

/** What `withNewPart` calls the first relation of a part that had none. */
const FIRST_RELATION = 'rIdFishplate1';

/** Names of all sheets; charts that are a sheet of their own have names as well. */
function allNames(office: Workbook['office'], known: readonly string[]): readonly string[] {
  const sheets = elementAt(readXml(textOfPart(office, office.main), office.name), 'x:sheets');
  return [...known, ...(sheets ? elementsIn(sheets).map(s => s.attributes.get('name') ?? '') : [])];
}

function freePart(parts: ReadonlyMap<string, Uint8Array>, stem: string): string {
  let n = 1;
  while (parts.has(`${stem}${n}.xml`)) n++;
  return `${stem}${n}.xml`;
}

function withSheet(source: string, path: string, name: string, relation: string): string {
  const root = readXml(source, path);
  const sheets = elementAt(root, 'x:sheets')!;
  const ids = elementsIn(sheets).map(s => Number(s.attributes.get('sheetId') ?? 0));
  const prefix = sheets.written.slice(0, sheets.written.indexOf(':') + 1);
  // The user's file may call the relations' namespace otherwise, or declare it on each sheet.
  const markup = `<${prefix}sheet xmlns:r="${RELATIONS}" name="${escapeXml(name)}" sheetId="${Math.max(0, ...ids) + 1}" r:id="${relation}"/>`;
  return withLastChild(source, sheets, markup);
}
