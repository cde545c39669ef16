import { checkLineage } from '../crosswalk/check-lineage.ts';
import { BASES, type Basis, type Decision, EXTENTS, type Extent, type LineageRecord } from '../model/crosswalk.ts';
import { isDay } from '../model/day.ts';
import type { Finding, Severity } from '../model/finding.ts';
import { groupBy } from '../model/group-by.ts';
import type { ItemId, TypeId } from '../model/item.ts';
import type { Placed, Places } from '../model/places.ts';
import type { Table, TableRow } from '../model/table.ts';
import { listIn, nameColumns } from './columns.ts';

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
type LineageColumn = (typeof LINEAGE_COLUMNS)[number];

type Cell = (name: LineageColumn) => string | undefined;

/** A line whose names and words are understood. */
interface Line {
  readonly row: TableRow;
  readonly from: ItemId | undefined;
  readonly to: ItemId | undefined;
  readonly pointsTo: ItemId | undefined;
  readonly cell: Cell;
}

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
      const read = readLine(row, name => columns.cell(row, name), old, newer);
      if ('problem' in read) findings.push(refused(row, read.problem));
      else lines.push(read);
    }
  }
  const ids = (places: Places<Placed>) => new Set(places.all.map(i => i.id));
  const [before, after] = [ids(old), ids(newer)];
  const records: LineageRecord[] = [];
  for (const group of groupBy(lines, l => (l.from === undefined ? `new ${l.to}` : `old ${l.from}`)).values()) {
    const record = recordFrom(group, after, findings);
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

/** What the lines about one item say together; a line that says otherwise than one before it is a finding. */
function recordFrom(
  group: readonly Line[],
  newer: ReadonlySet<ItemId>,
  findings: Finding[],
): LineageRecord | undefined {
  const { from = null } = group[0]!;
  const notSame = group.some(l => yes(l.cell('not_same')));
  const typesOf = (lines: readonly Line[]) => [...new Set(lines.flatMap(l => listIn(l.cell('withdrawn_for')) ?? []))];
  const partly = typesOf(group).length > 0;
  const goesOn = group.some(l => l.to !== undefined) || (from !== null && newer.has(from) && !notSame);
  const ends = partly || group.some(l => l.to === undefined);
  const kept: Line[] = [];
  for (const line of group) {
    const twin = kept.find(k => k.to === line.to && ending(k) === ending(line));
    const clash = clashOf(kept, line, ends);
    if (line.to === undefined && goesOn && !partly) {
      findings.push(refused(line.row, 'the item goes on; name the types that it ends for under withdrawn_for'));
    } else if (clash !== undefined) findings.push(refused(line.row, clash));
    else if (twin === undefined) kept.push(line);
    else if (extents(twin) !== extents(line)) {
      findings.push(refused(line.row, `${placeOf(twin)} says the same with other extents; leave one of the two`));
    } else {
      findings.push(
        finding(line.row, 'lineage-line-twice', 'warning', `${placeOf(twin)} says the same; it is taken once.`),
      );
      kept.push(line);
    }
  }
  if (kept.length === 0) return undefined;
  const types = typesOf(kept);
  const last = (name: LineageColumn) => kept.findLast(l => l.cell(name) !== undefined)?.cell(name);
  const joined = (name: LineageColumn, between: string) =>
    kept.reduce<string | undefined>((known, l) => join(known, l.cell(name), between), undefined);
  const heirs = new Map(
    kept.flatMap(({ to, cell }) =>
      to === undefined
        ? []
        : [[to, { to, fromExtent: extent(cell('from_extent')), toExtent: extent(cell('to_extent')) }] as const],
    ),
  );
  return {
    from,
    heirs: [...heirs.values()],
    ...(types.length > 0 ? { withdrawnFor: types } : {}),
    ...(notSame ? { notSame: true as const } : {}),
    ...told('reason', joined('reason', '; ')),
    ...told('note', joined('note', ' ')),
    ...told('governs', last('governs')),
    ...told('governsChecked', last('governs_checked')),
    ...told('pointsTo', kept.find(l => l.pointsTo !== undefined)?.pointsTo),
    ...told('decision', last('decision')),
    ...told('by', last('by')),
    ...told('date', last('date')),
    basis: weakest(kept),
  };
}

const ending = ({ cell }: Line) => (listIn(cell('withdrawn_for')) ?? []).join(' ');
const extents = ({ cell }: Line) => `${extent(cell('from_extent'))} ${extent(cell('to_extent'))}`;
const placeOf = ({ row }: Line) => `${row.file}:${row.line}`;

/** A record has room for one of each of these. Reasons of heirs are joined; that of an ending is a code, and alone. */
function clashOf(kept: readonly Line[], line: Line, ends: boolean): string | undefined {
  const single = ['governs', 'governs_checked', 'points_to', 'decision'] as const;
  for (const name of ends ? (['reason', ...single] as const) : single) {
    const said = line.cell(name);
    const other = kept.find(k => said !== undefined && k.cell(name) !== undefined && k.cell(name) !== said);
    if (other) {
      const known = JSON.stringify(other.cell(name));
      return `its ${name} is ${JSON.stringify(said)}, and ${known} in ${placeOf(other)}; an item has one, so say the other under note`;
    }
  }
  return undefined;
}

/** One record has one basis: what was inferred of one heir makes nothing declared of another. */
function weakest(lines: readonly Line[]): Basis {
  const said = lines.flatMap(({ cell }) => BASES.filter(b => b === cell('basis')?.toLowerCase()));
  return BASES.findLast(b => said.includes(b)) ?? 'declared';
}

/** Sentences about one old item that stand on several lines are kept once each. */
function join(known: string | undefined, next: string | undefined, between: string): string | undefined {
  if (known === undefined || next === undefined || known.includes(next)) return known ?? next;
  return `${known}${between}${next}`;
}

function told<K extends string>(key: K, value: string | undefined): Partial<Record<K, string>> {
  return value === undefined ? {} : ({ [key]: value } as Record<K, string>);
}

const extent = (cell: string | undefined): Extent => EXTENTS.find(e => e === cell?.toLowerCase()) ?? 'unknown';
const yes = (cell: string | undefined) => /^(yes|true|1)$/i.test(cell ?? '');

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

function refused(row: TableRow, why: string): Finding {
  return finding(row, 'lineage-not-read', 'error', `This line of the lineage cannot be used: ${why}.`);
}

function finding({ file, line }: TableRow, rule: string, severity: Severity, message: string): Finding {
  return { rule, severity, subject: file, message, place: { file, line } };
}
