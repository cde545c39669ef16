/** A one-sheet xlsx workbook, written by hand so that the same rows give the same bytes. */

const HEADER = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
const WIDTHS = [12, 28, 17, 12, 34, 15, 13, 15, 44];
/** Cell formats: 0 text, 1 the head, 2 a date as 2024-05-04, 3 a date as 4-May, 4 number as typed, 5 wrapped text. */
const STYLES = `<styleSheet xmlns="${MAIN}"><numFmts count="1"><numFmt numFmtId="164" formatCode="yyyy\\-mm\\-dd"/></numFmts><fonts count="2"><font><sz val="10"/><name val="Arial"/></font><font><b/><sz val="10"/><name val="Arial"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="6"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="0" fontId="1" fillId="0" borderId="0" xfId="0" applyFont="1"/><xf numFmtId="164" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/><xf numFmtId="16" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0" applyAlignment="1"><alignment wrapText="1" vertical="top"/></xf></cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>`;

/** Rows of cells (text, number, or `{date: '2024-05-04', shown}`) to the bytes of a workbook; the first row is the head. */
export function writeWorkbook(sheetName, rows) {
  const shared = new Map();
  const sheet = writeSheet(rows, shared);
  const uses = rows.flat().filter(cell => typeof cell === 'string' && cell !== '').length;
  const strings = [...shared.keys()].map(text => `<si><t xml:space="preserve">${escapeXml(text)}</t></si>`).join('');
  const part = (name, content) => `<Override PartName="${name}" ContentType="${content}"/>`;
  const relation = (n, kind, target) =>
    `<Relationship Id="rId${n}" Type="${OFFICE}/relationships/${kind}" Target="${target}"/>`;
  return writeZip([
    [
      '[Content_Types].xml',
      `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>${part('/xl/workbook.xml', `${TYPE}.sheet.main+xml`)}${part('/xl/worksheets/sheet1.xml', `${TYPE}.worksheet+xml`)}${part('/xl/styles.xml', `${TYPE}.styles+xml`)}${part('/xl/sharedStrings.xml', `${TYPE}.sharedStrings+xml`)}</Types>`,
    ],
    [
      '_rels/.rels',
      `<Relationships xmlns="${PACKAGE}/relationships">${relation(1, 'officeDocument', 'xl/workbook.xml')}</Relationships>`,
    ],
    [
      'xl/workbook.xml',
      `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}/relationships"><sheets><sheet name="${escapeXml(sheetName)}" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    ],
    [
      'xl/_rels/workbook.xml.rels',
      `<Relationships xmlns="${PACKAGE}/relationships">${relation(1, 'worksheet', 'worksheets/sheet1.xml')}${relation(2, 'styles', 'styles.xml')}${relation(3, 'sharedStrings', 'sharedStrings.xml')}</Relationships>`,
    ],
    ['xl/worksheets/sheet1.xml', sheet],
    ['xl/styles.xml', STYLES],
    ['xl/sharedStrings.xml', `<sst xmlns="${MAIN}" count="${uses}" uniqueCount="${shared.size}">${strings}</sst>`],
  ]);
}

function writeSheet(rows, shared) {
  const body = rows.map((row, r) => {
    const cells = row.map((cell, c) => writeCell(cell, `${String.fromCharCode(65 + c)}${r + 1}`, r === 0, shared));
    return `<row r="${r + 1}">${cells.join('')}</row>`;
  });
  const columns = WIDTHS.map((width, i) => `<col min="${i + 1}" max="${i + 1}" width="${width}" customWidth="1"/>`);
  const last = `${String.fromCharCode(64 + rows[0].length)}${rows.length}`;
  return `<worksheet xmlns="${MAIN}"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><dimension ref="A1:${last}"/><sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews><cols>${columns.join('')}</cols><sheetData>${body.join('')}</sheetData><autoFilter ref="A1:${last}"/><pageSetup orientation="landscape" fitToHeight="0"/></worksheet>`;
}

function writeCell(cell, at, head, shared) {
  if (cell === '') return '';
  if (typeof cell === 'number') return `<c r="${at}" s="4"><v>${cell}</v></c>`;
  if (typeof cell === 'object')
    return `<c r="${at}" s="${cell.shown === cell.date ? 2 : 3}"><v>${serialOf(cell.date)}</v></c>`;
  if (!shared.has(cell)) shared.set(cell, shared.size);
  return `<c r="${at}" t="s" s="${head ? 1 : cell.includes('\n') ? 5 : 0}"><v>${shared.get(cell)}</v></c>`;
}

/** Days since 1899-12-30, as spreadsheets count them. */
function serialOf(iso) {
  return (Date.parse(`${iso}T00:00:00Z`) - Date.UTC(1899, 11, 30)) / 86_400_000;
}

function escapeXml(text) {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}

/** A zip of stored, undated entries. */
function writeZip(entries) {
  const parts = [];
  const directory = [];
  let offset = 0;
  for (const [name, text] of entries) {
    const path = Buffer.from(name);
    const data = Buffer.from(HEADER + text);
    const fields = Buffer.alloc(26);
    fields.writeUInt16LE(20, 0);
    // 1 January 1980, the first day that the format knows.
    fields.writeUInt16LE(0x21, 8);
    fields.writeUInt32LE(crc32(data), 10);
    fields.writeUInt32LE(data.length, 14);
    fields.writeUInt32LE(data.length, 18);
    fields.writeUInt16LE(path.length, 22);
    parts.push(Buffer.from('PK\x03\x04'), fields, path, data);
    const tail = Buffer.alloc(14);
    tail.writeUInt32LE(offset, 10);
    directory.push(Buffer.from('PK\x01\x02\x14\x00'), fields, tail, path);
    offset += 30 + path.length + data.length;
  }
  const length = directory.reduce((sum, part) => sum + part.length, 0);
  const end = Buffer.alloc(22);
  end.write('PK\x05\x06', 'latin1');
  end.writeUInt16LE(entries.length, 8);
  end.writeUInt16LE(entries.length, 10);
  end.writeUInt32LE(length, 12);
  end.writeUInt32LE(offset, 16);
  return Buffer.concat([...parts, ...directory, end]);
}

function crc32(data) {
  let crc = ~0;
  for (const byte of data) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = (crc >>> 1) ^ (0xedb88320 & -(crc & 1));
  }
  return ~crc >>> 0;
}
