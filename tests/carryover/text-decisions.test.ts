import { parse } from 'csv-parse/sync';
import pptxgen from 'pptxgenjs';
import { describe, expect, it } from 'vitest';
import { type CarryDocsOptions, carryDocs } from '../../src/commands/documents/carry-docs.ts';
import { carryJobs } from '../../src/commands/jobs/carry-jobs.ts';
import { readTable } from '../../src/tables/read-table.ts';
import { writeCsv } from '../../src/tables/write-csv.ts';
import { docxOf, paragraph, partsOf, run, textsOf } from '../documents/office-files.ts';
import { fixture } from './fixture.ts';
import { memoryFiles } from './memory-files.ts';

const { joint, marks } = fixture();
const Deck = pptxgen as unknown as typeof pptxgen.default;
const SLIDE = 'ppt/slides/slide1.xml';
const DOC = 'word/document.xml';

async function deckSaying(text: string): Promise<Buffer> {
  const deck = new Deck();
  deck.addSlide().addText(text, {});
  return (await deck.write({ outputType: 'nodebuffer' })) as Buffer;
}

async function lessons() {
  return {
    '/in/a.docx': docxOf(paragraph(run('Cover: 3.4'), run('.5, paint: item 3.1.4, tap: 3.1.3.'))),
    '/in/b.md': 'Cover: **3.4.5**. Again item 3.4.5, paint item 3.1.4; items 3.1.1 to 3.1.4.\n',
    '/in/c.pptx': await deckSaying('Cover: 3.4.5 & more'),
    '/in/r.txt': 'Item 3.4.5\n\nSigned: A. Person\n',
  };
}

type Row = Record<string, string>;
const ANA = { by: 'Ana', because: 'cover & lock' };

function setUp(start: Record<string, string | Uint8Array>) {
  const { files, held, text } = memoryFiles(start);
  const carry = (more: Partial<CarryDocsOptions> = {}) =>
    carryDocs({ files, progress: () => {} }, joint, marks, { inputs: Object.keys(start), outDir: '/out', ...more });
  const asked = () => parse(text('ask.csv')!, { columns: true }) as Row[];
  /** The questionnaire as it was asked, with answers by number. */
  const answer = async (answers: Readonly<Record<string, Row>>, extra: readonly Row[] = []) => {
    await carry({ decisionsOut: 'ask.csv' });
    const rows = asked().map(r => ({ ...r, ...answers[r.number!] }));
    const all = [...rows, ...extra.map(e => ({ ...rows.find(r => r.number === e.number), ...e }))];
    held.set('ask.csv', Buffer.from(writeCsv([Object.keys(rows[0]!), ...all.map(r => Object.values(r))])));
    return carry({ decisions: 'ask.csv', decisionsOut: 'again.csv' });
  };
  return {
    files,
    held,
    text,
    carry,
    asked,
    answer,
    part: (path: string, name: string) => partsOf(held.get(path)!)[name]!,
  };
}

