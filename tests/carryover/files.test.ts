import { chmod, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { carryJobs } from '../../src/commands/jobs/carry-jobs.ts';
import { realFiles } from '../../src/commands/ports/files.ts';
import { fixture } from './fixture.ts';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'fishplate-files-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

describe('the real files', () => {
  it('write whole files by rename and leave nothing else behind', async () => {
    await realFiles.write(join(folder, 'a'), 'one');
    await realFiles.write(join(folder, 'a'), Buffer.from('two'));
    expect(await readFile(join(folder, 'a'), 'utf8')).toBe('two');
    expect(await readdir(folder)).toEqual(['a']);
  });

  it('show nothing under the name before commit, and nothing at all after abandon', async () => {
    const pending = await realFiles.create(join(folder, 'a'));
    pending.stream.write('half');
    expect(await realFiles.exists(join(folder, 'a'))).toBe(false);
    await pending.abandon();
    expect(await readdir(folder)).toEqual([]);
  });

  it('keep a symbolic link and write what it leads to', async () => {
    await writeFile(join(folder, 'a'), 'old');
    await symlink(join(folder, 'a'), join(folder, 'link'));
    await realFiles.write(join(folder, 'link'), 'new');
    expect(await readFile(join(folder, 'a'), 'utf8')).toBe('new');
  });

  it('know one file under two names, whether it exists or not', async () => {
    await writeFile(join(folder, 'a'), 'x');
    await symlink(join(folder, 'a'), join(folder, 'b'));
    await symlink(folder, join(folder, 'here'));
    expect(await realFiles.same(join(folder, 'a'), join(folder, 'b'))).toBe(true);
    expect(await realFiles.same(join(folder, 'here', 'new'), join(folder, 'new'))).toBe(true);
    expect(await realFiles.same(join(folder, 'a'), join(folder, 'new'))).toBe(false);
  });

  it('say in one sentence what is wrong and what to do', async () => {
    await expect(realFiles.read(join(folder, 'no'))).rejects.toMatchObject({ code: 'NoSuchFile' });
    await expect(realFiles.read(folder)).rejects.toThrow(/is a folder; name a file\.$/);
    await expect(realFiles.write(folder, 'x')).rejects.toThrow(/is a folder; name a file\.$/);
    await expect(realFiles.write(join(folder, 'no', 'a'), 'x')).rejects.toThrow(/does not exist; make it/);
    await expect(async () => {
      for await (const _ of realFiles.stream(join(folder, 'no'))) expect.unreachable();
    }).rejects.toMatchObject({ code: 'NoSuchFile' });
  });

  it.skipIf(process.getuid?.() === 0)('say that a place is read-only', async () => {
    await chmod(folder, 0o500);
    await expect(realFiles.write(join(folder, 'a'), 'x')).rejects.toThrow(/read-only/);
  });
});

it('carry a table from disk to disk, and leave no trace of one that is malformed', async () => {
  const { joint, marks } = fixture();
  const [input, out] = [join(folder, 'jobs.csv'), join(folder, 'out.csv')];
  await writeFile(input, `no,note\n${'3.1.1,x\n'.repeat(50_000)}`);
  const ports = { files: realFiles, progress: () => {} };
  const report = await carryJobs(ports, joint, marks, { input, out });
  expect(report.totals.outcomes.carried).toBe(50_000);
  expect((await readdir(folder)).sort()).toEqual(['jobs.csv', 'out.csv', 'out.csv.fishplate.json']);
  expect(await carryJobs(ports, joint, marks, { input: out, out: join(folder, 'b.csv') })).toMatchObject({
    leftAlone: true,
  });

  await writeFile(input, `no,note\n${'3.1.1,x\n'.repeat(50_000)}3.1.2,"open\n`);
  const failed = carryJobs(ports, joint, marks, { input, out: join(folder, 'b.csv') });
  await expect(failed).rejects.toMatchObject({ code: 'BadTable', data: { line: 50_002 } });
  expect((await readdir(folder)).sort()).toEqual(['jobs.csv', 'out.csv', 'out.csv.fishplate.json']);
});
