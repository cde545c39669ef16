import { readPublication } from '../../src/commands/bundles/bundle-source.ts';
import type { Publication } from '../../src/exports/publication.ts';
import { openCatalog } from '../../src/store/open.ts';
import { demoCatalog } from '../demo-catalog.ts';

let read: Promise<Publication> | undefined;

/** What a bundle of the demo catalog is written from, 2018 to 2024; read once, since nobody may change it. */
export function demoPublication(): Promise<Publication> {
  read ??= (async () => readPublication(await openCatalog(await demoCatalog()), '2018', '2024', false))();
  return read;
}
