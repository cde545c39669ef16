// One million job lines carried, against the same csv library parsing and writing them and doing nothing else.
// Needs a built dist/. Prints a line for each format when run by itself; `run()` gives them as values.
import { createReadStream, createWriteStream, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { pipeline } from 'node:stream/promises';
import { pathToFileURL } from 'node:url';
import { parse } from 'csv-parse';
import { stringify } from 'csv-stringify';

const LINES = 1_000_000;
const LINES_OF_A_JOB = 20;
const ROUNDS = 3;
const TYPES = ['house', 'terrace', 'court'];
const STATES = ['open', 'planned', 'inspected', 'invoiced'];

/**
 * One row for csv, one for JSON Lines; each in a process of its own where this file is run with the format's name.
 *
 * @returns {Promise<{name: string, ours: number, rival: number, ratio: number, note: string}[]>} seconds, medians
 */
export async function run(formats = Object.keys(FORMATS)) {
  const { carryJobs } = await import('../../dist/commands/jobs/carry-jobs.js');
  const { realFiles } = await import('../../dist/commands/ports/files.js');
  const { joint, marks } = await editions();
  const rows = [];
  for (const name of formats) {
    const { ending, lines, rival } = FORMATS[name];
    const folder = mkdtempSync(join(tmpdir(), 'fishplate-bench-'));
    try {
      const input = join(folder, `jobs.${ending}`);
      await pipeline(lines(joint), createWriteStream(input));
      const [ours, theirs] = [[], []];
      let peak = 0;
      let report;
      for (let round = 0; round < ROUNDS; round++) {
        const out = join(folder, `ours-${round}.${ending}`);
        ours.push(
          await seconds(async () => {
            report = await carryJobs({ files: realFiles, progress: () => {} }, joint, marks, { input, out });
          }),
        );
        // Ours runs first, so that the process has not yet grown by anything else.
        if (round === 0) peak = process.resourceUsage().maxRSS / 1024;
        theirs.push(await seconds(() => rival(input, join(folder, `rival-${round}.${ending}`))));
      }
      const { lines: came, added, folded, agree } = report.totals;
      if (came !== LINES || !agree) throw new Error(`${came} lines came out of ${LINES}`);
      const [a, b] = [median(ours), median(theirs)];
      const note = `${came} lines in, ${added} added, ${folded} folded, peak ${Math.round(peak)} MB`;
      rows.push({
        name: `a million job lines, ${name}, against parse and write only`,
        ...{ ours: a, rival: b, ratio: a / b, note },
      });
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  }
  return rows;
}

const FORMATS = {
  csv: {
    ending: 'csv',
    lines: jobLines,
    rival: (input, out) => pipeline(createReadStream(input), parse({ bom: true }), stringify(), createWriteStream(out)),
  },
  'JSON Lines': {
    ending: 'jsonl',
    lines: jsonLines,
    rival: (input, out) =>
      pipeline(
        createInterface({ input: createReadStream(input) }),
        async function* (lines) {
          let block = '';
          for await (const line of lines) {
            block += `${JSON.stringify(JSON.parse(line))}\n`;
            if (block.length < 1 << 16) continue;
            yield block;
            block = '';
          }
          yield block;
        },
        createWriteStream(out),
      ),
  },
};

/** The same lines as objects. */
function* jsonLines(joint) {
  let rest = '';
  let names;
  for (const block of jobLines(joint)) {
    const lines = (rest + block).split('\n');
    rest = lines.pop();
    let written = '';
    for (const line of lines) {
      const cells = line.replaceAll('"', '').split(',');
      if (names) written += `${JSON.stringify(Object.fromEntries(names.map((n, at) => [n, cells[at]])))}\n`;
      else names = cells;
    }
    yield written;
  }
}

export function* jobLines(joint) {
  yield 'job,number,type,state,date,remark\n';
  const requirements = joint.from.entries.filter(e => e.obliges);
  let block = '';
  for (let at = 0; at < LINES; at++) {
    const job = Math.floor(at / LINES_OF_A_JOB);
    const cited = requirements[(job * 7 + (at % LINES_OF_A_JOB)) % requirements.length];
    const remark = at % 9 === 0 ? '"as agreed, see plan"' : 'as ordered';
    block += `J-${job},${cited.number},${TYPES[job % 3]},${STATES[at % 4]},2024-03-${10 + (job % 20)},${remark}\n`;
    if (block.length > 1 << 16) {
      yield block;
      block = '';
    }
  }
  yield block;
}

/** Two editions of about 3,000 items: every third work item merges into the one before, every tenth requirement is new. */
export async function editions() {
  const { joinEditions } = await import('../../dist/crosswalk/joint.js');
  const { linkByLineage } = await import('../../dist/crosswalk/lineage.js');
  const { marksOf } = await import('../../dist/content/links/marks.js');
  const settings = {
    title: 'Bench',
    language: 'en',
    levels: [{ name: 'Part' }, { name: 'Work item' }, { name: 'Requirement', obliges: true }],
    fileLevel: 2,
    numbering: { levels: [], numbersUnique: true },
    installationTypes: TYPES.map(id => ({ id, name: id })),
    withdrawalReasons: [{ code: 'obsolete', meaning: 'no longer used' }],
  };
  const old = [];
  const next = [];
  const records = [];
  const add = (list, id, number, parent) => {
    const level = number.split('.').length;
    list.push({ id, number, parent, level, title: `Item ${id}`, hash: id.slice(1), obliges: level === 3 });
  };
  for (let p = 1; p <= 10; p++) {
    add(old, `p${p}`, `${p}`, null);
    add(next, `p${p}`, `${p}`, null);
    for (let w = 1; w <= 30; w++) {
      const gone = w % 3 === 0;
      const work = `w${p}-${w}`;
      add(old, work, `${p}.${w}`, `p${p}`);
      if (!gone) add(next, work, `${p}.${w - Math.floor(w / 3)}`, `p${p}`);
      if (gone) records.push({ from: work, heirs: [whole(`w${p}-${w - 1}`)], basis: 'declared' });
      for (let r = 1; r <= 9; r++) {
        const id = `r${p}-${w}-${r}`;
        add(old, id, `${p}.${w}.${r}`, work);
        const number = `${p}.${w - Math.floor(w / 3)}.${r}`;
        if (!gone) add(next, id, number, work);
        else if (r === 9) records.push({ from: id, heirs: [], reason: 'obsolete', basis: 'declared' });
        else records.push({ from: id, heirs: [whole(`r${p}-${w - 1}-${r}`)], basis: 'declared' });
      }
      if (!gone && w % 4 === 0) add(next, `n${p}-${w}`, `${p}.${w - Math.floor(w / 3)}.10`, work);
    }
  }
  const header = name => ({ name, erratum: 0, replaces: null, dates: {}, state: 'published' });
  const from = { header: header('2018'), settings, entries: old };
  const to = { header: header('2024'), settings, entries: next };
  const joint = joinEditions(from, to, { from: '2018', to: '2024', links: linkByLineage(old, next, records) });
  const item = id => ({ id, number: '', level: 3, parent: null, title: id });
  // Looked up once for each link, as the catalog's reader does.
  const known = new Map();
  const marks = link => {
    if (!known.has(link)) known.set(link, marksOf(joint, link, { from: item, to: item }));
    return known.get(link);
  };
  return { joint, marks };
}

function whole(to) {
  return { to, fromExtent: 'all', toExtent: 'all' };
}

async function seconds(work) {
  const start = performance.now();
  await work();
  return (performance.now() - start) / 1000;
}

function median(values) {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const asked = process.argv.slice(2);
  for (const { name, ours, rival, ratio, note } of await run(asked.length > 0 ? asked : undefined)) {
    process.stdout.write(`${name}: ${ours.toFixed(2)} s / ${rival.toFixed(2)} s = ${ratio.toFixed(2)} (${note})\n`);
  }
}
