import type { Finding } from '../model/finding.ts';
import {
  type ItemContent,
  type TypeId,
  VERIFICATION_MOMENTS,
  type Verification,
  type VerificationMoment,
} from '../model/item.ts';
import type { Table, TableRow } from '../model/table.ts';
import { type ItemColumn, listIn, type NamedColumns } from './columns.ts';
import { nameItemColumns, type ToldHeads } from './item-heads.ts';

/** A row that has found its place in the outline. Its id is still to be minted where the table gives none. */
export interface PlacedRow {
  readonly row: TableRow;
  readonly parent: PlacedRow | null;
  readonly level: number;
  readonly number: string;
  readonly levelLabel?: string;
  readonly id?: string;
  /** The number or id, in the edition replaced, of the item that this row continues. */
  readonly was?: string;
  readonly alsoAt?: readonly string[];
  readonly content: ItemContent;
}

export interface PlacedRows {
  /** In document order, a parent before its children. */
  readonly rows: readonly PlacedRow[];
  readonly findings: readonly Finding[];
}

interface Pending {
  readonly row: TableRow;
  readonly columns: NamedColumns<ItemColumn>;
  readonly number: string;
  parent: Pending | null | undefined;
  readonly children: Pending[];
}

/**
 * Places the rows of one or several tables into one outline. A row that cannot be placed is a finding with its file and
 * line, and so is every row below it; all others are placed as if it were not there.
 *
 * @param typesOfTable installation types that a whole table is about, by file
 */
export function placeRows(
  tables: readonly Table[],
  typesOfTable: ReadonlyMap<string, readonly TypeId[]>,
  told: ToldHeads = new Map(),
): PlacedRows {
  const findings: Finding[] = [];
  const perTable = tables.map(table => {
    const columns = nameItemColumns(table, told);
    findings.push(...columns.findings);
    return table.rows.map((row): Pending => {
      return { row, columns, number: columns.cell(row, 'number') ?? '', parent: undefined, children: [] };
    });
  });
  const all = perTable.flat();
  findParents(perTable, findings);
  const refused = refuseCycles(all, findings);
  for (const item of all) {
    if (item.parent !== undefined && !refused.has(item)) item.parent?.children.push(item);
  }

  const rows: PlacedRow[] = [];
  const place = (item: Pending, parent: PlacedRow | null) => {
    const placed = placedRow(item, parent, typesOfTable, findings);
    rows.push(placed);
    for (const child of item.children) place(child, placed);
  };
  for (const item of all) if (item.parent === null && !refused.has(item)) place(item, null);
  const reached = new Set(rows.map(r => r.row));
  for (const item of all) {
    if (reached.has(item.row) || item.parent === undefined || refused.has(item)) continue;
    findings.push(unplaced(item, 'the row above it in the outline could not be placed'));
  }
  return { rows, findings };
}

function findParents(perTable: readonly (readonly Pending[])[], findings: Finding[]): void {
  const everywhere = indexRows(perTable.flat());
  for (const table of perTable) {
    const here = indexRows(table);
    const stack: Pending[] = [];
    for (const item of table) {
      const named = item.columns.cell(item.row, 'parent');
      const title = item.columns.cell(item.row, 'title');
      const text = item.columns.cell(item.row, 'text');
      if (item.number === '' && title === undefined && text === undefined) {
        findings.push(unplaced(item, 'it has neither a number nor a title nor a text'));
      } else if (named !== undefined) {
        item.parent = lookUp(here, named, item) ?? lookUp(everywhere, named, item);
        if (item.parent === undefined) findings.push(unplaced(item, `its parent ${named} is in none of the tables`));
      } else if (item.columns.has('parent')) {
        item.parent = null;
      } else {
        item.parent = parentByDepth(item, stack) ?? parentByNumber(item, here) ?? null;
      }
    }
  }
}

type RowIndex = ReadonlyMap<string, readonly Pending[]>;

function indexRows(items: readonly Pending[]): RowIndex {
  const index = new Map<string, Pending[]>();
  for (const item of items) {
    for (const key of new Set([item.number, item.columns.cell(item.row, 'id') ?? ''])) {
      if (key === '') continue;
      const list = index.get(key);
      if (list) list.push(item);
      else index.set(key, [item]);
    }
  }
  return index;
}

/** The row that a parent cell means; where a number stands several times, the last one above, else the first below. */
function lookUp(index: RowIndex, name: string, item: Pending): Pending | undefined {
  const candidates = (index.get(name) ?? []).filter(c => c !== item);
  if (candidates.length < 2) return candidates[0] ?? (index.get(name)?.includes(item) ? item : undefined);
  return candidates.findLast(c => c.row.file === item.row.file && c.row.line < item.row.line) ?? candidates[0];
}

