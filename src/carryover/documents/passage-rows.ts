import type { Passage } from '../../model/document.ts';

/** More passages on one line are a page that was written without line ends. */
const WIDEST = 20;

/** For a passage the other cells of the row that it stands in: what the file calls a row, or cells on one line. */
export function rowsOf(passages: readonly Passage[]): (passage: Passage) => readonly Passage[] {
  const rows = new Map<string, Passage[]>();
  for (const passage of passages) {
    const key = keyOf(passage);
    const row = key === undefined ? undefined : rows.get(key);
    if (row) row.push(passage);
    else if (key !== undefined) rows.set(key, [passage]);
  }
  return passage => {
    const key = keyOf(passage);
    const row = key === undefined ? [] : (rows.get(key) ?? []);
    return row.length > WIDEST ? [] : row.filter(p => p !== passage);
  };
}

function keyOf({ place, line, part }: Passage): string | undefined {
  if (place === undefined) return `${line}`;
  return /\brow\b/.test(place) ? `${part} ${place}` : undefined;
}
