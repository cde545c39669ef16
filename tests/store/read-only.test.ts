import { fork, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import {
  chmodSync,
  chownSync,
  cpSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { openForWriting } from '../../src/store/open.ts';
import { MAIN } from '../cli/run-cli.ts';
import { fishplateIn as fishplate } from '../cli/run-here.ts';
import { readOnlyFs } from './refusing-fs.ts';
import { noMount, remount, smallDisk } from './small-disk.ts';
import { smallTables } from './small-tables.ts';
import { OPERATIONS, visible } from './store-operations.ts';
import { fsck, temporaryFolder } from './temp-catalog.ts';

const import2018 = ['import', 'old.csv', '--edition', '2018'];
const import2024 = ['import', 'new.csv', '--edition', '2024', '--lineage', 'became.csv'];
const fromTo = ['--from', '2018', '--to', '2024'];

const CATALOG =
  /^fishplate: The catalog \S+ was not changed, its place is read-only for you; get the right to write there, or name another with --catalog DIR\.\n$/;
const OUTPUT = /^fishplate: \S+ cannot be written, its place is read-only for you; choose another place\.\n$/;

const WRITERS: readonly string[][] = [
  ['import', 'new.csv', '--edition', '2030'],
  ['import', 'new.csv', '--edition', '2030', '--draft'],
  ['draft', 'open', '2030'],
  ['publish', 'next', '--override', 'a test'],
  ['erratum', '2024', '--lineage', 'erratum.csv'],
];
const READERS: readonly string[][] = [
  ['editions'],
  ['crosswalk', '2018', '2024'],
  ['trace', '1.1.1'],
  ['check', '2024'],
  ['search', 'Storage'],
  ['mint'],
];

/** A folder `works.git` with two editions and a draft, made inside `place` from the tables in `dir`. */
async function lay(dir: string, place: string): Promise<string> {
  const works = join(place, 'works.git');
  for (const args of [import2018, import2024, ['draft', 'open', 'next']]) {
    expect(await fishplate(dir, ...args, '--catalog', works)).toMatchObject({ status: 0, stderr: '' });
  }
  writeFileSync(join(place, 'out.csv'), 'the former one');
  return works;
}

/** Readers read, writers are refused in one sentence, and not a byte is other than before. */
async function ask(
  place: string,
  works: string,
  run: (...args: string[]) => Promise<{ status: number | null; stderr: string }>,
) {
  const before = everyByte(place);
  for (const args of READERS) {
    const { status, stderr } = await run(...args, '--catalog', works);
    expect([status, stderr], args.join(' ')).toEqual([0, '']);
  }
  for (const args of WRITERS) {
    const { status, stderr } = await run(...args, '--catalog', works);
    expect([status, stderr], args.join(' ')).toEqual([2, expect.stringMatching(CATALOG)]);
  }
  const anew = await run('import', 'old.csv', '--edition', '2018', '--catalog', join(place, 'new.git'));
  expect([anew.status, anew.stderr]).toEqual([2, expect.stringMatching(CATALOG)]);
  for (const args of [
    ['crosswalk', '2018', '2024', '--out', join(place, 'out.csv')],
    ['crosswalk', '2018', '2024', '--out', join(place, 'other.json')],
    ['carry', 'jobs', 'jobs.csv', ...fromTo, '--out', join(place, 'out.csv')],
    ['carry', 'docs', 'lesson.md', ...fromTo, '--out', join(place, 'docs')],
  ]) {
    const { status, stderr } = await run(...args, '--catalog', works);
    expect([status, stderr], args.join(' ')).toEqual([2, expect.stringMatching(OUTPUT)]);
  }
  expect(everyByte(place)).toBe(before);
  fsck(works);
}

function everyByte(place: string): string {
  return readdirSync(place, { recursive: true, withFileTypes: true })
    .map(f => join(f.parentPath, f.name))
    .sort()
    .map(path => `${path} ${statSync(path).isFile() ? readFileSync(path, 'base64') : 'folder'}`)
    .join('\n');
}

function inputs(): string {
  const dir = smallTables(temporaryFolder());
  writeFileSync(join(dir, 'jobs.csv'), 'Job,Item,State\nJ1,1.1.1,planned\n');
  writeFileSync(join(dir, 'lesson.md'), 'See 1.1.1.\n');
  return dir;
}

describe('a place that is read-only', () => {
  it.each(OPERATIONS)(
    '$name is refused by a file system that lets itself be read only',
    async ({ name, before, run }) => {
      const dir = join(temporaryFolder(), 'works.git');
      await before(dir);
      const was = visible(dir, true);
      await expect(run(dir, readOnlyFs())).rejects.toMatchObject({
        code: 'WriteFailed',
        message: expect.stringMatching(/was not changed, its place is read-only for you; .* --catalog DIR\.$/),
      });
      expect(visible(dir, true), name).toBe(was);
      if (was !== 'no catalog') await openForWriting(dir);
    },
  );

  it.skipIf(noMount)(`a disk mounted read-only${noMount ? ` (skipped: ${noMount})` : ''}`, async () => {
    const dir = inputs();
    const disk = smallDisk(4096);
    const works = await lay(dir, disk);
    // A repository that native git has made lacks our own folder, and readers find no place for one either.
    rmSync(join(works, 'fishplate'), { recursive: true });
    remount(disk, 'ro');
    await ask(disk, works, (...args) => fishplate(dir, ...args));
    remount(disk, 'rw');
    expect(await fishplate(dir, 'draft', 'open', '2030', '--catalog', works)).toMatchObject({ status: 0, stderr: '' });
  });

  const noOther = whyNoOtherUser();
  it.skipIf(noOther)(`a folder of somebody else${noOther ? ` (skipped: ${noOther})` : ''}`, async () => {
    const dir = inputs();
    const place = join(temporaryFolder(), 'place');
    mkdirSync(place);
    const works = await lay(dir, place);
    // The temporary folders are their maker's alone; the other user has to get in to be refused.
    const home = join(place, '..', 'home');
    cpSync(dir, home, { recursive: true });
    for (const path of [home, join(place, '..')]) chmodSync(path, 0o755);
    chownSync(home, NOBODY, NOBODY);
    const env = { ...process.env, FISHPLATE_AUTHOR: 'Nobody', HOME: home };
    const other = fork(OTHER_USER, { cwd: home, env, uid: NOBODY, gid: NOBODY, execArgv: [] });
    onTestFinished(() => void other.kill());
    await ask(place, works, async (...args) => {
      const answered = once(other, 'message');
      other.send(args);
      const [answer] = await Promise.race([answered, once(other, 'exit').then(() => ['the process has ended'])]);
      return answer;
    });
  });
});

const NOBODY = 65534;
const OTHER_USER = join(import.meta.dirname, 'other-user.mjs');

/** Why the command cannot be run as another user here; undefined where it can. */
function whyNoOtherUser(): string | undefined {
  if (process.getuid?.() !== 0) return 'only root can become another user';
  const { status } = spawnSync('test', ['-r', MAIN], { uid: NOBODY, gid: NOBODY });
  return status === 0 ? undefined : 'this checkout is in a folder that other users cannot read';
}
