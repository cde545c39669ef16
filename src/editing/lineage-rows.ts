import { checkLineage } from '../crosswalk/check-lineage.ts';
import { BASES, type Decision, EXTENTS, type LineageRecord } from '../model/crosswalk.ts';
import { isDay } from '../model/day.ts';
import type { Finding } from '../model/finding.ts';
import { groupBy } from '../model/group-by.ts';
import type { ItemId, TypeId } from '../model/item.ts';
import type { Placed, Places } from '../model/places.ts';
import type { Table, TableRow } from '../model/table.ts';
import { listIn, nameColumns } from './columns.ts';
import { type Cell, type Line, recordFrom, refused } from './lineage-record.ts';

/** The columns of a lineage table: a line per heir, an empty `to` for withdrawn. Items by id, or by printed number. */
export const LINEAGE_COLUMNS = [
  'from',
  'from_type',
  'to',
  'from_extent',
  'to_extent',
  'reason',
  'note',
  'governs',
  'governs_checked',
  'points_to',
  'decision',
  'withdrawn_for',
  'not_same',
  'by',
  'date',
  'basis',
] as const;
export type LineageColumn = (typeof LINEAGE_COLUMNS)[number];

/**
 * Reads lineage tables into records, one for each old item. Only `from` and `to` are needed. Where several old items
 * print the same number, `from_type` (an installation type) tells them apart; where that does not settle it, the line
 * is a finding: a number is never guessed, and neither is a word. A line that contradicts an earlier one is a finding,
 * and a record that contradicts the editions is one and left out.
 */
export function lineageFromTables(
  tables: readonly Table[],
  old: Places<Placed>,
  newer: Places<Placed>,
  decisions: readonly Decision[],
): { readonly records: readonly LineageRecord[]; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const lines: Line[] = [];
  for (const table of tables) {
    const columns = nameColumns(table, LINEAGE_COLUMNS);
    findings.push(...columns.findings);
    for (const row of table.rows) {
      // Behind the lines of a crosswalk, `match` keeps answers that no line shows: a code, and no items.
      if (row.cells.get('pair') && !columns.cell(row, 'from') && !columns.cell(row, 'to')) continue;
      const read = readLine(row, name => columns.cell(row, name), old, newer);
      if ('problem' in read) findings.push(refused(row, read.problem));
      else lines.push(read);
    }
  }
  const ids = (places: Places<Placed>) => new Set(places.all.map(i => i.id));
  const [before, after] = [ids(old), ids(newer)];
  const records: LineageRecord[] = [];
  for (const group of groupBy(lines, l => (l.from === undefined ? `new ${l.to}` : `old ${l.from}`)).values()) {
    const { from } = group[0]!;
    const record = recordFrom(group, from === undefined ? [] : old.types(from), after, findings);
    if (!record) continue;
    const wrong = checkLineage([record], before, after, decisions);
    const { file, line } = group[0]!.row;
    findings.push(...wrong.map(f => ({ ...f, place: { file, line } })));
    if (wrong.length === 0) records.push(record);
  }
  return { records, findings };
}

function readLine(
  row: TableRow,
  cell: Cell,
  old: Places<Placed>,
  newer: Places<Placed>,
): Line | { readonly problem: string } {
  const from = resolve(old, cell('from'), cell('from_type'));
  const to = resolve(newer, cell('to'), undefined);
  const pointsTo = resolve(newer, cell('points_to'), undefined);
  for (const found of [from, to, pointsTo]) if (typeof found === 'object') return found;
  const line = { row, from: from as ItemId | undefined, to: to as ItemId | undefined, pointsTo, cell } as Line;
  if (line.from === undefined && line.to === undefined) return { problem: 'neither from nor to is given' };
  const problem = wrongWord(cell, line.from === undefined ? [] : old.types(line.from));
  return problem === undefined ? line : { problem };
}

const WORDS: readonly (readonly [LineageColumn, readonly string[]])[] = [
  ['from_extent', EXTENTS],
  ['to_extent', EXTENTS],
  ['basis', BASES],
  ['not_same', ['yes', 'true', '1', 'no', 'false', '0']],
];

/** A word taken for another one would be published as a statement that nobody made: `infered` as declared, say. */
function wrongWord(cell: Cell, types: readonly TypeId[]): string | undefined {
  for (const [name, allowed] of WORDS) {
    const said = cell(name);
    if (said !== undefined && !allowed.includes(said.toLowerCase())) {
      return `${name} is ${JSON.stringify(said)}; write ${allowed.join(', ')}, or nothing`;
    }
  }
  for (const name of ['date', 'governs_checked'] as const) {
    const said = cell(name);
    if (said !== undefined && !isDay(said)) {
      return `${name} is ${JSON.stringify(said)}; write the day as year-month-day, for example 2024-07-01`;
    }
  }
  const type = listIn(cell('withdrawn_for'))?.find(t => !types.includes(t));
  if (type === undefined) return undefined;
  return `withdrawn_for names ${JSON.stringify(type)}, to which the old item does not apply; it applies to ${types.join(', ') || 'nothing'}`;
}

function resolve(
  places: Places<Placed>,
  name: string | undefined,
  type: TypeId | undefined,
): ItemId | undefined | { readonly problem: string } {
  if (name === undefined) return undefined;
  if (places.get(name)) return name;
  const numbered = places.withNumber(name);
  const found = type === undefined ? numbered : numbered.filter(i => places.types(i.id).includes(type));
  if (found.length === 1) return found[0]!.id;
  if (found.length === 0) {
    return {
      problem: `${name}${type === undefined ? '' : ` for ${type}`} is neither an id nor a number of the edition`,
    };
  }
  return { problem: `${found.length} items print the number ${name}; give the id, or the type in from_type` };
}
