import { CatalogError } from '../model/errors.ts';
import { escapeXml } from '../office/read-xml.ts';
import { writeZip } from '../office/write-zip.ts';
import { chartXml, drawingXml } from './bar-chart.ts';
import { columnName } from './cell-address.ts';
import { type PlainSheet, SHEET_SIZE, type SheetStyles, sheetName, sheetXml, XML_HEAD } from './plain-sheet.ts';

export type { CellValue, PlainSheet } from './plain-sheet.ts';

const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const SHEET_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
const DRAWING_TYPE = 'application/vnd.openxmlformats-officedocument';

const STYLES: SheetStyles = { head: 1, text: 2, quoted: 3, number: 4 };
const XF = 'numFmtId="0" borderId="0" xfId="0"';
const WRAPPED = '<alignment vertical="top" wrapText="1"/>';
const STYLES_XML = `${XML_HEAD}<styleSheet xmlns="${MAIN}"><fonts count="2"><font><sz val="10"/><name val="Arial"/><family val="2"/></font><font><b/><sz val="10"/><name val="Arial"/><family val="2"/></font></fonts><fills count="3"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill><fill><patternFill patternType="solid"><fgColor rgb="FFE3ECF0"/><bgColor indexed="64"/></patternFill></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="5"><xf ${XF} fontId="0" fillId="0"/><xf ${XF} fontId="1" fillId="2" applyFont="1" applyFill="1" applyAlignment="1">${WRAPPED}</xf><xf ${XF} fontId="0" fillId="0" applyAlignment="1">${WRAPPED}</xf><xf ${XF} fontId="0" fillId="0" quotePrefix="1" applyAlignment="1">${WRAPPED}</xf><xf ${XF} fontId="0" fillId="0" applyAlignment="1"><alignment vertical="top"/></xf></cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>`;

/**
 * Plain tables as a workbook, one sheet each. Same tables, same bytes: no date, no author, no program's name. No cell is
 * ever a formula. Texts beyond 32,767 characters, the most that a cell holds, end in an ellipsis.
 *
 * @throws CatalogError BadArgument where a table is larger than a sheet can be
 */
export function writeXlsx(sheets: readonly PlainSheet[]): Uint8Array {
  const parts = new Map<string, Uint8Array>();
  const put = (name: string, text: string) => parts.set(name, new TextEncoder().encode(text));
  const named: PlainSheet[] = [];
  for (const sheet of sheets.length > 0 ? sheets : [{ name: 'Empty', header: [], rows: [] }]) {
    refuseTooLarge(sheet);
    named.push({
      ...sheet,
      name: sheetName(
        sheet.name,
        named.map(n => n.name),
      ),
    });
  }
  const overrides: (readonly [part: string, type: string])[] = [['xl/workbook.xml', `${SHEET_TYPE}.sheet.main+xml`]];
  overrides.push(...named.map((_, at) => [`xl/worksheets/sheet${at + 1}.xml`, `${SHEET_TYPE}.worksheet+xml`] as const));
  overrides.push(['xl/styles.xml', `${SHEET_TYPE}.styles+xml`]);
  for (const at of charted(named)) {
    overrides.push([`xl/drawings/drawing${at + 1}.xml`, `${DRAWING_TYPE}.drawing+xml`]);
    overrides.push([`xl/charts/chart${at + 1}.xml`, `${DRAWING_TYPE}.drawingml.chart+xml`]);
  }
  put(
    '[Content_Types].xml',
    `${XML_HEAD}<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>${overrides.map(([part, type]) => `<Override PartName="/${part}" ContentType="${type}"/>`).join('')}</Types>`,
  );
  put('_rels/.rels', relationsXml([['rId1', 'officeDocument', 'xl/workbook.xml']]));
  put('xl/workbook.xml', workbookXml(named));
  put(
    'xl/_rels/workbook.xml.rels',
    relationsXml([
      ...named.map((_, at) => [`rId${at + 1}`, 'worksheet', `worksheets/sheet${at + 1}.xml`] as const),
      [`rId${named.length + 1}`, 'styles', 'styles.xml'],
    ]),
  );
  put('xl/styles.xml', STYLES_XML);
  named.forEach((sheet, at) => {
    const drawn = sheet.bars !== undefined && sheet.rows.length > 0;
    put(`xl/worksheets/sheet${at + 1}.xml`, sheetXml(sheet, STYLES, drawn ? 'rId1' : undefined));
    if (!drawn) return;
    const [drawing, chart] = [`drawing${at + 1}.xml`, `chart${at + 1}.xml`];
    put(`xl/worksheets/_rels/sheet${at + 1}.xml.rels`, relationsXml([['rId1', 'drawing', `../drawings/${drawing}`]]));
    put(`xl/drawings/${drawing}`, drawingXml(sheet, 'rId1'));
    put(`xl/drawings/_rels/${drawing}.rels`, relationsXml([['rId1', 'chart', `../charts/${chart}`]]));
    put(`xl/charts/${chart}`, chartXml(sheet));
  });
  return writeZip(parts);
}

function charted(sheets: readonly PlainSheet[]): readonly number[] {
  return sheets.flatMap((sheet, at) => (sheet.bars && sheet.rows.length > 0 ? [at] : []));
}

function workbookXml(sheets: readonly PlainSheet[]): string {
  const list = sheets.map((s, at) => `<sheet name="${escapeXml(s.name)}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`);
  // Without this hidden name a program shows the filter's arrows and does not filter.
  const filters = sheets.flatMap((s, at) => {
    if (s.header.length === 0) return [];
    const reference = `'${s.name.replaceAll("'", "''")}'!$A$1:${corner(s)}`;
    return [
      `<definedName name="_xlnm._FilterDatabase" localSheetId="${at}" hidden="1">${escapeXml(reference)}</definedName>`,
    ];
  });
  const names = filters.length > 0 ? `<definedNames>${filters.join('')}</definedNames>` : '';
  return `${XML_HEAD}<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}/relationships"><sheets>${list.join('')}</sheets>${names}</workbook>`;
}

function corner(sheet: PlainSheet): string {
  return `$${columnName(sheet.header.length - 1)}$${sheet.rows.length + 1}`;
}

/** Relations of a part, as `[id, last word of the type, target]`. */
export function relationsXml(relations: readonly (readonly [id: string, type: string, target: string])[]): string {
  const lines = relations.map(
    ([id, type, target]) => `<Relationship Id="${id}" Type="${OFFICE}/relationships/${type}" Target="${target}"/>`,
  );
  return `${XML_HEAD}<Relationships xmlns="${PACKAGE}/relationships">${lines.join('')}</Relationships>`;
}

function refuseTooLarge({ name, header, rows }: PlainSheet): void {
  if (rows.length < SHEET_SIZE.rows && header.length <= SHEET_SIZE.columns) return;
  throw new CatalogError(
    'BadArgument',
    `${name} has ${rows.length} rows and ${header.length} columns, more than a sheet can hold; write it as csv.`,
    { name },
  );
}
