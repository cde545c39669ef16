import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { beforeEach, describe, expect, it } from 'vitest';
import { openDatabase } from '../../src/databases/open-database.ts';
import { writeCsv } from '../../src/tables/write-csv.ts';
import { fishplateIn } from '../cli/run-here.ts';
import { temporaryFolder } from '../store/temp-catalog.ts';
import { emptyFile } from './engines.ts';

const OLD = `number,level,parent,title,text
1,Part,,Storage,
1.1,Work item,1,Butts,
1.1.1,Requirement,1.1,Base,Set the butt on a level base.
1.1.2,Requirement,1.1,Overflow,The overflow shall carry at least 1.5 L/s.
1.1.3,Requirement,1.1,Gloves,Wear gloves.
`;
const NEW = `number,level,parent,title,text,was
1,Part,,Storage,,1
1.1,Work item,1,Butts,,1.1
1.1.1,Requirement,1.1,Overflow,The overflow shall carry at least 2 L/s.,1.1.2
1.1.2,Requirement,1.1,Base,Set the butt on a level base.,1.1.1
`;
const BECAME = 'from,to,reason,note\n1.1.3,,obsolete,Nobody wears them.\n';
const JOBS = 'job,item,state\nA,1.1.2,open\nA,1.1.1,open\nB,1.1.3,open\nB,1.1.2,signed\n';
const EDITIONS = ['--from', '2018', '--to', '2024'];
const TABLE = ['carry', 'jobs', '--db', 'sqlite:works.db', '--table', 'jobs', ...EDITIONS];

type Row = Record<string, string>;

let dir: string;
const fishplate = (...args: string[]) => fishplateIn(dir, ...args);
const read = (name: string) => readFileSync(join(dir, name), 'utf8');
const rowsOf = (name: string) => parse(read(name), { columns: true, bom: true }) as Row[];

async function saidInside(): Promise<unknown[]> {
  const db = await openDatabase(join(dir, 'works.db'), { readOnly: true });
  try {
    const rows = await db.rows('select * from jobs_annotated order by id');
    return rows.map(r => [r.item, r.outcome, r.why, r.to_do]);
  } finally {
    await db.close();
  }
}

beforeEach(async () => {
  dir = temporaryFolder();
  for (const [name, text] of Object.entries({ 'old.csv': OLD, 'new.csv': NEW, 'became.csv': BECAME, 'jobs.csv': JOBS }))
    writeFileSync(join(dir, name), text);
  await fishplate('import', 'old.csv', '--edition', '2018');
  await fishplate('import', 'new.csv', '--edition', '2024', '--lineage', 'became.csv');
  emptyFile(join(dir, 'works.db'));
  const db = await openDatabase(join(dir, 'works.db'), { readOnly: false });
  await db.run('create table jobs (id integer primary key, job text, item text, state text)');
  const rows = (parse(JOBS) as string[][]).slice(1).map((cells, at) => [at + 1, ...cells]);
  await db.insert('jobs', ['id', 'job', 'item', 'state'], [], rows);
  await db.close();
});

describe('carry jobs --db on the command line', () => {
  it('keeps decisions for an agency, which then hold for its tables and for its files', async () => {
    await fishplate(...TABLE, '--decisions-out', 'ask.csv');
    const asked = rowsOf('ask.csv').map(
      (r): Row => ({ ...r, answer: r.number === '1.1.2' ? 'carry' : 'drop', by: 'Ana' }),
    );
    expect(asked.map(r => r.number).sort()).toEqual(['1.1.2', '1.1.3']);
    writeFileSync(join(dir, 'filled.csv'), writeCsv([Object.keys(asked[0]!), ...asked.map(r => Object.values(r))]));
    const keep = ['--agency', 'vale', '--decisions', 'filled.csv', '--keep-decisions'];

    const dry = await fishplate(...TABLE, ...keep, '--dry-run');
    expect(dry.stdout).toContain('0 decisions kept for vale: a dry run writes nothing.');
    const kept = await fishplate(...TABLE, ...keep);
    expect(kept).toMatchObject({ status: 0, stdout: expect.stringContaining('2 decisions kept for vale.') });
    const decided = await saidInside();
    expect(decided.filter(line => JSON.stringify(line).includes('Decided by Ana'))).toHaveLength(2);

    const later = await fishplate(...TABLE, '--agency', 'vale', '--price-changes', 'inside.csv');
    expect(later.status).toBe(0);
    expect(await saidInside()).toEqual(decided);
    const file = ['--out', 'out.csv', '--agency', 'vale', '--price-changes', 'of-file.csv'];
    await fishplate('carry', 'jobs', 'jobs.csv', ...EDITIONS, ...file);
    const lines = rowsOf('out.csv').filter(r => r.origin === 'input');
    expect(lines.map(r => [r.item, r.outcome, r.why, r.to_do])).toEqual(decided);
    expect(rowsOf('inside.csv').map(r => [r.job, r.first_record, r.number, r.why])).toEqual([
      ['A', '1', '1.1.2', 'Decided by Ana.'],
    ]);
    expect(read('inside.csv')).toBe(read('of-file.csv'));
  });

  it('says which options have to stand together, and keeps nothing then', async () => {
    const refused = await fishplate(...TABLE, '--agency', 'other', '--keep-decisions');
    expect(refused).toMatchObject({ status: 2, stderr: expect.stringMatching(/--keep-decisions .*; name both\./) });
    expect((await fishplate(...TABLE, '--agency', 'other')).stderr).toContain('keeps no policy of other');
  });
});
