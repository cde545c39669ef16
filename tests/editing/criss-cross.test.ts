import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { branchOf } from '../../src/commands/drafts/branch-draft.ts';
import { operateOnDraft, type WrittenOperation } from '../../src/commands/drafts/draft-operations.ts';
import { finishMerge } from '../../src/commands/drafts/finish-merge.ts';
import { mergeDraft } from '../../src/commands/drafts/merge-draft.ts';
import { readDraft } from '../../src/commands/drafts/read-draft.ts';
import type { Side } from '../../src/editing/merging/three-way.ts';
import { openForWriting } from '../../src/store/open.ts';
import { testPorts } from '../demo-catalog.ts';
import { nativeGit } from '../store/temp-catalog.ts';
import { smallWorks } from '../web/small-works.ts';

const ITEMS = ['w1.1', 'r1.1.1', 'r1.1.2', 'r1.1.3'];
const reword = (text: string, id = 'r1.1.1'): WrittenOperation => ({ op: 'reword', id, to: { text } });

let works: string;
afterEach(() => rmSync(dirname(works), { recursive: true, force: true }));

/** Two branches of a draft, each of which did its own work, took in the other's, and settled conflicts its own way. */
async function crissCross(left: WrittenOperation, right: WrittenOperation) {
  works = await smallWorks();
  const ports = { ...testPorts('criss cross'), author: { name: 'Rowan', email: 'rowan@example.org' } };
  const work = async (draft: string, ...operations: WrittenOperation[]) =>
    operateOnDraft(ports, await openForWriting(works), { draft, operations });
  const merge = async (branch: string, into: string, side?: Side) => {
    const takes = new Map(side ? ITEMS.map(id => [id, side] as const) : []);
    return mergeDraft(ports, await openForWriting(works), { branch, into, takes });
  };
  for (const name of ['left', 'right']) await branchOf(await openForWriting(works), name, '2030');
  await work('left', left);
  await work('right', right);
  await merge('right', 'left', 'ours');
  const taken = nativeGit(works, 'rev-parse', 'left').trim();
  nativeGit(works, 'branch', '-f', 'left', 'left^1');
  await merge('left', 'right', 'ours');
  nativeGit(works, 'branch', '-f', 'left', taken);
  const find = async (id: string) =>
    (await readDraft(await openForWriting(works), 'left')).state.items.find(i => i.id === id);
  return { work, merge, find };
}

describe('two branches that took in each other', () => {
  it('and settled a conflict each its own way are in conflict still', async () => {
    const { merge, find } = await crissCross(reword('Left says so.'), reword('Right says so.'));
    expect((await merge('right', 'left')).conflicts).toMatchObject([
      { about: 'r1.1.1', what: 'text', ours: 'Left says so.', theirs: 'Right says so.' },
    ]);
    expect((await merge('right', 'left', 'theirs')).merged).toBe(true);
    expect((await find('r1.1.1'))?.text).toBe('Right says so.');
  });

  it('and of which one ended what the other reworded are in conflict still', async () => {
    const ends: WrittenOperation = { op: 'withdraw', id: 'r1.1.1', reason: 'obsolete' };
    const { merge, find } = await crissCross(ends, reword('Still needed.'));
    expect((await merge('right', 'left')).conflicts).toMatchObject([{ about: 'r1.1.1', what: 'gone' }]);
    expect((await merge('right', 'left', 'theirs')).merged).toBe(true);
    expect((await find('r1.1.1'))?.text).toBe('Still needed.');
  });

  it('and ordered the same things differently are in conflict still', async () => {
    const { merge } = await crissCross(
      { op: 'move', id: 'r1.1.3', under: 'w1.1', after: null },
      { op: 'move', id: 'r1.1.1', under: 'w1.1', after: 'r1.1.2' },
    );
    expect((await merge('right', 'left')).conflicts).toMatchObject([{ about: 'w1.1', what: 'order' }]);
  });

  it('and agree go on without a conflict, also where one works on what came from the other', async () => {
    const { work, merge, find } = await crissCross(reword('Left says so.'), reword('Right says so.', 'r1.1.2'));
    await work('left', reword('Left says more.', 'r1.1.2'));
    await work('right', reword('Right says more.'));
    expect((await merge('right', 'left')).conflicts).toEqual([]);
    expect([(await find('r1.1.1'))?.text, (await find('r1.1.2'))?.text]).toEqual([
      'Right says more.',
      'Left says more.',
    ]);
  });

  it('are in conflict for a native git merge as well', async () => {
    await crissCross(reword('Left says so.'), reword('Right says so.'));
    const clone = join(dirname(works), 'clone');
    nativeGit(dirname(works), 'clone', '-q', '-b', 'left', works, clone);
    spawnSync('git', ['merge', '-q', '--no-commit', 'origin/right'], { cwd: clone });
    expect((await finishMerge(clone, {})).conflicts).toMatchObject([{ about: 'r1.1.1', what: 'text' }]);
  });
});
