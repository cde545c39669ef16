import { createHash } from 'node:crypto';
import { type EditionDates, type EditionHeader, type Entry, isRequirement } from '../model/edition.ts';
import { CatalogError } from '../model/errors.ts';
import type { Item, ItemId } from '../model/item.ts';
import type { Settings } from '../model/settings.ts';
import { contentHash } from './content-hash.ts';
import { parseJson, writeJson } from './json.ts';
import { editionFile } from './schemas.ts';

/** Where the header and the frozen table of an edition stand. Two files: a list of editions must not read tables. */
export const headerPath = (edition: string) => `editions/${edition}.json`;
export const tablePath = (edition: string) => `editions/${edition}.items.json`;

const COLUMNS = ['id', 'number', 'parent', 'level', 'title', 'hash', 'obliges', 'appliesTo', 'alsoAt'];

/** The entries of an edition: its items without their texts. */
export function entriesOf(settings: Settings, items: readonly Item[]): Entry[] {
  return items.map(item => ({
    id: item.id,
    number: item.number,
    parent: item.parent,
    level: item.level,
    title: item.title,
    hash: contentHash(item),
    obliges: isRequirement(settings, item),
    ...(item.appliesTo ? { appliesTo: item.appliesTo } : {}),
    ...(item.alsoAt ? { alsoAt: item.alsoAt } : {}),
  }));
}

/** The frozen table: one item a line, in document order. */
export function writeTable(entries: readonly Entry[]): string {
  const lines = entries.map(e => {
    const cells: unknown[] = [e.id, e.number, e.parent, e.level, e.title, e.hash, e.obliges ? 1 : 0];
    if (e.appliesTo || e.alsoAt) cells.push(e.appliesTo ?? null);
    if (e.alsoAt) cells.push(e.alsoAt);
    return JSON.stringify(cells);
  });
  return `{"columns": ${JSON.stringify(COLUMNS)},\n"items": [\n${lines.join(',\n')}\n]}\n`;
}

type Line = [ItemId, string, ItemId | null, number, string, string, 0 | 1, (string[] | null)?, string[]?];

/** Reads a frozen table back. It was written by publication only, so damage is not repaired but refused. */
export function parseTable(path: string, source: string): Entry[] {
  let lines: Line[];
  try {
    lines = (JSON.parse(source) as { items: Line[] }).items;
    return lines.map(([id, number, parent, level, title, hash, obliges, appliesTo, alsoAt]) => {
      if (typeof id !== 'string' || typeof number !== 'string' || typeof hash !== 'string') throw new Error('cells');
      const entry = { id, number, parent, level, title, hash, obliges: obliges === 1 };
      return { ...entry, ...(appliesTo ? { appliesTo } : {}), ...(alsoAt ? { alsoAt } : {}) };
    });
  } catch {
    throw new CatalogError('BadCatalog', `${path} is damaged; restore it from a clone of the catalog.`, { path });
  }
}

export function tableHash(table: string): string {
  return createHash('sha256').update(table, 'utf8').digest('hex');
}

export function writeHeader(
  header: { name: string; replaces: string | null; dates: EditionDates },
  table: string,
): string {
  return writeJson({ name: header.name, replaces: header.replaces, dates: header.dates, table: tableHash(table) });
}

/** Reads the header of a published edition; its erratum is told by the tag. */
export function parseHeader(path: string, source: string, erratum: number): EditionHeader & { readonly table: string } {
  const parsed = parseJson(path, source, editionFile);
  if (!('value' in parsed)) {
    const why = parsed.findings[0]?.message ?? '';
    throw new CatalogError(
      'BadCatalog',
      `${why} Restore the file from a clone of the catalog.`,
      { path },
      parsed.findings,
    );
  }
  const { name, replaces, dates, table } = parsed.value;
  return { name, replaces, dates: dates as EditionDates, erratum, state: 'published', table };
}
