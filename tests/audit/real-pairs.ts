import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readTable } from '../../src/tables/read-table.ts';
import { weaknessesOf } from '../outside/cwe.ts';

/** An old text and the text of its only heir, as somebody really rewrote it. */
export interface RealPair {
  readonly source: string;
  readonly id: string;
  readonly from: string;
  readonly to: string;
}

const PAIRS = join(import.meta.dirname, '..', 'matching', 'pairs');

/** Pairs of a folder of tests/matching/pairs: old items with one heir whose texts differ. */
function fromFolder(name: string): RealPair[] {
  const rows = (file: string) => {
    const path = join(PAIRS, name, file);
    return readTable(path, readFileSync(path)).rows.map(r => r.cells);
  };
  const byNumber = (file: string) => new Map(rows(file).map(r => [r.get('number')!, r]));
  const [olds, news] = [byNumber('old.csv'), byNumber('new.csv')];
  const heirs = new Map<string, string[]>();
  for (const r of rows('truth.csv')) {
    const [old, next] = [r.get('old_number') ?? '', r.get('new_number') ?? ''];
    if (old && next) heirs.set(old, [...(heirs.get(old) ?? []), next]);
  }
  return [...heirs].flatMap(([old, next]): RealPair[] => {
    const [a, b] = [olds.get(old), news.get(next[0]!)];
    const said = (r: typeof a) => [r?.get('title'), r?.get('text')].filter(Boolean).join('.\n');
    const [from, to] = [a?.get('text') ?? '', said(b)];
    return next.length === 1 && from !== '' && b?.get('text') && from !== b.get('text')
      ? [{ source: name, id: old, from, to }]
      : [];
  });
}

/** Weaknesses of CWE 4.6 whose description reads otherwise in 4.15 (package cwe-sdk). */
function fromCwe(): RealPair[] {
  const described = (release: '4.6' | '4.15') =>
    new Map(
      weaknessesOf(release).map(w => {
        const parts = [w.Description, w.Extended_Description].filter(t => typeof t === 'string');
        return [w.attr['@_ID'], parts.join('\n')];
      }),
    );
  const after = described('4.15');
  return [...described('4.6')].flatMap(([id, from]): RealPair[] => {
    const to = after.get(id);
    return to && from !== to && from.length > 60 ? [{ source: 'cwe', id, from, to }] : [];
  });
}

/** Pairs of texts of other offices and of invented catalogs, read when the test runs. */
export function realPairs(): RealPair[] {
  return [...['nist-800-53-r4-r5', 'nist-800-171-r2-r3', 'kitchens', 'lifts'].flatMap(fromFolder), ...fromCwe()];
}
