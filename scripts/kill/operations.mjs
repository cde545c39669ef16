// The operations that are killed, each on a small catalog of its own. Ids, dates and author are given, so that the same
// operation makes the same trees every time.
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

export const CLI = join(import.meta.dirname, '..', '..', 'dist', 'cli', 'main.js');
export const ENV = { ...process.env, FISHPLATE_AUTHOR: 'Steward <steward@example.org>' };

const WORK_ITEMS = 30;
const DATED = ['--published', '2024-02-01'];

const first = ['import', 'old.csv', '--edition', '2018', '--published', '2018-02-01'];
const second = ['import', 'new.csv', '--edition', '2024', '--lineage', 'became.csv', ...DATED];

/** Each operation: what was done before it, and its own arguments. */
const OPERATIONS = [
  { name: 'the first import', before: [], args: first },
  { name: 'import of the next edition', before: [first], args: second },
  { name: 'draft', before: [first, second], args: ['draft', 'open', '2030'] },
  {
    name: 'two steps of work on a draft',
    before: [first, second, ['draft', 'open', '2030']],
    args: ['draft', 'apply', 'operations.jsonl'],
  },
  {
    name: 'publish',
    before: [first, ['import', 'new.csv', '--edition', '2024', '--lineage', 'became.csv', '--draft', ...DATED]],
    args: ['publish', '2024', '--override', 'a test'],
  },
  { name: 'erratum', before: [first, second], args: ['erratum', '2024', '--lineage', 'erratum.csv'] },
];

/** Runs one command line in a folder; the catalog is `catalog.git` in it. */
export function run(folder, args) {
  return spawnSync(process.execPath, [CLI, '--quiet', ...args, '--catalog', 'catalog.git'], {
    cwd: folder,
    env: ENV,
    encoding: 'utf8',
  });
}

/** Lays out the start of every operation below a folder: { name, args, start }. What several begin with is done once. */
export function layOut(folder) {
  const made = new Map();
  const after = before => {
    const key = JSON.stringify(before);
    if (made.has(key)) return made.get(key);
    const start = join(folder, `start-${made.size}-of-${before.length}`);
    if (before.length === 0) {
      mkdirSync(start);
      writeTables(start);
    } else {
      cpSync(after(before.slice(0, -1)), start, { recursive: true });
      const { status, stderr } = run(start, before.at(-1));
      if (status !== 0) throw new Error(`${before.at(-1).join(' ')} ended with ${status}: ${stderr}`);
    }
    made.set(key, start);
    return start;
  };
  return OPERATIONS.map(({ name, before, args }) => ({ name, args, start: after(before) }));
}

/** A copy of an operation's start to work on. */
export function copyOf(start, goal) {
  cpSync(start, goal, { recursive: true });
  return existsSync(join(goal, 'catalog.git')) ? join(goal, 'catalog.git') : undefined;
}

function writeTables(folder) {
  const head = 'number,level,parent,title,text,id';
  const table = (edition, kept) => {
    const lines = [head, '1,Part,,Storage,,part'];
    for (let w = 1; w <= WORK_ITEMS; w++) {
      lines.push(`1.${w},Work item,1,Work ${w},,w${w}`);
      for (const r of kept) {
        lines.push(`1.${w}.${r},Requirement,1.${w},Step ${r},Text of ${edition} for ${w}.${r}.,w${w}r${r}`);
      }
    }
    return `${lines.join('\n')}\n`;
  };
  const gone = Array.from({ length: WORK_ITEMS }, (_, at) => `1.${at + 1}.3,,obsolete,`);
  writeFileSync(join(folder, 'old.csv'), table('2018', [1, 2, 3]));
  writeFileSync(join(folder, 'new.csv'), table('2024', [1, 2]));
  writeFileSync(join(folder, 'became.csv'), `from,to,reason,note\n${gone.join('\n')}\n`);
  const operations = [
    { op: 'combine', ids: ['w1r1', 'w1r2'], into: 'w1r1' },
    { op: 'withdraw', id: 'w2', reason: 'obsolete' },
  ];
  writeFileSync(join(folder, 'operations.jsonl'), operations.map(o => JSON.stringify(o)).join('\n'));
  writeFileSync(join(folder, 'erratum.csv'), 'from,to,reason,note\n1.1.3,,covered-elsewhere,Corrected.\n');
}
