import { describe, expect, it } from 'vitest';
import { carryDocs } from '../../src/commands/documents/carry-docs.ts';
import { docxOf, paragraph, partsOf, run, textsOf } from '../documents/office-files.ts';
import { fixture } from './fixture.ts';
import { memoryFiles } from './memory-files.ts';

const { joint, marks } = fixture();

async function carry(name: string, file: string | Uint8Array, decisions?: string) {
  const { files, held } = memoryFiles({ [`/in/${name}`]: file, ...(decisions ? { 'ask.csv': decisions } : {}) });
  const options = { inputs: [`/in/${name}`], outDir: '/out', editions: ['2014'], decisionsOut: 'asked.csv' };
  const report = await carryDocs({ files, progress: () => {} }, joint, marks, {
    ...options,
    ...(decisions ? { decisions: 'ask.csv' } : {}),
  });
  return { report, out: held.get(`/out/${name}`)!, asked: `${held.get('asked.csv')}` };
}

describe('a number with its edition beside it', () => {
  it.each([
    ['See 3.1.1 (2018).', 'See 3.1.2 (2024).'],
    ['See 3.1.1 Base for the butt (edition 2018).', 'See 3.1.2 Base for the butt (edition 2024).'],
    ['See 3.1.1 of the 2018 edition. Then 3.2.2.', 'See 3.1.2 of the 2024 edition. Then 3.2.2.'],
    ['See the 2018 edition, item 3.1.1.', 'See the 2024 edition, item 3.1.2.'],
    ['See edition 2018, 3.1.1.', 'See edition 2024, 3.1.2.'],
    ['3.4.1 to 3.4.10 (2018)', '3.3.1 to 3.3.2 (2024)'],
    ['See 3.1.1 (2018); and 3.1.2 (2018).', 'See 3.1.2 (2024); and 3.1.1 (2024).'],
    ['3.2.2 (2018) stays', '3.2.2 (2018) stays'],
  ])('%s is carried with it, or not at all: %s', async (before, after) => {
    expect(`${(await carry('a.md', before)).out}`).toBe(after);
  });

  it.each([
    ['the name speaks for others too', 'See 3.1.2 and 3.1.1 (2018).', ['3.1.1']],
    ['so it does before them', 'See the 2018 edition, 3.1.1 and 3.1.2.', ['3.1.1']],
    ['the sentence tells of the past', 'Formerly it was 3.1.1 (2018), they say.', ['3.1.1']],
    ['the sentence tells of another edition', 'See 3.1.1 (2018), which 2014 did not have.', ['3.1.1']],
  ])('is left to a person where %s', async (_, text, numbers) => {
    const { out, report } = await carry('a.txt', text);
    const asked = report.review.filter(r => r.cause === 'reading');
    expect(asked.map(r => r.number)).toEqual(numbers);
    expect(asked[0]).toMatchObject({
      why: expect.stringContaining('But the text says that it is of 2018.'),
      toDo: 'Write 3.1.2 and name 2024 as its edition, or leave both as they are.',
    });
    expect(`${out}`).toContain('3.1.1');
  });

  it('in Word is carried as two tracked changes', async () => {
    const { out } = await carry('a.docx', docxOf(paragraph(run('See 3.1.1 ('), run('2018'), run(').'))));
    const source = partsOf(out)['word/document.xml']!;
    expect(textsOf(source, 'accepted')).toEqual(['See 3.1.2 (2024).']);
    expect(textsOf(source, 'rejected')).toEqual(['See 3.1.1 (2018).']);
  });

  it('is carried by a decision in the same way, by hand where it cannot be changed', async () => {
    const text = paragraph(
      run('See 3.4.5 (2018), '),
      `<w:fldSimple w:instr="REF a">${run('3.4.5 (2018)')}</w:fldSimple>`,
    );
    const { asked } = await carry('a.docx', docxOf(text));
    const answered = asked.replace(/,,,,\r?\n/, ',carry,3.3.3,,Ana\n');
    const { out, report } = await carry('a.docx', docxOf(text), answered);
    expect(textsOf(partsOf(out)['word/document.xml']!, 'accepted')).toEqual(['See 3.3.3 (2024), 3.4.5 (2018)']);
    expect(report.review.map(r => r.toDo)).toEqual([
      expect.stringMatching(/^Write 3\.3\.3 of 2024 for 3\.4\.5 by hand/),
    ]);
  });

  it('is in a table left to a person where the head says the edition, and stays beside numbers of the newer one', async () => {
    const left = await carry('a.md', '| 2018 | What |\n|---|---|\n| 3.1.1 | base |\n');
    expect(`${left.out}`).toContain('| 3.1.1 |');
    expect(left.report.review).toMatchObject([{ number: '3.1.1', cause: 'reading' }]);
    const table = '| 2018 | 2024 |\n|---|---|\n| 3.1.1 | 3.1.2 |\n';
    const stays = await carry('a.md', table);
    expect(`${stays.out}`).toBe(table);
    expect(stays.report.review).toEqual([]);
  });
});
