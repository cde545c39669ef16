import { join } from 'node:path';
import { type PersonRecord, parsePeople, writePeople } from '../format/people.ts';
import { writeDurably } from './durable-fs.ts';
import type { Catalog } from './open.ts';
import { underLock } from './refs.ts';

/** Beside the repository's objects and never among them: a clone or a push takes no token along. */
const PEOPLE = 'fishplate/people.json';

/** Everybody who was ever given a token for this catalog, in the order in which they were. */
export async function readPeople({ dir, repo }: Catalog): Promise<PersonRecord[]> {
  const path = join(dir, PEOPLE);
  try {
    return parsePeople(await repo.fs.readFile(path, 'utf8'), path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return [];
    throw error;
  }
}

/** Reads, changes and writes under a lock: of two who add a person at the same moment neither is lost. */
export async function changePeople(
  catalog: Catalog,
  change: (people: readonly PersonRecord[]) => readonly PersonRecord[],
): Promise<void> {
  const { fs } = catalog.repo;
  await underLock(fs, catalog.dir, PEOPLE, async () => {
    const changed = change(await readPeople(catalog));
    await writeDurably(fs, catalog.dir, join(catalog.dir, PEOPLE), writePeople(changed));
  });
}
