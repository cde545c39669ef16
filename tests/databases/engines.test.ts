import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { undoDatabaseRun } from '../../src/commands/databases/undo-database.ts';
import { joinEditions } from '../../src/crosswalk/joint.ts';
import type { Database } from '../../src/databases/database.ts';
import { carryIn, saidIn, saidOfFile, way } from './carry.ts';
import { ENGINES, type TestDatabase } from './engines.ts';

const HEADER = ['Job', 'Item', 'Type', 'Status', 'Remark'];
const JOBS = [
  ['J1', '3.1.1', 'house lot', 'open', 'two, of them'],
  ['J1', '3.2.1', 'house lot', 'open', ''],
  ['J1', '3.1.4', 'house lot', 'open', "it's = 1+1; drop table jobs"],
  ['J1', '3.2.1', 'house lot', 'open', 'again'],
  ['J2', '3.1.2', 'terrace row', 'signed', ''],
  ['J2', '3.1.3', 'terrace row', 'open', ''],
  ['J3', '3.4.5', 'courtyard block', 'planned', ''],
  ['J3', '3.1.9', 'court', 'open', ''],
  ['J3', '3.3.1 (2018)', 'court', 'strange', ''],
];

/** All rows that a run leaves, of every table of ours. */
async function rowsIn(test: TestDatabase, table = 'jobs'): Promise<string> {
  const names = [
    'carried',
    'carried_case',
    'carried_outcome',
    'carried_heir',
    'carried_fold',
    'carried_job',
    'carried_duty',
  ];
  const all: string[] = [];
  for (const name of [...names.map(n => `${table}_${n}`), 'fishplate_links', 'fishplate_items', 'fishplate_duties']) {
    const rows = (await test.sql(`select * from "${name}"`)).map(r => JSON.stringify(r)).sort();
    all.push(`${name}\n${rows.join('\n')}`);
  }
  return all.join('\n');
}

/** A database that breaks at the n-th transaction, before it is finished. */
function breaking(db: Database, at: number): Database {
  let begun = 0;
  return {
    ...db,
    together: work =>
      db.together(async () => {
        const result = await work();
        if (++begun === at) throw new Error('killed');
        return result;
      }),
  };
}