/** Without a parent column, a numeric level tells the depth: 1, 2, 3. */
function parentByDepth(item: Pending, stack: Pending[]): Pending | null | undefined {
  const depth = Number(item.columns.cell(item.row, 'level') ?? Number.NaN);
  if (!Number.isInteger(depth) || depth < 1) return undefined;
  stack.length = Math.min(stack.length, depth - 1);
  const parent = stack.at(-1) ?? null;
  stack.push(item);
  return parent;
}

/** Without both, the longest number that this one begins with, up to a separator: 4.2.3 is below 4.2. */
function parentByNumber(item: Pending, index: RowIndex): Pending | undefined {
  for (let end = item.number.length - 1; end > 0; end--) {
    if (!/[.\-() /]/.test(item.number[end]!)) continue;
    const found = index.get(item.number.slice(0, end))?.find(c => c !== item);
    if (found) return found;
  }
  return undefined;
}

function refuseCycles(all: readonly Pending[], findings: Finding[]): ReadonlySet<Pending> {
  const refused = new Set<Pending>();
  const cleared = new Set<Pending>();
  for (const start of all) {
    const path = new Set<Pending>();
    let at: Pending | null | undefined = start;
    while (at && !cleared.has(at) && !path.has(at)) {
      path.add(at);
      at = at.parent;
    }
    if (at && path.has(at) && !refused.has(at)) {
      for (let round: Pending = at; !refused.has(round); round = round.parent!) {
        refused.add(round);
        findings.push(unplaced(round, 'it stands below itself'));
      }
    }
    for (const item of path) cleared.add(item);
  }
  return refused;
}

function placedRow(
  item: Pending,
  parent: PlacedRow | null,
  typesOfTable: ReadonlyMap<string, readonly TypeId[]>,
  findings: Finding[],
): PlacedRow {
  const { row, columns } = item;
  const cell = (name: ItemColumn) => columns.cell(row, name);
  const label = cell('level');
  const id = cell('id');
  const was = cell('was');
  const alsoAt = listIn(cell('also_at'));
  const own = listIn(cell('applies_to'));
  const ofTable = parent === null ? typesOfTable.get(row.file) : undefined;
  const content: Record<string, unknown> = {
    title: cell('title') ?? '',
    text: cell('text'),
    purpose: cell('purpose'),
    outcome: cell('outcome'),
    appliesTo: own ?? ofTable,
    verified: verifications(item, cell('verified'), findings),
    caution: cell('caution'),
    references: listIn(cell('references'), '|'),
    terms: listIn(cell('terms'), '|'),
  };
  return {
    row,
    parent,
    level: (parent?.level ?? 0) + 1,
    number: item.number,
    ...(label === undefined || /^\d+$/.test(label) ? {} : { levelLabel: label }),
    ...(id === undefined ? {} : { id }),
    ...(was === undefined ? {} : { was }),
    ...(alsoAt === undefined ? {} : { alsoAt }),
    content: Object.fromEntries(
      Object.entries(content).filter(([, value]) => value !== undefined),
    ) as unknown as ItemContent,
  };
}

/** `before-covering: depth read with a rule | by-document: delivery note`. A cell of another form is kept as words. */
function verifications(item: Pending, cell: string | undefined, findings: Finding[]): Verification[] | undefined {
  return listIn(cell, '|')?.flatMap(part => {
    // Cut at the colon: a pattern for both halves would share their spaces out, in squared time.
    const colon = part.includes(':') ? part.indexOf(':') : part.length;
    const when = part.slice(0, colon).trim().toLowerCase().replace(/\s+/g, '-') as VerificationMoment;
    const how = part.slice(colon + 1).trim();
    if (VERIFICATION_MOMENTS.includes(when)) return [how === '' ? { when } : { when, how }];
    findings.push({
      rule: 'verification-moment',
      severity: 'warning',
      subject: item.row.file,
      message: `${part} does not say when; it was left out - begin with ${VERIFICATION_MOMENTS.join(', ')} and a colon.`,
      place: { file: item.row.file, line: item.row.line },
    });
    return [];
  });
}

function unplaced(item: Pending, why: string): Finding {
  const { file, line } = item.row;
  const name = item.number || item.columns.cell(item.row, 'title') || 'the row';
  return {
    rule: 'row-not-placed',
    severity: 'error',
    subject: file,
    message: `${name} cannot be placed: ${why}.`,
    place: { file, line },
  };
}
