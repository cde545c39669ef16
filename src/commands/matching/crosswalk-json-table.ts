import type { Table } from '../../model/table.ts';

interface Side {
  readonly number?: unknown;
  readonly title?: unknown;
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
  const lines = [...value.lines, ...(Array.isArray(value.kept) ? value.kept : [])];
  const rows = lines.map((line: Readonly<Record<string, unknown>>, at) => {
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
    return { file, line: at + 1, cells };
  });
  return { file, columns: [...columns], rows };
}
