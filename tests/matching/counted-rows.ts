import type { BareRow } from '../../src/matching/bare-row.ts';

/** Rows that count how often a text of theirs is read: how much work something is, on any machine. */
export function countedRows(rows: readonly BareRow[]) {
  let read = 0;
  const counted = rows.map(row => ({
    ...row,
    get text() {
      read++;
      return row.text;
    },
  }));
  return { rows: counted as readonly BareRow[], reads: () => read };
}
