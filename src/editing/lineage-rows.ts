import { BASES, type Basis, EXTENTS, type Extent, type LineageRecord } from '../model/crosswalk.ts';
import type { Finding } from '../model/finding.ts';
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

/**
 * Reads lineage tables into records, one for each old item. Only `from` and `to` are needed. Where several old items
 * print the same number, `from_type` (an installation type) tells them apart; where that does not settle it, the line
 * is a finding: a number is never guessed.
 */
export function lineageFromTables(
  tables: readonly Table[],
  old: Places<Placed>,
  newer: Places<Placed>,
): { readonly records: readonly LineageRecord[]; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const records = new Map<string, LineageRecord>();
  for (const table of tables) {
    const columns = nameColumns(table, LINEAGE_COLUMNS);
    findings.push(...columns.findings);
    for (const row of table.rows) {
      const cell = (name: LineageColumn) => columns.cell(row, name);
      const from = resolve(old, cell('from'), cell('from_type'));
      const to = resolve(newer, cell('to'), undefined);
      const pointsTo = resolve(newer, cell('points_to'), undefined);
      const wrong = [from, to, pointsTo].find(r => typeof r === 'object');
      if (wrong || (from === undefined && to === undefined)) {
        findings.push(refused(row, wrong?.problem ?? 'neither from nor to is given'));
        continue;
      }
      add(records, from as ItemId | undefined, to as ItemId | undefined, pointsTo as ItemId | undefined, cell);
    }
  }
  return { records: [...records.values()], findings };
}

type Cell = (name: LineageColumn) => string | undefined;

function add(
  records: Map<string, LineageRecord>,
  from: ItemId | undefined,
  to: ItemId | undefined,
  pointsTo: ItemId | undefined,
  cell: Cell,
): void {
  const key = from === undefined ? `new ${to}` : `old ${from}`;
  const known = records.get(key);
  const heir =
    to === undefined ? [] : [{ to, fromExtent: extent(cell('from_extent')), toExtent: extent(cell('to_extent')) }];
  const withdrawnFor: readonly TypeId[] | undefined = listIn(cell('withdrawn_for')) ?? known?.withdrawnFor;
  const said = {
    ...(withdrawnFor ? { withdrawnFor } : {}),
    ...(yes(cell('not_same')) || known?.notSame ? { notSame: true as const } : {}),
    ...told('reason', join(known?.reason, cell('reason'), '; ')),
    ...told('note', join(known?.note, cell('note'), ' ')),
    ...told('governs', cell('governs') ?? known?.governs),
    ...told('governsChecked', cell('governs_checked') ?? known?.governsChecked),
    ...told('pointsTo', pointsTo ?? known?.pointsTo),
    ...told('decision', cell('decision') ?? known?.decision),
    ...told('by', cell('by') ?? known?.by),
    ...told('date', cell('date') ?? known?.date),
  };
  records.set(key, {
    from: from ?? null,
    heirs: [...(known?.heirs ?? []), ...heir],
    ...said,
    basis: basis(cell('basis')) ?? known?.basis ?? 'declared',
  });
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
const basis = (cell: string | undefined): Basis | undefined => BASES.find(b => b === cell?.toLowerCase());
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
  return {
    rule: 'lineage-not-read',
    severity: 'error',
    subject: row.file,
    message: `This line of the lineage cannot be used: ${why}.`,
    place: { file: row.file, line: row.line },
  };
}