describe.each(ENGINES)('jobs in $name', engine => {
  let test: TestDatabase;
  beforeAll(async () => {
    if (!engine.absent) await engine.start();
  });
  beforeEach(async () => {
    if (engine.absent) return;
    test = await engine.fresh();
    await test.table('jobs', HEADER, JOBS);
  });
  afterAll(() => engine.stop());

  it.skipIf(engine.absent)('are answered beside the table, which stays as it is', async () => {
    const before = await test.sql('select * from jobs order by id');
    const report = await test.with(db => carryIn(db));
    const ofFile = await saidOfFile(HEADER, JOBS);
    expect(await saidIn(test, 'jobs')).toEqual({ lines: ofFile.lines, added: ofFile.added });
    expect(report.totals).toEqual(ofFile.report.totals);
    expect(await test.sql('select * from jobs order by id')).toEqual(before);
  });

  it.skipIf(engine.absent)('come out the same when they are carried again', async () => {
    const first = await test.with(db => carryIn(db));
    const rows = await rowsIn(test);
    const again = await test.with(db => carryIn(db));
    expect(again.run).toBe(first.run);
    expect(await rowsIn(test)).toBe(rows);
  });

  it.skipIf(engine.absent)('leave the schema as it was when the run is taken back', async () => {
    const before = await test.schema();
    const { run } = await test.with(db => carryIn(db));
    expect(await test.schema()).not.toBe(before);
    await test.with(db => undoDatabaseRun(db, run));
    expect(await test.schema()).toBe(before);
    await expect(test.with(db => undoDatabaseRun(db, run))).rejects.toThrow(/has no run/);
  });

  it.skipIf(engine.absent)('leave another table’s run alone when theirs is taken back', async () => {
    await test.table('later', HEADER, JOBS);
    const { run } = await test.with(db => carryIn(db));
    await test.with(db => carryIn(db, { table: 'later' }));
    const other = await rowsIn(test, 'later');
    await test.with(db => undoDatabaseRun(db, run));
    expect(await rowsIn(test, 'later')).toBe(other);
  });

  it.skipIf(engine.absent)('come out the same in batches, wherever a run was broken off', async () => {
    await test.with(db => carryIn(db));
    const whole = await rowsIn(test);
    const views = await saidIn(test, 'jobs');
    const { run } = await test.with(db => carryIn(db, { batch: 4 }));
    await test.with(db => undoDatabaseRun(db, run));
    // One transaction for the cases, three for batches, one for the rest.
    for (let at = 1; at <= 5; at++) {
      await expect(test.with(db => carryIn(breaking(db, at), { batch: 4 }))).rejects.toThrow('killed');
      const done = at === 1 ? [{ n: 0 }] : await test.sql('select count(*) as n from jobs_carried');
      expect(Number(done[0]!.n)).toBe([0, 0, 4, 8, 9][at - 1]);
      await test.with(db => carryIn(db, { batch: 4 }));
      expect(await rowsIn(test)).toBe(whole);
      expect(await saidIn(test, 'jobs')).toEqual(views);
      await test.with(db => undoDatabaseRun(db, run));
    }
  });

  it.skipIf(engine.absent)('that change between batches are noticed, and all is taken back', async () => {
    const before = await test.schema();
    await expect(test.with(db => carryIn(breaking(db, 3), { batch: 4 }))).rejects.toThrow('killed');
    await test.sql(`update jobs set "Item" = '3.1.2' where id = 1`);
    await expect(test.with(db => carryIn(db, { batch: 4 }))).rejects.toThrow(/were changed while they were carried/);
    expect(await test.schema()).toBe(before);
  });

  it.skipIf(engine.absent)('are worked out in a dry run that leaves nothing', async () => {
    const before = await test.schema();
    const dry = await test.with(db => carryIn(db, { dryRun: true }));
    expect(await test.schema()).toBe(before);
    const { totals, cases } = await test.with(db => carryIn(db));
    expect({ totals: dry.totals, cases: dry.cases }).toEqual({ totals, cases });
  });

  it.skipIf(engine.absent)('stand under names that need quoting, in a table with a key of two columns', async () => {
    await test.sql(
      `create table "Jobs; ""2024""" ("Site key" text not null, nr integer not null, "Item no." text, "new_number" text, primary key ("Site key", nr))`,
      `insert into "Jobs; ""2024""" values ('b', 1, '3.1.1', null), ('a', 2, '3.1.2', null), ('a', 1, null, 'x')`,
    );
    await test.with(db => carryIn(db, { table: 'Jobs; "2024"', batch: 2 }));
    const rows = await test.sql(
      `select "Site key", nr, new_number, new_number_2, outcome from "Jobs; ""2024""_annotated" order by 1, 2`,
    );
    expect(rows.map(r => Object.values(r))).toEqual([
      ['a', 1, 'x', '', 'unknown'],
      ['a', 2, null, '3.1.1', 'carried'],
      ['b', 1, null, '3.1.2', 'carried'],
    ]);
  });

  it.skipIf(engine.absent)('in tables with long names get tables of their own', async () => {
    for (const end of ['a', 'b']) {
      const table = `${'x'.repeat(60)}${end}`;
      await test.table(table, HEADER, JOBS);
      await test.with(db => carryIn(db, { table }));
    }
    const names = await test.with(db => db.rows('select table_name from fishplate_runs'));
    expect(names).toHaveLength(2);
  });

  it.skipIf(engine.absent)('whose numbers lost a nought are asked about, as in a sheet', async () => {
    const from = {
      ...way.joint.from,
      entries: way.joint.from.entries.map(e => (e.id === 'w34' ? { ...e, number: '3.10' } : e)),
    };
    const spoiled = { ...way, joint: joinEditions(from, way.joint.to, way.joint.crosswalk) };
    const rows = [
      ['3.1', 'house'],
      ['3.2', 'house'],
    ];
    await test.table('told', ['Item', 'Type'], rows);
    await test.table('lost', ['Item', 'Type'], rows, ['numeric', 'text']);
    const why = async (table: string) => {
      await test.with(db => carryIn(db, { table }, spoiled));
      return (await test.sql(`select outcome, why from ${table}_annotated order by id`)).map(
        r => `${r.outcome}: ${r.why}`,
      );
    };
    const [asText, asNumber] = [await why('told'), await why('lost')];
    expect(asText[0]).toMatch(/^choose: A spreadsheet may have cut .*3\.1 .*3\.10/);
    expect(asNumber[0]).toMatch(/^(?:choose|unknown): .*3\.1 .*3\.10/);
    expect(asNumber[1]).toBe(asText[1]);
  });

  it.skipIf(engine.absent)('are refused where another catalog has editions of these names there', async () => {
    await test.table('later', HEADER, JOBS);
    await test.with(db => carryIn(db));
    const from = {
      ...way.joint.from,
      entries: way.joint.from.entries.map(e => ({ ...e, title: `${e.title}, other` })),
    };
    const other = { ...way, joint: joinEditions(from, way.joint.to, way.joint.crosswalk) };
    await expect(test.with(db => carryIn(db, { table: 'later' }, other))).rejects.toThrow(
      /2018 stands .* with other items/,
    );
  });

  it.skipIf(engine.absent)('keep their hands off tables of somebody else that have our names', async () => {
    await test.sql('create table jobs_carried (id integer)');
    await expect(test.with(db => carryIn(db))).rejects.toThrow(/has a jobs_carried already that is not from us/);
    await test.sql('drop table jobs_carried', 'create table fishplate_items (a integer)');
    await expect(test.with(db => carryIn(db))).rejects.toThrow(/fishplate_items already/);
  });

  it.skipIf(engine.absent)(
    'are refused in one sentence where there is no such table, no key, no line or a view',
    async () => {
      await test.sql('create view seen as select * from jobs');
      const refused = (table: string) => test.with(db => carryIn(db, { table })).catch(e => `${e.code}: ${e.message}`);
      expect(await refused('works')).toMatch(/^BadTable: The database has no table works; it has jobs; name one/);
      expect(await refused('seen')).toMatch(/^BadTable: seen is a view and no table/);
      await test.sql('delete from jobs');
      expect(await refused('jobs')).toMatch(/^BadTable: jobs in .* is empty/);
    },
  );
});
