/**
 * Upper Vale's list as an office keeps it: a workbook with a coloured head, dates, a sum, a filter, a second sheet that
 * counts states with formulas, and a chart. Written by LibreOffice itself from a flat table made of upper-vale.csv, so
 * that what carrying gets to see is an office program's own file. Its bytes differ a little each time it is made.
 *
 *   node office.mjs      writes upper-vale.xlsx beside this file; needs soffice on the path
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';

const here = name => new URL(name, import.meta.url);
const [head, ...rows] = parse(readFileSync(here('upper-vale.csv')), { bom: true });
const states = [...new Set(rows.map(row => row[6]))].sort();
const last = rows.length + 1;
const widths = [2.2, 4.6, 2.4, 2.2, 6, 1.8, 2.6, 2.6, 2];

const escaped = text => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
const text = (value, style) =>
  value === ''
    ? '<table:table-cell/>'
    : `<table:table-cell${style ? ` table:style-name="${style}"` : ''} office:value-type="string"><text:p>${escaped(value)}</text:p></table:table-cell>`;
const formula = (value, result, style = '') =>
  `<table:table-cell${style} table:formula="of:=${escaped(value)}" office:value-type="float" office:value="${result}"/>`;
const row = cells => `<table:table-row>${cells.join('')}</table:table-row>`;

/** The list writes dates as 30/09/2024 or leaves them out; a cell that is one becomes a date. */
function dateCell(value) {
  const found = /^(\d{1,2})[./](\d{1,2})[./](\d{4})$/.exec(value);
  if (!found) return text(value);
  const [, day, month, year] = found;
  const iso = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  return `<table:table-cell table:style-name="day" office:value-type="date" office:date-value="${iso}"><text:p>${value}</text:p></table:table-cell>`;
}

const jobs = [
  row(head.map(name => text(name, 'head'))),
  ...rows.map(cells => row(cells.map((cell, at) => (at === 7 ? dateCell(cell) : text(cell))))),
].join('');
const overview = [
  row(['State', 'Lines'].map(name => text(name, 'head'))),
  ...states.map((state, at) =>
    row([
      text(state),
      formula(`COUNTIF([$Jobs.$G$2:.$G$${last}];[.A${at + 2}])`, rows.filter(r => r[6] === state).length),
    ]),
  ),
  row([text('Lines in all'), formula(`SUM([.B2:.B${states.length + 1}])`, rows.length, ' table:style-name="sum"')]),
].join('');
const end = states.length + 1;
const chart = `<draw:frame draw:z-index="0" svg:width="11cm" svg:height="7cm" svg:x="6cm" svg:y="0.4cm"><draw:object><office:document office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.chart"><office:automatic-styles/><office:body><office:chart><chart:chart chart:class="chart:bar" svg:width="11cm" svg:height="7cm"><chart:title><text:p>Lines by state</text:p></chart:title><chart:plot-area table:cell-range-address="Overview.A2:Overview.B${end}"><chart:axis chart:dimension="x"><chart:categories table:cell-range-address="Overview.A2:Overview.A${end}"/></chart:axis><chart:axis chart:dimension="y"/><chart:series chart:values-cell-range-address="Overview.B2:Overview.B${end}" chart:class="chart:bar"><chart:data-point chart:repeated="${states.length}"/></chart:series></chart:plot-area></chart:chart></office:chart></office:body></office:document></draw:object></draw:frame>`;

const names = {
  office: 'office',
  style: 'style',
  text: 'text',
  table: 'table',
  draw: 'drawing',
  chart: 'chart',
  number: 'datastyle',
};
const spaces = Object.entries(names).map(([p, n]) => `xmlns:${p}="urn:oasis:names:tc:opendocument:xmlns:${n}:1.0"`);
for (const [p, n] of [
  ['fo', 'xsl-fo'],
  ['svg', 'svg'],
]) {
  spaces.push(`xmlns:${p}="urn:oasis:names:tc:opendocument:xmlns:${n}-compatible:1.0"`);
}
spaces.push('xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"');
const columns = widths.map(
  (w, at) =>
    `<style:style style:name="c${at}" style:family="table-column"><style:table-column-properties style:column-width="${w}cm"/></style:style>`,
);
const cellStyle = (name, properties, more = '') =>
  `<style:style style:name="${name}" style:family="table-cell"${more}>${properties}</style:style>`;
const flat = `<?xml version="1.0" encoding="UTF-8"?>
<office:document ${spaces.join(' ')} office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:automatic-styles><number:date-style style:name="D"><number:day number:style="long"/><number:text>/</number:text><number:month number:style="long"/><number:text>/</number:text><number:year number:style="long"/></number:date-style>${columns.join('')}${cellStyle('head', '<style:table-cell-properties fo:background-color="#d9ead3" fo:border-bottom="0.5pt solid #555555"/><style:text-properties fo:font-weight="bold"/>')}${cellStyle('day', '', ' style:data-style-name="D"')}${cellStyle('sum', '<style:text-properties fo:font-weight="bold"/>')}</office:automatic-styles><office:body><office:spreadsheet><table:table table:name="Jobs">${widths.map((_, at) => `<table:table-column table:style-name="c${at}"/>`).join('')}${jobs}</table:table><table:table table:name="Overview"><table:shapes>${chart}</table:shapes>${overview}</table:table><table:named-expressions><table:named-range table:name="JobLines" table:base-cell-address="$Jobs.$A$1" table:cell-range-address="$Jobs.$A$2:.$I$${last}"/></table:named-expressions><table:database-ranges><table:database-range table:name="__Anonymous_Sheet_DB__0" table:target-range-address="Jobs.A1:Jobs.I${last}" table:display-filter-buttons="true"/></table:database-ranges></office:spreadsheet></office:body></office:document>`;

const folder = mkdtempSync(join(tmpdir(), 'fishplate-office-'));
try {
  writeFileSync(join(folder, 'upper-vale.fods'), flat);
  execFileSync('soffice', [
    '--headless',
    `-env:UserInstallation=file://${folder}/profile`,
    '--convert-to',
    'xlsx:Calc MS Excel 2007 XML',
    '--outdir',
    folder,
    join(folder, 'upper-vale.fods'),
  ]);
  writeFileSync(here('upper-vale.xlsx'), readFileSync(join(folder, 'upper-vale.xlsx')));
} finally {
  rmSync(folder, { recursive: true, force: true });
}
