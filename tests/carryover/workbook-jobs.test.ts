import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import exceljs from 'exceljs';
import { describe, expect, it } from 'vitest';
import { carryJobs } from '../../src/commands/jobs/carry-jobs.ts';
import { openZip } from '../../src/office/open-zip.ts';
import { readXml } from '../../src/office/read-xml.ts';
import { readXlsx } from '../../src/tables/read-xlsx.ts';
import { writeXlsx } from '../../src/tables/write-xlsx.ts';
import { fixture } from './fixture.ts';
import { memoryFiles } from './memory-files.ts';

const { joint, marks } = fixture();
const JOBS = join(import.meta.dirname, '..', '..', 'catalog', 'jobs');
const OFFICE = new Uint8Array(readFileSync(join(JOBS, 'upper-vale.xlsx')));
const COLUMNS = { number: 'Item', type: 'Type', state: 'State', job: 'Job' };

async function carry(input: Uint8Array | string, columns = {}, name = 'jobs.xlsx') {
  const { files, held } = memoryFiles({ [name]: input });
  const out = `out-${name}`;
  const report = await carryJobs({ files, progress: () => {} }, joint, marks, { input: name, out, columns });
  return { report, bytes: new Uint8Array(held.get(out)!), files, held };
}

async function made(fill: (sheet: exceljs.Worksheet, workbook: exceljs.Workbook) => void): Promise<Uint8Array> {
  const workbook = new exceljs.Workbook();
  fill(workbook.addWorksheet('Jobs'), workbook);
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}

async function second(bytes: Uint8Array): Promise<exceljs.Workbook> {
  const workbook = new exceljs.Workbook();
  await workbook.xlsx.load(bytes as unknown as ArrayBuffer);
  return workbook;
}

const OURS = 'new_number,new_title,outcome,why,to_do,origin,folds_into,read_in,carried_to'.split(',');
const rowsOf = (bytes: Uint8Array) => readXlsx('x.xlsx', bytes).rows.map(r => OURS.map(c => r.cells.get(c) ?? ''));

