import { appendFileSync, mkdirSync, readdirSync, readFileSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { fishplateIn as fishplate } from '../cli/run-here.ts';
import { smallTables } from './small-tables.ts';
import { fsck, nativeGit, temporaryFolder } from './temp-catalog.ts';

const import2018 = ['import', 'old.csv', '--edition', '2018'];
const import2024 = ['import', 'new.csv', '--edition', '2024', '--lineage', 'became.csv'];

let dir: string;
let works: string;
beforeEach(() => {
  dir = smallTables(temporaryFolder());
  works = join(dir, 'catalog.git');
});

const packed = () => readFileSync(join(works, 'packed-refs'), 'utf8');
const refs = () => nativeGit(works, 'for-each-ref', '--format=%(refname)').trim().split('\n');
/** Every file of the catalog with its size. */
const everyFile = () =>
  readdirSync(works, { recursive: true, withFileTypes: true })
    .filter(f => f.isFile())
    .map(f => join(f.parentPath, f.name))
    .map(path => `${path} ${statSync(path).size}`)
    .sort()
    .join('\n');
const writeLoose = (ref: string, text: string) => {
  mkdirSync(dirname(join(works, ref)), { recursive: true });
  writeFileSync(join(works, ref), text);
};
const done = async (...args: string[]) =>
  expect(await fishplate(dir, ...args)).toMatchObject({ status: 0, stderr: '' });

describe('packed by native git before each operation', () => {
  it.each([
    ['pack-refs', ['pack-refs', '--all']],
    ['gc', ['gc', '-q', '--prune=now']],
  ])('%s: every operation goes on from there, and packed refs that go are gone', async (_name, pack) => {
    await done(...import2018);
    const steps = [
      [...import2024, '--draft'],
      ['publish', '2024', '--override', 'a test'],
      ['erratum', '2024', '--lineage', 'erratum.csv'],
      ['draft', 'open', '2030'],
    ];
    for (const step of steps) {
      nativeGit(works, ...pack);
      expect(packed()).toContain('refs/tags/edition/2018.0');
      await done(...step);
      fsck(works);
    }
    expect(refs()).toEqual([
      'refs/heads/draft/2030',
      'refs/heads/main',
      'refs/tags/edition/2018.0',
      'refs/tags/edition/2024.0',
      'refs/tags/edition/2024.1',
    ]);
    nativeGit(works, ...pack);
    expect((await fishplate(dir, 'editions')).stdout).toContain('2030 (draft)');
    await done('crosswalk', '2018', '2024', '--out', 'crosswalk.csv');
  });

  it('a packed branch is removed under the lock that native git packs under', async () => {
    await done(...import2018);
    await done(...import2024, '--draft');
    nativeGit(works, 'pack-refs', '--all');
    writeFileSync(join(works, 'packed-refs.lock'), '');
    const { status, stderr } = await fishplate(dir, 'publish', '2024', '--override', 'a test');
    expect([status, stderr]).toEqual([
      2,
      expect.stringMatching(/2024 is published, but the branches do not follow it yet/),
    ]);
    expect(packed()).toContain('refs/heads/draft/2024');
  });
});

describe('damaged refs are refused in a sentence, by readers and by writers, and nothing is written', () => {
  const damages: [string, () => void, RegExp][] = [
    [
      'packed-refs cut in the middle of a line',
      () => truncateSync(join(works, 'packed-refs'), packed().length - 30),
      /packed-refs is damaged at line \d+, .*; restore that file from a backup, .*\.\n$/,
    ],
    [
      'packed-refs cut before its last line end',
      () => truncateSync(join(works, 'packed-refs'), packed().length - 1),
      /packed-refs is damaged at line \d+/,
    ],
    [
      'packed-refs with a garbled line',
      () => writeFileSync(join(works, 'packed-refs'), packed().replace(/^[0-9a-f]{8}/m, '\0\0garble')),
      /packed-refs is damaged at line 2,/,
    ],
    [
      'packed-refs with line ends of another system',
      () => writeFileSync(join(works, 'packed-refs'), packed().replaceAll('\n', '\r\n')),
      /packed-refs is damaged at line 2,/,
    ],
    ['packed-refs with text behind it', () => appendFileSync(join(works, 'packed-refs'), 'hello\n'), /damaged at line/],
    [
      'an empty loose tag over a packed one',
      () => writeLoose('refs/tags/edition/2024.0', ''),
      /The ref refs\/tags\/edition\/2024\.0 is damaged \(it holds nothing\); restore it with git fetch/,
    ],
    [
      'a loose main that is no object name',
      () => writeLoose('refs/heads/main', 'zzzz\n'),
      /The ref refs\/heads\/main is damaged \(it holds no object name\); restore it/,
    ],
    [
      'a tag whose object is not there',
      () => writeLoose('refs/tags/edition/2024.0', `${'1'.repeat(40)}\n`),
      /The object 1{40} is missing or damaged; .*\.\n$/,
    ],
  ];

  it.each(damages)('%s', async (name, damage, sentence) => {
    await done(...import2018);
    await done(...import2024);
    nativeGit(works, 'pack-refs', '--all');
    damage();
    const before = everyFile();
    const readers = name.includes('main') ? [] : [['editions'], ['crosswalk', '2018', '2024'], ['trace', '1.1.1']];
    for (const args of [...readers, ['draft', 'open', '2030'], ['erratum', '2024', '--lineage', 'erratum.csv']]) {
      const { status, stderr } = await fishplate(dir, ...args);
      expect([status, stderr], args.join(' ')).toEqual([2, expect.stringMatching(sentence)]);
      expect(stderr.split('\n').length, stderr).toBe(2);
    }
    expect(everyFile()).toBe(before);
  });

  it('an empty packed-refs beside loose refs is read right', async () => {
    await done(...import2018);
    writeFileSync(join(works, 'packed-refs'), '');
    await done(...import2024);
    await done('crosswalk', '2018', '2024', '--out', 'crosswalk.csv');
  });
});
