import { CatalogError } from '../model/errors.ts';
import type { Finding } from '../model/finding.ts';
import type { Table, TableRow } from '../model/table.ts';
import { ITEM_COLUMNS, type ItemColumn, type NamedColumns, plainName } from './columns.ts';
import { looksLikeNumbers, offeredColumns } from './head-contents.ts';
import { headWord } from './head-words.ts';

/** Role → header, as people tell it with --columns; an empty header says that there is none. */
export type ToldHeads = ReadonlyMap<string, string>;

/** `number=` says that a table has no numbers. */
const NONE = '';

/** Without one of these a row says nothing that could be an item. */
const SAYING: readonly ItemColumn[] = ['number', 'title', 'text'];

export interface ItemHeads extends NamedColumns<ItemColumn> {
  /** Role → header, in the order of the roles. */
  readonly read: ReadonlyMap<ItemColumn, string>;
  /** Headers that stand for nothing. */
  readonly unused: readonly string[];
}

/**
 * Which column of a table is what: as told, else by our own names, else by words that offices use for them. A word such
 * as "clause" heads numbers in one office and texts in another, so its cells decide. Nothing is taken by its cells
 * alone: that would publish a column that nobody named.
 */
export function nameItemColumns(table: Table, told: ToldHeads = new Map()): ItemHeads {
  const spelt = new Map<ItemColumn, string>();
  const taken = new Set<string>();
  const take = (role: ItemColumn, header: string) => {
    if (spelt.has(role) || taken.has(header) || told.get(role) === NONE) return;
    spelt.set(role, header);
    taken.add(header);
  };
  for (const [role, header] of told) if (table.columns.includes(header)) take(role as ItemColumn, header);
  const byName = ITEM_COLUMNS.flatMap(role =>
    table.columns.filter(c => plainName(c) === role).map(c => [role, c] as const),
  );
  for (const [role, header] of byName) take(role, header);
  // Sure words before unsure ones, whatever order the columns have: of "Clause, No." the second is the number.
  const words = table.columns.flatMap(header => {
    const word = taken.has(header) ? undefined : headWord(header);
    return word === undefined ? [] : [{ header, ...word }];
  });
  for (const { header, role } of words.sort((a, b) => a.rank - b.rank)) {
    if (typeof role === 'string') take(role, header);
    else if (looksLikeNumbers(table, header)) take('number', header);
    else take(role.words, header);
  }
  const read = new Map(ITEM_COLUMNS.flatMap(role => (spelt.has(role) ? [[role, spelt.get(role)!] as const] : [])));
  const unused = table.columns.filter(c => c !== '' && !taken.has(c));
  return {
    has: column => spelt.has(column),
    cell: (row: TableRow, column) => {
      const name = spelt.get(column);
      return name === undefined ? undefined : row.cells.get(name) || undefined;
    },
    read,
    unused,
    findings: headsTold(table, read, unused, told),
  };
}

/**
 * Refuses tables of which nothing can be read, in one sentence with the option that mends it. A row each was said of
 * them before: two thousand lines for one cause.
 *
 * @throws CatalogError BadArgument for a told header that stands in none of the tables; BadTable for a table that has
 *   no number, title or text, or numbers alone beside columns that nobody named, or no number although a column that
 *   nobody named looks like numbers.
 */
export function refuseUnknownHeads(tables: readonly Table[], told: ToldHeads = new Map()): void {
  const headers = [...new Set(tables.flatMap(t => t.columns))];
  for (const header of told.values()) {
    if (header === NONE || headers.includes(header)) continue;
    throw new CatalogError('BadArgument', `No table has a column ${header}; the columns are ${headers.join(', ')}.`);
  }
  const unknown = tables.filter(table => {
    const { read, unused } = nameItemColumns(table, told);
    const saying = SAYING.filter(role => read.has(role));
    if (table.rows.length === 0) return false;
    if (saying.length === 0 || (saying.join() === 'number' && unused.length > 0)) return true;
    // Published without its numbers, an edition could be cited by nobody.
    return !told.has('number') && offeredColumns(table, read, unused).has('number');
  });
  const [first] = unknown;
  if (!first) return;
  const { read, unused } = nameItemColumns(first, told);
  const known = [...read].map(([role, header]) => (plainName(header) === role ? header : `${header} (as ${role})`));
  const heads =
    known.length === 0
      ? `Of the heads of ${first.file} none is known: ${unused.join(', ')}`
      : `Of the heads of ${first.file} ${known.join(', ')} ${known.length === 1 ? 'is' : 'are'} known, and ${unused.join(', ') || 'no other'} ${unused.length > 1 ? 'are' : 'is'} not`;
  const others = unknown.slice(1).map(table => `, nor in ${table.file}: ${table.columns.join(', ')}`);
  const headless = first.columns.some(c => /^\p{N}/u.test(c))
    ? '; if its first line is an item already, put a line with the names of the columns above it, else'
    : ';';
  const offered = new Map<string, string>([...told, ...offeredColumns(first, read, unused)]);
  // Where the cells give no hint, the form of the option is what helps.
  if (offered.size === 0) for (const role of SAYING) if (!read.has(role)) offered.set(role, 'HEAD');
  throw new CatalogError(
    'BadTable',
    `${heads}${others.join('')}${headless} say which is the number, which the title and which the text, for example ${option(offered)}${offered.has('number') && read.size > 0 ? ' (or number= where there is none)' : ''}`,
    { file: first.file, heads: first.columns },
  );
}

/** One note a table, where something was read by another name than ours or left aside. */
function headsTold(
  table: Table,
  read: ReadonlyMap<ItemColumn, string>,
  unused: readonly string[],
  told: ToldHeads,
): Finding[] {
  const otherwise = [...read].filter(([role, header]) => plainName(header) !== role && told.get(role) !== header);
  if (otherwise.length === 0 && unused.length === 0) return [];
  const offered = offeredColumns(table, read, unused);
  const say = [
    ...(otherwise.length > 0
      ? [otherwise.map(([role, header], at) => `${header}${at === 0 ? ' is read' : ''} as ${role}`).join(', ')]
      : []),
    ...(unused.length > 0 ? [`${unused.join(', ')} ${unused.length > 1 ? 'are' : 'is'} not used`] : []),
  ].join('; ');
  const way =
    offered.size > 0
      ? `; if it should be, add for example ${option(offered)}`
      : otherwise.length > 0
        ? `; for another reading say ${option(new Map(otherwise))} with other heads`
        : `; known columns are ${ITEM_COLUMNS.join(', ')}`;
  return [
    {
      rule: unused.length > 0 ? 'unused-column' : 'columns-read',
      severity: 'note',
      subject: table.file,
      message: `Of ${table.file} ${say}${way}`,
      place: { file: table.file, line: 1 },
    },
  ];
}

/** `--columns number=Klausel,title=Überschrift`, quoted where a shell would cut it. */
function option(columns: ReadonlyMap<string, string>): string {
  const list = [...columns].map(([role, header]) => `${role}=${header}`).join(',');
  return `--columns ${/^[\p{L}\p{N}=,._-]+$/u.test(list) ? list : `"${list.replace(/(["\\$`])/g, '\\$1')}"`}`;
}
