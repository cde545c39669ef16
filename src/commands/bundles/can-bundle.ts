import { existsSync } from 'node:fs';
import { CatalogError } from '../../model/errors.ts';
import type { Catalog } from '../../store/open.ts';
import { readIndex } from '../../store/read.ts';
import { CARRY_ENGINE_FILE } from './bundle-templates.ts';

/**
 * Refuses a draft whose bundle could not be whole, before it is published: the tag is for good, and a page that is then
 * found to be missing has been promised already.
 *
 * @param engine the program's part for browsers
 * @throws CatalogError NoPath, NoSuchFile
 */
export async function refuseUnbundled(catalog: Catalog, draft: string, engine = CARRY_ENGINE_FILE): Promise<void> {
  const { name, replaces } = (await readIndex(catalog, draft)).header;
  if (replaces === null) {
    throw new CatalogError(
      'NoPath',
      `${name} replaces no edition, so there is no crosswalk to bundle; nothing is published yet - publish it without --bundle.`,
    );
  }
  if (existsSync(engine)) return;
  throw new CatalogError(
    'NoSuchFile',
    `The site of the bundle would lack the page that carries files over: this installation has no ${engine}. Nothing is published yet; ask whoever installed the program to run npm run build in its folder, or publish without --bundle and write the bundle later with: fishplate bundle ${replaces} ${name} --out FOLDER`,
    { engine },
  );
}
