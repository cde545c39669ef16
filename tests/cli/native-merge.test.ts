import { spawnSync } from 'node:child_process';
import { appendFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fsck, nativeGit, temporaryFolder } from '../store/temp-catalog.ts';
import { MAIN } from './run-cli.ts';
import { fishplateIn as fishplate, fishplateHere } from './run-here.ts';

const OLD = `number,level,parent,title,text
1,Part,,Storage,
1.1,Work item,1,Butts,
1.1.1,Requirement,1.1,Base,Set the butt on a level base.
1.1.2,Requirement,1.1,Overflow,The overflow shall carry at least 1.5 L/s.
2,Part,,Cisterns,
2.1,Work item,2,Tanks,
2.1.1,Requirement,2.1,Base,Set the cistern on a level base.
`;

/** A catalog whose draft two people have worked on, and a clone in which the driver is set up. */
async function clone(mine: string[][], other: string[][]) {
  const dir = temporaryFolder();
  const [works, work] = [join(dir, 'catalog.git'), join(dir, 'work')];
  const run = (...args: string[]) => fishplateHere('--catalog', works, '--author', 'Rowan <r@example.org>', ...args);
  writeFileSync(join(dir, 'old.csv'), OLD);
  await run('import', join(dir, 'old.csv'), '--edition', '2024');
  await run('draft', 'open', '2030', '--renumber');
  await run('draft', 'branch', 'roofs');
  for (const args of mine) await run('draft', ...args, '--in', '2030');
  for (const args of other) await run('draft', ...args, '--in', 'roofs');
  nativeGit(dir, 'clone', '-q', '-b', 'draft/2030', works, work);
  nativeGit(work, 'config', 'merge.fishplate.driver', `"${process.execPath}" "${MAIN}" draft driver %O %A %B`);
  appendFileSync(join(work, '.git', 'info', 'attributes'), '*.json merge=fishplate\n');
  const merge = spawnSync('git', ['merge', '-q', '--no-commit', 'origin/roofs'], { cwd: work, encoding: 'utf8' });
  return { works, work, merge, run };
}

describe('a native git merge of two people’s work on a draft', () => {
  it('merges by the driver what both changed in one file, and the commit is a draft that reads back', async () => {
    const { works, work, merge, run } = await clone(
      [['reword', '1.1.1', '--text', 'Set the butt on a level base of stone.']],
      [['reword', '1.1.2', '--text', 'The overflow shall carry at least 2 L/s.']],
    );
    expect(merge.status).toBe(0);
    nativeGit(work, 'commit', '-qm', 'Merge');
    nativeGit(work, 'push', '-q', 'origin', 'draft/2030');
    const shown = [(await run('draft', 'show', '1.1.1')).stdout, (await run('draft', 'show', '1.1.2')).stdout];
    expect(shown).toEqual([expect.stringContaining('of stone.'), expect.stringContaining('at least 2 L/s.')]);
    fsck(works);
  });

  it('moved there and reworded here: no reader takes the file for an item until --finish merges all three states', async () => {
    const { works, work, merge, run } = await clone(
      [['move', '1.1.2', '--under', '2.1']],
      [['reword', '1.1.2', '--text', 'The overflow shall carry at least 2 L/s.']],
    );
    expect([merge.status, nativeGit(work, 'diff', '--name-only', '--diff-filter=U')]).toEqual([
      1,
      expect.stringMatching(/^items\//),
    ]);
    const finished = await fishplate(work, 'draft', 'merge', '--finish');
    expect(finished).toMatchObject({ status: 0, stdout: expect.stringMatching(/^Merged by items/) });
    nativeGit(work, 'add', '-A');
    nativeGit(work, 'commit', '-qm', 'Merge');
    nativeGit(work, 'push', '-q', 'origin', 'draft/2030');
    expect((await run('draft', 'show', '2.1.2')).stdout).toContain('at least 2 L/s.');
    expect((await run('check', '2030')).status).toBe(0);
    fsck(works);
  });

  it('tells what cannot both stand, writes nothing, and takes the side that somebody decides for', async () => {
    const { work, run } = await clone(
      [['reword', '1.1.1', '--text', 'Ours.']],
      [['reword', '1.1.1', '--text', 'Theirs.']],
    );
    const before = nativeGit(work, 'status', '--porcelain');
    const told = await fishplate(work, 'draft', 'merge', '--finish');
    expect([told.status, told.stdout]).toEqual([
      1,
      expect.stringContaining('both changed its text, to "Ours." and to "Theirs."'),
    ]);
    expect(nativeGit(work, 'status', '--porcelain')).toBe(before);
    expect((await fishplate(work, 'draft', 'merge', '--finish', '--theirs', '1.1.1')).status).toBe(0);
    nativeGit(work, 'add', '-A');
    nativeGit(work, 'commit', '-qm', 'Merge');
    nativeGit(work, 'push', '-q', 'origin', 'draft/2030');
    expect((await run('draft', 'show', '1.1.1')).stdout).toContain('Theirs.');
    expect(await fishplate(work, 'draft', 'merge', '--finish')).toMatchObject({
      status: 2,
      stderr: expect.stringMatching(/^fishplate: No merge is going on in .*; begin one with: git merge BRANCH\n$/),
    });
  });
});
