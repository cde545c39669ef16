import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import exceljs from 'exceljs';
import { describe, expect, it } from 'vitest';
import { openZip } from '../../src/office/open-zip.ts';
import { writeZip } from '../../src/office/write-zip.ts';
import { numberFormat, shownDate } from '../../src/tables/number-format.ts';
import { readTable } from '../../src/tables/read-table.ts';
import { readXlsx } from '../../src/tables/read-xlsx.ts';
import { writeXlsx } from '../../src/tables/write-xlsx.ts';

const JOBS = join(import.meta.dirname, '..', '..', 'catalog', 'jobs');

async function made(fill: (sheet: exceljs.Worksheet, workbook: exceljs.Workbook) => void): Promise<Uint8Array> {
  const workbook = new exceljs.Workbook();
  fill(workbook.addWorksheet('Jobs'), workbook);
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}

const cells = (bytes: Uint8Array) => readXlsx('x.xlsx', bytes).rows.map(r => Object.fromEntries(r.cells));
const rules = (bytes: Uint8Array) => readXlsx('x.xlsx', bytes).findings.map(f => f.rule);

/** A workbook with one part rewritten. */
function changed(bytes: Uint8Array, part: string, change: (text: string) => string): Uint8Array {
  const parts = openZip(bytes, 'x.xlsx');
  parts.set(part, new TextEncoder().encode(change(new TextDecoder().decode(parts.get(part)))));
  return writeZip(parts);
}

describe('a sheet read as a table', () => {
  it('has the cells of the demo workbook, as its csv twin has them', () => {
    const xlsx = readTable('lower-vale.xlsx', readFileSync(join(JOBS, 'lower-vale.xlsx')));
    const csv = readTable('lower-vale.csv', readFileSync(join(JOBS, 'lower-vale.csv')));
    expect(xlsx.columns).toEqual(csv.columns);
    expect(xlsx.rows).toHaveLength(csv.rows.length);
    const differing = xlsx.rows.filter((row, at) =>
      csv.columns.some(c => c !== 'req_ref' && row.cells.get(c) !== csv.rows[at]!.cells.get(c)),
    );
    expect(differing).toEqual([]);
    expect(xlsx.findings.map(f => f.rule)).toContain('made-a-date');
  });

  it('shows numbers as they are printed and says where they are stored otherwise', async () => {
    const bytes = await made(sheet => {
      sheet.addRow(['no', 'price', 'share']);
      sheet.addRow([3.1, 1234.5, 0.25]);
      sheet.getCell('A2').numFmt = '0.00';
      sheet.getCell('B2').numFmt = '#,##0.00 "net"';
      sheet.getCell('C2').numFmt = '0%';
    });
    expect(cells(bytes)).toEqual([{ no: '3.10', price: '1234.50', share: '25%' }]);
    expect(rules(bytes)).toContain('shown-number');
  });

  it('reads dates in one order, and says where a date stands among numbers', async () => {
    const bytes = await made(sheet => {
      sheet.addRow(['no', 'when']);
      sheet.addRow(['3.1.1', new Date(Date.UTC(2024, 4, 3))]);
      sheet.addRow([new Date(Date.UTC(2001, 4, 4)), new Date(Date.UTC(2024, 4, 3, 13, 30))]);
      sheet.addRow(['3.1.2', null]);
      for (const at of ['B2', 'A3', 'B3']) sheet.getCell(at).numFmt = 'dd/mm/yyyy';
    });
    expect(cells(bytes).map(r => [r.no, r.when])).toEqual([
      ['3.1.1', '2024-05-03'],
      ['2001-05-04', '2024-05-03T13:30'],
      ['3.1.2', ''],
    ]);
    const found = readXlsx('x.xlsx', bytes).findings;
    expect(found.map(f => [f.rule, f.place?.line])).toEqual([['made-a-date', 3]]);
  });

  it('warns of numbers among texts, which may have lost a zero', async () => {
    const bytes = await made(sheet => sheet.addRows([['no'], ['3.1.1'], [3.1], ['3.1.2']]));
    expect(rules(bytes)).toContain('number-cell');
  });

  it('shows a number plainly whose format is longer than any spreadsheet writes', () => {
    expect(numberFormat(200, `${' '.repeat(20_000)}0.00x`)).toEqual({ kind: 'plain' });
  });

  it('counts days as each calendar of the format does', () => {
    expect(['1', '59', '61', '45416'].map(n => shownDate(n, false))).toEqual([
      '1900-01-01',
      '1900-02-28',
      '1900-03-01',
      '2024-05-04',
    ]);
    expect(shownDate('43954', true)).toBe('2024-05-04');
    expect(shownDate('0.5', false)).toBe('12:00');
  });

  it('finds the head below a title, and joins the names of two head rows', async () => {
    const bytes = await made(sheet => {
      sheet.addRow(['Jobs of the vale']);
      sheet.mergeCells('A1:E1');
      sheet.addRow([]);
      sheet.addRow(['Job', 'Requirement', null, 'Visit', null]);
      sheet.addRow([null, 'no', 'title', 'date', 'no']);
      for (const range of ['A3:A4', 'B3:C3', 'D3:E3']) sheet.mergeCells(range);
      sheet.addRow(['J1', '3.1.1', 'Base', '2024-01-02', '1']);
    });
    const table = readXlsx('x.xlsx', bytes);
    expect(table.columns).toEqual(['Job', 'Requirement no', 'title', 'date', 'Visit no']);
    expect(table.rows.map(r => [r.line, r.cells.get('Requirement no')])).toEqual([[5, '3.1.1']]);
  });

  it('reads hidden rows, leaves hidden sheets, and says both', async () => {
    const bytes = await made((sheet, workbook) => {
      sheet.addRows([
        ['a', 'b'],
        ['1', '2'],
        ['3', '4'],
      ]);
      sheet.getRow(3).hidden = true;
      workbook.addWorksheet('Old', { state: 'hidden' }).addRow(['x']);
    });
    expect(cells(bytes)).toHaveLength(2);
    expect(readXlsx('x.xlsx', bytes).findings.map(f => f.message)).toEqual([
      'Sheet Jobs is read; Old (hidden) is not.',
      '1 hidden row is read like the others.',
    ]);
    expect(() => readXlsx('x.xlsx', bytes, 'Other')).toThrow(/no sheet Other; its sheets are Jobs, Old/);
  });

  it('reads rich texts, formulas by their last value, errors, and prefixed markup', async () => {
    const bytes = await made(sheet => {
      sheet.addRow(['a', 'b', 'c']);
      sheet.addRow([
        { richText: [{ text: '3.' }, { text: '1', font: { bold: true } }] },
        { formula: '1+1', result: 2 },
        { error: '#REF!' },
      ]);
    });
    expect(cells(bytes)).toEqual([{ a: '3.1', b: '2', c: '#REF!' }]);
    const prefixed = changed(
      writeXlsx([{ name: 's', header: ['a'], rows: [['x & y'], [4]] }]),
      'xl/worksheets/sheet1.xml',
      t => t.replace(/<(\/?)(?=[a-z])/gi, '<$1x:').replace('xmlns=', 'xmlns:x='),
    );
    expect(cells(prefixed)).toEqual([{ a: 'x & y' }, { a: '4' }]);
  });
});

