import { deriveSettings } from '../../editing/derive-settings.ts';
import { nameItemColumns, type ToldHeads } from '../../editing/item-heads.ts';
import { type PlacedRow, placeRows } from '../../editing/place-rows.ts';
import { entriesOf } from '../../format/edition-table.ts';
import type { BareRow } from '../../matching/bare-row.ts';
import { emptyRows } from '../../matching/empty-rows.ts';
import { spreadsheetDamage } from '../../matching/spreadsheet-damage.ts';
import type { EditionIndex } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import type { Item, ItemId } from '../../model/item.ts';
import type { Table } from '../../model/table.ts';
import type { ReadTable } from '../../tables/read-xlsx.ts';
import { nameOfTables, namesOfTables } from './name-of-tables.ts';

/** An edition that exists as tables only. Its items go by made-up ids, which stand in no output. */
export interface BareEdition {
  readonly index: EditionIndex;
  readonly items: ReadonlyMap<ItemId, Item>;
  readonly rows: readonly BareRow[];
  /** By position: the id that the table itself gives, if any. */
  readonly ids: readonly string[];
  /** What the tables are called that it was read from; a row has its position among them. */
  readonly tables: readonly string[];
  readonly findings: readonly Finding[];
}

/**
 * Reads tables as one edition. A row that has no place in the outline is used all the same, at the top: what it says
 * counts, and only its place is unknown.
 */
export function bareEditionOfTables(tables: readonly ReadTable[], told: ToldHeads): BareEdition {
  const files = tables.map(table => table.file);
  const placed = placeRows(tables, new Map(), told);
  const rows = withLostRows(tables, placed.rows, told);
  if (rows.length === 0) {
    throw new CatalogError(
      'BadTable',
      `${files.join(', ')} has no row that can be used; check that its rows have a number, a title or a text.`,
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
      text: wordsOf(row).slice(1).filter(Boolean).join('\n'),
      table: files.indexOf(row.row.file),
    })),
    ids: rows.map(row => row.id ?? ''),
    tables: namesOfTables(files),
    findings: [
      ...tables.flatMap(table => table.findings),
      ...placed.findings.map(f => (f.rule === 'row-not-placed' ? toldOfUse(f, rows) : f)),
      ...tables.flatMap(table => unusedWas(table, told)),
      ...emptyRows(
        rows.map(row => ({
          number: row.number,
          words: wordsOf(row).join(' '),
          file: row.row.file,
          line: row.row.line,
        })),
      ),
      ...spreadsheetDamage(
        rows.map(row => {
          const { file, line } = row.row;
          return { number: row.number, file, line, parent: row.parent === null ? -1 : at.get(row.parent)! };
        }),
      ),
    ],
  };
}

/** What a row says: its title, then what its text is made of. */
const wordsOf = ({ content }: PlacedRow) => [content.title, content.text, content.purpose, content.outcome];

/** `was` leads back to older ids at import; here nothing but the words decides, and the column would seem to be used. */
function unusedWas(table: Table, told: ToldHeads): Finding[] {
  const header = nameItemColumns(table, told).read.get('was');
  if (header === undefined) return [];
  const message = `The column ${header} of ${table.file} is not used: match goes by words and place. Say what you know with --answers, or import both editions into a catalog, which follows that column.`;
  return [
    { rule: 'unused-column', severity: 'note', subject: table.file, message, place: { file: table.file, line: 1 } },
  ];
}

function withLostRows(tables: readonly Table[], placed: readonly PlacedRow[], told: ToldHeads): PlacedRow[] {
  const found = new Set(placed.map(p => p.row));
  const lost = tables.flatMap(table => {
    const { cell } = nameItemColumns(table, told);
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

/** What becomes of a row that has no place: it counts by its words, or it says nothing at all. */
function toldOfUse(finding: Finding, rows: readonly PlacedRow[]): Finding {
  const { file, line } = finding.place ?? {};
  const used = rows.some(({ row }) => row.file === file && row.line === line);
  const use = used ? 'It is matched by its words alone.' : 'It is left out.';
  return { ...finding, severity: 'warning', message: `${finding.message} ${use}` };
}
