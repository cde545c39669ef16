import type { Table } from '../../model/table.ts';
import { linesOfObjects } from './json-places.ts';

interface Side {
  readonly number?: unknown;
  readonly title?: unknown;
}

/** A list of objects, read as a table, with the lines on which they begin in the file. */
export function placedInFile(table: Table, bytes: Uint8Array): Table {
  // A table of another kind has its lines; `[` is 91.
  if (bytes.find(byte => byte > 32 && byte < 128) !== 91) return table;
  const lines = linesOfObjects(new TextDecoder().decode(bytes)).get('') ?? [];
  if (lines.length !== table.rows.length) return table;
  return { ...table, rows: table.rows.map((row, at) => ({ ...row, line: lines[at]! })) };
}

/** The json that `match` writes as the table that its csv is; undefined for anything else. */
export function crosswalkJsonTable(file: string, bytes: Uint8Array): Table | undefined {
  const text = new TextDecoder().decode(bytes);
  if (!/^\ufeff?\s*\{/.test(text)) return undefined;
  let value: { lines?: unknown; kept?: unknown };
  try {
    value = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    // The ordinary reader says where it is broken, or reads one object a line.
    return undefined;
  }
  if (!Array.isArray(value.lines)) return undefined;
  const columns = new Set(['pair']);
  const places = linesOfObjects(text);
  const of = (name: 'lines' | 'kept') => {
    const list = value[name];
    return Array.isArray(list) ? list.map((line, at) => ({ line, begins: places.get(name)?.[at] ?? 1 })) : [];
  };
  const rows = [...of('lines'), ...of('kept')].map(({ line, begins }) => {
    const cells = new Map<string, string>();
    const put = (column: string, cell: unknown) => {
      if (cell === null || cell === undefined || typeof cell === 'object') return;
      columns.add(column);
      cells.set(column, String(cell).trim());
    };
    for (const [name, cell] of Object.entries({ ...line, ...(line?.own as object | undefined) })) put(name, cell);
    for (const side of ['from', 'to'] as const) {
      const end = line?.[side] as Side | null | undefined;
      put(`${side}_number`, end?.number);
      put(`${side}_title`, end?.title);
    }
    return { file, line: begins, cells };
  });
  return { file, columns: [...columns], rows };
}
