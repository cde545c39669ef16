import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CatalogError } from '../../src/model/errors.ts';
import { realFs } from '../../src/store/durable-fs.ts';
import { fishplateIn as fishplate } from '../cli/run-here.ts';
import { fsFullFrom } from './refusing-fs.ts';
import { fillUpTo, noMount, smallDisk } from './small-disk.ts';
import { smallTables } from './small-tables.ts';
import { between, OPERATIONS, readAll, visible } from './store-operations.ts';
import { damagedBelow, fsck, nativeGit, temporaryFolder } from './temp-catalog.ts';

const NOT_CHANGED = /^The catalog \S+ was not changed, the disk is full; free some space and run again\.$/;
const PUBLISHED =
  /^\S+ is published, but the branches do not follow it yet \(the disk is full\); mend that, and the next command that writes completes them\.$/;

/** Every seventh call, and each with FISHPLATE_EVERY_CALL=1: killed-anywhere.test.ts stops the same operations at others. */
const STEP = process.env.FISHPLATE_EVERY_CALL ? 1 : 7;

describe('a disk that is full from any call on that takes room', () => {
  it.each(OPERATIONS)('$name ends in one sentence, changes nothing, and can be done again', async operation => {
    const { name, before, run } = operation;
    const origin = join(temporaryFolder(), 'origin');
    await before(origin);
    const withMain = name === 'writing a local rule';
    const was = visible(origin, withMain);
    const whole = join(temporaryFolder(), 'whole');
    if (existsSync(origin)) cpSync(origin, whole, { recursive: true });
    const counting = fsFullFrom(Number.POSITIVE_INFINITY);
    await run(whole, counting.fs);
    const became = visible(whole, withMain);
    expect(counting.calls()).toBeGreaterThan(10);

    const folder = temporaryFolder();
    for (let call = 1; call <= counting.calls(); call += STEP) {
      const full = join(folder, `full-${call}`);
      if (existsSync(origin)) cpSync(origin, full, { recursive: true });
      const error = await run(full, fsFullFrom(call).fs).then(
        () => undefined,
        (e: unknown) => e,
      );
      const now = visible(full, withMain);
      const at = `call ${call} of ${counting.calls()}`;
      // Where nothing fails, all of it has to be there.
      if (error === undefined) expect(now, at).toBe(became);
      else {
        expect(error, at).toBeInstanceOf(CatalogError);
        const said = (error as CatalogError).message;
        expect(said, at).toMatch(now === was || now === '' ? NOT_CHANGED : PUBLISHED);
        expect([was, became, ...between(was, became)], at).toContain(now);
      }
      if (now === 'no catalog') rmSync(full, { recursive: true, force: true });
      const left = existsSync(join(full, 'fishplate', 'tmp')) ? readdirSync(join(full, 'fishplate', 'tmp')) : [];
      expect(left, `half-written files after ${at}`).toEqual([]);
      if (now !== became) await run(full, realFs);
      expect(visible(full, withMain), `again after ${at}`).toBe(became);
      await readAll(full);
    }
    expect(damagedBelow(folder)).toEqual([]);
  });
});

