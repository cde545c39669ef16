import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { pointLocal } from '../../src/carryover/local/local-pointing.ts';
import { variancesByCause } from '../../src/carryover/local/variance-causes.ts';
import { carryLocal, recordRePointed } from '../../src/commands/local/carry-local.ts';
import { localFiles } from '../../src/commands/local/governs.ts';
import { readDocument } from '../../src/documents/read-document.ts';
import { writeLocal } from '../../src/format/local-files.ts';
import type { LocalRecord } from '../../src/model/local.ts';
import { openCatalog, openForWriting } from '../../src/store/open.ts';
import { writeBeside } from '../../src/store/write-beside.ts';
import { fixture } from '../carryover/fixture.ts';
import { copyOfDemoCatalog, demoCatalog, testPorts } from '../demo-catalog.ts';
import { docxOf, paragraph, run } from '../documents/office-files.ts';
import { AUTHOR } from '../store/temp-catalog.ts';

const folder = mkdtempSync(join(tmpdir(), 'fishplate-local-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const { joint } = fixture();
const record = (number: string, more: Partial<LocalRecord> = {}): LocalRecord => ({
  id: 'r',
  kind: 'rule',
  place: 'p',
  title: 'A rule',
  text: 'Do it.',
  cites: { edition: '2018', number },
  from: '2019-01-01',
  until: null,
  approver: 'Office',
  state: 'approved',
  ...more,
});

describe('the citation of a local record', () => {
  it.each([
    ['3.1.1', {}, 're-pointed', ['3.1.2']],
    ['3.1.3', {}, 're-pointed', ['3.1.3']], // asks more than before, and is still what the record is about
    ['3.2', {}, 're-pointed', ['3.2']],
    ['3.4.5', {}, 'choose', ['3.3.3', '3.3.4']],
    ['3.4.6', {}, 'choose', ['3.3.5']], // inferred
    ['3.4.7', {}, 'choose', ['3.3.6']], // doubtful
    ['3.1.4', {}, 'withdrawn', []],
    ['3.4.2', {}, 'unknown', []], // unaccounted
    ['3.4.8', {}, 'unknown', []], // two items
    ['3.4.8', { cites: { edition: '2018', number: '3.4.8', item: 'twinB' } }, 're-pointed', ['3.3.8']],
    ['9.9', {}, 'unknown', []],
    ['3.1.1', { cites: { edition: '2014', number: '3.1.1' } }, 'other-edition', []],
    ['3.1.1', { state: 'denied' }, 'closed', []],
    ['3.1.1', { state: 'requested' }, 're-pointed', ['3.1.2']],
    ['3.1.1', { until: '2023-12-31' }, 'closed', []],
    ['3.1.1', { until: '2024-01-01' }, 're-pointed', ['3.1.2']],
  ] as const)('%s %j is %s', (number, more, kind, heirs) => {
    const pointing = pointLocal(joint, record(number, more as Partial<LocalRecord>), '2024-01-01');
    expect([pointing.kind, pointing.heirs.map(h => h.number)]).toEqual([kind, heirs]);
    expect(pointing.toDo !== undefined).toBe(kind !== 're-pointed' && kind !== 'closed');
  });

  it('follows only heirs that apply to the types of the record', () => {
    const pointing = pointLocal(joint, record('3.5.1'), '2024-01-01', ['court']);
    expect(pointing).toMatchObject({ kind: 'withdrawn', heirs: [] });
    expect(pointing.toDo).toBe('Say whether the rule goes on by itself.');
  });
});

it('variances are counted by cause, however it is written, and by state', () => {
  const variance = (more: Partial<LocalRecord>) => record('3.1.1', { kind: 'variance', ...more });
  const counted = variancesByCause([
    variance({ cause: 'No room' }),
    variance({ cause: 'no room ', state: 'denied', place: 'q' }),
    variance({}),
    record('3.1.1', { cause: 'no room' }),
  ]);
  expect(counted.map(c => [c.cause, c.requests, c.byState.approved, c.byState.denied, c.places])).toEqual([
    ['no room', 2, 1, 1, ['p', 'q']],
    ['', 1, 1, 0, ['p']],
  ]);
});

describe('carrying local rules and variances', () => {
  const options = { from: '2018', to: '2024', date: '2024-07-01' };

  it('gives each record a line, and a letter to whoever has to do or to know something', async () => {
    const outDir = join(folder, 'all');
    const catalog = await openCatalog(await demoCatalog());
    const report = await carryLocal(testPorts(), catalog, { ...options, outDir });
    expect(Object.values(report.counts).reduce((a, b) => a + b)).toBe(report.carried.length);
    expect(report.counts).toMatchObject({ 're-pointed': 7, choose: 2, withdrawn: 1, unknown: 1, closed: 3 });
    expect(readFileSync(join(outDir, 'local.csv'), 'utf8').trim().split('\r\n')).toHaveLength(15);
    const letters = report.carried.flatMap(c => c.letter ?? []);
    expect(readdirSync(join(outDir, 'letters')).sort()).toEqual(letters.map(l => l.replace('letters/', '')).sort());
    const { passages } = await readDocument(
      'l.docx',
      readFileSync(join(outDir, 'letters', 'upper-vale--v-2021-014.docx')),
    );
    const said = passages.map(p => p.text).join('\n');
    expect(said).toContain('To: Owner of 14 Millrace Row');
    expect(said).toContain('3.1.2.2 Clear way in a shared passage is 4.1.1.4');
    expect(said).not.toMatch(/[{}]|undefined/);
    expect(readFileSync(join(outDir, 'variances-by-cause.csv'), 'utf8')).toContain('no room on the lot,2,1,1,0,0,0');
  });

  it('gives the same bytes again, takes a letter of its own, and spares the copy of the template', async () => {
    const outDir = join(folder, 'own');
    const catalog = await openCatalog(await demoCatalog());
    const read = () =>
      readdirSync(outDir, { recursive: true, withFileTypes: true })
        .filter(e => e.isFile())
        .map(e => [e.name, readFileSync(join(e.parentPath, e.name)).toString('base64')]);
    await carryLocal(testPorts(), catalog, { ...options, outDir });
    const first = read();
    await carryLocal(testPorts(), catalog, { ...options, outDir });
    expect(read()).toEqual(first);
    const template = join(outDir, 'letter-template.docx');
    writeFileSync(template, docxOf(paragraph(run('For {{holder}}'))));
    await carryLocal(testPorts(), catalog, { ...options, outDir, template });
    const letter = readFileSync(join(outDir, 'letters', 'upper-vale--v-2021-014.docx'));
    expect((await readDocument('l.docx', letter)).passages.map(p => p.text)).toEqual(['For Owner of 14 Millrace Row']);
    await carryLocal(testPorts(), catalog, { ...options, outDir });
    expect((await readDocument('l.docx', readFileSync(template))).passages[0]!.text).toBe('For {{holder}}');
  });

  it('changes nothing in the catalog unless asked, then only what was re-pointed, and no state', async () => {
    const copy = await copyOfDemoCatalog();
    try {
      const catalog = await openForWriting(copy);
      const before = await localFiles(catalog);
      const report = await carryLocal(testPorts(), catalog, { ...options, outDir: join(folder, 'record') });
      expect(await localFiles(catalog)).toEqual(before);
      const { path, record: read } = report.carried.find(c => c.pointing.kind === 're-pointed')!;
      const write = (title: string) =>
        writeBeside(catalog, new Map([[path, writeLocal({ ...read, title })]]), AUTHOR, title);
      await write('Written while the run went on');
      await expect(recordRePointed(testPorts(), catalog, report)).rejects.toThrow('was written by somebody else');
      await write(read.title);
      expect(await recordRePointed(testPorts(), catalog, report)).toBe(7);
      const after = await localFiles(catalog);
      for (const [at, { record }] of after.records.entries()) {
        const { cites, ...rest } = before.records[at]!.record;
        expect({ ...record, cites: undefined }).toEqual({ ...rest, cites: undefined });
        const { kind, heirs } = report.carried[at]!.pointing;
        expect(record.cites.number).toBe(kind === 're-pointed' ? heirs[0]!.number : cites.number);
      }
      const again = await carryLocal(testPorts(), catalog, { ...options, outDir: join(folder, 'again') });
      expect(again.counts).toMatchObject({ 're-pointed': 0, 'other-edition': 7 });
      expect(await recordRePointed(testPorts(), catalog, again)).toBe(0);
    } finally {
      rmSync(dirname(copy), { recursive: true, force: true });
    }
  });

  it('writes nothing where the letter cannot be filled or the editions stand the wrong way round', async () => {
    const outDir = join(folder, 'none');
    const catalog = await openCatalog(await demoCatalog());
    const template = join(folder, 'bad.docx');
    writeFileSync(template, docxOf(paragraph(run('{{nobody}}'))));
    const carry = (more: object) => carryLocal(testPorts(), catalog, { ...options, outDir, ...more });
    await expect(carry({ template })).rejects.toMatchObject({ code: 'BadFile' });
    await expect(carry({ from: '2024', to: '2018' })).rejects.toMatchObject({ code: 'BadArgument' });
    expect(readdirSync(folder)).not.toContain('none');
  });
});
