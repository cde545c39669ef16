import { ITEM_COLUMNS, nameColumns } from '../../editing/columns.ts';
import { deriveSettings } from '../../editing/derive-settings.ts';
import { type PlacedRow, placeRows } from '../../editing/place-rows.ts';
import { entriesOf } from '../../format/edition-table.ts';
import type { BareRow } from '../../matching/bare-row.ts';
import { spreadsheetDamage } from '../../matching/spreadsheet-damage.ts';
import type { EditionIndex } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import type { Item, ItemId } from '../../model/item.ts';
import type { Table } from '../../model/table.ts';
import { readTable } from '../../tables/read-table.ts';
import type { Ports } from '../ports/ports.ts';
import { nameOfTables } from './name-of-tables.ts';

/** An edition that exists as tables only. Its items go by made-up ids, which stand in no output. */
export interface BareEdition {
  readonly index: EditionIndex;
  readonly items: ReadonlyMap<ItemId, Item>;
  readonly rows: readonly BareRow[];
  /** By position: the id that the table itself gives, if any. */
  readonly ids: readonly string[];
  /** As the tables spell them. */
  readonly headers: readonly string[];
  readonly findings: readonly Finding[];
}

/**
 * Reads tables as one edition. A row that has no place in the outline is used all the same, at the top: what it says
 * counts, and only its place is unknown.
 */
export async function readBareEdition(
  ports: Ports,
  files: readonly string[],
  columns: ReadonlyMap<string, string>,
): Promise<BareEdition> {
  const asTheyStand: Table[] = [];
  for (const file of files) asTheyStand.push(readTable(file, await ports.files.read(file)));
  const tables = asTheyStand.map(table => renamed(table, columns));
  const placed = placeRows(tables, new Map());
  const rows = withLostRows(tables, placed.rows);
  if (rows.length === 0) {
    throw new CatalogError(
      'BadTable',
      `${files.join(', ')} has no row that can be used; check that its header names number, title or text, or say it with --columns number=HEADER,text=HEADER.`,
      {},
      placed.findings,
    );
  }
  const at = new Map(rows.map((row, position) => [row, position]));
  const name = nameOfTables(files);
  const settings = deriveSettings(rows, undefined, {}, name);
  const items = rows.map((row, position): Item => {
    const parent = row.parent === null ? null : String(at.get(row.parent)!);
    return { id: String(position), number: row.number, level: row.level, parent, ...row.content };
  });
  return {
    index: {
      header: { name, erratum: 0, replaces: null, dates: {}, state: 'published' },
      settings,
      entries: entriesOf(settings, items),
    },
    items: new Map(items.map(item => [item.id, item])),
    rows: rows.map(row => ({
      number: row.number,
      level: row.levelLabel ?? String(row.level),
      parent: row.parent === null ? -1 : at.get(row.parent)!,
      title: row.content.title,
      text: [row.content.text, row.content.purpose, row.content.outcome].filter(Boolean).join('\n'),
      table: files.indexOf(row.row.file),
    })),
    ids: rows.map(row => row.id ?? ''),
    headers: [...new Set(asTheyStand.flatMap(table => table.columns))],
    findings: [
      ...placed.findings.map(f => (f.rule === 'row-not-placed' ? usedAtTheTop(f) : f)),
      ...spreadsheetDamage(rows.map(row => ({ number: row.number, ...row.row }))),
    ],
  };
}

/** Headers that the user names outright win over those that are found by name; a table need not have all of them. */
function renamed(table: Table, told: ReadonlyMap<string, string>): Table {
  if (told.size === 0) return table;
  const ours = new Map([...told].filter(([, header]) => table.columns.includes(header)).map(([r, h]) => [h, r]));
  const roles = new Set(ours.values());
  const name = (column: string) => ours.get(column) ?? (roles.has(column) ? `${column} (not used)` : column);
  return {
    ...table,
    columns: table.columns.map(name),
    rows: table.rows.map(row => ({ ...row, cells: new Map([...row.cells].map(([c, v]) => [name(c), v])) })),
  };
}

function withLostRows(tables: readonly Table[], placed: readonly PlacedRow[]): PlacedRow[] {
  const found = new Set(placed.map(p => p.row));
  const lost = tables.flatMap(table => {
    const { cell } = nameColumns(table, ITEM_COLUMNS);
    return table.rows.flatMap((row): PlacedRow[] => {
      const [number = '', title = '', text] = [cell(row, 'number'), cell(row, 'title'), cell(row, 'text')];
      if (found.has(row) || (number === '' && title === '' && text === undefined)) return [];
      const content = text === undefined ? { title } : { title, text };
      return [{ row, parent: null, level: 1, number, content }];
    });
  });
  // In the order of the tables again: neighbours are evidence.
  const order = new Map(tables.map((table, at) => [table.file, at]));
  return [...placed, ...lost].sort(
    (a, b) => order.get(a.row.file)! - order.get(b.row.file)! || a.row.line - b.row.line,
  );
}

function usedAtTheTop(finding: Finding): Finding {
  return { ...finding, severity: 'warning', message: `${finding.message} It is matched by its words alone.` };
}
