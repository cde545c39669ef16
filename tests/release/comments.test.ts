import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { answerComment } from '../../src/commands/comments/comments-answer.ts';
import { listComments } from '../../src/commands/comments/comments-list.ts';
import { readForms } from '../../src/commands/comments/comments-read.ts';
import { commentedEdition, readComments } from '../../src/commands/comments/comments-store.ts';
import { writeForm } from '../../src/commands/comments/comments-write.ts';
import { parseComments, writeComment } from '../../src/format/comment-files.ts';
import type { CommentRecord } from '../../src/model/comment.ts';
import { openZip } from '../../src/office/open-zip.ts';
import { dispositionIn, openComments } from '../../src/release/comments.ts';
import { type CitedEdition, placeComment } from '../../src/release/comments-clause.ts';
import { codeComments } from '../../src/release/comments-code.ts';
import { toldNow } from '../../src/release/comments-now.ts';
import { readTable } from '../../src/tables/read-table.ts';
import { fsck, temporaryFolder } from '../store/temp-catalog.ts';
import { docxForm, xlsxForm } from './form-files.ts';
import { catalogWithDraft, changeDraft } from './small-catalog.ts';

const HEAD = 'MB/NC,Line,Clause,Para,Type,Comments,Proposed change,Observations\n';
const csv = (...rows: string[]) => {
  const file = join(temporaryFolder(), 'form.csv');
  writeFileSync(file, HEAD + rows.join('\n'));
  return file;
};
const entry = (number: string, level = 2, title = 'Title') => ({ id: `i${number}`, number, level, title, hash: 'h' });
const DRAFT: CitedEdition = {
  name: '2030',
  entries: [entry('4', 1), entry('4.1'), entry('4.2'), entry('4.3'), entry('4.10'), entry('A-1')],
};
const OLD: CitedEdition = { name: '2018', entries: [entry('9', 1), entry('9.1', 2, 'Wooden casks and lids')] };

describe('the clause of a comment', () => {
  const placed = (clause: string, line = '', stored = false) => {
    const found = placeComment({ clause, line, stored }, DRAFT, [OLD]);
    return 'because' in found ? found.because : found.items.map(i => `${i.edition} ${i.number}`).join(', ');
  };
  it.each([
    ['4.2', '2030 4.2'],
    ['Clause 4.2.', '2030 4.2'],
    ['§ 4.2 b)', '2030 4.2'],
    ['A-1', '2030 A-1'],
    ['4.1, 4.3', '2030 4.1, 2030 4.3'],
    ['4.1 – 4.3', '2030 4.1, 2030 4.2, 2030 4.3'],
    ['2018 9.1', '2018 9.1'],
    ['edition 2018, clause 9.1', '2018 9.1'],
    ['9.1 of 2018', '2018 9.1'],
    ['2018 9.1 Wooden casks and lids', '2018 9.1'],
    ['General', ''],
    ['whole document', ''],
    ['', ''],
  ])('%s means %s', (clause, wanted) => expect(placed(clause)).toBe(wanted));

  it('is never guessed: unknown numbers, other words and numbers that a spreadsheet cut are told', () => {
    expect(placed('4.4')).toContain('2030 has no clause 4.4; the nearest are');
    expect(placed('9.1')).toContain('2030 has no clause 9.1');
    expect(placed('4.2 but not the notes')).toContain('says more than a clause');
    expect(placed('4.3 – 4.1')).toContain('says more than a clause');
    expect(placed('4.1', '', true)).toContain('may have been 4.10');
    expect(placed('', '17')).toContain('no numbered draft is on record');
  });

  it('may be a line of the numbered draft; where both are given and differ, the clause counts and that is told', () => {
    const items = DRAFT.entries.map((e, at) => ({ ...e, first: at * 10 + 1, last: at * 10 + 10 }));
    const circulation = { edition: '2030', round: 1, commit: 'c', date: '2029-01-01', items };
    const at = (clause: string, line: string) => placeComment({ clause, line }, DRAFT, [], circulation);
    expect(at('', 'line 15')).toMatchObject({ items: [{ number: '4.1' }] });
    expect(at('', '18-22')).toMatchObject({ items: [{ number: '4.1' }, { number: '4.2' }] });
    expect(at('', '999')).toMatchObject({ rule: 'line-unknown' });
    expect(at('4.3', '15')).toMatchObject({ items: [{ number: '4.3' }], note: expect.stringContaining('lies in 4.1') });
    expect(at('4.1', '15')).not.toHaveProperty('note');
  });
});