describe.skipIf(noMount)(`a small disk of its own${noMount ? ` (skipped: ${noMount})` : ''}`, () => {
  const import2024 = ['import', 'new.csv', '--edition', '2024', '--lineage', 'became.csv'];
  const import2018 = ['import', 'old.csv', '--edition', '2018'];
  const cases: [string, string[][], string[]][] = [
    ['the first import', [], import2018],
    ['the next import', [import2018], import2024],
    ['a draft', [import2018], ['draft', 'open', '2030']],
    ['a publication', [import2018, [...import2024, '--draft']], ['publish', '2024', '--override', 'a test']],
    ['an erratum', [import2018, import2024], ['erratum', '2024', '--lineage', 'erratum.csv']],
  ];
  it.each(cases)('%s: exit code 2 and one sentence, or done whole', async (_name, before, args) => {
    const tables = smallTables(temporaryFolder());
    const disk = smallDisk(4096);
    const works = join(disk, 'works.git');
    const run = (line: string[]) => fishplate(tables, ...line, '--catalog', works);
    for (const line of before) expect((await run(line)).stderr).toBe('');
    const kept = join(tables, 'kept.git');
    if (existsSync(works)) cpSync(works, kept, { recursive: true });
    const refs = () => (existsSync(join(works, 'HEAD')) ? nativeGit(works, 'for-each-ref') : '');
    const was = refs();
    const codes = new Set<number | null>();
    for (const free of [0, 64, 1024]) {
      const giveRoom = fillUpTo(disk, free);
      const { status, stderr } = await run(args);
      codes.add(status);
      const at = `${free} KB free`;
      if (status !== 0) {
        expect([status, stderr], at).toEqual([2, expect.stringMatching(/^fishplate: [^\n]+\n$/)]);
        const said = stderr.slice('fishplate: '.length, -1);
        expect(said, at).toMatch(refs() === was ? NOT_CHANGED : PUBLISHED);
        if (refs() !== '') fsck(works);
        giveRoom();
        if (refs() === was) expect((await run(args)).stderr, `again after ${at}`).toBe('');
      }
      giveRoom();
      expect(refs()).not.toBe(was);
      fsck(works);
      rmSync(works, { recursive: true });
      if (existsSync(kept)) cpSync(kept, works, { recursive: true });
    }
    // Too little room and enough of it have both been met, or the loop has shown nothing.
    expect([...codes].sort()).toEqual([0, 2]);
  });

  it('--out of crosswalk and carry leaves the former file as it was, and nothing beside it', async () => {
    const dir = smallTables(temporaryFolder());
    await fishplate(dir, ...import2018);
    await fishplate(dir, ...import2024);
    const numbers = Array.from({ length: 5_000 }, (_, n) => `J${n},1.${(n % 20) + 1}.${(n % 3) + 1},planned`);
    writeFileSync(join(dir, 'jobs.csv'), `Job,Item,State\n${numbers.join('\n')}\n`);
    writeFileSync(join(dir, 'lesson.md'), `# Lesson\n\n${'See 1.1.1 and 1.2.3 of edition 2018.\n\n'.repeat(400)}`);
    const disk = smallDisk(8192);
    const outputs: [string, string[], string[]][] = [
      ['crosswalk as csv', ['crosswalk', '2018', '2024', '--out', join(disk, 'out.csv')], ['out.csv']],
      ['crosswalk as json', ['crosswalk', '2018', '2024', '--out', join(disk, 'out.json')], ['out.json']],
      [
        'jobs',
        ['carry', 'jobs', 'jobs.csv', ...fromTo, '--out', join(disk, 'jobs.csv')],
        ['jobs.csv', 'jobs.csv.fishplate.json'],
      ],
      [
        'lessons',
        ['carry', 'docs', 'lesson.md', ...fromTo, '--out', join(disk, 'docs')],
        ['docs/lesson.md', 'docs/lesson.md.fishplate.json', 'docs/review.md', 'docs/review.json'],
      ],
    ];
    for (const [name, args, files] of outputs) {
      const codes = new Set<number | null>();
      for (const free of [0, 4, 16, 64, 256, 1024, 4096]) {
        mkdirSync(join(disk, 'docs'), { recursive: true });
        for (const file of files) writeFileSync(join(disk, file), `the former ${file}`);
        const giveRoom = fillUpTo(disk, free);
        const { status, stderr } = await fishplate(dir, ...args);
        giveRoom();
        codes.add(status);
        const at = `${name}, ${free} KB free`;
        const found = (file: string) => readFileSync(join(disk, file), 'utf8');
        if (status === 2) {
          expect(stderr, at).toMatch(
            /^fishplate: The disk is full, so \S+ was not written; free some space and run again\.\n$/,
          );
          for (const file of files) expect(found(file), at).toBe(`the former ${file}`);
        } else {
          expect(status, `${at}: ${stderr}`).toBeLessThan(2);
          for (const file of files) expect(found(file), at).not.toBe(`the former ${file}`);
        }
        const there = readdirSync(disk, { recursive: true, withFileTypes: true }).filter(f => f.isFile());
        // Where all is well, `carry` keeps what stood under the output's name, for `carry undo`.
        const before = there.filter(f => f.name.endsWith('.before'));
        expect([there.length - before.length, before.length], at).toEqual([
          files.length,
          status !== 2 && ['jobs', 'lessons'].includes(name) ? 1 : 0,
        ]);
        for (const file of there) rmSync(join(file.parentPath, file.name));
      }
      expect([codes.has(2), codes.size], name).toEqual([true, 2]);
    }
  });
});

const fromTo = ['--from', '2018', '--to', '2024'];
