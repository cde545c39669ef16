import { readPublication } from '../../src/commands/bundle-source.ts';
import type { Publication } from '../../src/exports/publication.ts';
import { openCatalog } from '../../src/store/open.ts';
import { demoCatalog } from '../demo-catalog.ts';

/** What a bundle of the demo catalog is written from, 2018 to 2024 where nothing else is said. */
export async function demoPublication(from = '2018', to = '2024'): Promise<Publication> {
  return readPublication(await openCatalog(await demoCatalog()), from, to, false);
}
