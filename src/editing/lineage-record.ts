import { BASES, type Basis, type Ending, EXTENTS, type Extent, type LineageRecord } from '../model/crosswalk.ts';
import { withEndings } from '../model/endings.ts';
import type { Finding, Severity } from '../model/finding.ts';
import type { ItemId, TypeId } from '../model/item.ts';
import type { TableRow } from '../model/table.ts';
import { listIn } from './columns.ts';
import type { LineageColumn } from './lineage-rows.ts';

export type Cell = (name: LineageColumn) => string | undefined;

/** A line whose names and words are understood. */
export interface Line {
  readonly row: TableRow;
  readonly from: ItemId | undefined;
  readonly to: ItemId | undefined;
  readonly pointsTo: ItemId | undefined;
  readonly cell: Cell;
}

/**
 * What the lines about one item say together; a line that says otherwise than one before it is a finding.
 *
 *   from,to,withdrawn_for,reason      An item ends for some types beside its heirs, and where the lines say so for
 *   a,a,,                             each type with a reason of its own. A line that names no types, of an item that
 *   a,,roof,law                       goes on nowhere, is about the types that no other line names.
 *   a,,street,obsolete
 *
 * @param had the installation types of the old item
 */
export function recordFrom(
  lines: readonly Line[],
  had: readonly TypeId[],
  newer: ReadonlySet<ItemId>,
  findings: Finding[],
): LineageRecord | undefined {
  const { from = null } = lines[0]!;
  const notSame = lines.some(l => yes(l.cell('not_same')));
  const goesOn = lines.some(l => l.to !== undefined) || (from !== null && newer.has(from) && !notSame);
  const named = lines.flatMap(namedTypes);
  const partly = named.length > 0;
  const group = lines.map((line): EndingLine => {
    const rest = partly && !goesOn && namedTypes(line).length === 0;
    const types = rest ? had.filter(t => !named.includes(t)) : namedTypes(line);
    return { ...line, types, says: wordsOf(line) };
  });
  const ends = partly || group.some(l => l.to === undefined);
  const several = new Set(group.flatMap(l => (l.types.length > 0 && l.says !== NOTHING ? [l.says] : []))).size > 1;
  const kept: EndingLine[] = [];
  for (const line of group) {
    const twin = kept.find(k => k.to === line.to && String(k.types) === String(line.types));
    const clash = several ? clashOfEnds(kept, line) : clashOf(kept, line, ends);
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
  const heirs = new Map(
    kept.flatMap(({ to, cell }) =>
      to === undefined
        ? []
        : [[to, { to, fromExtent: extent(cell('from_extent')), toExtent: extent(cell('to_extent')) }] as const],
    ),
  );
  const record: LineageRecord = {
    from,
    heirs: [...heirs.values()],
    ...(notSame ? { notSame: true as const } : {}),
    ...told('note', joined(kept, 'note', ' ')),
    ...told('by', lastOf(kept, 'by')),
    ...told('date', lastOf(kept, 'date')),
    basis: weakest(kept),
  };
  if (!partly) return { ...record, ...endingIn(kept) };
  const typed = kept.filter(l => l.types.length > 0);
  return withEndings(
    record,
    several
      ? typed.map(l => ({ types: l.types, ...endingIn([l]) }))
      : [{ types: [...new Set(typed.flatMap(l => l.types))], ...endingIn(kept) }],
  );
}

/** A line with the types that it ends for, and all that it says of an end as one text. */
interface EndingLine extends Line {
  readonly types: readonly TypeId[];
  readonly says: string;
}

const SINGLE = ['governs', 'governs_checked', 'points_to', 'decision'] as const;
const wordsOf = ({ cell }: Line) => JSON.stringify((['reason', ...SINGLE] as const).map(name => cell(name) ?? ''));
const NOTHING = JSON.stringify(['', '', '', '', '']);

const namedTypes = ({ cell }: Line) => listIn(cell('withdrawn_for')) ?? [];
const extents = ({ cell }: Line) => `${extent(cell('from_extent'))} ${extent(cell('to_extent'))}`;
const placeOf = ({ row }: Line) => `${row.file}:${row.line}`;

/** One ending has room for one of each of these. Reasons of heirs are joined; that of an ending is a code, and alone. */
function clashOf(kept: readonly Line[], line: Line, ends: boolean): string | undefined {
  for (const name of ends ? (['reason', ...SINGLE] as const) : SINGLE) {
    const said = line.cell(name);
    const other = kept.find(k => said !== undefined && k.cell(name) !== undefined && k.cell(name) !== said);
    if (other) {
      const known = JSON.stringify(other.cell(name));
      return `its ${name} is ${JSON.stringify(said)}, and ${known} in ${placeOf(other)}; an item has one, so say the other under note`;
    }
  }
  return undefined;
}

/** Where an item ends for several reasons, each line says which types it is about, and each type has one reason. */
function clashOfEnds(kept: readonly EndingLine[], line: EndingLine): string | undefined {
  if (line.types.length === 0) {
    if (line.says === NOTHING) return undefined;
    return 'the item ends for several reasons, and this line names no types; write them under withdrawn_for, or what it says under note';
  }
  if (line.cell('reason') === undefined) {
    return `the item ends for several reasons, and none is given for ${line.types.join(', ')}; write it under reason`;
  }
  const other = kept.find(k => k.says !== line.says && k.types.some(t => line.types.includes(t)));
  if (!other) return undefined;
  const both = line.types.filter(t => other.types.includes(t)).join(', ');
  return `${placeOf(other)} says something else of the end for ${both}; leave one of the two`;
}

/** What lines that do not contradict each other say of an end, or of why an item went on elsewhere. */
function endingIn(lines: readonly Line[]): Omit<Ending, 'types'> {
  return {
    ...told('reason', joined(lines, 'reason', '; ')),
    ...told('governs', lastOf(lines, 'governs')),
    ...told('governsChecked', lastOf(lines, 'governs_checked')),
    ...told('pointsTo', lines.find(l => l.pointsTo !== undefined)?.pointsTo),
    ...told('decision', lastOf(lines, 'decision')),
  };
}

const lastOf = (lines: readonly Line[], name: LineageColumn) =>
  lines.findLast(l => l.cell(name) !== undefined)?.cell(name);

/** Sentences about one old item that stand on several lines are kept once each. */
function joined(lines: readonly Line[], name: LineageColumn, between: string): string | undefined {
  return lines.reduce<string | undefined>((known, { cell }) => {
    const next = cell(name);
    if (known === undefined || next === undefined || known.includes(next)) return known ?? next;
    return `${known}${between}${next}`;
  }, undefined);
}

/** One record has one basis: what was inferred of one heir makes nothing declared of another. */
function weakest(lines: readonly Line[]): Basis {
  const said = lines.flatMap(({ cell }) => BASES.filter(b => b === cell('basis')?.toLowerCase()));
  return BASES.findLast(b => said.includes(b)) ?? 'declared';
}

function told<K extends string>(key: K, value: string | undefined): Partial<Record<K, string>> {
  return value === undefined ? {} : ({ [key]: value } as Record<K, string>);
}

const extent = (cell: string | undefined): Extent => EXTENTS.find(e => e === cell?.toLowerCase()) ?? 'unknown';
const yes = (cell: string | undefined) => /^(yes|true|1)$/i.test(cell ?? '');

export function refused(row: TableRow, why: string): Finding {
  return finding(row, 'lineage-not-read', 'error', `This line of the lineage cannot be used: ${why}.`);
}

function finding({ file, line }: TableRow, rule: string, severity: Severity, message: string): Finding {
  return { rule, severity, subject: file, message, place: { file, line } };
}
