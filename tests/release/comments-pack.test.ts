import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import ExcelJS from 'exceljs';
import mammoth from 'mammoth';
import { describe, expect, it } from 'vitest';
import { answerComment } from '../../src/commands/comments/comments-answer.ts';
import { openForm } from '../../src/commands/comments/comments-files.ts';
import { packDraft } from '../../src/commands/comments/comments-pack.ts';
import { readForms } from '../../src/commands/comments/comments-read.ts';
import { replyToComments } from '../../src/commands/comments/comments-reply.ts';
import { readComments } from '../../src/commands/comments/comments-store.ts';
import { openForWriting } from '../../src/store/open.ts';
import { readTable } from '../../src/tables/read-table.ts';
import { copyOfDemoCatalog, testPorts } from '../demo-catalog.ts';
import { temporaryFolder } from '../store/temp-catalog.ts';
import { catalogWithDraft, changeDraft } from './small-catalog.ts';

describe('a draft sent out for comment', () => {
  it('has its lines numbered, and a comment on a line is found again when the clause has moved', async () => {
    const { catalog, ports, dir } = await catalogWithDraft();
    const out = temporaryFolder();
    const first = await packDraft(ports, catalog, { draft: '2030', out });
    expect(first).toMatchObject({ round: 1, again: false, withdrawn: 0 });
    const { circulations } = await readComments(catalog, '2030');
    const line = circulations[0]!.items.find(i => i.id === 'w2a')!;
    changeDraft(dir, { 'outline.json': () => JSON.stringify(['w2', 'w1', 'w3']) });
    const form = join(out, 'form.csv');
    writeFileSync(form, `MB/NC,Line,Clause,Type,Comments\nUVA,${line.last},,te,This line.\nUVA,,2.1,te,By clause.\n`);
    const { added } = await readForms(ports, catalog, { files: [form], edition: '2030' });
    expect(added.map(r => [r.round, r.items.map(i => i.id)])).toEqual([
      [1, ['w2a']],
      [1, ['w2a']],
    ]);
    expect(await packDraft(ports, catalog, { draft: '2030', out })).toMatchObject({ round: 2, again: false });
    expect(await packDraft(ports, catalog, { draft: '2030', out })).toMatchObject({ round: 2, again: true });
    const later = await readForms(ports, catalog, { files: [form], edition: '2030', round: 2 });
    expect(later.added.map(r => r.items[0]!.id)).toEqual(['w1a', 'w1a']);
    await expect(readForms(ports, catalog, { files: [form], edition: '2030', round: 9 })).rejects.toThrow('are 1, 2');
  });

  it('has every sheet and the table of withdrawals as a form: an objection to either is read', async () => {
    const catalog = await openForWriting(await copyOfDemoCatalog());
    const [ports, out] = [testPorts(), temporaryFolder()];
    await packDraft(ports, catalog, { draft: '2024', out, part: '3' });
    const xlsx = join(out, '2024-part-3.xlsx');
    const workbook = new ExcelJS.Workbook();
    await workbook.xlsx.readFile(xlsx);
    const fill = (sheet: string, row: number, said: Record<string, string>) => {
      const head = workbook.getWorksheet(sheet)!.getRow(1).values as string[];
      for (const [name, text] of Object.entries(said)) {
        workbook
          .getWorksheet(sheet)!
          .getRow(row)
          .getCell(head.findIndex(h => h?.startsWith(name))).value = text;
      }
      return String(
        workbook
          .getWorksheet(sheet)!
          .getRow(row)
          .getCell(head.findIndex(h => h?.startsWith('Clause'))).value,
      );
    };
    const gone = fill('Withdrawn', 2, { 'MB/NC': 'UVA', Type: 'te', Comments: 'Keep it.' });
    const link = fill('Links', 4, { 'MB/NC': 'UVA', Type: 'te', Comments: 'No heir of it.' });
    const item = fill('Edition', 5, { 'MB/NC': 'UVA', Type: 'ed', 'Proposed change': 'Better words.' });
    await workbook.xlsx.writeFile(xlsx);
    const read = await readForms(ports, catalog, { files: [xlsx], edition: '2024' });
    expect(read.findings.filter(f => f.severity !== 'note')).toEqual([]);
    expect(read.added.map(r => r.clause).sort()).toEqual([gone, item, link].sort());
    expect(
      read.added
        .find(r => r.clause === link)!
        .items.map(i => i.edition)
        .sort(),
    ).toEqual(['2018', '2024']);

    const docx = join(out, '2024-part-3.docx');
    const form = openForm(docx, readFileSync(docx));
    expect(form.grids).toHaveLength(3);
    const filled = ['LVA', 'te', 'Keep this, too.'].map((text, at) => ({
      grid: 1,
      row: 1,
      column: [0, 4, 5][at]!,
      text,
    }));
    writeFileSync(docx, form.fill(filled).bytes);
    const more = await readForms(ports, catalog, { files: [docx], edition: '2024' });
    expect(more.added.map(r => [r.by, r.clause, r.items.length])).toEqual([['LVA', gone, 1]]);
  });

  it('shows each old text beside the new one, with the reason on record, and gives the same bytes again', async () => {
    const catalog = await openForWriting(await copyOfDemoCatalog());
    const [ports, out] = [testPorts(), temporaryFolder()];
    await packDraft(ports, catalog, { draft: '2024', out, part: '3' });
    const bytes = ['docx', 'xlsx'].map(kind => readFileSync(join(out, `2024-part-3.${kind}`)));
    const { value } = await mammoth.extractRawText({ buffer: bytes[0]! });
    const draft = readTable('d.xlsx', bytes[1]!);
    expect(draft.columns[0]).toBe('MB/NC');
    expect(value).toContain('2018 8.1.1.1 Level of inlet');
    expect(value).toContain('What governs then: ');
    await packDraft(ports, catalog, { draft: '2024', out, part: '3' });
    expect(
      ['docx', 'xlsx'].map(kind =>
        readFileSync(join(out, `2024-part-3.${kind}`)).equals(bytes[kind === 'docx' ? 0 : 1]!),
      ),
    ).toEqual([true, true]);
    await expect(packDraft(ports, catalog, { draft: '2024', out, part: '99' })).rejects.toThrow(
      'its parts are 1, 2, 3',
    );
    await expect(packDraft(ports, catalog, { draft: '2014', out })).rejects.toThrow('replaces no edition');
  });
});