describe('an observation is an answer only where it begins with one', () => {
  it.each([
    ['Accepted.', 'accepted', ''],
    ['Accepted in part; the first half.', 'accepted-in-part', 'the first half.'],
    ['[UVA-001] Not accepted: see 4.2.', 'not-accepted', 'see 4.2.'],
    ['NOTED', 'noted', ''],
  ])('%s', (text, disposition, because) => expect(dispositionIn(text)).toEqual({ disposition, because }));
  it.each(['Accepted in principle; later.', 'Already said.', 'Not accepted by the UVA', 'Notedly', ''])(
    'but not %s',
    text => expect(dispositionIn(text)).toBeUndefined(),
  );
});

describe('reading forms into a catalog', () => {
  it('gives codes by commenter in the order of the form, and adds nothing the second time', async () => {
    const { catalog, ports, dir } = await catalogWithDraft();
    const file = csv(
      'UVA,,2.1,,te,Later.,,',
      'LVA,,1.2,,ed,Other.,,',
      'UVA,,1.1,,te,Sooner.,,',
      'uva,,,,ge,On the whole.,,',
    );
    const first = await readForms(ports, catalog, { files: [file], edition: '2030' });
    expect(first.added.map(r => [r.code, r.clause, r.items.map(i => i.id).join()])).toEqual([
      ['UVA-001', '2.1', 'w2a'],
      ['LVA-001', '1.2', 'w1b'],
      ['UVA-002', '1.1', 'w1a'],
      ['UVA-003', undefined, ''],
    ]);
    const tip = readFileSync(join(dir, 'refs/heads/main'), 'utf8');
    const again = await readForms(ports, catalog, { files: [file], edition: '2030' });
    expect([again.added.length, again.known]).toEqual([0, 4]);
    expect(readFileSync(join(dir, 'refs/heads/main'), 'utf8')).toBe(tip);
    const more = await readForms(ports, catalog, { files: [csv('UVA,,1.1,,te,One more.,,')], edition: '2030' });
    expect(more.added.map(r => r.code)).toEqual(['UVA-004']);
    fsck(dir);
  });

  it('keeps a comment whose clause is not found, unplaced, and completes it from the mended form', async () => {
    const { catalog, ports } = await catalogWithDraft();
    const bad = await readForms(ports, catalog, { files: [csv('UVA,,7.7,,zz,Set it.,,')], edition: '2030' });
    expect(bad.findings.map(f => f.rule)).toEqual(['type-unknown', 'clause-unknown']);
    expect(bad.added[0]).toMatchObject({ code: 'UVA-001', unplaced: true, items: [] });
    const good = await readForms(ports, catalog, { files: [csv('UVA,,1.1,,te,Set it.,,')], edition: '2030' });
    expect(good.added).toEqual([]);
    expect(good.mended[0]).toMatchObject({ code: 'UVA-001', clause: '1.1', type: 'te', items: [{ id: 'w1a' }] });
    expect(good.mended[0]).not.toHaveProperty('unplaced');
  });

  it('keeps what a form says twice once, and says so', async () => {
    const { catalog, ports } = await catalogWithDraft();
    const file = csv('UVA,,1.1,,te,Set it.,,', 'UVA,,1.2,,te,Set it.,,', 'UVA,,1.1,,te,Set  it.,,');
    const { added, findings } = await readForms(ports, catalog, { files: [file], edition: '2030' });
    expect(added.map(r => r.clause)).toEqual(['1.1', '1.2']);
    expect(findings.map(f => f.message)).toEqual(['Row 4 (UVA) says the same as row 2 (UVA); it is kept once.']);
  });

  it('takes observations as answers only when told that the form is its own', async () => {
    const { catalog, ports } = await catalogWithDraft();
    const file = csv('UVA,,1.1,,te,Set it.,,Accepted.', 'UVA,,1.2,,te,No.,,Already said.');
    await readForms(ports, catalog, { files: [file], edition: '2030' });
    expect((await readComments(catalog, '2030')).records.filter(r => r.answer)).toEqual([]);
    const own = await readForms(ports, catalog, { files: [file], edition: '2030', withObservations: true });
    expect(own.answered).toBe(1);
    expect(own.findings.map(f => f.rule)).toEqual(['observation-unclear']);
  });

  it('two who read at the same time do not overwrite one another', async () => {
    const { catalog, ports } = await catalogWithDraft();
    const both = ['One.', 'Two.', 'Three.'].map(text =>
      readForms(ports, catalog, { files: [csv(`UVA,,1.1,,te,${text},,`)], edition: '2030' }),
    );
    const done = await Promise.allSettled(both);
    const kept = (await readComments(catalog, '2030')).records;
    expect(kept).toHaveLength(done.filter(d => d.status === 'fulfilled').length);
    for (const d of done) if (d.status === 'rejected') expect(String(d.reason)).toContain('run the command again');
  });
});

