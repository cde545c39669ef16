import { basename, dirname, join } from 'node:path';
import type { Item } from '../../model/item.ts';
import type { Settings } from '../../model/settings.ts';
import { indexEdition, loadLunr } from '../../search/index-edition.ts';
import { openIndex, type SearchIndex } from '../../search/search-index.ts';
import { writeDurably } from '../../store/durable-fs.ts';
import type { Catalog } from '../../store/open.ts';

/** Where the search index of an edition is kept; never published, always able to be built again. */
export const searchIndexPath = (catalog: Catalog, commit: string) =>
  join(catalog.dir, 'fishplate', 'search', `${commit}.json`);

/**
 * The search index of the edition at a commit: the saved one, or one that is built and saved now. A damaged file is
 * built again; where the folder may not be written, the index lives in memory only and searching works all the same.
 */
export async function readSearchIndex(
  catalog: Catalog,
  commit: string,
  settings: Settings,
  items: () => Promise<readonly Item[]>,
): Promise<SearchIndex> {
  const { fs } = catalog.repo;
  const lunr = await loadLunr();
  const path = searchIndexPath(catalog, commit);
  const saved = await fs.readFile(path, 'utf8').then(parseOrNothing, () => undefined);
  const opened = saved === undefined ? undefined : openIndex(lunr, saved);
  if (opened) return opened;
  const text = JSON.stringify(indexEdition(lunr, settings, await items()));
  await writeDurably(fs, catalog.dir, path, text).catch(() => {});
  const built = openIndex(lunr, JSON.parse(text));
  if (!built) throw new Error('an index that was just built cannot be opened');
  return built;
}

/** Removes the indexes of commits that are no edition's any more: each erratum leaves one behind. */
export async function sweepSearchIndexes(catalog: Catalog, commits: ReadonlySet<string>): Promise<void> {
  const { fs } = catalog.repo;
  const folder = dirname(searchIndexPath(catalog, ''));
  for (const name of (await fs.readdir(folder).catch(() => [])).map(String)) {
    if (!commits.has(basename(name, '.json'))) await fs.unlink(join(folder, name)).catch(() => {});
  }
}

function parseOrNothing(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
