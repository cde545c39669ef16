import exceljs from 'exceljs';
import { describe, expect, it } from 'vitest';
import { openZip } from '../../src/office/open-zip.ts';
import { readXml } from '../../src/office/read-xml.ts';
import { writeXlsx } from '../../src/tables/write-xlsx.ts';

const SUMMARY = {
  name: 'Summary: all/none',
  header: ['what', 'lines'],
  rows: [
    ['kept', 5],
    ['=1+1', 7],
    ['a & <b>\r\nsecond _x000D_ line', 2],
  ],
  bars: { title: 'How the lines came out', labels: 0, values: 1 },
};

async function read(bytes: Uint8Array) {
  const workbook = new exceljs.Workbook();
  await workbook.xlsx.load(bytes as unknown as ArrayBuffer);
  return workbook;
}

describe('a workbook that is written', () => {
  it('is read by another library with the same cells', async () => {
    const workbook = await read(writeXlsx([SUMMARY, { name: 'Lines', header: ['a'], rows: [['0012'], [null], [-3]] }]));
    expect(workbook.worksheets.map(s => s.name)).toEqual(['Summary all none', 'Lines']);
    const [summary, lines] = workbook.worksheets;
    expect(summary!.getRow(1).values).toEqual([undefined, 'what', 'lines']);
    expect(summary!.getCell('B3').value).toBe(7);
    // This library reads no escapes in texts inside cells; LibreOffice shows them as they were meant.
    expect(summary!.getCell('A4').value).toBe('a & <b>\nsecond _x005F_x000D_ line');
    expect(lines!.getCell('A2').value).toBe('0012');
    expect(lines!.getCell('A4').value).toBe(-3);
    expect(summary!.autoFilter).toBe('A1:B4');
  });

  it('holds no formula, whatever a text begins with', async () => {
    const bytes = writeXlsx([SUMMARY]);
    const workbook = await read(bytes);
    expect(workbook.worksheets[0]!.getCell('A3').value).toBe('=1+1');
    const sheet = new TextDecoder().decode(openZip(bytes, 'x.xlsx').get('xl/worksheets/sheet1.xml'));
    expect(sheet).not.toContain('<f>');
    expect(sheet).toContain('<c r="A3" s="3"');
  });

  it('has the same bytes each time, and every part is well-formed', () => {
    const bytes = writeXlsx([SUMMARY]);
    expect(writeXlsx([SUMMARY])).toEqual(bytes);
    for (const [name, part] of openZip(bytes, 'x.xlsx')) readXml(new TextDecoder().decode(part), name);
  });

  it('tells sheets of one name apart, and cuts long names and long texts', async () => {
    const name = 'a name that is far too long for a sheet of any program';
    const sheet = { name, header: ['x'], rows: [['y'.repeat(40_000)]] };
    const workbook = await read(writeXlsx([sheet, sheet, { name: '', header: [], rows: [] }]));
    expect(workbook.worksheets.map(s => s.name)).toEqual([
      'a name that is far too long for',
      'a name that is far too long f 2',
      'Sheet',
    ]);
    expect(String(workbook.worksheets[0]!.getCell('A2').value)).toHaveLength(32_767);
  });

  it('refuses a table that no sheet can hold', () => {
    const rows = { length: 1_048_576 } as unknown as string[][];
    expect(() => writeXlsx([{ name: 'big', header: ['a'], rows }])).toThrow(/write it as csv/);
  });
});
