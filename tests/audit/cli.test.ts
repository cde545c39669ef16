import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readTable } from '../../src/tables/read-table.ts';
import { writeCsv } from '../../src/tables/write-csv.ts';
import { fishplateIn as fishplate } from '../cli/run-here.ts';
import { temporaryFolder } from '../store/temp-catalog.ts';

const OLD = `number,level,parent,title,text
1,Part,,Storage,
1.1,Work item,1,Butts,
1.1.1,Requirement,1.1,Base,"Set the butt on a level base of oak, except where it hangs from a wall."
1.1.2,Requirement,1.1,Overflow,The overflow shall carry at least 1.5 L/s.
`;
const NEW = `number,level,parent,title,text,was
1,Part,,Storage,,1
1.1,Work item,1,Butts,,1.1
1.1.1,Requirement,1.1,Base,Set the butt on a level base.,1.1.1
1.1.2,Requirement,1.1,Overflow,The overflow shall carry at least 2 L/s.,1.1.2
`;

describe('audit on the command line', () => {
  it('lists losses, exits with 1 while one is open and with 0 once a second person has settled all', async () => {
    const dir = temporaryFolder();
    writeFileSync(join(dir, 'old.csv'), OLD);
    writeFileSync(join(dir, 'new.csv'), NEW);
    await fishplate(dir, 'import', 'old.csv', '--edition', '2018');
    await fishplate(dir, 'import', 'new.csv', '--edition', '2024');
    const first = await fishplate(dir, 'audit', '2018', '2024', '--out', 'losses.csv');
    expect(first.status).toBe(1);
    expect(first.stdout).toContain('2 losses open (material 1, exception 1), 0 settled');
    expect(first.stdout).toContain('1 value changed');
    const table = readTable('losses.csv', readFileSync(join(dir, 'losses.csv')));
    const filled = table.rows.map(({ cells }) => {
      const open = cells.get('state') === 'open';
      const said: Record<string, string> = open ? { verdict: 'dropped', because: 'not needed' } : {};
      return table.columns.map(c => said[c] ?? cells.get(c) ?? '');
    });
    writeFileSync(join(dir, 'filled.csv'), writeCsv([[...table.columns], ...filled]));
    const nobody = await fishplate(dir, 'audit', '2018', '2024', '--settle', 'filled.csv');
    expect(nobody.status).toBe(2);
    const settled = await fishplate(
      dir,
      'audit',
      '2018',
      '2024',
      '--settle',
      'filled.csv',
      '--by',
      'Cy <cy@example.org>',
    );
    expect(settled.stderr).toBe('');
    expect(settled.stdout).toContain('2 losses settled by Cy');
    const last = await fishplate(dir, 'audit', '2018', '2024');
    expect(last.status).toBe(0);
    expect(last.stdout).toContain('0 losses open, 2 settled');
    expect((await fishplate(dir, 'audit', '2024', '2018')).status).toBe(2);
  });
});
