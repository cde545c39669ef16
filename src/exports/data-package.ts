import type { EditionIndex } from '../model/edition.ts';
import type { Item, ItemId } from '../model/item.ts';
import { levelName } from '../model/settings.ts';
import { writeCsv } from '../tables/write-csv.ts';
import { crosswalkLines } from './crosswalk-lines.ts';
import { dataNames, NO_ADDRESS } from './data-names.ts';
import { DATA_TABLES, type DataTable } from './data-tables.ts';
import { packageReadme } from './package-readme.ts';
import type { Publication } from './publication.ts';

/** One row of a table: its cells in the order of the table's fields. */
export type Cells = readonly (string | number | boolean | undefined)[];

/** Both editions and their crosswalk as csv tables under one `datapackage.json` (Frictionless, version 1), by file name. */
export function writeDataPackage(publication: Publication): Map<string, string> {
  const rows = dataRows(publication);
  const description = describe(publication, name => rows[name].length === 0);
  const files = new Map<string, string>([['datapackage.json', `${JSON.stringify(description, null, 2)}\n`]]);
  for (const { name, fields } of DATA_TABLES) {
    const cells = rows[name].map(row => row.map(cell => (cell === undefined ? '' : String(cell))));
    files.set(`${name}.csv`, writeCsv([fields.map(f => f.name), ...cells]));
  }
  files.set(
    'README.md',
    packageReadme(publication, name => rows[name].length),
  );
  return files;
}

function describe(publication: Publication, empty: (name: DataTable['name']) => boolean) {
  const { from, to } = publication.joint;
  const names = dataNames(publication.base ?? NO_ADDRESS);
  const [a, b] = [from.header.name, to.header.name];
  return {
    profile: 'tabular-data-package',
    name: `crosswalk-${a}-${b}`.toLowerCase().replace(/[^a-z0-9._-]/g, '-'),
    id: names.crosswalk(a, b),
    title: `${to.settings.title}: ${a} to ${b}`,
    version: `${b}.${to.header.erratum}`,
    ...(to.header.dates.published ? { created: `${to.header.dates.published}T00:00:00Z` } : {}),
    resources: DATA_TABLES.map(table => resourceOf(table, empty(table.name))),
  };
}

function resourceOf({ name, title, fields, key, leadsTo, whenEmpty }: DataTable, empty: boolean) {
  return {
    profile: 'tabular-data-resource',
    name,
    title,
    ...(empty ? { description: `Without rows: ${whenEmpty}.` } : {}),
    path: `${name}.csv`,
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    dialect: { delimiter: ',', lineTerminator: '\r\n', doubleQuote: true, header: true },
    schema: {
      fields: fields.map(({ name, type, description, constraints }) => ({
        name,
        type,
        description,
        ...(constraints ? { constraints } : {}),
      })),
      missingValues: [''],
      primaryKey: key,
      ...(leadsTo.length > 0 ? { foreignKeys: leadsTo.map(lead => foreignKey(name, lead)) } : {}),
    },
  };
}

/** A table that leads to itself says so by an empty name. */
function foreignKey(name: string, [fields, resource, there]: DataTable['leadsTo'][number]) {
  return { fields, reference: { resource: resource === name ? '' : resource, fields: there } };
}

/** The key of an item in these tables: its meaning may differ from edition to edition. */
export const itemKey = (edition: EditionIndex, id: ItemId) => `${edition.header.name}/${id}`;

/** The rows of all tables of `DATA_TABLES`, as values. */
export function dataRows({
  joint,
  marks,
  oldItems,
  newItems,
  decisions,
}: Pick<Publication, 'joint' | 'marks' | 'oldItems' | 'newItems' | 'decisions'>): Record<DataTable['name'], Cells[]> {
  const { from, to } = joint;
  const lines = crosswalkLines(joint, marks);
  const withdrawn = new Set(lines.flatMap(l => (l.to === undefined && l.reason ? [l.reason] : [])));
  const reasons = new Map([...withdrawn].map(code => [code, '']));
  for (const edition of [from, to]) for (const r of edition.settings.withdrawalReasons) reasons.set(r.code, r.meaning);
  // A composed line may name a decision of an edition on its way, which is not read here.
  const known = new Set(decisions.map(d => d.id));
  return {
    editions: [from, to].map(({ header }) => [
      header.name,
      header.erratum,
      header.dates.published,
      header.dates.effective,
      header.dates.transitionEnds,
    ]),
    types: [from, to].flatMap(e => e.settings.installationTypes.map(t => [e.header.name, t.id, t.name])),
    items: [...itemRows(from, oldItems), ...itemRows(to, newItems)],
    applies: [...appliesRows(from, joint.old.types), ...appliesRows(to, joint.new.types)],
    reasons: [...reasons],
    decisions: decisions.map(d => [d.id, d.title, d.reason, d.authority, d.governs, d.scope, d.date]),
    links: lines.map((l, at) => [
      at + 1,
      l.row,
      l.fate,
      l.from && itemKey(from, l.from.id),
      l.to && itemKey(to, l.to.id),
      l.fromExtent,
      l.toExtent,
      l.renumbered,
      l.moved,
      l.wording,
      l.duty,
      l.appliesTo,
      l.basis,
      l.confidence,
      l.to === undefined && l.reason ? l.reason : undefined,
      l.to === undefined ? '' : l.reason,
      l.link?.governs,
      l.link?.decision && known.has(l.link.decision) ? l.link.decision : undefined,
      l.link?.pointsTo && itemKey(to, l.link.pointsTo),
      l.note,
    ]),
    duties: lines.flatMap((l, at) => l.dutyByType.map(d => [at + 1, from.header.name, d.type, d.duty])),
  };
}

function itemRows(edition: EditionIndex, items: ReadonlyMap<ItemId, Item>): Cells[] {
  return edition.entries.map(e => [
    itemKey(edition, e.id),
    edition.header.name,
    e.id,
    e.number,
    e.parent === null ? undefined : itemKey(edition, e.parent),
    e.level,
    levelName(edition.settings, e.level),
    e.title,
    items.get(e.id)?.text,
    e.obliges,
  ]);
}

function appliesRows(edition: EditionIndex, types: (id: ItemId) => readonly string[]): Cells[] {
  return edition.entries.flatMap(e => types(e.id).map(t => [itemKey(edition, e.id), edition.header.name, t]));
}
