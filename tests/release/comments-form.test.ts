import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import ExcelJS from 'exceljs';
import mammoth from 'mammoth';
import { describe, expect, it } from 'vitest';
import { openForm } from '../../src/commands/comments/comments-files.ts';
import { openZip } from '../../src/office/open-zip.ts';
import { columnOf } from '../../src/release/comments-columns.ts';
import { readForm } from '../../src/release/comments-form.ts';
import { docxForm, type Row, xlsxForm } from './form-files.ts';

const ROWS: readonly Row[] = [
  ['UVA', '12', '1.1', '1st sentence', 'te', 'Set it & level it.\nTwo lines.', 'Say "level".', ''],
  ['', '', '1.2', '', 'ed', 'A second one of the same body.', '', ''],
  ['', '', '', '', '', '', '', ''],
  ['LVA', '', '', '', 'ge', 'On the whole.', '', 'Noted before.'],
];
const csvOf = (rows: readonly Row[], head?: Row) =>
  [head ?? ['MB/NC', 'Line', 'Clause', 'Para', 'Type', 'Comments', 'Proposed change', 'Observations'], ...rows]
    .map(row => row.map(t => (/[",;\n]/.test(t) ? `"${t.replaceAll('"', '""')}"` : t)).join(';'))
    .join('\r\n');
const bytesOf = (text: string) => new TextEncoder().encode(text);
const said = (name: string, bytes: Uint8Array, by?: string) => {
  const { comments, findings } = readForm(name, openForm(name, bytes).grids, by);
  return { comments: comments.map(c => [c.by, c.clause, c.type, c.comment]), rules: findings.map(f => f.rule) };
};
const WANTED = [
  ['UVA', '1.1', 'te', 'Set it & level it.\nTwo lines.'],
  ['UVA', '1.2', 'ed', 'A second one of the same body.'],
  ['LVA', '', 'ge', 'On the whole.'],
];

describe('the columns of a form', () => {
  it.each([
    ['MB/NC¹', 'by'],
    ['Clause No./ Subclause No./ Annex (e.g. 3.1)', 'clause'],
    ['Paragraph/ Figure/Table/Note (e.g. Table 1)', 'paragraph'],
    ['Type of com-ment²', 'type'],
    ['Comment (justification for change) by the MB', 'comment'],
    ['Proposed change by the MB', 'proposed'],
    ['Secretariat observations on each comment submitted', 'observation'],
    ['Line number (e.g. 17)', 'line'],
  ])('are known by %s', (header, meaning) => expect(columnOf(header)).toBe(meaning));
  it.each(['Priority', 'Clause title', 'Date of comment', 'Old text', 'Why it is withdrawn'])(
    'do not include %s',
    header => expect(columnOf(header)).toBeUndefined(),
  );
});

describe('a form is read as reviewers return it', () => {
  it('as a document: two tables, a merged cell, words around', async () => {
    const bytes = await docxForm([ROWS.slice(0, 3), ROWS.slice(3)]);
    expect(said('form.docx', bytes)).toEqual({ comments: WANTED, rules: [] });
  });

  it('as a workbook: a title, a merged cell, a column of their own, another sheet', async () => {
    expect(said('form.xlsx', await xlsxForm(ROWS))).toEqual({ comments: WANTED, rules: [] });
  });

  it('as csv by any separator, below a title, in UTF-8 with a mark', () => {
    const filled = ROWS.map((r, at) => (at === 1 ? ['UVA', ...r.slice(1)] : r));
    expect(said('a.csv', bytesOf(`\ufeffComments, all of them\r\n\r\n${csvOf(filled)}`)).comments).toEqual(WANTED);
  });

  it('agrees with another csv reader on quotes, line ends and empty cells', () => {
    const odd = 'MB/NC,Clause,Type,Comments\n"a ""b""",1,te,"x\r\ny"\n,,,\nc,2,ed,"1,5 m"';
    const theirs = parse(odd, { relax_column_count: true }) as string[][];
    expect(openForm('a.csv', bytesOf(odd)).grids[0]!.rows.map(r => [...r.cells])).toEqual(theirs);
  });

  it('with headings across the table, the columns numbered, and the head again on the next page', () => {
    const head = ['MB/NC', 'Line', 'Clause', 'Para', 'Type', 'Comments', 'Proposed change', 'Observations'];
    const rows = [['1', '2', '(3)', '4', '5', '(6)', '(7)', ''], ROWS[0]!, head, ROWS[3]!];
    expect(said('a.csv', bytesOf(csvOf(rows)))).toEqual({ comments: [WANTED[0], WANTED[2]], rules: [] });
  });

  it('with a head over two rows, the groups above', () => {
    const text = 'MB/NC,Location,,Type,Comments\n,Clause,Paragraph,,\nUVA,1.1,a,te,Set it.';
    expect(said('a.csv', bytesOf(text)).comments).toEqual([['UVA', '1.1', 'te', 'Set it.']]);
  });
});

describe('a bad form gets one clear finding, and no guess', () => {
  const only = (name: string, text: string, by?: string) => {
    const { comments, findings } = readForm(name, openForm(name, bytesOf(text)).grids, by);
    expect(findings).toHaveLength(1);
    return { comments, told: findings[0]!.message, rule: findings[0]!.rule };
  };

  it('without a head', () => {
    const { comments, told } = only('a.csv', 'who,what\nUVA,bad');
    expect(comments).toEqual([]);
    expect(told).toContain('has no table with the columns of the comment form');
  });

  it('with two heads that differ', () => {
    const { comments, rule } = only(
      'a.csv',
      'MB/NC,Clause,Type,Comments\nClause,MB/NC,Comments,Type\nUVA,1.1,te,Which is which?',
    );
    expect([comments, rule]).toEqual([[], 'form-two-heads']);
  });

  it('with two columns for one thing', () => {
    const { comments, told } = only('a.csv', 'MB/NC,Clause,Type,Comment,Comments\nUVA,1.1,te,x,y');
    expect(comments).toEqual([]);
    expect(told).toContain('two columns for one thing ("Comment" and "Comments")');
  });

  it('with a type that is none', () => {
    const { comments, told } = only('a.csv', 'MB/NC,Clause,Type,Comments\nUVA,1.1,tx,Set it.');
    expect(comments[0]!.type).toBeUndefined();
    expect(told).toContain('"tx" as the type of comment; write ge, te or ed');
  });

  it('where nobody is named among several who comment', () => {
    const { comments, rule } = only('a.csv', 'MB/NC,Clause,Type,Comments\nUVA,1,te,a\nLVA,2,te,b\n,3,te,c');
    expect([comments.map(c => c.by), rule]).toEqual([['UVA', 'LVA'], 'commenter-missing']);
    expect(said('a.csv', bytesOf('Clause,Type,Comments\n3,te,c'), 'OWN').comments[0]![0]).toBe('OWN');
  });

  it('is refused outright where it is damaged or of another kind', () => {
    expect(() => openForm('a.csv', bytesOf('MB/NC,Comments\n"UVA,x'))).toThrow('line 2: a quoted cell is never closed');
    expect(() => openForm('a.pdf', bytesOf('%PDF-1.7'))).toThrow('save it as .docx, .xlsx or .csv');
    expect(() => openForm('a.xlsx', bytesOf('PK\u0003\u0004 no zip'))).toThrow('not an office file');
  });
});

describe('filling in a form alters nothing else', () => {
  const fills = [
    { grid: 0, row: 1, column: 7, text: '[UVA-001] Accepted. <By> "us" & you.' },
    { grid: 0, row: 2, column: 7, text: '[UVA-002] Noted.\nTwo lines.' },
  ];

  it('a document: every byte outside two cells stays, and mammoth reads the answers', async () => {
    const bytes = await docxForm([ROWS.slice(0, 3), ROWS.slice(3)]);
    const form = openForm('form.docx', bytes);
    const last = { grid: 1, row: 1, column: 7, text: '[LVA-001] Noted.', append: true };
    const { bytes: filled, refused } = form.fill([last, ...fills]);
    expect(refused).toEqual([]);
    const [before, after] = [openZip(bytes, 'a'), openZip(filled, 'b')];
    const changed = [...before.keys()].filter(p => !Buffer.from(before.get(p)!).equals(after.get(p)!));
    expect(changed).toEqual(['word/document.xml']);
    const { value } = await mammoth.extractRawText({ buffer: Buffer.from(filled) });
    const plain = await mammoth.extractRawText({ buffer: Buffer.from(bytes) });
    const lines = (text: string) => text.split('\n').filter(l => l !== '');
    const added = ['[UVA-001] Accepted. <By> "us" & you.', '[UVA-002] Noted.', 'Two lines.', '[LVA-001] Noted.'];
    const rest = lines(value);
    for (const line of added) rest.splice(rest.lastIndexOf(line), 1);
    expect(rest).toEqual(lines(plain.value));
    expect(lines(value).indexOf('[LVA-001] Noted.')).toBe(lines(value).indexOf('Noted before.') + 1);
  });

  it('a workbook: formulas, formats, widths and the other sheet are as they were, judged by exceljs', async () => {
    const bytes = await xlsxForm(ROWS);
    const shifted = fills.map(f => ({ ...f, row: f.row + 1 }));
    const { bytes: filled, refused } = openForm('form.xlsx', bytes).fill(shifted);
    expect(refused).toEqual([]);
    const [before, after] = [openZip(bytes, 'a'), openZip(filled, 'b')];
    const changed = [...before.keys()].filter(p => !Buffer.from(before.get(p)!).equals(after.get(p)!));
    expect(changed).toEqual(['xl/worksheets/sheet1.xml']);
    const cellsOf = async (file: Uint8Array) => {
      const workbook = new ExcelJS.Workbook();
      await workbook.xlsx.load(file.slice().buffer as never);
      const cells = new Map<string, string>();
      workbook.eachSheet(sheet =>
        sheet.eachRow({ includeEmpty: true }, row =>
          row.eachCell({ includeEmpty: true }, cell => {
            cells.set(`${sheet.name} ${cell.address}`, JSON.stringify([cell.value, cell.style, cell.isMerged]));
          }),
        ),
      );
      return cells;
    };
    const [a, b] = [await cellsOf(bytes), await cellsOf(filled)];
    const differ = [...b.keys()].filter(k => a.get(k) !== b.get(k));
    expect(differ).toEqual(['Our comments H3', 'Our comments H4']);
    expect(b.get('Our comments H3')).toContain('[UVA-001] Accepted. <By>');
    expect(JSON.parse(b.get('Our comments H3')!)[1]).toEqual(JSON.parse(a.get('Our comments H3')!)[1]);
  });

  it('csv: a line that ends early gets its cells, all other bytes stay', () => {
    const text =
      'MB/NC,Line,Clause,Para,Type,Comments,Proposed change,Observations\r\n"UVA",,1,,te,"a ""b"""\r\nLVA,,2,,te,c,,\n';
    const form = openForm('a.csv', bytesOf(text));
    const { bytes } = form.fill([
      { grid: 0, row: 1, column: 7, text: '=1+1, "x"' },
      { grid: 0, row: 2, column: 7, text: 'Noted.' },
    ]);
    const filled = new TextDecoder().decode(bytes);
    expect(filled).toBe(
      text.replace('"a ""b"""', '"a ""b""",,"\'=1+1, ""x"""').replace('LVA,,2,,te,c,,', 'LVA,,2,,te,c,,Noted.'),
    );
  });

  it('a cell that is a formula, or hidden by a merge, is left alone and told', async () => {
    const workbook = new ExcelJS.Workbook();
    const sheet = workbook.addWorksheet('Form');
    sheet.addRow(['MB/NC', 'Clause', 'Type', 'Comments', 'Observations']);
    sheet.addRow(['UVA', '1.1', 'te', 'a', { formula: 'A1' }]);
    sheet.addRow(['UVA', '1.2', 'te', 'b', 'x']);
    sheet.addRow(['UVA', '1.3', 'te', 'c']);
    sheet.mergeCells('E3:E4');
    const bytes = new Uint8Array((await workbook.xlsx.writeBuffer()) as ArrayBuffer);
    const { refused } = openForm('f.xlsx', bytes).fill([1, 3].map(row => ({ grid: 0, row, column: 4, text: 'y' })));
    expect(refused.map(r => r.why).sort()).toEqual(['E2 is a formula', 'E4 is merged into E3']);
  });
});

const hasOffice = spawnSync('soffice', ['--version']).status === 0;
if (!hasOffice) process.stderr.write('Not checked: what LibreOffice shows of filled-in forms. It is not installed.\n');

describe.skipIf(!hasOffice)('LibreOffice', () => {
  it('opens both filled-in forms and shows every comment with its answer', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'fishplate-forms-'));
    const text = '[UVA-001] Accepted. By "us" & you.';
    const docx = openForm('f.docx', await docxForm([ROWS])).fill([{ grid: 0, row: 1, column: 7, text }]).bytes;
    const xlsx = openForm('f.xlsx', await xlsxForm(ROWS)).fill([{ grid: 0, row: 2, column: 7, text }]).bytes;
    writeFileSync(join(folder, 'f.docx'), docx);
    writeFileSync(join(folder, 'f2.xlsx'), xlsx);
    const profile = `-env:UserInstallation=file://${folder}/profile`;
    const run = (to: string, file: string) =>
      spawnSync('soffice', [profile, '--headless', '--convert-to', to, '--outdir', folder, join(folder, file)]);
    run('txt:Text', 'f.docx');
    run('csv', 'f2.xlsx');
    for (const file of ['f.txt', 'f2.csv']) {
      const shown = readFileSync(join(folder, file), 'utf8').replaceAll('""', '"');
      expect(shown).toContain(text);
      expect(shown).toContain('A second one of the same body.');
    }
    rmSync(folder, { recursive: true, force: true });
  }, 60_000);
});
