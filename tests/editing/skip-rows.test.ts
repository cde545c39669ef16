import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { importTables } from '../../src/commands/importing/import-tables.ts';
import { openCatalog } from '../../src/store/open.ts';
import { readIndex } from '../../src/store/read.ts';
import { testPorts } from '../demo-catalog.ts';

describe('a row that applies to a type which the settings do not list', () => {
  let dir = '';
  beforeAll(() => {
    dir = mkdtempSync(join(tmpdir(), 'fishplate-skip-'));
    writeFileSync(join(dir, 'types.json'), '{"installationTypes": [{"id": "house", "name": "House"}]}');
    writeFileSync(
      join(dir, 'table.csv'),
      'number,title,applies_to\n1,Walls,house\n1.1,Ties,house\n2,Keels,boat\n2.1,Bolts,\n',
    );
  });
  afterAll(() => rmSync(dir, { recursive: true, force: true }));

  const request = (skipRows: boolean) => ({
    tables: [join(dir, 'table.csv')],
    edition: '1',
    catalog: join(dir, `${skipRows}.git`),
    settings: join(dir, 'types.json'),
    skipRows,
  });

  it('stops the import, with its line', async () => {
    await expect(importTables(testPorts(), request(false))).rejects.toThrow(/2 applies to boat.*table\.csv:4/);
  });

  it('is left out with all that stands below it when rows may be skipped, and is told', async () => {
    const report = await importTables(testPorts(), request(true));
    expect([report.rowsSkipped, report.findings.map(f => f.rule)]).toEqual([2, ['unknown-type']]);
    const { entries } = await readIndex(await openCatalog(request(true).catalog), '1');
    expect(entries.map(e => e.number)).toEqual(['1', '1.1']);
  });
});
