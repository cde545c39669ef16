import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { logDraft } from '../../src/commands/drafts/draft-log.ts';
import { readDraft } from '../../src/commands/drafts/read-draft.ts';
import { undoOperation } from '../../src/commands/drafts/undo-operation.ts';
import { answerFixedQuestions, readGivenAnswers } from '../../src/commands/releasing/answer-fixed-questions.ts';
import { askFixedQuestions } from '../../src/commands/releasing/ask-fixed-questions.ts';
import { setDates } from '../../src/commands/releasing/schedule.ts';
import { type RawFs, realFs } from '../../src/store/durable-fs.ts';
import { openForWriting } from '../../src/store/open.ts';
import { publishEdition } from '../../src/store/publish.ts';
import { AUTHOR, smallEdition } from '../store/temp-catalog.ts';
import { catalogWithDraft } from './small-catalog.ts';

it('whoever answers about an item while somebody else does is told, and writes nothing over', async () => {
  const { catalog, ports, dir } = await catalogWithDraft();
  const { lines } = await askFixedQuestions(ports, catalog, { edition: '2030' });
  const [one, other] = lines.filter(l => l.question.of === 'requirement').map(l => l.item);
  const answer = (item: string, question: string, at = catalog) =>
    answerFixedQuestions(ports, at, '2030', [{ item, question, answer: 'yes', because: 'seen' }]);
  let reads = 0;
  let before: number | undefined;
  /** Lets work in between when main is read for the last time before it is written. */
  const watched = async (between: () => Promise<unknown>) => {
    const readFile = async (path: string, ...rest: unknown[]) => {
      if (path.endsWith('heads/main') && ++reads === before) await between();
      return (realFs.readFile as (...all: unknown[]) => Promise<unknown>)(path, ...rest);
    };
    return openForWriting(dir, { ...realFs, readFile } as RawFs);
  };
  const first = await watched(async () => {});
  reads = 0;
  await answer(other!, 'singular', first);
  // The lock asks once more what main is: the last reading before it is the one that the commit is built on.
  before = reads - 1;
  const second = await watched(() => answer(one!, 'verifiable'));
  reads = 0;
  await expect(answer(one!, 'singular', second)).rejects.toThrow(
    /was written by somebody else in the meantime; run the command again\.$/,
  );
  before = undefined;
  await answer(one!, 'singular');
  const now = (await askFixedQuestions(ports, catalog, { edition: '2030' })).lines.filter(l => l.item === one);
  expect(now.filter(l => l.state === 'yes').map(l => l.question.code)).toEqual(['singular', 'verifiable']);
});

it('two answers to one question in one table are refused with both lines, although one names the item by its id', async () => {
  const { catalog, ports, dir } = await catalogWithDraft();
  const file = join(dir, '..', 'answers.csv');
  writeFileSync(
    file,
    'item,question,answer,because\n1.1,singular,yes,\n1.1,verifiable,yes,\nw1a,singular,no,two duties\n',
  );
  const given = await readGivenAnswers(ports, file);
  await expect(answerFixedQuestions(ports, catalog, '2030', given)).rejects.toMatchObject({
    message: expect.stringMatching(/^w1a singular is answered on line 2 already; leave one of the two\./),
    findings: [{ place: { file, line: 4 } }],
  });
  const { lines } = await askFixedQuestions(ports, catalog, { edition: '2030' });
  expect(lines.filter(l => l.answer)).toEqual([]);
});

it('an answer about a number that two items print is asked for by id, and not given to the first of them', async () => {
  const { catalog, ports } = await catalogWithDraft();
  const edition = smallEdition('2019', '2018', 'Set');
  const items = edition.items.map(i => (i.id === 'w2a' ? { ...i, number: '1.1' } : i));
  const numbering = { levels: [{ style: 'printed' }, { style: 'printed' }], numbersUnique: false } as const;
  const settings = { ...edition.settings, numbering };
  await publishEdition(catalog, { ...edition, items, settings }, AUTHOR, 'Edition 2019');
  const given = [{ item: '1.1', question: 'singular', answer: 'yes', because: '' }];
  await expect(answerFixedQuestions(ports, catalog, '2019', given)).rejects.toThrow(
    /^1\.1 is the number of w1a and w2a; give the id of the one that is meant\./,
  );
});

it('a day that is set is a step of work like any other: on record, and taken back', async () => {
  const { catalog, ports } = await catalogWithDraft();
  const before = (await readDraft(catalog, '2030')).header.dates;
  await setDates(ports, catalog, '2030', ['effective=2030-01-01', 'comment-opens=2029-01-10']);
  expect((await readDraft(catalog, '2030')).header.dates).toEqual({
    ...before,
    effective: '2030-01-01',
    commentOpens: '2029-01-10',
  });
  expect((await logDraft(catalog, '2030'))[0]).toMatchObject({
    did: 'Set days: effective 2030-01-01, commentOpens 2029-01-10',
    kind: 'operation',
  });
  await undoOperation(ports, catalog, { draft: '2030' });
  expect((await readDraft(catalog, '2030')).header.dates).toEqual(before);
});
