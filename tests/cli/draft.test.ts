import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fsck, nativeGit, temporaryFolder } from '../store/temp-catalog.ts';
import { fishplateHere } from './run-here.ts';

const OLD = `number,level,parent,title,text
1,Part,,Storage,
1.1,Work item,1,Butts,
1.1.1,Requirement,1.1,Base,Set the butt on a level base.
1.1.2,Requirement,1.1,Overflow,The overflow shall carry at least 1.5 L/s.
1.1.3,Requirement,1.1,Gloves,Wear gloves.
1.2,Work item,1,Cisterns,
1.2.1,Requirement,1.2,Base,Set the cistern on a level base.
`;

async function openDraft() {
  const dir = temporaryFolder();
  const git = join(dir, 'catalog.git');
  const fishplate = (...args: string[]) =>
    fishplateHere('--catalog', git, '--author', 'Rowan <r@example.org>', ...args);
  writeFileSync(join(dir, 'old.csv'), OLD);
  expect((await fishplate('import', join(dir, 'old.csv'), '--edition', '2024')).status).toBe(0);
  expect(await fishplate('draft', 'open', '2030', '--renumber')).toMatchObject({ status: 0 });
  const run = async (...args: string[]) => {
    const { status, stdout, stderr } = await fishplate('draft', ...args);
    return { status, said: `${stdout}${stderr}`.trim() };
  };
  return { dir, git, run, fishplate };
}