describe('replies', () => {
  it('are one for each commenter, with every comment and its answer, as document or csv', async () => {
    const { catalog, ports } = await catalogWithDraft();
    const out = temporaryFolder();
    const form = join(out, 'form.csv');
    writeFileSync(form, 'MB/NC,Clause,Type,Comments\nUVA,1.1,te,=First.\nUVA,1.2,te,Second.\nLVA,2,ed,Third.\n');
    await readForms(ports, catalog, { files: [form], edition: '2030' });
    const answer = {
      edition: '2030',
      code: 'UVA-001',
      disposition: 'accepted' as const,
      because: 'Right.',
      change: '2.1',
    };
    await answerComment(ports, catalog, answer);
    const csv = await replyToComments(ports, catalog, { edition: '2030', out, format: 'csv' });
    expect([csv.files.map(f => f.slice(out.length + 1)), csv.open]).toEqual([['reply-lva.csv', 'reply-uva.csv'], 2]);
    const rows = readTable('r.csv', readFileSync(csv.files[1]!)).rows.map(r => [...r.cells.values()]);
    expect(rows[0]).toEqual(['UVA-001', '1.1', '1.1', 'te', "'=First.", '', 'Accepted', 'Right. See 2.1.']);
    expect(rows[1]!.slice(-2)).toEqual(['Not answered yet', '']);
    const docx = await replyToComments(ports, catalog, { edition: '2030', out, format: 'docx', by: 'uva' });
    expect(docx.files).toHaveLength(1);
    const { value } = await mammoth.extractRawText({ path: docx.files[0]! });
    for (const said of ['Reply to UVA', 'UVA-001', '=First.', 'Right. See 2.1.', 'Not answered yet']) {
      expect(value).toContain(said);
    }
  });
});
