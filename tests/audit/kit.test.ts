import { rmSync, writeFileSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type AuditReport, auditEditions } from '../../src/commands/audit/audit-editions.ts';
import { type AuditKit, auditKit, type KIT_COLUMNS, kitXlsx } from '../../src/commands/audit/audit-kit.ts';
import { readKit, toldKit } from '../../src/commands/audit/read-kit.ts';
import { stratified, wilson } from '../../src/content/wilson.ts';
import { openCatalog } from '../../src/store/open.ts';
import { readXlsx } from '../../src/tables/read-xlsx.ts';
import { writeXlsx } from '../../src/tables/write-xlsx.ts';
import { demoCatalog, testPorts } from '../demo-catalog.ts';

describe('the interval of a share', () => {
  // Newcombe 1998, Statistics in Medicine 17, 857-872, table I, method 3 (score without continuity correction).
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('of %i of %i is that of Newcombe', (hits, of, low, high) => {
    const share = wilson(hits, of);
    expect(share.low).toBeCloseTo(low, 4);
    expect(share.high).toBeCloseTo(high, 4);
  });

  it('covers the true share about 95 times in 100', () => {
    for (const p of [0.03, 0.2, 0.5, 0.97]) {
      for (const n of [30, 80]) {
        let covered = 0;
        let probability = (1 - p) ** n;
        for (let k = 0; k <= n; k++) {
          const { low, high } = wilson(k, n);
          if (low <= p && p <= high) covered += probability;
          probability *= ((n - k) / (k + 1)) * (p / (1 - p));
        }
        expect(covered).toBeGreaterThan(0.89);
        expect(covered).toBeLessThan(0.99);
      }
    }
  });

  it('weighs strata by their size, and knows no doubt where everything was looked at', () => {
    const few = stratified([
      { population: 900, looked: 10, hits: 10 },
      { population: 100, looked: 10, hits: 0 },
    ]);
    expect(few.share).toBeCloseTo(0.9, 10);
    expect(few.low).toBeLessThan(0.9);
    expect(few.effective).toBeLessThan(20);
    expect(stratified([{ population: 5, looked: 5, hits: 4 }])).toMatchObject({ share: 0.8, low: 0.8, high: 0.8 });
    expect(stratified([{ population: 263, looked: 262, hits: 81 }]).low).toBeCloseTo(wilson(81, 262).low, 10);
  });
});

let folder: string;
let report: AuditReport;
let kit: AuditKit;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'fishplate-kit-'));
  report = await auditEditions(await openCatalog(await demoCatalog()), '2018', '2024');
  kit = auditKit(report, 60, 'spring');
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The kit as it comes back: the worksheet filled in by `fill`, the other sheets as they were. */
function comesBack(name: string, fill: (at: number) => Partial<Record<(typeof KIT_COLUMNS)[number], string>>): string {
  const bytes = kitXlsx(report, kit);
  const sheets = ['Worksheet', 'How to', 'Strata'].map(sheet => {
    const { columns, rows } = readXlsx('kit.xlsx', bytes, sheet);
    const filled = rows.map((row, at) => {
      const said: Record<string, string> = sheet === 'Worksheet' ? { ...fill(at) } : {};
      return columns.map(c => said[c] ?? row.cells.get(c) ?? '');
    });
    return { name: sheet, header: [...columns], rows: filled };
  });
  const file = join(folder, name);
  writeFileSync(file, writeXlsx(sheets));
  return file;
}

const signed = { name: 'Bo Auditor', date: '2024-01-20', second_name: 'Cy Auditor', second_date: '2024-01-21' };

describe('an audit kit', () => {
  it('draws every stratum, as many as asked for, the same for a seed and others for another', () => {
    expect(kit.rows.length).toBe(60);
    expect(kit.strata.reduce((sum, s) => sum + s.population, 0)).toBe(report.asked);
    expect(kit.strata.every(s => s.drawn >= 1 && s.drawn <= s.population)).toBe(true);
    expect(new Set(kit.rows.map(r => r.item)).size).toBe(60);
    expect(auditKit(report, 60, 'spring').rows).toEqual(kit.rows);
    expect(auditKit(report, 60, 'autumn').rows).not.toEqual(kit.rows);
    expect(auditKit(report, 100_000, 'spring').rows.length).toBe(report.asked);
    expect(Buffer.from(kitXlsx(report, kit)).equals(Buffer.from(kitXlsx(report, auditKit(report, 60, 'spring'))))).toBe(
      true,
    );
  });

  it('splits the reduction so that it adds up, for the whole and for each installation type', () => {
    for (const type of new Set(kit.reduction.rows.map(r => r.type))) {
      const rows = kit.reduction.rows.filter(r => r.type === type);
      const sum = rows.slice(0, -1).reduce((n, r) => n + r.items, 0);
      expect(sum, type).toBe(rows.at(-1)!.items);
      const words = rows.slice(0, -1).reduce((n, r) => n + (r.words ?? 0), 0);
      expect(words, type).toBe(rows.at(-1)!.words);
    }
  });

  it('counts only rows that two persons signed', async () => {
    const file = comesBack('signed.xlsx', at => {
      if (at === 0) return { verdict: 'right' };
      if (at === 1) return { ...signed, verdict: 'right', second_name: ' bo  auditor' };
      if (at === 2) return { ...signed, verdict: 'wrong', remark: 'the grating' };
      return at < 50 ? { ...signed, verdict: 'right' } : {};
    });
    const result = await readKit(testPorts(), file, '2018', '2024');
    expect(result).toMatchObject({ rows: 60, counted: 48, unsigned: 2 });
    expect(result.wrong).toEqual([{ number: kit.rows[2]!.number, remark: 'the grating' }]);
    expect(result.right.low).toBeLessThan(result.right.share);
    expect(result.right.high).toBeGreaterThan(result.right.share);
    expect(result.findings.map(f => f.message).join()).toContain('second person has to be another');
    expect(toldKit(result).join('\n')).toContain('95 % interval');
  });

  it('counts no row that is signed on a day that cannot be read or is still to come', async () => {
    const days = ['31.12.2023', '2024-13-01', '2024-02-03', '2023-12-31', '2024-02-01'];
    const file = comesBack('days.xlsx', at =>
      at < days.length ? { ...signed, second_date: days[at]!, verdict: 'right' } : {},
    );
    const result = await readKit(testPorts(), file, '2018', '2024');
    expect(result).toMatchObject({ counted: 2, unsigned: 3 });
    expect(result.findings.map(f => f.message.slice(kit.rows[0]!.number.length).trim())).toEqual([
      expect.stringContaining('has the date 31.12.2023; write it as year-month-day'),
      expect.stringContaining('has the date 2024-13-01;'),
      expect.stringContaining('is dated 2024-02-03, which is still to come;'),
    ]);
  });

  it('refuses a worksheet of other editions, and a table that is none', async () => {
    const file = comesBack('other.xlsx', () => ({}));
    await expect(readKit(testPorts(), file, '2014', '2018')).rejects.toThrow(/worksheet of 2018 to 2024/);
    const table = join(folder, 'table.csv');
    writeFileSync(table, 'a,b\n1,2\n');
    await expect(readKit(testPorts(), table, '2018', '2024')).rejects.toThrow(/has no column stratum/);
  });
});