describe('what has to be decided in documents', () => {
  it('is asked once for all places that cite the same, the most first, and not about signed records', async () => {
    const { carry, asked } = setUp(await lessons());
    const report = await carry({ decisionsOut: 'ask.csv' });
    expect(asked().map(r => [r.number, r.lines, r.state, r.heirs])).toEqual([
      ['3.4.5', '4', 'text', '3.3.3 Cover | 3.3.4 Lock'],
      ['3.1.4', '2', 'text', ''],
      ['3.1.1 to 3.1.4', '1', 'text', expect.stringContaining('3.1.2 Base for the butt')],
      ['3.1.3', '1', 'text', '3.1.3 Tap height'],
    ]);
    expect(asked()[0]!.question).toMatch(/ Cited in: a\.docx paragraph 1; b\.md line 1; b\.md line 1 and 1 more\.$/);
    expect(report.questions.map(q => q.lines)).toEqual([4, 2, 1, 1]);
  });

  it('is another question where the title beside a number is not its own', async () => {
    const { carry, asked } = setUp({ '/in/a.md': 'See 3.4.5, 3.4.5 Cover and lock, 3.4.5 Ladder.\n' });
    await carry({ decisionsOut: 'ask.csv' });
    expect(asked().map(r => [r.number, r.title_beside, r.lines])).toEqual([
      ['3.4.5', '', '2'],
      ['3.4.5', 'Ladder', '1'],
    ]);
  });

  it('is answered for all of them: in Word a tracked change with the decision beside it', async () => {
    const { answer, part, text, held } = setUp(await lessons());
    const before = held.get('/in/r.txt');
    const report = await answer({
      '3.4.5': { answer: 'carry', heir: '3.3.3 | 3.3.4', ...ANA },
      '3.1.4': { answer: 'carry', heir: '3.1.4', ...ANA },
      '3.1.3': { answer: 'stay', ...ANA },
      '3.1.1 to 3.1.4': { answer: 'carry', heir: '3.1.1|3.1.2', ...ANA },
    });
    expect(textsOf(part('/out/a.docx', DOC), 'accepted')).toEqual([
      'Cover: 3.3.3 and 3.3.4, paint: item 3.1.4, tap: 3.1.3.',
    ]);
    expect(textsOf(part('/out/a.docx', DOC), 'rejected')).toEqual(['Cover: 3.4.5, paint: item 3.1.4, tap: 3.1.3.']);
    expect(textsOf(part('/out/a.docx', 'word/comments.xml'), 'accepted')).toEqual([
      '3.4.5 is now 3.3.3 and 3.3.4. Decided by Ana: cover & lock.',
      'Asked was: In 2024, 3.4.5 has gone to 3.3.3 Cover and 3.3.4 Lock.',
      '3.1.4 is now 3.1.4. Decided by Ana: cover & lock.',
      expect.stringMatching(/^Asked was: 3\.1\.4 is withdrawn in 2024: /),
      '3.1.3 stays, of edition 2018. Decided by Ana: cover & lock.',
      expect.stringMatching(/^Asked was: 3\.1\.3 is 3\.1\.3 Tap height in 2024 and asks more than before/),
    ]);
    expect(text('/out/b.md')).toBe(
      'Cover: **3.3.3 and 3.3.4**. Again item 3.3.3 and 3.3.4, paint item 3.1.4; items 3.1.1 and 3.1.2.\n',
    );
    expect(part('/out/c.pptx', SLIDE)).toContain('Cover: 3.3.3 and 3.3.4 &amp; more');
    expect(held.get('/out/r.txt')).toEqual(before);
    expect(report.review.map(r => [r.file, r.number])).toEqual([['r.txt', '3.4.5']]);
    expect(report.decided).toHaveLength(8);
    expect(text('/out/review.md')).toMatch(
      /# Decided\n\n8 citations\.[\s\S]*## b\.md\n\n- Line 1, \*\*3\.4\.5\*\* is now 3\.3\.3 and 3\.3\.4\. Decided by Ana: cover & lock\.\n {2}- Asked was: /,
    );
    expect(JSON.parse(text('/out/review.json')!).decided).toEqual(report.decided);
    expect(report.findings.filter(f => f.rule.startsWith('decision'))).toEqual([]);
  });

  it('stays listed where it is to be taken out, and where the place is not ours to change', async () => {
    const field = paragraph(`<w:fldSimple w:instr="REF a">${run('3.4.5')}</w:fldSimple>`, run(' paint: item 3.1.4'));
    const { answer } = setUp({ '/in/a.docx': docxOf(field), '/in/b.md': 'items 3.4.5 and .6\n' });
    const report = await answer({
      '3.4.5': { answer: 'carry', heir: '3.3.3', ...ANA },
      '3.1.4': { answer: 'drop', ...ANA },
    });
    expect(report.review.map(r => [r.file, r.number, r.outcome, r.toDo])).toEqual([
      ['a.docx', '3.4.5', 'carried', 'Write 3.3.3 for 3.4.5 by hand: it stands in a field that Word fills in (REF).'],
      ['a.docx', '3.1.4', 'withdrawn', 'Take this citation out, with what the text says of it.'],
      ['b.md', '3.4.6', 'choose', expect.any(String)],
    ]);
    expect(report.decided.map(d => [d.file, d.number])).toEqual([['b.md', '3.4.5']]);
  });

  it('may be decided otherwise for one document, by its name under state', async () => {
    const { answer, text } = setUp({ '/in/a.md': 'See 3.4.5.', '/in/b.md': 'See 3.4.5.', '/in/c.md': 'See 3.4.5.' });
    const { findings } = await answer({ '3.4.5': { answer: 'carry', heir: '3.3.3', ...ANA } }, [
      { number: '3.4.5', state: 'b.md', answer: 'carry', heir: '3.3.4', ...ANA },
      { number: '3.4.5', state: 'x.md', answer: 'carry', heir: '3.3.4', ...ANA },
    ]);
    expect(['a', 'b', 'c'].map(name => text(`/out/${name}.md`))).toEqual(['See 3.3.3.', 'See 3.3.4.', 'See 3.3.3.']);
    expect(findings.map(f => f.message)).toContain('No text cites 3.4.5 as it was decided for.');
  });

  it('is never decided where it is in doubt that a number is cited, or which edition is meant', async () => {
    const table = '| old no. |\n|---|\n| 3.4.5 |\n\n';
    const { answer, text, asked } = setUp({
      '/in/a.md': `${table}Taken from shelf 3.4.5.\n\nSee item 3.4.5 of the catalog.\n`,
    });
    const report = await answer({ '3.4.5': { answer: 'carry', heir: '3.3.3', ...ANA } });
    expect(asked().map(r => [r.number, r.lines])).toEqual([['3.4.5', '1']]);
    expect(text('/out/a.md')).toBe(`${table}Taken from shelf 3.4.5.\n\nSee item 3.3.3 of the catalog.\n`);
    expect(report.decided).toHaveLength(1);
  });

  it('is asked again once a text has changed, and of a wrong answer it is told what is wrong', async () => {
    const { answer, text, asked } = setUp({ '/in/a.md': 'See 3.4.5 and 3.1.4.' });
    const report = await answer({
      '3.4.5': { answer: 'carry', heir: '3.3.3', asked_on: 'other', ...ANA },
      '3.1.4': { answer: 'carry', heir: '9.9.9', ...ANA },
    });
    expect(text('/out/a.md')).toBe('See 3.4.5 and 3.1.4.');
    expect(report.findings.filter(f => f.rule.startsWith('decision')).map(f => f.message)).toEqual([
      'What 3.4.5 was decided on has changed since; it is asked again.',
      '9.9.9 names nothing, or not one thing, in 2024; correct heir.',
    ]);
    expect(report.answered).toEqual([]);
    expect(asked()).toHaveLength(2);
  });

  it('can be kept, and then holds for texts and not for jobs, however alike they are', async () => {
    const { answer, carry, text } = setUp({ '/in/a.md': 'See 3.4.5.' });
    const { answered } = await answer({ '3.4.5': { answer: 'carry', heir: '3.3.3', ...ANA } });
    const kept = answered.map(a => ({ ...a, date: '2024-01-01' }));
    expect(kept).toMatchObject([{ number: '3.4.5', state: 'text', verdict: 'carry' }]);
    await carry({ kept, decisionsOut: 'later.csv' });
    expect(text('/out/a.md')).toBe('See 3.3.3.');
    expect(parse(text('later.csv')!, { columns: true })).toMatchObject([{ answer: 'carry', heir: '3.3.3', by: 'Ana' }]);
    const jobs = memoryFiles({ in: 'Job,Item\nA,3.4.5\n' });
    const ports = { files: jobs.files, progress: () => {} };
    const { totals } = await carryJobs(ports, joint, marks, { input: 'in', out: 'out', kept });
    expect(totals.outcomes).toMatchObject({ choose: 1, carried: 0 });
  });

  it('comes as a workbook too, gives the same bytes again, and never over a document', async () => {
    const { carry, held, files } = setUp({ '/in/a.md': 'See 3.4.5.' });
    await carry({ decisionsOut: 'ask.xlsx' });
    const first = Buffer.from(held.get('ask.xlsx')!);
    await carry({ decisionsOut: 'ask.xlsx' });
    expect(held.get('ask.xlsx')).toEqual(first);
    const { rows } = readTable('ask.xlsx', await files.read('ask.xlsx'));
    expect(rows.map(r => r.cells.get('number'))).toEqual(['3.4.5']);
    await expect(carry({ decisionsOut: '/in/a.md' })).rejects.toMatchObject({ code: 'OutputIsInput' });
  });
});
