import { execFileSync } from 'node:child_process';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type AuditReport, auditEditions, openLosses } from '../../src/commands/audit/audit-editions.ts';
import { auditCsv } from '../../src/commands/audit/audit-table.ts';
import { lossKey } from '../../src/commands/audit/loss-key.ts';
import { settleLosses } from '../../src/commands/audit/settle-losses.ts';
import { lossAnswerPath, parseLossAnswers, writeLossAnswer } from '../../src/format/loss-answers.ts';
import type { Finding } from '../../src/model/finding.ts';
import type { LossAnswer } from '../../src/model/loss-answer.ts';
import { openCatalog, openForWriting } from '../../src/store/open.ts';
import { readBeside } from '../../src/store/read-beside.ts';
import { writeBeside } from '../../src/store/write-beside.ts';
import { writeCsv } from '../../src/tables/write-csv.ts';
import { copyOfDemoCatalog, testPorts } from '../demo-catalog.ts';

const REVIEWER = 'Ana Reviewer <ana@example.org>';
const planted = JSON.parse(readFileSync(join(import.meta.dirname, '../../catalog/planted.json'), 'utf8'));

let dir: string;
let report: AuditReport;
beforeAll(async () => {
  dir = await copyOfDemoCatalog();
  report = await auditEditions(await openCatalog(dir), '2018', '2024');
}, 60_000);
afterAll(() => rmSync(dirname(dir), { recursive: true, force: true }));

/** A table of verdicts, as a person fills it in. */
function filled(name: string, rows: readonly (readonly string[])[]): string {
  const file = join(dirname(dir), name);
  writeFileSync(file, writeCsv([['key', 'verdict', 'because'], ...rows]));
  return file;
}

describe('an audit of the demo', () => {
  it('finds the five losses that were planted, and the type that was dropped', () => {
    const open = report.lines.filter(l => l.state === 'open');
    let known = 0;
    for (const { from, to, phrase } of planted.losses as { from: string; to: string; phrase: string }[]) {
      const found = open.filter(l => l.number === from && phrase.includes(l.text.replace(/^and /, '')));
      known += found.length;
      expect(found.length, `${from}: ${phrase}`).toBeGreaterThan(0);
      expect(found.every(l => l.heirs.some(h => h.number === to))).toBe(true);
    }
    const { from, type } = planted.droppedType as { from: string; type: string };
    expect(open.filter(l => l.kind === 'type').map(l => [l.number, l.types])).toEqual([[from, [type]]]);
    process.stdout.write(
      `audit of the demo 2018 to 2024: ${report.asked} old texts, ${open.length} losses open, ` +
        `${open.length - known - 1} of them beside the planted ones; ${report.lines.filter(l => l.state === 'decision').length} covered by a decision\n`,
    );
    // More than one in five texts would be a list that nobody reads.
    expect(open.length).toBeLessThan(report.asked / 5);
  });

  it('calls a changed value a change of duty and no loss', () => {
    const changed = report.lines.filter(l => l.kind === 'changed');
    expect(changed.length).toBeGreaterThan(80);
    expect(changed.find(l => l.number === '2.3.5.3')).toMatchObject({
      text: 'not less than 100 mm',
      becomes: 'at least 150 mm',
      state: 'duty',
      key: '',
    });
  });

  it('asks nothing of a withdrawn text, whose reason covers it whole', () => {
    const withdrawn = report.retention.filter(r => r.fate === 'withdrawn');
    expect(withdrawn.length).toBeGreaterThan(30);
    expect(withdrawn.every(r => r.lost.length === 0 && r.reason !== undefined)).toBe(true);
  });

  it('counts sentences that left by an edition-wide decision as covered by it, in items that stay', () => {
    const gloves = report.lines.filter(l => l.number === '1.1.1.2' && /gloves|eye/i.test(l.text));
    expect(gloves.length).toBeGreaterThan(0);
    expect(gloves.every(l => l.state === 'decision' && l.decision === 'worker-safety')).toBe(true);
  });

  it('asks for each set of heirs and its installation types apart, and leaves no type out', () => {
    const { joint, retention } = report;
    for (const item of new Set(retention.map(r => r.item))) {
      const asked = retention.filter(r => r.item === item).flatMap(r => r.types);
      expect([...asked].sort(), item).toEqual([...joint.old.types(item)].sort());
    }
    for (const { types, heirs } of retention) {
      for (const heir of heirs) expect(joint.new.types(heir)).toEqual(expect.arrayContaining([...types]));
    }
  });
});

