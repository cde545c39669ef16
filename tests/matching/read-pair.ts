import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import type { BareRow } from '../../src/matching/bare-row.ts';

/** Two editions as bare tables, and for each old number the new ones that it went into; none where it was withdrawn. */
export interface Pair {
  readonly from: readonly BareRow[];
  readonly to: readonly BareRow[];
  readonly truth: ReadonlyMap<string, readonly string[]>;
}

/** @param folder `pairs/NAME` or `unseen/NAME` */
export function readPair(folder: string): Pair {
  const truth = new Map<string, string[]>();
  for (const { old_number = '', new_number = '' } of csv(folder, 'truth')) {
    if (old_number === '') continue;
    truth.set(old_number, [...(truth.get(old_number) ?? []), ...(new_number === '' ? [] : [new_number])]);
  }
  return { from: side(folder, 'old'), to: side(folder, 'new'), truth };
}

function side(folder: string, name: string): readonly BareRow[] {
  const records = csv(folder, name);
  const at = new Map(records.map((r, i) => [r.number, i]));
  return records.map(({ number = '', level = '', parent = '', title = '', text = '' }) => ({
    number,
    level,
    parent: parent === number ? -1 : (at.get(parent) ?? -1),
    title,
    text,
    table: 0,
  }));
}

function csv(folder: string, name: string): Record<string, string>[] {
  return parse(readFileSync(join(import.meta.dirname, folder, `${name}.csv`), 'utf8'), { bom: true, columns: true });
}
