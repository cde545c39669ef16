import { describe, expect, it } from 'vitest';
import { carryDocs } from '../../src/commands/documents/carry-docs.ts';
import { docxOf, paragraph, partsOf, run, textsOf } from '../documents/office-files.ts';
import { fixture } from './fixture.ts';
import { memoryFiles } from './memory-files.ts';

const { joint, marks } = fixture();

async function carry(name: string, file: string | Uint8Array) {
  const { files, held } = memoryFiles({ [`/in/${name}`]: file });
  const options = { inputs: [`/in/${name}`], outDir: '/out', editions: ['2014'] };
  const report = await carryDocs({ files, progress: () => {} }, joint, marks, options);
  return { out: held.get(`/out/${name}`)!, review: report.review, outcomes: report.documents[0]!.outcomes };
}

type Rows = readonly (readonly string[])[];
const KINDS: readonly [string, (rows: Rows) => string | Uint8Array, (out: Buffer) => readonly string[]][] = [
  [
    'a.md',
    rows => [rows[0]!, rows[0]!.map(() => '---'), ...rows.slice(1)].map(r => `| ${r.join(' | ')} |`).join('\n'),
    out => `${out}`.match(/\d\.\d\.\d/g)!,
  ],
  [
    'a.html',
    rows => `<table>${rows.map(r => `<tr>${r.map(c => `<td>${c}</td>`).join('')}</tr>`).join('')}</table>`,
    out => `${out}`.match(/\d\.\d\.\d/g)!,
  ],
  [
    'a.docx',
    rows => {
      const cells = (row: readonly string[]) => row.map(c => `<w:tc>${paragraph(run(c))}</w:tc>`).join('');
      return docxOf(`<w:tbl>${rows.map(r => `<w:tr>${cells(r)}</w:tr>`).join('')}</w:tbl>`);
    },
    out =>
      textsOf(partsOf(out)['word/document.xml']!, 'accepted')
        .join(' ')
        .match(/\d\.\d\.\d/g)!,
  ],
];

describe.each(KINDS)('a table by editions in %s', (name, write, numbersIn) => {
  it('is carried only in the column of the edition that is carried from', async () => {
    const { out, review, outcomes } = await carry(
      name,
      write([
        ['2014', 'Item'],
        ['3.1.1', '3.1.1'],
      ]),
    );
    expect(numbersIn(out)).toEqual(['3.1.1', '3.1.2']);
    expect(review).toMatchObject([{ number: '3.1.1', edition: '2014', cause: 'other-edition' }]);
    expect(outcomes).toMatchObject({ carried: 1, unknown: 1 });
  });

  it('has nothing to do where a column is of the newer edition already, if that prints the number', async () => {
    const { out, review, outcomes } = await carry(
      name,
      write([
        ['Edition 2024', 'Item'],
        ['3.1.1', '3.2.2'],
        ['3.4.1', '3.2.2'],
      ]),
    );
    expect(numbersIn(out)).toEqual(['3.1.1', '3.2.2', '3.4.1', '3.2.2']);
    expect(outcomes).toMatchObject({ kept: 3, unknown: 1 });
    expect(review.map(r => [r.number, r.why])).toEqual([['3.4.1', 'Edition 2024 has no 3.4.1.']]);
  });

  it('is left to a person where its heads say old and new, for nobody can say which editions these are', async () => {
    const { out, review } = await carry(
      name,
      write([
        ['Old no.', 'new number', 'before covering, item'],
        ['3.1.1', '3.1.2', '3.1.1'],
      ]),
    );
    expect(numbersIn(out)).toEqual(['3.1.1', '3.1.2', '3.1.2']);
    expect(review.map(r => [r.number, r.outcome, r.cause])).toEqual([
      ['3.1.1', 'choose', 'reading'],
      ['3.1.2', 'choose', 'reading'],
    ]);
    expect(review[0]!.why).toMatch(
      /^The head of its column, “Old no.”, does not say which edition it is of\. 3\.1\.1 is/,
    );
  });
});