describe("an office program's workbook", () => {
  it('comes back with every part as it was, but for the sheet, and the lists that name the new sheets', async () => {
    const { bytes } = await carry(OFFICE, COLUMNS);
    const [before, after] = [openZip(OFFICE, 'a'), openZip(bytes, 'b')];
    const changed = [...before].filter(([name, part]) => !Buffer.from(part).equals(Buffer.from(after.get(name) ?? [])));
    expect(changed.map(([name]) => name).sort()).toEqual([
      '[Content_Types].xml',
      'xl/_rels/workbook.xml.rels',
      'xl/workbook.xml',
      'xl/worksheets/sheet1.xml',
    ]);
    for (const [name, part] of after) readXml(new TextDecoder().decode(part), name);
    // A cell format that the workbook does not have makes its program offer to mend the file.
    const text = (name: string) => new TextDecoder().decode(after.get(name));
    const formats = Number(/<cellXfs count="(\d+)"/.exec(text('xl/styles.xml'))![1]);
    for (const name of after.keys()) {
      if (!name.startsWith('xl/worksheets/sheet')) continue;
      const used = [...text(name).matchAll(/<c r="[A-Z]+\d+" s="(\d+)"/g)].map(found => Number(found[1]));
      expect(Math.max(...used)).toBeLessThan(formats);
    }
  });

  it('has in its sheet every byte that it had, with our cells between', async () => {
    const { bytes } = await carry(OFFICE, COLUMNS);
    const sheet = (b: Uint8Array) => new TextDecoder().decode(openZip(b, 'x').get('xl/worksheets/sheet1.xml'));
    const without = sheet(bytes)
      .replace(/<c r="[J-R]\d+" s="\d+" t="inlineStr">.*?<\/c>/gs, '')
      .replace(/<col min="\d+" max="\d+" width="\d+" customWidth="1"\/>/g, '')
      .replace('ref="A1:R578"', 'ref="A1:I578"');
    expect(without === sheet(OFFICE)).toBe(true);
  });

  it('says of each line what its csv twin says', async () => {
    const { bytes, report } = await carry(OFFICE, COLUMNS);
    const csv = await carry(readFileSync(join(JOBS, 'upper-vale.csv')), COLUMNS, 'jobs.csv');
    const [head, ...lines] = parse(Buffer.from(csv.bytes), { bom: true }) as string[][];
    const first = head!.indexOf('new_number');
    const twin = lines.filter(l => l[first + 5] === 'input').map(l => l.slice(first));
    const told = rowsOf(bytes);
    expect(told).toHaveLength(577);
    expect(report.totals).toEqual(csv.report.totals);
    // Rows are called by their number in the sheet, lines by their place; one line of head stands above.
    const fold = (row: string[]) => row.map((c, at) => (at === 6 && c !== '' ? String(Number(c) + 1) : c));
    expect(told).toEqual(twin.map(fold));
  });

  it('is read by a second library: its cells, formulas, filter and names, and three sheets more', async () => {
    const [before, after] = [await second(OFFICE), await second((await carry(OFFICE, COLUMNS)).bytes)];
    expect(after.worksheets.map(s => s.name)).toEqual(['Jobs', 'Overview', 'Carried over', 'Added lines', 'Cases']);
    const [jobs, was] = [after.worksheets[0]!, before.worksheets[0]!];
    expect(jobs.rowCount).toBe(was.rowCount);
    for (let row = 1; row <= was.rowCount; row += 7) {
      for (let column = 1; column <= 9; column++) {
        const [now, then] = [jobs.getCell(row, column), was.getCell(row, column)];
        expect([now.value, now.style]).toEqual([then.value, then.style]);
      }
    }
    expect(jobs.autoFilter).toEqual(was.autoFilter);
    expect(after.worksheets[1]!.getCell('B2').value).toEqual(before.worksheets[1]!.getCell('B2').value);
    expect(jobs.getCell('J1').style).toEqual(jobs.getCell('I1').style);
    const summary = after.worksheets[2]!;
    const counts = [2, 3, 4, 5, 6].map(row => Number(summary.getCell(row, 2).value));
    expect(counts.reduce((a, b) => a + b)).toBe(summary.getCell('B7').value);
  });

  it('is opened by LibreOffice, which sees the same cells', async context => {
    const folder = mkdtempSync(join(tmpdir(), 'fishplate-sheet-'));
    try {
      const { bytes } = await carry(OFFICE, COLUMNS);
      writeFileSync(join(folder, 'out.xlsx'), bytes);
      try {
        const profile = `-env:UserInstallation=file://${folder}/profile`;
        // All sheets, one file each.
        const filter = 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1';
        execFileSync(
          'soffice',
          ['--headless', profile, '--convert-to', filter, '--outdir', folder, join(folder, 'out.xlsx')],
          { stdio: 'ignore' },
        );
      } catch {
        return context.skip('soffice is not on this machine');
      }
      const sheet = (name: string) =>
        parse(readFileSync(join(folder, `out-${name}.csv`)), { relax_column_count: true }) as string[][];
      const [head, ...lines] = sheet('Jobs');
      expect(head!.slice(9)).toEqual(OURS);
      expect(lines.map(l => l.slice(9))).toEqual(rowsOf(bytes));
      expect(sheet('Carried over').map(r => r[0])).toEqual([
        'what',
        'kept',
        'carried',
        'choose',
        'withdrawn',
        'unknown',
        'all lines',
        'closed',
        'folded',
        'added',
      ]);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  }, 60_000);

  it('gives the same bytes each time, is left alone as an output, and refused once edited', async () => {
    const { bytes, files, held } = await carry(OFFICE, COLUMNS);
    expect((await carry(OFFICE, COLUMNS)).bytes).toEqual(bytes);
    const again = (input: string) =>
      carryJobs({ files, progress: () => {} }, joint, marks, { input, out: 'x.xlsx', columns: COLUMNS });
    expect(await again('out-jobs.xlsx')).toMatchObject({ leftAlone: true });
    held.set('out-jobs.xlsx', Buffer.from(writeXlsx([{ name: 'Jobs', header: ['Item', ...OURS], rows: [['3.1.1']] }])));
    await expect(again('out-jobs.xlsx')).rejects.toMatchObject({ code: 'AlreadyCarried' });
  });
});

describe('the right edge of a sheet', () => {
  const head = ['Item', 'Type'];
  const firstOfOurs = (bytes: Uint8Array) => readXlsx('x.xlsx', bytes).columns.indexOf('new_number');
  const column = async (bytes: Uint8Array) =>
    (await second((await carry(bytes)).bytes)).worksheets[0]!.getRow(1).values as string[];

  it('is kept clear of tables, merged cells and cells that are only coloured', async () => {
    const bytes = await made(sheet => {
      sheet.addTable({
        name: 'T',
        ref: 'A1',
        columns: [...head, 'Note'].map(name => ({ name })),
        rows: [['3.1.1', 'house', '']],
      });
      sheet.getCell('E2').fill = { type: 'pattern', pattern: 'solid', fgColor: { argb: 'FFFF0000' } };
    });
    const { bytes: out } = await carry(bytes);
    expect((await column(bytes)).indexOf('new_number')).toBe(6);
    expect((await second(out)).worksheets[0]!.getTable('T')).toBeDefined();
    expect(firstOfOurs(out)).toBeGreaterThan(0);
  });

  it('is behind a picture beside the rows, and that is said', async () => {
    const bytes = await made((sheet, workbook) => {
      sheet.addRows([head, ['3.1.1', 'house']]);
      const png = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';
      sheet.addImage(workbook.addImage({ base64: png, extension: 'png' }), 'D1:G9');
    });
    const { report } = await carry(bytes);
    expect((await column(bytes)).indexOf('new_number')).toBeGreaterThan(7);
    expect(report.findings.map(f => f.rule)).toContain('behind-drawing');
  });

  it('is refused where the sheet has none left', async () => {
    const bytes = await made(sheet => {
      sheet.addRows([head, ['3.1.1', 'house']]);
      sheet.getCell(2, 16384).fill = { type: 'pattern', pattern: 'solid', fgColor: { argb: 'FFFF0000' } };
    });
    await expect(carry(bytes)).rejects.toThrow(/delete the empty coloured columns/);
  });
});

describe('what a spreadsheet does to numbers', () => {
  const one = async (value: string | number | Date, format: string, title = '') => {
    const bytes = await made(sheet => {
      sheet.addRows([
        ['Item', 'Title'],
        ['3.1.1', ''],
        ['3.4.5', ''],
        ['3.4.10', ''],
        [value, title],
      ]);
      sheet.getCell('A5').numFmt = format;
    });
    const { bytes: out, report } = await carry(bytes, { number: 'Item', title: 'Title' });
    return { told: rowsOf(out)[3]!, rules: report.findings.map(f => f.rule) };
  };

  it('a number that is a whole part is taken as it is printed', async () => {
    const { told } = await one(3, 'General');
    expect(told[2]).not.toBe('unknown');
  });

  it('a number that may have lost a zero is never carried unasked, unless its title tells', async () => {
    const both = {
      ...joint,
      old: {
        ...joint.old,
        withNumber: (n: string) => joint.old.withNumber(n === '3.10' ? '3.4.10' : n),
      },
    };
    const told = async (format: string, title: string) => {
      const bytes = await made(sheet => {
        sheet.addRows([
          ['Item', 'Title'],
          ['3.1.1', ''],
          [3.1, title],
        ]);
        sheet.getCell('A3').numFmt = format;
      });
      const { files, held } = memoryFiles({ 'x.xlsx': bytes });
      const columns = { number: 'Item', title: 'Title' };
      await carryJobs({ files, progress: () => {} }, both, marks, { input: 'x.xlsx', out: 'o.xlsx', columns });
      return rowsOf(new Uint8Array(held.get('o.xlsx')!))[1]!;
    };
    for (const format of ['General', '0.00']) {
      const [, , outcome, why] = await told(format, '');
      expect(outcome).toBe('choose');
      expect(why).toMatch(/holds a number, not a text; it may have been 3\.10? or 3\.10?\./);
    }
    expect((await told('General', 'Silt trap')).slice(0, 3)).toEqual(['3.3.2', 'Silt trap', 'carried']);
  });

  it('a number made a date is unknown, and the numbers that it may have been are offered', async () => {
    const { told, rules } = await one(new Date(Date.UTC(2005, 3, 3)), 'd-mmm');
    expect(told[2]).toBe('unknown');
    expect(told[3]).toContain('spreadsheet turned into a date');
    expect(rules).toContain('made-a-date');
  });
});
