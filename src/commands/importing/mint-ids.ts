import { CatalogError } from '../../model/errors.ts';
import { mintId } from '../../model/ids.ts';
import { listDrafts, listEditions } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readIndex } from '../../store/read.ts';
import type { Ports } from '../ports/ports.ts';

/** New ids that no edition or draft uses. */
export async function mintIds(ports: Ports, catalog: Catalog, count: string): Promise<string[]> {
  const many = Number(count);
  if (!Number.isInteger(many) || many < 1 || many > 10_000) {
    throw new CatalogError('BadArgument', `${count} is not a number of ids; give one from 1 to 10000.`);
  }
  const taken = new Set<string>();
  for (const name of [...(await listEditions(catalog)).map(h => h.name), ...(await listDrafts(catalog))]) {
    for (const entry of (await readIndex(catalog, name)).entries) taken.add(entry.id);
  }
  return Array.from({ length: many }, () => {
    const id = mintId(ports.random, candidate => taken.has(candidate));
    taken.add(id);
    return id;
  });
}
