import { spawn } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fsck, nativeGit, temporaryFolder } from '../store/temp-catalog.ts';
import { fishplate, MAIN } from './run-cli.ts';
import { fishplateIn } from './run-here.ts';

const OLD = `number,level,parent,title,text
1,Part,,Storage,
1.1,Work item,1,Butts,
1.1.1,Requirement,1.1,Base,Set the butt on a level base.
1.1.3,Requirement,1.1,Overflow,The overflow shall carry at least 1.5 L/s.
1.1.4,Requirement,1.1,Gloves,Wear gloves.
`;
const NEW = `number,level,parent,title,text,was
1,Part,,Storage,,1
1.1,Work item,1,Butts,,1.1
1.1.1,Requirement,1.1,Overflow,The overflow shall carry at least 2 L/s.,1.1.3
1.1.2,Requirement,1.1,Base,Set the butt on a level base.,1.1.1
`;
const BECAME = `from,to,reason,note,governs
1.1.4,,law-governs,Worker safety.,the law on worker safety
`;

let imported: string;
beforeAll(() => {
  imported = mkdtempSync(join(tmpdir(), 'fishplate-job-'));
  writeFileSync(join(imported, 'old.csv'), OLD);
  writeFileSync(join(imported, 'new.csv'), NEW);
  writeFileSync(join(imported, 'became.csv'), BECAME);
  expect(fishplate(imported, 'import', 'old.csv', '--edition', '2018').status).toBe(0);
  expect(fishplate(imported, 'import', 'new.csv', '--edition', '2024', '--lineage', 'became.csv').status).toBe(0);
});
afterAll(() => rmSync(imported, { recursive: true, force: true }));

/** A folder with the tables and the catalog that was imported from them. */
function catalog(): string {
  const dir = temporaryFolder();
  cpSync(imported, dir, { recursive: true });
  return dir;
}

describe('the main job on the command line', () => {
  it('keeps printed numbers and gaps, and says what became of each', () => {
    const dir = catalog();
    const { status, stdout } = fishplate(dir, 'crosswalk', '2018', '2024');
    expect(status).toBe(0);
    const rows = stdout
      .trim()
      .split('\r\n')
      .map(line => line.split(','));
    const column = (name: string) => rows[0]!.indexOf(name);
    const told = rows.slice(1).map(r => ['fate', 'from_number', 'to_number', 'duty'].map(c => r[column(c)]).join(' '));
    expect(told).toEqual([
      'kept 1 1 same',
      'kept 1.1 1.1 same',
      'kept 1.1.1 1.1.2 same',
      'kept 1.1.3 1.1.1 stricter',
      'withdrawn 1.1.4  ',
    ]);
    fsck(join(dir, 'catalog.git'));
  });

  it('traces a number through every edition that prints it and chooses none', () => {
    const { stdout } = fishplate(catalog(), 'trace', '1.1.1');
    expect(stdout).toContain('1.1.1 has 2 meanings');
    expect(stdout).toContain('2018 1.1.1 "Base" became 1.1.2 "Base" in 2024.');
    expect(stdout).toContain('It comes from 1.1.3 "Overflow" of 2018.');
  });

  it('carries a job line by its item, never by its number, and gives the same bytes again', () => {
    const dir = catalog();
    writeFileSync(
      join(dir, 'jobs.csv'),
      'Job,Item,State\r\nJ1,1.1.1,planned\r\nJ1,1.1.4,planned\r\nJ2,1.1.3,planned\r\n',
    );
    const carry = (out: string) =>
      fishplate(dir, 'carry', 'jobs', 'jobs.csv', '--from', '2018', '--to', '2024', '--out', out);
    expect(carry('a.csv').status).toBe(0);
    carry('b.csv');
    const text = readFileSync(join(dir, 'a.csv'), 'utf8');
    expect(text).toBe(readFileSync(join(dir, 'b.csv'), 'utf8'));
    const lines = text.split('\r\n').filter(l => l.includes(',input,'));
    expect(lines.map(l => l.split(',').slice(0, 6).join(','))).toEqual([
      'J1,1.1.1,planned,1.1.2,Base,carried',
      'J1,1.1.4,planned,,,withdrawn',
      expect.stringContaining('J2,1.1.3,planned,1.1.1,Overflow,choose'),
    ]);
  });

  it('says so where it is asked to carry to an older edition, jobs as lessons', async () => {
    const dir = catalog();
    writeFileSync(join(dir, 'jobs.csv'), 'Job,Item,State\r\nJ1,1.1.2,planned\r\n');
    writeFileSync(join(dir, 'lesson.md'), 'See 1.1.2.\n');
    const back = ['--from', '2024', '--to', '2018'];
    for (const args of [
      ['jobs', 'jobs.csv', ...back, '--out', 'jobs-2018.csv'],
      ['docs', 'lesson.md', ...back, '--out', 'lessons'],
    ]) {
      const { status, stderr } = await fishplateIn(dir, 'carry', ...args);
      expect([status, stderr]).toEqual([1, expect.stringContaining('2018 is older than 2024, so this goes back')]);
    }
  });

  it('reads back what native git cloned, edited, merged and pushed', () => {
    const dir = catalog();
    const [works, clone] = [join(dir, 'catalog.git'), join(dir, 'clone')];
    expect(fishplate(dir, 'draft', 'open', '2030').status).toBe(0);
    nativeGit(dir, 'clone', '-q', '-b', 'draft/2030', works, clone);
    const file = join(clone, 'items', readdirSync(join(clone, 'items'))[0]!);
    const edited = readFileSync(file, 'utf8').replace('"title": "Storage"', '"title": "Storing water"');
    writeFileSync(file, edited);
    nativeGit(clone, 'checkout', '-q', '-b', 'side');
    nativeGit(clone, 'commit', '-qam', 'Retitle');
    nativeGit(clone, 'checkout', '-q', 'draft/2030');
    nativeGit(clone, 'merge', '-q', '--no-ff', '-m', 'Merge side', 'side');
    nativeGit(clone, 'push', '-q', 'origin', 'draft/2030');
    expect(fishplate(dir, 'check', '2030').status).toBe(0);

    writeFileSync(file, '<<<<<<< ours\n{}\n');
    nativeGit(clone, 'commit', '-qam', 'A conflict that was committed');
    nativeGit(clone, 'push', '-q', 'origin', 'draft/2030');
    const refused = fishplate(dir, 'publish', '2030');
    expect(refused.status).toBe(2);
    expect(refused.stderr).toContain('unresolved merge conflict at line 1');
    fsck(works);
  });

  it('of two writers at once, one wins and the other is told', async () => {
    const dir = catalog();
    const runs = [1, 2].map(
      () =>
        new Promise<number | null>(done =>
          spawn(process.execPath, [MAIN, 'draft', 'open', '2030'], { cwd: dir }).on('close', done),
        ),
    );
    expect((await Promise.all(runs)).sort()).toEqual([0, 2]);
    expect(fishplate(dir, 'editions').stdout).toContain('2030 (draft)');
    fsck(join(dir, 'catalog.git'));
  });
});

