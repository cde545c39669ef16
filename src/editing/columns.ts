import type { Finding } from '../model/finding.ts';
import type { Table, TableRow } from '../model/table.ts';

/** The columns that an imported table may have. */
export const ITEM_COLUMNS = [
  'number',
  'level',
  'parent',
  'title',
  'text',
  'id',
  'purpose',
  'outcome',
  'applies_to',
  'verified',
  'caution',
  'references',
  'terms',
  'also_at',
  'was',
] as const;
export type ItemColumn = (typeof ITEM_COLUMNS)[number];

/** Reads cells by the names that we use, whatever capitals, spaces or hyphens the table's header has. */
export interface NamedColumns<C extends string> {
  has(column: C): boolean;
  cell(row: TableRow, column: C): string | undefined;
  readonly findings: readonly Finding[];
}

/** A header as our names are written: `Applies to`, `appliesTo` and `applies-to` are `applies_to`. */
export function plainName(header: string): string {
  return header
    .trim()
    .replace(/([a-z])([A-Z])/g, '$1_$2')
    .toLowerCase()
    .replace(/[\s-]+/g, '_');
}

/** Finds our columns in a table's header. A column that is not used is noted, so that a misspelt one is seen. */
export function nameColumns<C extends string>(table: Table, known: readonly C[]): NamedColumns<C> {
  const spelt = new Map<C, string>();
  const findings: Finding[] = [];
  const unused: string[] = [];
  for (const column of table.columns) {
    const name = plainName(column) as C;
    if (known.includes(name) && !spelt.has(name)) spelt.set(name, column);
    else if (column !== '') unused.push(column);
  }
  if (unused.length > 0) {
    findings.push({
      rule: 'unused-column',
      severity: 'note',
      subject: table.file,
      message: `Of ${table.file} ${unused.join(', ')} ${unused.length > 1 ? 'are' : 'is'} not used; known columns are ${known.join(', ')}.`,
      place: { file: table.file, line: 1 },
    });
  }
  return {
    has: column => spelt.has(column),
    cell: (row, column) => {
      const name = spelt.get(column);
      return name === undefined ? undefined : row.cells.get(name) || undefined;
    },
    findings,
  };
}

/** Several values in one cell: `a | b`, `a; b` or, for codes, `a, b`. */
export function listIn(cell: string | undefined, separators: RegExp | string = /[|;,]/): string[] | undefined {
  if (cell === undefined) return undefined;
  return cell
    .split(separators)
    .map(part => part.trim())
    .filter(part => part !== '');
}
