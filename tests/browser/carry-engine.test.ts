import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import exceljs from 'exceljs';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type CarryEngine, carryEngine, LARGEST } from '../../src/browser/carry-engine.ts';
import type { CarriedJobs, CarriedLessons, CarryRequest, ReadAnswers } from '../../src/browser/carry-request.ts';
import type { EditionTexts } from '../../src/carryover/stale/old-sayings.ts';
import { readCarryData } from '../../src/commands/bundles/bundle-carry.ts';
import { carryDocs } from '../../src/commands/documents/carry-docs.ts';
import { carryJobs } from '../../src/commands/jobs/carry-jobs.ts';
import { readEditionTexts } from '../../src/commands/reading/edition-texts.ts';
import { type ReadCrosswalk, readCrosswalk } from '../../src/commands/reading/read-crosswalk.ts';
import { waysTo } from '../../src/commands/reading/ways-to.ts';
import { openCatalog } from '../../src/store/open.ts';
import { demoCatalog, testPorts } from '../demo-catalog.ts';

const CATALOG = join(import.meta.dirname, '..', '..', 'catalog');
const folder = mkdtempSync(join(tmpdir(), 'fishplate-engine-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let main: ReadCrosswalk;
let others: Awaited<ReturnType<typeof waysTo>>;
let texts: EditionTexts;
let engine: CarryEngine;

beforeAll(async () => {
  const catalog = await openCatalog(await demoCatalog());
  main = await readCrosswalk(catalog, '2018', '2024');
  others = await waysTo(catalog, '2024', '2018');
  const packed = await readCarryData(catalog, [main, ...others.values()]);
  texts = await readEditionTexts(catalog, main.joint);
  // As a page gets it: through a script's text.
  engine = carryEngine(JSON.parse(JSON.stringify(packed)));
}, 120_000);

const file = (path: string) => ({ name: basename(path), bytes: new Uint8Array(readFileSync(join(CATALOG, path))) });
const ask = (path: string, more: Partial<CarryRequest> = {}) => engine({ files: [file(path)], ...more }, () => {});
const bytesOf = (answer: CarriedJobs | CarriedLessons, what: string) =>
  Buffer.from(answer.files.find(f => f.what === what)!.bytes);

/** Under which name the command line writes what a page hands over as one of many downloads. */
function nameAtHome(lesson: string, name: string, what: string): string {
  if (what === 'carried') return lesson;
  return what === 'mark' ? `${lesson}.fishplate.json` : name.slice(name.lastIndexOf('-') + 1);
}

describe('a page carries', () => {
  it.each(['jobs/upper-vale.csv', 'jobs/lower-vale.xlsx'])(
    '%s to the same bytes as the command line, before and after people decide',
    async path => {
      const before = (await ask(path)) as CarriedJobs;
      expect(before.kind).toBe('jobs');
      expect(before.asks.map(a => a.sentence)).toEqual([]);
      const out = join(folder, basename(path));
      const again = { input: join(CATALOG, path), out, others: async () => others };
      await carryJobs(testPorts(), main.joint, main.marks, again);
      expect(bytesOf(before, 'carried').equals(readFileSync(out))).toBe(true);

      const answers = before.questions.slice(0, 12).map(({ cells, heirs }, at) => {
        const answer = ['carry', 'stay', 'drop'][at % 3]!;
        return [...cells.slice(0, -4), answer, heirs[0]?.number ?? '', '=agreed', 'R. Poole'];
      });
      const after = (await ask(path, { answers })) as CarriedJobs;
      const decisions = join(folder, 'decisions.csv');
      writeFileSync(decisions, bytesOf(after, 'decisions'));
      await carryJobs(testPorts(), main.joint, main.marks, { ...again, decisions });
      expect(bytesOf(after, 'carried').equals(readFileSync(out))).toBe(true);
      expect(bytesOf(after, 'carried').equals(bytesOf(before, 'carried'))).toBe(false);
      expect(after.questions.filter(q => q.cells.at(-1) === 'R. Poole').length).toBeGreaterThan(5);
    },
  );

  it('a table under a policy, read in another edition, as the command line does', async () => {
    const policy = file('policies/lower-vale.json');
    const ours = (await ask('jobs/lower-vale.csv', { policy, dates: 'ymd' })) as CarriedJobs;
    const { parsePolicy } = await import('../../src/carryover/jobs/job-policy.ts');
    const out = join(folder, 'governed.csv');
    await carryJobs(testPorts(), main.joint, main.marks, {
      input: join(CATALOG, 'jobs/lower-vale.csv'),
      out,
      others: async () => others,
      policy: parsePolicy(Buffer.from(policy.bytes).toString(), policy.name),
      dates: 'ymd',
    });
    expect(bytesOf(ours, 'carried').equals(readFileSync(out))).toBe(true);
  });

  it.each(['2-infiltration.html', '4-roofs.pptx', 'quiz.md'])(
    'the lesson %s to the same bytes as the command line, with the same list for review',
    async name => {
      const ours = (await ask(`course/${name}`)) as CarriedLessons;
      expect(ours.kind).toBe('lessons');
      const outDir = join(folder, `out-${name}`);
      const editions = ['2014', '2018', '2024'];
      await carryDocs(testPorts(), main.joint, main.marks, {
        inputs: [join(CATALOG, 'course', name)],
        outDir,
        editions,
        texts,
      });
      for (const [what, path] of [
        ['carried', name],
        ['mark', `${name}.fishplate.json`],
        ['review', 'review.md'],
        ['review-data', 'review.json'],
      ] as const) {
        expect(bytesOf(ours, what).equals(readFileSync(join(outDir, path))), path).toBe(true);
      }
    },
  );

  it.each([[['3-paving.docx']], [['1-storage.md', '4-roofs.pptx']]])(
    'what people decided about %s to the same bytes as the command line, with the questions that are left',
    async names => {
      const files = names.map(name => file(`course/${name}`));
      const before = (await engine({ files }, () => {})) as CarriedLessons;
      const answers = before.questions.map(({ cells, heirs, isMark }, at) => {
        const answer = isMark ? 'carry' : ['carry', 'stay', 'drop'][at % 3]!;
        return [...cells.slice(0, -4), answer, heirs.map(h => h.number).join(' | '), '=agreed', 'R. Poole, 2026-11-26'];
      });
      const after = (await engine({ files, answers }, () => {})) as CarriedLessons;
      const outDir = join(folder, `decided-${names.length}-${names[0]}`);
      const decisions = join(folder, 'answers.csv');
      const decisionsOut = join(folder, 'asked.csv');
      writeFileSync(decisions, bytesOf(after, 'decisions'));
      await carryDocs(testPorts(), main.joint, main.marks, {
        inputs: names.map(name => join(CATALOG, 'course', name)),
        outDir,
        editions: ['2014', '2018', '2024'],
        texts,
        decisions,
        decisionsOut,
      });
      const said = names.length === 1 ? after.files : [];
      for (const { name, what, bytes } of said) {
        const path = what === 'decisions' ? decisionsOut : join(outDir, nameAtHome(names[0]!, name, what));
        expect(Buffer.from(bytes).equals(readFileSync(path)), name).toBe(true);
      }
      if (names.length > 1) {
        const parts = unzipSync(after.files.find(f => f.what === 'all')!.bytes);
        const written = [...readdirSync(outDir).map(name => join(outDir, name)), decisionsOut];
        expect(Object.keys(parts).sort()).toEqual([...readdirSync(outDir), 'decisions.csv'].sort());
        for (const path of written) {
          const part = parts[path === decisionsOut ? 'decisions.csv' : basename(path)]!;
          expect(Buffer.from(part).equals(readFileSync(path)), path).toBe(true);
        }
      }
      expect(bytesOf(after, 'carried').equals(bytesOf(before, 'carried'))).toBe(false);
      expect(after.review.length).toBeLessThan(before.review.length);
      expect(after.questions.every(q => q.cells.at(-1) === 'R. Poole, 2026-11-26')).toBe(true);
    },
  );

  it('answers of another file without a word about those that do not fit', async () => {
    const { questions } = (await ask('course/3-paving.docx')) as CarriedLessons;
    const answers = questions.map(q => [...q.cells.slice(0, -4), 'stay', '', '', 'R. Poole']);
    const other = (await ask('course/1-storage.md', { answers })) as CarriedLessons;
    expect(other.notes).toEqual([]);
    expect(other.questions.filter(q => q.cells.at(-1) === 'R. Poole').map(q => q.cells[1])).toEqual(['edition 2018']);
    const jobs = (await ask('jobs/upper-vale.csv', { answers })) as CarriedJobs;
    expect(jobs.notes).toEqual(((await ask('jobs/upper-vale.csv')) as CarriedJobs).notes);
  });

  it('a table of JSON Lines with answers, which are a csv whatever the table is called', async () => {
    const bytes = new TextEncoder().encode('{"Item":"3.1.1.1","Type":"house"}\n{"Item":"3.1.1.2","Type":"house"}\n');
    const files = [{ name: 'jobs.jsonl', bytes }];
    const { questions } = (await engine({ files }, () => {})) as CarriedJobs;
    const answers = questions.map(q => [...q.cells.slice(0, -4), 'stay', '', '', 'R. Poole']);
    const after = (await engine({ files, answers }, () => {})) as CarriedJobs;
    expect(after.outcomes.find(o => o.kind === 'kept')!.count).toBe(2);
  });
});

describe('a questionnaire that is given to a page', () => {
  it('is read for its answers, and not carried as a table of jobs', async () => {
    const before = (await ask('course/3-paving.docx')) as CarriedLessons;
    const answers = before.questions
      .slice(0, 3)
      .map((q, at) => [...q.cells.slice(0, -4), 'stay', '', '=so', at < 2 ? 'R. Poole' : '']);
    const asked = (await ask('course/3-paving.docx', { answers })) as CarriedLessons;
    const given = { name: 'x.csv', bytes: asked.files.find(f => f.what === 'decisions')!.bytes };
    const read = (await engine({ files: [given] }, () => {})) as ReadAnswers;
    expect(read).toMatchObject({ kind: 'answers', notes: [] });
    expect(read.rows).toEqual(answers.slice(0, 2));
  });

  it('says what is wrong with a row of it', async () => {
    const bytes = new TextEncoder().encode('number,asked_on,answer,by\n3.1,x,perhaps,A\n3.2,x,stay,\n3.3,x,stay,A\n');
    const read = (await engine({ files: [{ name: 'x.csv', bytes }] }, () => {})) as ReadAnswers;
    expect(read.rows.map(cells => cells[1])).toEqual(['3.3']);
    expect(read.notes.map(n => n.message)).toEqual([
      'perhaps is no answer; write carry, stay or drop.',
      'The answer for 3.2 has no name under by; fill it in.',
    ]);
  });
});

describe('what a table leaves open is asked', () => {
  const asksOf = async (table: string, more: Partial<CarryRequest> = {}) => {
    const files = [{ name: 't.csv', bytes: new TextEncoder().encode(table) }];
    return (await engine({ files, ...more }, () => {})) as CarriedJobs;
  };
  const fields = ({ asks }: CarriedJobs) => asks.map(a => `${a.field} ${a.key}`.trim());
  const LINES = '3.1.1.1,house,parked\n3.1.1.2,house,parked\n3.1.2.1,house,done\n';

  it('once: which column says what is finished, and what a word of the table means', async () => {
    const bare = await asksOf('Item,Type,x\n3.1.1.1,house,a\n3.1.1.2,shed,b\n');
    expect(fields(bare)).toEqual(['columns state', 'columns job', 'typeNames shed']);
    expect(bare.notes).toEqual([]);
    const states = await asksOf(`Item,Type,Status,Job\n${LINES.replaceAll('\n', ',A\n')}`);
    expect(fields(states)).toEqual(['stateNames parked']);
    const told = await asksOf(`Item,Type,Status,Job\n${LINES.replaceAll('\n', ',A\n')}`, {
      stateNames: { parked: 'done' },
    });
    expect(fields(told)).toEqual([]);
    expect(told.questions).toEqual([]);
  });

  it('which of two columns holds the numbers, and of which edition they are', async () => {
    const both = await asksOf('Item,Related item,Type\n3.1.1.1,3.1.1.2,house\n3.1.1.2,3.1.2.1,house\n');
    expect(fields(both)).toContain('columns number');
    expect(both.asks[0]).toMatchObject({ options: [{ label: 'Item' }, { value: '2', label: 'Related item' }] });
    const only2014 = main.joint.old;
    const old = [...others.get('2014')!.joint.from.entries]
      .map(e => e.number)
      .filter(n => only2014.withNumber(n).length === 0);
    const table = `Item,Type\n${old
      .slice(0, 8)
      .map(n => `${n},house`)
      .join('\n')}\n3.1.1.1,house\n3.1.1.2,house\n3.1.2.1,house\n3.1.2.2,house\n`;
    const wrong = await asksOf(table);
    expect(wrong.asks.find(a => a.field === 'from')).toMatchObject({ options: [{ value: '2018' }, { value: '2014' }] });
    expect((await asksOf(table, { from: '2014' })).asks.find(a => a.field === 'from')).toBeUndefined();
  });

  it('what to do with a second table below the first, and nothing about its words', async () => {
    const first = 'Item,Type,State,Job\n3.1.1.1,house,open,A\n3.1.1.2,house,open,A\n';
    const two = await asksOf(`${first}\nJob,Item,State,Type\nB,3.1.2.1,open,terrace\n`);
    expect(fields(two)).toEqual(['file']);
    expect(two.asks[0]!.sentence).toMatch(/^After 2 lines the head comes once more: .* put the second on a sheet/);
    expect(two.notes.map(n => n.rule)).not.toContain('unknown-type');
    expect(fields(await asksOf(first))).toEqual([]);
  });

  it('which sheet of a workbook is meant', async () => {
    const workbook = new exceljs.Workbook();
    for (const name of ['North', 'South']) {
      workbook.addWorksheet(name).addRows([
        ['Item', 'Type', 'State', 'Job'],
        ['3.1.1.1', 'house', 'open', name],
      ]);
    }
    const files = [{ name: 'two.xlsx', bytes: new Uint8Array(await workbook.xlsx.writeBuffer()) }];
    const north = (await engine({ files }, () => {})) as CarriedJobs;
    expect(north.asks).toMatchObject([{ field: 'sheet', options: [{ value: 'North' }, { value: 'South' }] }]);
    const south = (await engine({ files, sheet: 'South' }, () => {})) as CarriedJobs;
    expect(south.asks).toEqual([]);
  });

  it('even where nothing could be carried: which column holds numbers, and how dates are to be read', async () => {
    const files = [
      {
        name: 'd.csv',
        bytes: new TextEncoder().encode(
          'Item,Type,State,ordered\n3.1.1.1,house,open,03/04/2024\n3.1.1.2,house,open,05/06/2024\n',
        ),
      },
    ];
    const policy = file('policies/lower-vale.json');
    const ambiguous = { ...JSON.parse(Buffer.from(policy.bytes).toString()), decidedBy: ['ordered'] };
    const given = { name: 'p.json', bytes: new TextEncoder().encode(JSON.stringify(ambiguous)) };
    expect(await engine({ files, policy: given }, () => {})).toMatchObject({
      kind: 'refused',
      asks: [{ field: 'dates' }],
    });
    const none = [{ name: 'n.csv', bytes: new TextEncoder().encode('who,what\nA,B\n') }];
    expect(await engine({ files: none }, () => {})).toMatchObject({
      kind: 'refused',
      asks: [{ field: 'columns', key: 'number' }],
    });
  });
});

describe('a page refuses in one sentence', () => {
  const refused = async (name: string, bytes: Uint8Array | string) => {
    const encoded = typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes;
    const answer = await engine({ files: [{ name, bytes: encoded }] }, () => {});
    return answer.kind === 'refused' ? answer.sentence : answer.kind;
  };

  it.each([
    ['empty.csv', '', 'empty.csv is empty; choose another file.'],
    ['lesson.pdf', '%PDF-1.4', /^lesson.pdf is a PDF, which can only be read; choose the document/],
    ['picture.png', 'x', /is of a kind that is not read; choose a list of jobs/],
    ['old.doc', 'x', /save it as .docx and choose it again\.$/],
    ['damaged.xlsx', 'PK\u0003\u0004xx', /damaged.xlsx/],
    ['damaged.docx', 'x', /damaged.docx/],
    ['names.csv', 'who,what\nA,B\n', /No column holds numbers of edition 2018; .* choose another edition\.$/],
    ['quote.csv', 'a,b\n"x,y\n', /a quote is opened and never closed/],
    ['wide.csv', 'item,a\n3.1.1.1,2,3\n', /has no header/],
    ['lines.jsonl', '{"item":"3.1.1.1"}\n[1]\n', /Line 2 of lines.jsonl is no object/],
    ['__proto__', 'x', /is of a kind that is not read/],
  ])('%s', async (name, bytes, sentence) => {
    expect(await refused(name, bytes)).toMatch(sentence);
  });

  it('several tables at once, two lessons of one name, and one that is called as the list for review', async () => {
    const [jobs, text] = [file('jobs/upper-vale.csv'), file('course/1-storage.md')];
    const sentence = async (files: CarryRequest['files']) =>
      ((await engine({ files }, () => {})) as { sentence: string }).sentence;
    expect(await sentence([jobs, text])).toBe('Tables are carried one by one; choose one of them.');
    expect(await sentence([text, text])).toMatch(/^Two of the files are called 1-storage.md; rename one/);
    expect(await sentence([{ ...text, name: 'review.md' }])).toMatch(/has the name of the review list; rename it/);
  });

  it('a file beyond what a page can hold', async () => {
    expect(await refused('large.csv', new Uint8Array(LARGEST + 1))).toMatch(/more than the 64 MB that a page can hold/);
  });

  it('what it carried already', async () => {
    const once = (await ask('jobs/upper-vale.csv')) as CarriedJobs;
    expect(await refused('again.csv', bytesOf(once, 'carried'))).toMatch(/choose the original table instead/);
  });

  it('and still gives the columns, so that a person can say what they are', async () => {
    const table = 'a,b\nx,3.1.1.1\ny,none\nz,none\nw,none\nv,none\n';
    const given = { name: 't.csv', bytes: new TextEncoder().encode(table) };
    expect(await engine({ files: [given] }, () => {})).toMatchObject({ kind: 'refused', header: ['a', 'b'] });
    expect(await engine({ files: [given], columns: { number: '2' } }, () => {})).toMatchObject({ kind: 'jobs' });
  });
});