describe('work on a draft', () => {
  it('is a commit each with author and note, is published with its lineage, and native git agrees', async () => {
    const { git, run, fishplate } = await openDraft();
    expect(
      await run(
        'combine',
        '1.1.1',
        '1.2.1',
        '--into',
        '1.1.1',
        '--title',
        'Base',
        '--text',
        'Set it on a level base.',
        '--note',
        'said twice',
      ),
    ).toEqual({ status: 0, said: 'Combine 1.2.1 into 1.1.1.' });
    expect(await run('withdraw', '1.1.3', '--reason', 'obsolete', '--note', 'left to the employer')).toEqual({
      status: 0,
      said: 'Withdraw 1.1.3: obsolete.',
    });
    expect((await run('reword', '1.1.2', '--text', 'The overflow shall carry at least 2 L/s.')).status).toBe(0);
    expect(nativeGit(git, 'log', '-3', '--format=%an %ae %s', 'draft/2030').trim().split('\n')).toEqual([
      'Rowan r@example.org Reword 1.1.2',
      'Rowan r@example.org Withdraw 1.1.3: obsolete',
      'Rowan r@example.org Combine 1.2.1 into 1.1.1',
    ]);
    expect((await run('log')).said).toContain('Combine 1.2.1 into 1.1.1\n          said twice');
    expect((await run('diff')).said).toMatch(
      /^2024 → 2030: 4 requirements became 2 \(50 % fewer\); 0 new\.\nWithdrawn: obsolete 1\./,
    );
    expect((await fishplate('publish', '2030')).status).toBe(2);
    // Done, and what was overridden is told.
    expect((await fishplate('publish', '2030', '--override', 'a test')).status).toBe(1);
    const { stdout } = await fishplate('crosswalk', '2024', '2030');
    expect(stdout).toContain('said twice');
    expect(stdout).toContain('left to the employer');
    fsck(git);
  });

  it('is undone by a step of its own, the last or any other, and the tree is what it was', async () => {
    const { git, run } = await openDraft();
    const tree = () => nativeGit(git, 'rev-parse', 'draft/2030^{tree}').trim();
    const before = tree();
    await run('split', '1.1.1', '--keep', 'Base', 'Set it level.', '--give', 'Fixing', 'Fix it to the wall.');
    await run('move', '1.2', '--under', '1', '--first');
    expect(await run('undo')).toEqual({ status: 0, said: 'Undone: Move 1.2 under 1.' });
    expect(await run('undo')).toEqual({ status: 0, said: 'Undone: Split 1.1.1 into 2.' });
    expect(tree()).toBe(before);
    expect(await run('undo')).toMatchObject({
      status: 2,
      said:
        /^fishplate: Nothing has been done/ instanceof RegExp
          ? expect.stringMatching(/^fishplate: Nothing has been done/)
          : '',
    });
    await run('retitle', '1.1.1', 'Footing');
    const step = nativeGit(git, 'rev-parse', 'draft/2030').trim();
    await run('retitle', '1.1.2', 'Spillway');
    expect(await run('undo', step.slice(0, 8))).toMatchObject({ status: 0 });
    expect([(await run('show', '1.1.1')).said, (await run('show', '1.1.2')).said]).toEqual([
      expect.stringContaining('Base'),
      expect.stringContaining('Spillway'),
    ]);
  });

  it('by several people on branches is merged by items, with conflicts told and settled', async () => {
    const { git, run } = await openDraft();
    await run('branch', 'roofs');
    await run('move', '1.1.2', '--under', '1.2', '--in', '2030');
    await run('reword', '1.1.2', '--text', 'It carries 3 L/s.', '--in', 'roofs');
    await run('reword', '1.1.1', '--text', 'Ours.', '--in', '2030');
    await run('reword', '1.1.1', '--text', 'Theirs.', '--in', 'roofs');
    const before = nativeGit(git, 'rev-parse', 'draft/2030');
    const refused = await run('merge', 'roofs');
    expect(refused).toMatchObject({
      status: 1,
      said: expect.stringMatching(
        /^1 conflict; nothing was written:\n {2}1\.1\.1 \(\w+\): both changed its text, to "Ours\." and to "Theirs\."/,
      ),
    });
    expect(nativeGit(git, 'rev-parse', 'draft/2030')).toBe(before);
    expect(await run('merge', 'roofs', '--theirs', '1.1.1')).toEqual({
      status: 0,
      said: 'roofs is merged into the draft 2030.',
    });
    expect([(await run('show', '1.1.1')).said, (await run('show', '1.2.2')).said]).toEqual([
      expect.stringContaining('Theirs.'),
      expect.stringContaining('It carries 3 L/s.'),
    ]);
    expect(nativeGit(git, 'merge-base', '--is-ancestor', 'roofs', 'draft/2030')).toBe('');
    expect((await run('merge', 'roofs')).status).toBe(2);
    expect((await run('merge', '2030', '--in', 'roofs')).said).toBe(
      '2030 is merged into roofs, a branch of the draft 2030.',
    );
    fsck(git);
  });

  it('says of what was withdrawn in the draft how to put the reason right, and that way leads there', async () => {
    const { run } = await openDraft();
    expect((await run('withdraw', '1.2.1', '--reason', 'nonsense')).status).toBe(0);
    for (const again of [
      ['withdraw', '1.2.1', '--reason', 'obsolete'],
      ['show', '1.2.1'],
    ]) {
      expect(await run(...again)).toEqual({
        status: 2,
        said: 'fishplate: 1.2.1 was withdrawn in this draft (nonsense); bring it back with: fishplate draft restore 1.2.1, or undo the step that fishplate draft log names',
      });
    }
    expect((await run('restore', '1.2.1', '--under', '1.2')).status).toBe(0);
    expect(await run('withdraw', '1.2.1', '--reason', 'obsolete')).toEqual({
      status: 0,
      said: 'Withdraw 1.2.1: obsolete.',
    });
  });

  it('from a file is done whole or not at all', async () => {
    const { dir, git, run } = await openDraft();
    const before = nativeGit(git, 'rev-parse', 'draft/2030');
    const lines = [
      '{"op":"retitle","id":"1.1.1","title":"Footing"}',
      '{"op":"add","under":"1.1","item":{"title":"Tap"}}',
    ];
    writeFileSync(join(dir, 'bad.jsonl'), [...lines, '{"op":"withdraw","id":"9.9","reason":"obsolete"}'].join('\n'));
    expect(await run('apply', join(dir, 'bad.jsonl'))).toEqual({
      status: 2,
      said: 'fishplate: 9.9 is neither an id nor a number of the draft; look it up with: fishplate draft show',
    });
    writeFileSync(join(dir, 'bad.jsonl'), '{"op":"retitle","id":"1.1.1"}');
    expect((await run('apply', join(dir, 'bad.jsonl'))).said).toMatch(/bad\.jsonl/);
    expect(nativeGit(git, 'rev-parse', 'draft/2030')).toBe(before);
    writeFileSync(join(dir, 'good.jsonl'), lines.join('\n'));
    expect(await run('apply', join(dir, 'good.jsonl'))).toMatchObject({
      status: 0,
      said: expect.stringMatching(/^Retitle 1\.1\.1 as "Footing"\.\nAdd "Tap" under 1\.1\.\nNew: \w+\.$/),
    });
    expect(readFileSync(join(dir, 'good.jsonl'), 'utf8')).toBe(lines.join('\n'));
  });
});