describe('a workbook that is refused in one sentence', () => {
  const good = () => writeXlsx([{ name: 's', header: ['a'], rows: [['x']] }]);
  const bad: readonly (readonly [string, () => Uint8Array, RegExp])[] = [
    ['encrypted', () => Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 1, 2), /without a password/],
    ['cut off', () => good().slice(0, 900), /cut off|damaged/],
    [
      'with macros',
      () => changed(good(), '[Content_Types].xml', t => t.replace('spreadsheetml.sheet.main', 'x.macroEnabled.main')),
      /macros/,
    ],
    [
      'no workbook',
      () => changed(good(), '[Content_Types].xml', t => t.replace('spreadsheetml.sheet', 'wordprocessingml.document')),
      /not what its name says/,
    ],
    ['rows left open', () => changed(good(), 'xl/worksheets/sheet1.xml', t => t.replace('</row>', '')), /damaged/],
    ['a document type', () => changed(good(), 'xl/worksheets/sheet1.xml', t => `<!DOCTYPE x>${t}`), /document type/],
    ['nothing in it', () => writeXlsx([{ name: 's', header: [], rows: [] }]), /is empty/],
    [
      'two columns of one name',
      () => writeXlsx([{ name: 's', header: ['a', 'a'], rows: [['x', 'y']] }]),
      /two columns named a/,
    ],
  ];
  it.each(bad)('%s', (_, bytes, sentence) => {
    expect(() => readTable('x.xlsx', bytes())).toThrow(sentence);
  });

  it('a sheet of 300 MB, before any of it is unpacked', () => {
    const bytes = good();
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
    const entry = Buffer.from(bytes.buffer, bytes.byteOffset).lastIndexOf('xl/worksheets/sheet1.xml');
    view.setUint32(entry - 46 + 24, 300 * 2 ** 20, true);
    expect(() => readTable('x.xlsx', bytes)).toThrow(/300 MB unpacked, more than 128 MB; save the sheet as csv/);
  });
});

describe('tables told by what is in them', () => {
  const read = (name: string, text: string) => readTable(name, Buffer.from(text)).rows.map(r => [...r.cells]);
  it('are read as csv, JSON or JSON Lines', () => {
    const rows = [
      [
        ['a', '1'],
        ['b', 'x | y'],
      ],
      [['a', '2']],
    ];
    expect(read('t', '[{"a":1,"b":["x","y"]},{"a":2}]')).toEqual(rows);
    expect(read('t', '{"rows":[{"a":1,"b":["x","y"]},{"a":2}]}')).toEqual(rows);
    expect(read('t.jsonl', '{"a":1,"b":["x","y"]}\r\n\n{"a":2}\n')).toEqual(rows);
    expect(read('t', '{"a":1,"b":["x","y"]}\n{"a":2}')).toEqual(rows);
    expect(read('t', 'a,b\n1,x | y\n')).toEqual([rows[0]]);
    expect(() => read('t.jsonl', '{"a":1}\n{"a":\n')).toThrow(/not valid JSON at line 2/);
  });
});
