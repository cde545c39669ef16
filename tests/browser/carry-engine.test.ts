import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type CarryEngine, carryEngine, LARGEST } from '../../src/browser/carry-engine.ts';
import type { CarriedJobs, CarriedLesson, CarryRequest } from '../../src/browser/carry-request.ts';
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
const ask = (path: string, more: Partial<CarryRequest> = {}) => engine({ file: file(path), ...more }, () => {});
const bytesOf = (answer: CarriedJobs | CarriedLesson, what: string) =>
  Buffer.from(answer.files.find(f => f.what === what)!.bytes);

describe('a page carries', () => {
  it.each(['jobs/upper-vale.csv', 'jobs/lower-vale.xlsx'])(
    '%s to the same bytes as the command line, before and after people decide',
    async path => {
      const before = (await ask(path)) as CarriedJobs;
      expect(before.kind).toBe('jobs');
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

  it.each(['1-storage.md', '2-infiltration.html', '3-paving.docx', '4-roofs.pptx', 'quiz.md'])(
    'the lesson %s to the same bytes as the command line, with the same list for review',
    async name => {
      const ours = (await ask(`course/${name}`)) as CarriedLesson;
      expect(ours.kind).toBe('lesson');
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
});

describe('a page refuses in one sentence', () => {
  const refused = async (name: string, bytes: Uint8Array | string) => {
    const encoded = typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes;
    const answer = await engine({ file: { name, bytes: encoded } }, () => {});
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

  it('a file beyond what a page can hold', async () => {
    expect(await refused('large.csv', new Uint8Array(LARGEST + 1))).toMatch(/more than the 64 MB that a page can hold/);
  });

  it('what it carried already', async () => {
    const once = (await ask('jobs/upper-vale.csv')) as CarriedJobs;
    expect(await refused('again.csv', bytesOf(once, 'carried'))).toMatch(/run on the original table instead/);
  });

  it('and still gives the columns, so that a person can say what they are', async () => {
    const table = 'a,b\nx,3.1.1.1\ny,none\nz,none\nw,none\nv,none\n';
    const given = { name: 't.csv', bytes: new TextEncoder().encode(table) };
    expect(await engine({ file: given }, () => {})).toMatchObject({ kind: 'refused', header: ['a', 'b'] });
    expect(await engine({ file: given, columns: { number: '2' } }, () => {})).toMatchObject({ kind: 'jobs' });
  });
});