describe('settling a loss', () => {
  it('is refused to the author of the change, and nothing is written', async () => {
    const line = report.lines.find(l => l.state === 'open')!;
    const file = filled('own.csv', [[line.key, 'stated', '']]);
    const catalog = await openForWriting(dir);
    const before = await readBeside(catalog, 'answers/');
    await expect(
      settleLosses(testPorts(), catalog, report, file, 'Standards Steward <steward@example.org>'),
    ).rejects.toThrow(/let a second person do it/);
    expect(await readBeside(catalog, 'answers/')).toEqual(before);
  });

  it.each([
    ['a verdict that is none', 'maybe', 'because', /write restored, stated or dropped/],
    ['dropping without a reason', 'dropped', '', /write one under because/],
  ])('refuses %s', async (_, verdict, because, sentence) => {
    const line = report.lines.find(l => l.state === 'open')!;
    const file = filled('bad.csv', [[line.key, verdict, because]]);
    await expect(settleLosses(testPorts(), await openForWriting(dir), report, file, REVIEWER)).rejects.toThrow(
      sentence,
    );
  });

  it.each([
    ['another answer', 'dropped', 'not needed'],
    ['the same answer', 'restored', ''],
  ])('refuses %s to what the table answers already, with both lines', async (_, verdict, because) => {
    const line = report.lines.find(l => l.state === 'open')!;
    const file = filled('twice.csv', [
      [line.key, 'restored', ''],
      [line.key, '', ''],
      [line.key, verdict, because],
    ]);
    const trouble = await settleLosses(testPorts(), await openForWriting(dir), report, file, REVIEWER).catch(e => e);
    expect(trouble.message).toMatch(/answered on line 2 already; leave one of the two/);
    expect(trouble.findings.map((f: Finding) => f.place?.line)).toEqual([4]);
  });

  it('keeps a verdict under the name of a second person, and asks again when a text has changed', async () => {
    const [one, two] = report.lines.filter(l => l.state === 'open');
    const catalog = await openForWriting(dir);
    const file = filled('good.csv', [
      [one!.key, 'Dropped', 'moved to the handbook'],
      [two!.key, 'stated', ''],
      [report.lines.find(l => l.state === 'open' && l !== one && l !== two)!.key, '', ''],
    ]);
    const told = await settleLosses(testPorts(), catalog, report, file, REVIEWER);
    expect(told).toMatchObject({ settled: 2, empty: 1 });
    const after = await auditEditions(catalog, '2018', '2024');
    expect(openLosses(after).length).toBe(openLosses(report).length - 2);
    expect(auditCsv(after)).toContain('moved to the handbook');
    expect(execFileSync('git', ['-C', dir, 'log', '-1', '--format=%an <%ae>', 'main'], { encoding: 'utf8' })).toBe(
      `${REVIEWER}\n`,
    );

    // Another person brings the whole table back; what was settled stays under the name that settled it.
    const whole = join(dirname(dir), 'whole.csv');
    writeFileSync(whole, auditCsv(after));
    const bo = 'Bo Auditor <bo@example.org>';
    expect(await settleLosses(testPorts(), catalog, after, whole, bo)).toMatchObject({ settled: 0, kept: 2 });

    // The same answer, given on other words.
    const path = lossAnswerPath(one!.key);
    const answer = parseLossAnswers(await readBeside(catalog, 'answers/loss/')).answers.get(one!.key)!;
    const stale: LossAnswer = { ...answer, texts: ['0'.repeat(20)] };
    const author = { ...testPorts().author, date: new Date('2024-03-01T00:00:00Z') };
    await writeBeside(catalog, new Map([[path, writeLossAnswer(stale)]]), author, 'older words');
    const again = (await auditEditions(catalog, '2018', '2024')).lines.find(l => l.key === one!.key)!;
    expect(again.state).toBe('again');
    // Nothing said of the old words is carried into the table that is filled in next.
    expect(auditCsv({ ...after, lines: [again] })).not.toContain('moved to the handbook');
  }, 60_000);

  it('is kept by a key that no text is part of', () => {
    expect(lossKey('1', '2', 'a', ['x'], 'thing', 'oak')).toMatch(/^[0-9a-f]{16}$/);
    expect(lossKey('1', '2', 'a', ['x'], 'thing', 'oak')).not.toBe(lossKey('1', '2', 'a', ['y'], 'thing', 'oak'));
  });
});
