import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { type CarryDocsOptions, carryDocs } from '../../src/commands/documents/carry-docs.ts';
import { writeCsv } from '../../src/tables/write-csv.ts';
import { customProperty, docxOf, paragraph, partsOf, run, textsOf } from '../documents/office-files.ts';
import { fixture } from './fixture.ts';
import { memoryFiles } from './memory-files.ts';

const { joint, marks } = fixture();
const LESSON = `---
title: Storage
edition: 2018
---

# Storage (2018)

All numbers are those of the 2018 edition. In 2018 we had no tap. See 3.1.1 for the base.

The 2018 edition was a thick one, and 3.2.2 was in it.
`;
const STYLED = '<w:pPr><w:pStyle w:val="Heading1"/></w:pPr>';

function setUp(start: Record<string, string | Uint8Array>) {
  const { files, held, text } = memoryFiles(start);
  const carry = (more: Partial<CarryDocsOptions> = {}) =>
    carryDocs({ files, progress: () => {} }, joint, marks, { inputs: Object.keys(start), outDir: '/out', ...more });
  const decide = async (more: Readonly<Record<string, string>> = {}) => {
    await carry({ decisionsOut: 'ask.csv' });
    const rows = parse(text('ask.csv')!, { columns: true }) as Record<string, string>[];
    const row = {
      ...rows.find(r => r.number === 'edition 2018')!,
      answer: 'carry',
      by: 'Ana',
      because: 'done',
      ...more,
    };
    held.set('ask.csv', Buffer.from(writeCsv([Object.keys(row), Object.values(row)])));
    return { asked: rows, report: await carry({ decisions: 'ask.csv' }) };
  };
  return { held, text, carry, decide, part: (path: string, name: string) => partsOf(held.get(path)!)[name]! };
}

