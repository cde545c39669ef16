import type { Way } from '../../carryover/jobs/job-reader.ts';
import { listEditions } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readCrosswalk } from './read-crosswalk.ts';

/** The editions from which a path leads to `to`, each with its crosswalk; `from` is known already and left out. */
export async function waysTo(catalog: Catalog, to: string, from: string): Promise<ReadonlyMap<string, Way>> {
  const headers = await listEditions(catalog);
  const ways = new Map<string, Way>();
  const replaced = (name: string) => headers.find(h => h.name === name)?.replaces ?? null;
  const seen = new Set<string>();
  for (let name = replaced(to); name !== null && !seen.has(name); name = replaced(name)) {
    seen.add(name);
    if (name === from) continue;
    const { joint, marks } = await readCrosswalk(catalog, name, to);
    ways.set(name, { joint, marks });
  }
  return ways;
}
