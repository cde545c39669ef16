import { crosswalkStatistics } from '../../crosswalk/statistics.ts';
import { type EditionOfLine, editionOfLine, type Publication } from '../../exports/publication.ts';
import { CatalogError } from '../../model/errors.ts';
import { indexEdition, loadLunr } from '../../search/index-edition.ts';
import { holding, locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readDecisionsAt, readEditionAt, readIndex } from '../../store/read.ts';
import { allHeaders, readCrosswalk } from '../reading/read-crosswalk.ts';

/**
 * Reads all that a bundle is written from.
 *
 * @param from the older edition, e.g. 2018; not necessarily the one just before
 * @param searchable whether an index for searching is made as well
 */
export async function readPublication(
  catalog: Catalog,
  from: string,
  to: string,
  searchable: boolean,
): Promise<Publication> {
  const [older, newer] = await Promise.all([locate(catalog, from), locate(catalog, to)]);
  if (older.name === newer.name) {
    throw new CatalogError('BadArgument', `${from} and ${to} are the same edition; name an older and a newer one.`);
  }
  const held = holding(catalog, older, newer);
  const read = await readCrosswalk(held, older.name, newer.name);
  if (read.backwards) {
    throw new CatalogError('BadArgument', `${from} is newer than ${to}; turn them round: bundle ${to} ${from}.`);
  }
  const { joint, marks, findings } = read;
  const [old, edition, decisions] = await Promise.all([
    readEditionAt(held, older),
    readEditionAt(held, newer),
    readDecisionsAt(held, newer),
  ]);
  return {
    joint,
    marks,
    findings,
    decisions,
    statistics: crosswalkStatistics(joint),
    oldItems: new Map(old.items.map(i => [i.id, i])),
    newItems: new Map(edition.items.map(i => [i.id, i])),
    line: await readLine(held, newer.name),
    ...(searchable ? { searchIndex: indexEdition(await loadLunr(), edition.settings, edition.items) } : {}),
  };
}

/** All editions that led to one, oldest first, each with its step and with the way from it to the last. */
async function readLine(catalog: Catalog, newest: string): Promise<EditionOfLine[]> {
  const headers = await allHeaders(catalog);
  const names = [newest];
  for (let at = headers.find(h => h.name === newest)?.replaces; at && !names.includes(at); ) {
    names.unshift(at);
    at = headers.find(h => h.name === at)?.replaces;
  }
  const line: EditionOfLine[] = [];
  for (const [at, name] of names.entries()) {
    const step = at === 0 ? undefined : await readCrosswalk(catalog, names[at - 1]!, name);
    const direct = name === newest ? undefined : await readCrosswalk(catalog, name, newest);
    line.push(editionOfLine(await readIndex(catalog, name), step, direct));
  }
  return line;
}
