import type { Catalog } from '../../store/open.ts';
import type { PublishedCatalog } from '../reading/published-catalog.ts';
import { sweepSearchIndexes } from './search-index-file.ts';

/**
 * Has the search index of every edition built and saved, and removes those that nobody will ask for. A server does this
 * before it listens: built inside the first search, an index of 10,000 items would keep every other reader waiting.
 */
export async function prepareSearch(
  catalog: Catalog,
  published: PublishedCatalog,
  progress: (message: string) => void,
): Promise<void> {
  const commits = new Set<string>();
  for (const { name } of published.headers) {
    progress(`Preparing the search of edition ${name}`);
    await published.search(name);
    commits.add((await published.edition(name)).commit);
  }
  await sweepSearchIndexes(catalog, commits);
}