describe('answering', () => {
  const accepted = { edition: '2030', code: 'UVA-001', disposition: 'accepted' as const };

  it('finds the comment again where numbers moved, and asks for the change that answers it', async () => {
    const { catalog, ports, dir } = await catalogWithDraft();
    const file = csv('UVA,,2.1,,te,Set it.,Say so.,', 'UVA,,3.1,,te,Out.,,', 'UVA,,2018 1.1,,te,Why?,,');
    await readForms(ports, catalog, { files: [file], edition: '2030' });
    const outline = (text: string) => JSON.stringify(['w2', 'w1'].filter(id => text.includes(id)));
    changeDraft(dir, { 'outline.json': outline, 'items/w3.json': () => '' });
    await expect(listComments(catalog, { edition: '2030' })).rejects.toThrow();
    changeDraft(dir, {
      'outline.json': () => JSON.stringify(['w2', 'w1', 'w3']),
      'items/w3.json': () => '{"id":"w3","title":"W"}',
    });
    const { comments } = await listComments(catalog, { edition: '2030' });
    expect(comments.map(toldNow)).toEqual(['1.1', 'gone', '2.1']);
    const later = { ...accepted, code: 'UVA-001' };

    const loose = await answerComment(ports, catalog, later);
    expect(loose.findings.map(f => f.rule)).toEqual(['comment-without-change']);
    const same = await answerComment(ports, catalog, { edition: '2030', code: 'uva-001', change: '1.1' });
    expect(same.findings.map(f => f.rule)).toEqual(['comment-unchanged']);
    const commit = changeDraft(dir, { 'items/w2.json': text => text.replace('Set w2.', 'Set w2 so.') });
    const now = await answerComment(ports, catalog, { edition: '2030', code: 'UVA-001', change: '1.1' });
    expect(now.findings).toEqual([]);
    const by = await answerComment(ports, catalog, { edition: '2030', code: 'UVA-001', change: commit.slice(0, 9) });
    expect(by.record.answer?.change).toEqual({ commit });
    const { open } = await listComments(catalog, { edition: '2030' });
    expect(open.map(f => f.rule)).toEqual(['comment-open', 'comment-open']);
    const under = await listComments(catalog, { edition: '2030', clause: '2' });
    expect(under.comments.map(c => c.record.code)).toEqual(['UVA-003']);
  });

  it('needs a reason for a no, refuses a second answer, and knows no change that is not in the draft', async () => {
    const { catalog, ports, dir } = await catalogWithDraft();
    await readForms(ports, catalog, { files: [csv('UVA,,9.9,,te,Set it.,,')], edition: '2030' });
    const answer = (more: object) => answerComment(ports, catalog, { ...accepted, ...more });
    await expect(answer({ disposition: 'not-accepted' })).rejects.toThrow('add --because');
    await expect(answer({ change: '7.7' })).rejects.toThrow('2030 has no item 7.7, and it is no commit');
    await expect(answer({ change: '0123456789' })).rejects.toThrow('no commit of this catalog');
    const elsewhere = readFileSync(join(dir, 'refs/heads/main'), 'utf8').trim();
    await expect(answer({ change: elsewhere })).rejects.toThrow('no commit that 2030 rests on');
    await answer({ about: '1.2', because: 'So be it.' });
    await expect(answer({})).rejects.toThrow('was answered on 2024-02-01');
    const { record } = await answer({ again: true, disposition: 'noted', because: 'After all.' });
    expect(record).toMatchObject({ items: [{ id: 'w1b' }], answer: { disposition: 'noted' } });
    await expect(answerComment(ports, catalog, { edition: '2030', code: 'UVA-010' })).rejects.toThrow(
      'nearest are UVA-001',
    );
    expect(await commentedEdition(catalog, undefined)).toBe('2030');
  });

  it.each(['docx', 'xlsx', 'csv'])(
    'is given back in the reviewer’s own %s form; again gives the same bytes',
    async kind => {
      const { catalog, ports } = await catalogWithDraft();
      const rows = [
        ['UVA', '', '1.1', '', 'te', 'Set it.', '', ''],
        ['UVA', '', '1.2', '', 'ed', 'Spell it.', '', 'A remark of ours.'],
        ['UVA', '', '2.1', '', 'ed', 'Not read.', '', ''],
      ];
      const folder = temporaryFolder();
      const [form, read] = [join(folder, `form.${kind}`), join(folder, `first.${kind}`)];
      const make = async (list: string[][]) =>
        kind === 'docx'
          ? docxForm([list])
          : kind === 'xlsx'
            ? xlsxForm(list)
            : new TextEncoder().encode(HEAD + list.map(r => r.join()).join('\n'));
      writeFileSync(read, await make(rows.slice(0, 2)));
      writeFileSync(form, await make(rows));
      await readForms(ports, catalog, { files: [read], edition: '2030' });
      await answerComment(ports, catalog, { ...accepted, disposition: 'noted', because: 'Later.' });
      const [out, twice] = [join(folder, `out.${kind}`), join(folder, `out2.${kind}`)];
      const report = await writeForm(ports, catalog, { form, out, edition: '2030' });
      expect(report).toMatchObject({ comments: 2, answered: 1 });
      expect(report.findings.map(f => f.rule)).toEqual(['comment-not-on-record']);
      await writeForm(ports, catalog, { form: out, out: twice, edition: '2030' });
      expect(readFileSync(twice).equals(readFileSync(out))).toBe(true);
      const again = await readForms(ports, catalog, { files: [out], edition: '2030', withObservations: true });
      expect([again.added.map(r => r.comment), again.known]).toEqual([['Not read.'], 2]);
      await expect(writeForm(ports, catalog, { form, out: form, edition: '2030' })).rejects.toThrow(
        'is the form itself',
      );
    },
  );
});

