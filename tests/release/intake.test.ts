import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import ExcelJS from 'exceljs';
import { describe, expect, it } from 'vitest';
import { addIntake, toldInTable } from '../../src/commands/intake/intake-add.ts';
import { countReports, listReports } from '../../src/commands/intake/intake-count.ts';
import { countTable, tellCounts } from '../../src/commands/intake/intake-table.ts';
import { intakeRecord, parseIntake, writeIntake } from '../../src/format/intake-files.ts';
import { publishEdition } from '../../src/store/publish.ts';
import { writeBeside } from '../../src/store/write-beside.ts';
import { readTable } from '../../src/tables/read-table.ts';
import { AUTHOR, smallEdition, temporaryFolder } from '../store/temp-catalog.ts';
import { catalogWithDraft } from './small-catalog.ts';

const told = (number: string, cause = 'unclear', text = 'What does it mean?') => ({
  number,
  cause,
  from: 'crew',
  text,
});

/** The draft's edition 2018, and 2024 in which w1a became two, w1b was withdrawn, and w3 went with its requirements. */
async function twoEditions() {
  const made = await catalogWithDraft();
  const to = (id: string) => ({ to: id, fromExtent: 'part' as const, toExtent: 'all' as const });
  const gone = (from: string, reason: string) => ({ from, heirs: [], reason, basis: 'declared' as const });
  const edition = smallEdition(
    '2024',
    '2018',
    'Set',
    {
      lineage: [
        { from: 'w1a', heirs: [to('w1a'), to('w2a')], basis: 'declared' },
        gone('w1b', 'obsolete'),
        ...['w3', 'w3a', 'w3b'].map(id => gone(id, 'too-old')),
      ],
    },
    ['w1', 'w2'],
  );
  const items = edition.items.filter(i => i.id !== 'w1b');
  const settings = { ...edition.settings, withdrawalReasons: [{ code: 'obsolete', meaning: 'no longer used' }] };
  await publishEdition(made.catalog, { ...edition, items, settings }, AUTHOR, 'Edition 2024');
  return made;
}

