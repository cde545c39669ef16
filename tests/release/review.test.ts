import { expect, it } from 'vitest';
import { answerReview } from '../../src/commands/answer-review.ts';
import { logDraft } from '../../src/commands/draft-log.ts';
import { readDraft } from '../../src/commands/read-draft.ts';
import { reviewLines } from '../../src/commands/review-edition.ts';
import { setDates } from '../../src/commands/schedule.ts';
import { undoOperation } from '../../src/commands/undo-operation.ts';
import { type RawFs, realFs } from '../../src/store/durable-fs.ts';
import { openForWriting } from '../../src/store/open.ts';
import { catalogWithDraft } from './small-catalog.ts';

it('whoever answers about an item while somebody else does is told, and writes nothing over', async () => {
  const { catalog, ports, dir } = await catalogWithDraft();
  const { lines } = await reviewLines(ports, catalog, { edition: '2030' });
  const [one, other] = lines.filter(l => l.question.of === 'requirement').map(l => l.item);
  const answer = (item: string, question: string, at = catalog) =>
    answerReview(ports, at, '2030', [{ item, question, answer: 'yes', because: 'seen' }]);
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
  const now = (await reviewLines(ports, catalog, { edition: '2030' })).lines.filter(l => l.item === one);
  expect(now.filter(l => l.state === 'yes').map(l => l.question.code)).toEqual(['singular', 'verifiable']);
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
