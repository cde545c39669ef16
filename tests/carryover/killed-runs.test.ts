import { describe, expect, it } from 'vitest';
import { undoCarry } from '../../src/commands/carrying/undo-carry.ts';
import { carryDocs } from '../../src/commands/documents/carry-docs.ts';
import { carryJobs } from '../../src/commands/jobs/carry-jobs.ts';
import type { Files } from '../../src/commands/ports/ports.ts';
import { filesDyingAt } from './dying-files.ts';
import { fixture } from './fixture.ts';
import { memoryFiles } from './memory-files.ts';

const { joint, marks } = fixture();
/** Runs are killed at every third call, and at each with FISHPLATE_EVERY_CALL=1. */
const STEP = process.env.FISHPLATE_EVERY_CALL ? 1 : 3;
const RECORD = '.fishplate.json';

type Held = ReadonlyMap<string, Buffer>;

/** A run that writes outputs, each with its record beside it. */
interface Run {
  readonly name: string;
  readonly start: Readonly<Record<string, string | Uint8Array>>;
  readonly outputs: readonly string[];
  /** What it writes beside, to be made again by the next run. */
  readonly lists: readonly string[];
  readonly run: (files: Files) => Promise<unknown>;
}

const jobs =
  (input: string, more: object = {}) =>
  async (files: Files) =>
    carryJobs({ files, progress: () => {} }, joint, marks, {
      input,
      out: 'out',
      decisionsOut: 'ask.csv',
      priceChanges: 'dearer.csv',
      ...more,
    });
const JOBS = { in: 'Job,Item\nA,3.1.1\nA,3.1.3\n', in2: 'Job,Item\nB,3.1.1\n' };
const docs = (files: Files) =>
  carryDocs({ files, progress: () => {} }, joint, marks, {
    inputs: ['/in/a.txt', '/in/b.md'],
    outDir: '/out',
    decisionsOut: '/out/ask.csv',
  });
const DOCS = { '/in/a.txt': 'See 3.1.1 and 3.4.5.\n', '/in/b.md': 'See 3.1.1.\n' };
const LISTS = ['/out/review.md', '/out/review.json', '/out/ask.csv'];

const RUNS: readonly Run[] = [
  { name: 'jobs', start: JOBS, outputs: ['out'], lists: [], run: jobs('in') },
  { name: 'jobs over a list of mine', start: { ...JOBS, out: 'mine' }, outputs: ['out'], lists: [], run: jobs('in') },
  { name: 'documents', start: DOCS, outputs: ['/out/a.txt', '/out/b.md'], lists: LISTS, run: docs },
  {
    name: 'documents over one of mine',
    start: { ...DOCS, '/out/b.md': 'mine' },
    outputs: ['/out/a.txt', '/out/b.md'],
    lists: LISTS,
    run: docs,
  },
];

/** Runs a work on a copy of files that dies at one call; what is left then, as nobody tidies up after a kill. */
async function leftBy(start: Held, work: (files: Files) => Promise<unknown>, call: number) {
  const memory = memoryFiles(Object.fromEntries(start));
  const { files, calls } = filesDyingAt(call, memory.files);
  const died = await work(files).then(
    () => false,
    () => true,
  );
  return { ...memory, died, calls: calls() };
}

const withoutLists = (held: Held, { lists }: Run) => new Map([...held].filter(([name]) => !lists.includes(name)));
const undoAll = async (files: Files, { outputs }: Run) => {
  for (const out of outputs) if (await files.exists(`${out}${RECORD}`)) await undoCarry({ files }, out);
};

describe.each(RUNS)('$name, killed at any call that changes a file', one => {
  it('leaves what stood there or the output, whole, and can be run again or undone', async () => {
    const before = memoryFiles(one.start).held;
    const whole = await leftBy(before, one.run, Number.POSITIVE_INFINITY);
    expect(whole.died).toBe(false);
    expect(whole.calls).toBeGreaterThan(5);
    for (let call = 1 + (whole.calls % STEP); call <= whole.calls; call += STEP) {
      const { held, files, died } = await leftBy(before, one.run, call);
      expect(died).toBe(true);
      for (const out of one.outputs) {
        const [was, became, now] = [before.get(out), whole.held.get(out), held.get(out)];
        expect([was, became], `${out} after call ${call}`).toContainEqual(now);
      }
      const undone = memoryFiles(Object.fromEntries(held));
      await undoAll(undone.files, one);
      expect(withoutLists(undone.held, one), `undone after call ${call}`).toEqual(before);
      await one.run(files);
      expect(held, `run again after call ${call}`).toEqual(whole.held);
    }
  });

  it('is undone whole however often the undo is killed', async () => {
    const before = memoryFiles(one.start).held;
    const { held: after } = await leftBy(before, one.run, Number.POSITIVE_INFINITY);
    const { calls } = await leftBy(after, files => undoAll(files, one), Number.POSITIVE_INFINITY);
    expect(calls).toBeGreaterThan(1);
    for (let call = 1; call <= calls; call++) {
      const { held, files, died } = await leftBy(after, f => undoAll(f, one), call);
      expect(died).toBe(true);
      for (const out of one.outputs) {
        expect([after.get(out), before.get(out)], `${out} after call ${call}`).toContainEqual(held.get(out));
      }
      await undoAll(files, one);
      expect(withoutLists(held, one), `undone again after call ${call}`).toEqual(before);
    }
  });
});

describe('a run over the output of an earlier one', () => {
  it('is told from an edited output wherever it is killed, and undone to what was there before both', async () => {
    const start = memoryFiles({ ...JOBS, out: 'mine' });
    const mine = new Map(start.held);
    await jobs('in')(start.files);
    const whole = await leftBy(start.held, jobs('in2'), Number.POSITIVE_INFINITY);
    for (let call = 1 + (whole.calls % STEP); call <= whole.calls; call += STEP) {
      const { held, files } = await leftBy(start.held, jobs('in2'), call);
      await jobs('in2')(files);
      expect(held.get('out'), `after call ${call}`).toEqual(whole.held.get('out'));
      await undoCarry({ files }, 'out');
      expect(held).toEqual(mine);
    }
  });
});

describe('undoing', () => {
  it('refuses where what is to come back is gone', async () => {
    const { files, held } = memoryFiles({ ...JOBS, out: 'mine' });
    await jobs('in')(files);
    held.delete('out.before');
    const before = new Map(held);
    await expect(undoCarry({ files }, 'out')).rejects.toThrow(/^out\.before is not what the run left there/);
    expect(held).toEqual(before);
  });
});
