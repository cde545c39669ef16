import type { Way } from '../../carryover/jobs/job-reader.ts';
import type { Database, Value } from '../../databases/database.ts';
import { quoted } from '../../databases/quoted.ts';
import { fillTable, makeTable, type Place, type Shape, tableIn } from '../../databases/shape.ts';
import { dataRows } from '../../exports/data-package.ts';
import { DATA_TABLES, type DataTable } from '../../exports/data-tables.ts';
import type { EditionIndex } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Catalog } from '../../store/open.ts';
import { readDecisionsAt, readItems, treeBehind } from '../../store/read.ts';

/** The tables of the data package, by name. */
export type CrosswalkRows = Readonly<Record<DataTable['name'], readonly (readonly Value[])[]>>;

const TYPES = { string: 'text', date: 'text', integer: 'integer', number: 'real', boolean: 'boolean' } as const;

/** These belong to a crosswalk, the others to an edition and are shared by all crosswalks that end there. */
const OF_CROSSWALK: readonly DataTable['name'][] = ['reasons', 'decisions', 'links', 'duties'];

const crosswalk = { name: 'crosswalk', type: 'text', required: true } as const;

/** Which crosswalks there are. */
const CROSSWALKS: Shape = {
  name: 'fishplate_crosswalks',
  columns: [crosswalk, { name: 'edition_from', type: 'text' }, { name: 'edition_to', type: 'text' }],
  key: ['crosswalk'],
  leadsTo: [
    [['edition_from'], 'fishplate_editions', ['edition']],
    [['edition_to'], 'fishplate_editions', ['edition']],
  ],
};

const shapeOf = ({ name, fields, key, leadsTo }: DataTable): Shape => {
  const own = OF_CROSSWALK.includes(name);
  return {
    name: `fishplate_${name}`,
    columns: [
      ...(own ? [crosswalk] : []),
      ...fields.map(f => ({ name: f.name, type: TYPES[f.type], required: f.constraints?.required === true })),
    ],
    key: own ? ['crosswalk', ...key] : key,
    leadsTo: [
      ...(own ? [[['crosswalk'], CROSSWALKS.name, ['crosswalk']] as const] : []),
      ...leadsTo.map(([fields, table, there]) => {
        const both = own && OF_CROSSWALK.includes(table as DataTable['name']);
        return [
          both ? ['crosswalk', ...fields] : fields,
          `fishplate_${table}`,
          both ? ['crosswalk', ...there] : there,
        ] as const;
      }),
    ],
  };
};

/** The crosswalk as tables with keys, laid out as in the published data package; in the order in which they can be made. */
export const CROSSWALK_SHAPES: readonly Shape[] = (() => {
  const shapes = DATA_TABLES.map(shapeOf);
  const shared = shapes.filter(s => s.key[0] !== 'crosswalk');
  return [...shared, CROSSWALKS, ...shapes.filter(s => !shared.includes(s))];
})();

export async function readCrosswalkRows(catalog: Catalog, { joint, marks }: Way): Promise<CrosswalkRows> {
  const ids = ({ entries }: EditionIndex) => entries.map(e => e.id);
  const [oldItems, newItems, decisions] = await Promise.all([
    readItems(catalog, joint.from, joint.old, ids(joint.from)),
    readItems(catalog, joint.to, joint.new, ids(joint.to)),
    readDecisionsAt(catalog, { name: joint.to.header.name, tree: treeBehind(joint.to) }),
  ]);
  return dataRows({ joint, marks, oldItems, newItems, decisions });
}

export const crosswalkName = ({ joint }: Pick<Way, 'joint'>) => `${joint.crosswalk.from} to ${joint.crosswalk.to}`;

export async function makeCrosswalkTables(db: Database, place: Place): Promise<void> {
  for (const shape of CROSSWALK_SHAPES) await makeTable(db, place, shape);
}

/** Writes a crosswalk anew; what other crosswalks share with it stays. */
export async function writeCrosswalk(db: Database, place: Place, way: Way, rows: CrosswalkRows): Promise<void> {
  const name = crosswalkName(way);
  await clearCrosswalk(db, place, name, false);
  for (const shape of CROSSWALK_SHAPES) {
    if (shape === CROSSWALKS) {
      if (!(await isThere(db, place, shape, 'crosswalk', name)))
        await fillTable(db, place, shape, [[name, way.joint.crosswalk.from, way.joint.crosswalk.to]]);
      continue;
    }
    const all = rows[shape.name.replace('fishplate_', '') as DataTable['name']];
    if (shape.key[0] === 'crosswalk')
      await fillTable(
        db,
        place,
        shape,
        all.map(row => [name, ...row]),
      );
    else await fillShared(db, place, shape, all);
  }
}

/** Editions never change once they are published, all but the count of their errata. */
async function fillShared(db: Database, place: Place, shape: Shape, rows: CrosswalkRows['items']): Promise<void> {
  const table = tableIn(db, place, shape.name);
  const at = shape.columns.findIndex(c => c.name === 'edition');
  const known = new Set((await db.rows(`select distinct edition from ${table}`)).map(r => r.edition));
  if (shape.name === 'fishplate_items') {
    const [key, title] = ['item', 'title'].map(name => shape.columns.findIndex(c => c.name === name)) as [
      number,
      number,
    ];
    const standing = new Map((await db.rows(`select item, title from ${table}`)).map(r => [r.item, r.title]));
    const other = rows.find(row => known.has(row[at]) && standing.get(row[key]) !== row[title]);
    if (other) throw otherItems(db, String(other[at]));
  }
  const fresh = rows.filter(row => !known.has(row[at]));
  await fillTable(db, place, shape, fresh);
  if (shape.name !== 'fishplate_editions') return;
  for (const row of rows) await db.run(`update ${table} set erratum = $1 where edition = $2`, [row[1], row[at]]);
}

function otherItems(db: Database, edition: string): CatalogError {
  return new CatalogError(
    'BadTable',
    `Edition ${edition} stands in ${db.name} already with other items, from another catalog or an earlier state of a draft; take the runs that use it back first.`,
    { edition },
  );
}

/** @param whole also its name, which runs refer to */
export async function clearCrosswalk(db: Database, place: Place, name: string, whole: boolean): Promise<void> {
  for (const shape of CROSSWALK_SHAPES.toReversed()) {
    if (shape.key[0] !== 'crosswalk' || (shape === CROSSWALKS && !whole)) continue;
    await db.run(`delete from ${tableIn(db, place, shape.name)} where crosswalk = $1`, [name]);
  }
}

/** Takes the editions away that no crosswalk names any more. */
export async function clearEditions(db: Database, place: Place): Promise<void> {
  const used = tableIn(db, place, CROSSWALKS.name);
  const named = `select edition_from from ${used} union select edition_to from ${used}`;
  for (const shape of CROSSWALK_SHAPES.toReversed()) {
    if (shape.key[0] === 'crosswalk') continue;
    await db.run(`delete from ${tableIn(db, place, shape.name)} where edition not in (${named})`);
  }
}

async function isThere(db: Database, place: Place, shape: Shape, column: string, value: string): Promise<boolean> {
  const sql = `select 1 from ${tableIn(db, place, shape.name)} where ${quoted(column)} = $1`;
  return (await db.rows(sql, [value])).length > 0;
}