describe('a form without a column for observations', () => {
  const head = ['MB/NC', 'Clause', 'Type', 'Comments'];
  const rows = [['UVA', '1.1', 'te', 'Set it.']];
  const filledIn = async (name: string, bytes: Uint8Array) => {
    const { catalog, ports } = await catalogWithDraft();
    const folder = temporaryFolder();
    const [form, out] = [join(folder, name), join(folder, `out-${name}`)];
    writeFileSync(form, bytes);
    await readForms(ports, catalog, { files: [form], edition: '2030' });
    const { findings } = await writeForm(ports, catalog, { form, out, edition: '2030' });
    return { rules: findings.map(f => f.rule), bytes: readFileSync(out), before: Buffer.from(bytes) };
  };

  it('gets one at its right as csv and as a workbook', async () => {
    const csvForm = new TextEncoder().encode(`${head.join()}\n${rows[0]!.join()}\n`);
    const csvOut = await filledIn('f.csv', csvForm);
    expect(csvOut.bytes.toString()).toBe(
      `${head.join()},Observations of the secretariat\n${rows[0]!.join()},[UVA-001]\n`,
    );
    const xlsxOut = await filledIn('f.xlsx', await xlsxForm(rows, { head, title: false }));
    const read = readTable('o.xlsx', xlsxOut.bytes).rows[0]!.cells;
    expect(read.get('Observations of the secretariat')).toBe('[UVA-001]');
    expect(read.get('Priority for us')).toBe('high');
  });

  it('stays as it is as a document, and that is said', async () => {
    const { rules, bytes, before } = await filledIn('f.docx', await docxForm([rows], { head }));
    expect(rules).toEqual(['form-no-observations']);
    expect(openZip(bytes, 'a')).toEqual(openZip(before, 'b'));
  });
});

describe('records', () => {
  const record: CommentRecord = {
    code: 'UVA-001',
    edition: '2030',
    by: 'UVA',
    clause: '1.1',
    type: 'te',
    comment: 'Set it.',
    items: [{ edition: '2030', id: 'w1a', number: '1.1', hash: 'h' }],
  };

  it('come back as they were written', () => {
    const answer = {
      disposition: 'accepted' as const,
      because: '',
      by: 'N',
      date: '2029-01-01',
      change: { commit: 'c' },
    };
    for (const r of [record, { ...record, unplaced: true as const, answer }]) {
      expect(parseComments(new Map([['comments/2030/x.json', writeComment(r)]])).records).toEqual([r]);
    }
    const broken = parseComments(new Map([['comments/2030/x.json', '{"code": 1}']]));
    expect([broken.records, broken.findings[0]!.rule]).toEqual([[], 'schema']);
  });

  it('are what a release waits for until each is answered and each yes has its change', () => {
    const answer = { disposition: 'accepted' as const, because: '', by: 'N', date: '2029-01-01' };
    const rules = (r: CommentRecord) => openComments([r]).map(f => f.rule);
    expect(rules(record)).toEqual(['comment-open']);
    expect(rules({ ...record, answer })).toEqual(['comment-without-change']);
    expect(rules({ ...record, answer: { ...answer, change: { commit: 'c' } } })).toEqual([]);
    expect(rules({ ...record, answer: { ...answer, disposition: 'noted' } })).toEqual([]);
  });

  it('give out codes on from the highest, one counter for names that make one code', () => {
    const form = { file: 'f', line: 1 } as never;
    const { code: _, ...said } = record;
    const fresh = ['Upper Vale', 'UPPER-VALE'].map((by, at) => ({
      form: { ...(form as object), at } as never,
      record: { ...said, by, comment: `c${at}` },
    }));
    const { added } = codeComments(fresh, [{ ...record, code: 'UPPERVALE-009', by: 'x' }]);
    expect(added.map(r => r.code)).toEqual(['UPPERVALE-010', 'UPPERVALE-011']);
  });
});