describe('intake between editions', () => {
  it('keeps a report once, and follows its item to where the next edition has to work', async () => {
    const { catalog, ports } = await twoEditions();
    const reports = [told('1.1', 'Damage seen'), told('1.1'), told('1.2'), told('3.1'), told('1.1')];
    const first = await addIntake(ports, catalog, '2018', reports);
    expect([first.added.length, first.known]).toEqual([4, 1]);
    expect((await addIntake(ports, catalog, '2018', reports)).added).toEqual([]);
    await addIntake(ports, catalog, '2024', [told('2.1', 'too strict')]);

    const { lines, reports: all, causes } = await countReports(catalog, { edition: '2024' });
    expect(all).toBe(5);
    expect(causes).toEqual([
      { cause: 'unclear', reports: 3 },
      { cause: 'damage seen', reports: 1 },
      { cause: 'too strict', reports: 1 },
    ]);
    expect(lines.map(l => [l.number, l.reports, l.shared, l.endedAfter, l.why])).toEqual([
      ['2.1', 3, 2, undefined, undefined],
      ['1.1', 2, 2, undefined, undefined],
      ['1.2', 1, 0, '2018', 'no longer used'],
      ['3.1', 1, 0, '2018', 'too-old'],
    ]);
    const work = await countReports(catalog, { edition: '2024', level: 1 });
    expect(work.lines.map(l => [l.number, l.reports])).toEqual([
      ['2', 3],
      ['1', 2],
      ['1.2', 1],
      ['3.1', 1],
    ]);
    const before = await countReports(catalog, { edition: '2018' });
    expect(before.lines.map(l => [l.number, l.reports])).toEqual([
      ['1.1', 3],
      ['1.2', 1],
      ['2.1', 1],
      ['3.1', 1],
    ]);
    await expect(countReports(catalog, { edition: '2024', level: 9 })).rejects.toThrow('has 2 levels');
  });

  it('counts requests for a variance in, whatever was decided about them, and no local rule', async () => {
    const { catalog } = await twoEditions();
    const local = (id: string, kind: string, number: string) =>
      JSON.stringify({
        id,
        kind,
        place: 'hollin',
        title: '',
        text: 'Otherwise here.',
        cites: { edition: '2018', number },
        from: '2020-01-01',
        until: null,
        approver: 'desk',
        state: 'denied',
      });
    const files = new Map([
      ['local/hollin/v-1.json', local('v-1', 'variance', '2.1')],
      ['local/hollin/r-1.json', local('r-1', 'rule', '2.1')],
      ['local/hollin/v-2.json', local('v-2', 'variance', '9.9')],
    ]);
    await writeBeside(catalog, files, AUTHOR, 'Local');
    const { lines, findings } = await countReports(catalog, { edition: '2024' });
    expect(lines.map(l => [l.number, l.causes[0]!.cause])).toEqual([['2.1', 'variance request']]);
    expect(findings.map(f => f.message)).toEqual([expect.stringContaining('which that edition does not have')]);
  });

  it('does not keep what it cannot place or date, says why, and offers the nearest number', async () => {
    const { catalog, ports } = await twoEditions();
    const file = join(temporaryFolder(), 'feedback.csv');
    writeFileSync(
      file,
      'Number,Cause,Date,From,Text,Kind,Phone\n1.1,unclear,2020-02-30,crew,a,,\n1.7,unclear,,crew,b,,\n2.1,leaks,2020-01-01,,c,,\n2.1,leaks,2020-01-01,crew,d,rumour,\n2.2,leaks,2020-01-01,crew,e,site comment,5\n',
    );
    const { told: rows, findings } = await toldInTable(ports, file);
    expect(findings.map(f => f.rule)).toEqual(['unused-column']);
    const report = await addIntake(ports, catalog, '2018', rows);
    expect(report.added.map(r => [r.number, r.kind, r.text])).toEqual([['2.2', 'site comment', 'e']]);
    expect(report.findings.map(f => `${f.place?.line}: ${f.message}`)).toEqual([
      expect.stringMatching(/^2: .*2020-02-30 is not a date/),
      expect.stringMatching(/^3: .*no number 1\.7; the nearest are 1\.1/),
      expect.stringMatching(/^4: .*lacks who told it/),
      expect.stringMatching(/^5: .*rumour is no kind/),
    ]);
    writeFileSync(file, 'number,text\n1.1,x\n');
    await expect(toldInTable(ports, file)).rejects.toThrow('has no column cause, from');
    const listed = await listReports(catalog, { number: '2', cause: 'Leaks' });
    expect(listed.records.map(r => r.text)).toEqual(['e']);
  });

  it('is told as lines and as tables that exceljs reads, with a column for each cause', async () => {
    const { catalog, ports } = await twoEditions();
    await addIntake(ports, catalog, '2018', [told('1.1', '=bad'), told('1.2')]);
    const report = await countReports(catalog, { edition: '2024' });
    expect(tellCounts(report)).toEqual([
      '2 reports counted under 2024: =bad 1, unclear 1.',
      '  1  1.1 First: =bad 1 (1 shared with other items)',
      '  1  2.1 First: =bad 1 (1 shared with other items)',
      'Of items that 2024 does not have:',
      '  1  2018 1.2 Second: unclear 1; withdrawn: no longer used',
    ]);
    const csv = readTable('c.csv', new TextEncoder().encode(countTable(report, 'c.csv') as string));
    expect([...csv.rows[2]!.cells.values()]).toEqual(['2018', '1.2', 'Second', '1', '0', '0', '1', 'no longer used']);
    const workbook = new ExcelJS.Workbook();
    await workbook.xlsx.load((countTable(report, 'c.xlsx') as Uint8Array).slice().buffer as never);
    expect(workbook.worksheets[0]!.getRow(2).values).toEqual([undefined, '2024', '1.1', 'First', 1, 1, 1, 0]);
  });

  it('comes back as it was written, and a damaged record is told', () => {
    const said = { kind: 'feedback' as const, edition: '2018', item: 'w1a', number: '1.1', date: '2020-01-01' };
    const record = intakeRecord({ ...said, cause: 'unclear', from: 'crew', text: 'x' });
    expect(parseIntake(new Map([['intake/2018/a.json', writeIntake(record)]])).records).toEqual([record]);
    expect(parseIntake(new Map([['intake/2018/a.json', '{}']])).findings[0]!.rule).toBe('schema');
  });
});