describe('bad input gets one sentence that ends in what to do, exit code 2, and leaves nothing behind', () => {
  let dir: string;
  beforeAll(() => {
    dir = catalogForAll();
  });
  afterAll(() => rmSync(dir, { recursive: true, force: true }));

  const cases: [string, string[], string | RegExp][] = [
    ['not a catalog', ['editions', '--catalog', 'nowhere'], 'is not a catalog; name another with --catalog DIR'],
    ['an unknown edition', ['crosswalk', '2018', '2099'], 'There is no edition 2099; use one of: 2018, 2024.'],
    ['a number that does not exist', ['trace', '1.1.9'], /number 1\.1\.9; the nearest are 1\.1\.[134]/],
    [
      'a row without its parent',
      ['import', 'orphan.csv', '--edition', '2030'],
      'its parent 9 is in none of the tables. (orphan.csv:2)',
    ],
    ['malformed csv', ['import', 'quote.csv', '--edition', '2030'], 'quote.csv is not well-formed csv at line 3'],
    ['an edition that exists', ['import', 'old.csv', '--edition', '2018'], 'Edition 2018 exists already'],
    ['a name that is no name', ['import', 'old.csv', '--edition', '../x'], "cannot be an edition's name"],
    ['a file that is not there', ['import', 'absent.csv', '--edition', '2030'], 'absent.csv'],
    [
      'an output that is an input',
      ['carry', 'jobs', 'old.csv', '--from', '2018', '--to', '2024', '--out', 'old.csv'],
      /output|input/,
    ],
    ['a command that does not exist', ['frobnicate'], "unknown command 'frobnicate'"],
  ];
  it.each(cases)('%s', async (_name, args, sentence) => {
    const before = nativeGit(join(dir, 'catalog.git'), 'for-each-ref');
    const { status, stderr } = await fishplateIn(dir, ...args);
    expect(stderr).toMatch(sentence);
    expect(status).toBe(2);
    expect(nativeGit(join(dir, 'catalog.git'), 'for-each-ref')).toBe(before);
    expect(readFileSync(join(dir, 'old.csv'), 'utf8')).toBe(OLD);
  });

  it('a folder of other files does not become a catalog', async () => {
    const { status, stderr } = await fishplateIn(dir, 'import', 'old.csv', '--edition', '1', '--catalog', 'full');
    expect([status, existsSync(join(dir, 'full', 'HEAD'))]).toEqual([2, false]);
    expect(stderr).toContain('holds other files (letter.txt); name an empty or a new folder');
  });

  it('with --skip-rows the rest is imported, and the exit code is 1', async () => {
    const { status, stdout } = await fishplateIn(
      dir,
      'import',
      'orphan.csv',
      '--edition',
      'x',
      '--skip-rows',
      '--catalog',
      'skipped',
    );
    expect([status, stdout]).toEqual([1, expect.stringContaining('1 row left out')]);
  });

  it('a repository kind that cannot be written is refused', async () => {
    nativeGit(dir, 'init', '-q', '--bare', '--object-format=sha256', 'sha256.git');
    const { status, stderr } = await fishplateIn(dir, 'import', 'old.csv', '--edition', '1', '--catalog', 'sha256.git');
    expect([status, stderr]).toEqual([2, expect.stringContaining('uses SHA-256 object names')]);
  });
});

function catalogForAll(): string {
  const dir = mkdtempSync(join(tmpdir(), 'fishplate-bad-'));
  cpSync(imported, dir, { recursive: true });
  writeFileSync(join(dir, 'orphan.csv'), 'number,parent,title\n1.1,9,Alone\n2,,Placed\n');
  writeFileSync(join(dir, 'quote.csv'), 'number,title\n1,"ok"\n2,"open\n');
  mkdirSync(join(dir, 'full'));
  writeFileSync(join(dir, 'full', 'letter.txt'), 'Dear');
  return dir;
}