describe('what a document says of the edition that it follows', () => {
  it('is listed and never rewritten by itself, with what is rewritten and what is still open', async () => {
    const { carry, text } = setUp({ '/in/a.md': LESSON });
    const { marks: left, findings, documents } = await carry();
    expect(text('/out/a.md')).toBe(LESSON.replace('3.1.1', '3.1.2'));
    expect(left.map(m => [m.place, m.text])).toEqual([
      ['front matter', 'edition: 2018'],
      ['line 6', 'Storage (2018)'],
      ['line 8', expect.stringMatching(/^All numbers are those of the 2018 edition\. In 2018/)],
    ]);
    expect(left[0]).toMatchObject({
      why: 'It says that the text follows 2018; 1 number is rewritten for 2024, and nothing is left to be looked at.',
      toDo: 'Write 2024, or say which numbers are of which edition.',
    });
    expect(findings.filter(f => f.rule === 'edition-mark')).toHaveLength(3);
    expect(JSON.parse(text('/out/a.md.fishplate.json')!).marks).toEqual(
      left.map(({ place, text: t }) => ({ place, text: t })),
    );
    expect(text('/out/review.md')).toContain(
      '# Which edition the texts say that they follow\n\n## a.md\n\n- Front matter: It says',
    );
    expect(documents[0]!.rewritten).toBe(1);
  });

  it('is asked once for all documents, and rewritten where nothing is left to be looked at', async () => {
    const { decide, text } = setUp({
      '/in/a.md': LESSON,
      '/in/b.md': `${LESSON}And 3.4.5.\n`,
      '/in/c.txt': 'See 3.1.1.',
    });
    const { asked, report } = await decide();
    expect(asked.map(r => [r.number, r.lines, r.heirs])).toEqual([
      ['edition 2018', '6', '2024'],
      ['3.4.5', '1', '3.3.3 Cover | 3.3.4 Lock'],
    ]);
    expect(text('/out/a.md')).toBe(
      LESSON.replace('3.1.1', '3.1.2')
        .replace(': 2018', ': 2024')
        .replace('(2018)', '(2024)')
        .replace('the 2018', 'the 2024'),
    );
    expect(text('/out/b.md')).toContain('edition: 2018');
    expect(report.marks.map(m => m.file)).toEqual(['b.md', 'b.md', 'b.md']);
    expect(report.marks[0]!.toDo).toBe(
      'Once nothing is left to be looked at, write 2024, or say which numbers are of which edition. Decided by Ana: done.',
    );
    expect(text('/out/a.md.fishplate.json')).not.toContain('marks');
    expect(report.findings.filter(f => f.rule.startsWith('decision'))).toEqual([]);
  });

  it('is left to a person in a sentence that tells of the edition, decided or not', async () => {
    const text =
      'a\n\nb\n\nc\n\nThe 2018 edition was thicker. See 3.1.1.\n\nThese notes follow edition 2018. See 3.2.2.\n';
    const { decide, text: out } = setUp({ '/in/a.txt': text });
    const { report } = await decide();
    expect(out('/out/a.txt')).toBe(text.replace('3.1.1', '3.1.2').replace('edition 2018', 'edition 2024'));
    expect(report.marks.map(m => [m.line, m.toDo])).toEqual([
      [7, 'Write 2024, or say which numbers are of which edition. Decided by Ana: done.'],
    ]);
  });

  it('is not asked again once somebody said that it stays', async () => {
    const { decide, text } = setUp({ '/in/a.md': LESSON });
    const { report } = await decide({ answer: 'stay' });
    expect(text('/out/a.md')).toContain('# Storage (2018)');
    expect(report.marks).toEqual([]);
  });

  it('in Word is found in headings and headers, and is a comment or, decided, a tracked change', async () => {
    const body = `<w:p>${STYLED}${run('Storage, edition 2018')}</w:p>${paragraph(run('See 3.1.1.'))}`;
    const header = paragraph(run('Edition '), run('2018'));
    const { carry, decide, part } = setUp({
      '/in/a.docx': docxOf(body, { header }, customProperty('edition', '2018')),
    });
    const { marks: left } = await carry();
    expect(left.map(m => m.place)).toEqual(['document property', 'heading “Storage, edition 2018”', 'header']);
    expect(textsOf(part('/out/a.docx', 'word/comments.xml'), 'accepted')).toEqual([
      expect.stringMatching(/^It says that the text follows 2018; 1 number is rewritten/),
      'To do: Write 2024, or say which numbers are of which edition.',
      'About the header:',
      expect.stringMatching(/^It says/),
      expect.stringMatching(/^To do/),
    ]);
    const { report } = await decide();
    expect(textsOf(part('/out/a.docx', 'word/document.xml'), 'accepted')).toEqual([
      'Storage, edition 2024',
      'See 3.1.2.',
    ]);
    expect(textsOf(part('/out/a.docx', 'word/header.xml'), 'rejected')).toEqual(['Edition 2018']);
    expect(textsOf(part('/out/a.docx', 'word/header.xml'), 'accepted')).toEqual(['Edition 2024']);
    expect(report.marks.map(m => m.place)).toEqual(['document property']);
  });

  it('is found in the first lines, and wherever the catalog is named', async () => {
    const rest = 'We meet at nine. Bring boots.';
    const named = 'From Workmanship Requirements for Rainwater Retrofits, 2018 edition';
    const text = ['Course notes, 2018 edition', rest, rest, rest, 'The 2018 edition was thick.', named].join('\n\n');
    const { carry } = setUp({ '/in/a.txt': text });
    const { marks: left } = await carry();
    expect(left.map(m => m.text)).toEqual(['Course notes, 2018 edition', named]);
  });

  it.each([
    ['signed records', `${LESSON}\nSigned: A. Person\n`],
    ['texts of another edition', LESSON.replace('edition: 2018', 'edition: 2014')],
    ['years that are no edition', '# Storage in 2018\n\nSince 2018 see 3.1.1.\n'],
  ])('is not sought in %s', async (_, text) => {
    const { carry } = setUp({ '/in/a.md': text });
    const { marks: left, questions } = await carry();
    expect([left, questions.filter(q => q.number.startsWith('edition'))]).toEqual([[], []]);
  });
});
