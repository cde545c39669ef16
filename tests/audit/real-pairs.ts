import { readdirSync, readFileSync } from 'node:fs';
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

/** Requirements of the demo whose 2024 row says which one of 2018 it was, the losses planted there left as they are. */
function fromDemo(): RealPair[] {
  const rows = (edition: string) => {
    const folder = join(import.meta.dirname, '..', '..', 'catalog', edition);
    const files = readdirSync(folder).filter(f => f.endsWith('.csv'));
    return files.flatMap(f => readTable(f, readFileSync(join(folder, f))).rows.map(r => r.cells));
  };
  const old = new Map(rows('2018').map(r => [r.get('number')!, r.get('text') ?? '']));
  return rows('2024').flatMap((r): RealPair[] => {
    const [was, text] = [r.get('was') ?? '', r.get('text') ?? ''];
    const from = old.get(was) ?? '';
    return from && text && from !== text ? [{ source: 'demo', id: was, from, to: `${r.get('title')}.\n${text}` }] : [];
  });
}

/** Pairs of texts of other offices and of invented catalogs, read when the test runs. */
export function realPairs(): RealPair[] {
  return [
    ...['nist-800-53-r4-r5', 'nist-800-171-r2-r3', 'kitchens', 'lifts'].flatMap(fromFolder),
    ...fromCwe(),
    ...fromDemo(),
  ];
}
