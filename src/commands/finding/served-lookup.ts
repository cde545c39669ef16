import { setImmediate } from 'node:timers/promises';
import type { EditionOfLine } from '../../exports/publication.ts';
import { type NumberAnswer, numberAnswer } from '../../exports/site-numbers.ts';
import type { EditionHeader, Entry } from '../../model/edition.ts';
import type { PublishedCatalog } from '../reading/published-catalog.ts';

/** The numbers of all editions with what became of each, as the file for a phone has them, for a catalog that is served. */
export interface ServedLookup {
  /** Newest first; empty where there are more numbers than a device can be asked to keep. */
  readonly editions: readonly { readonly edition: string; readonly answers: readonly LookupAnswer[] }[];
  readonly numbers: number;
}

export type LookupAnswer = Omit<NumberAnswer, 'text'>;

/** Where an item of an edition stands. */
export type PlaceOf = (edition: string, entry: Entry, shared: boolean) => string;

/** With these a page has some 10 MB, and a phone needs seconds to open it. */
const MOST_NUMBERS = 30_000;
const SLICE_MS = 20;

/** Works in slices: a server answers others in between. */
export async function servedLookup(published: PublishedCatalog, placeOf: PlaceOf): Promise<ServedLookup> {
  const lines = linesOf(published.headers);
  let numbers = 0;
  for (const { name } of published.headers) numbers += (await published.edition(name)).entries.length;
  if (numbers > MOST_NUMBERS) return { editions: [], numbers };

  const editions: { edition: string; answers: LookupAnswer[] }[] = [];
  for (const names of lines) {
    const line = await readLine(published, names);
    const newest = names.at(-1)!;
    const newItems = await published.items(newest);
    const placeIn = (at: number, id: string) => {
      const { index, places } = line[at]!;
      const entry = places.get(id)!;
      return placeOf(index.header.name, entry, places.withNumber(entry.number).length > 1);
    };
    const links = { item: (id: string) => placeIn(line.length - 1, id), old: placeIn };
    for (const [at, { index }] of [...line.entries()].reverse()) {
      const edition = index.header.name;
      // Where two editions replace the same one, that one is told along the line that its traces take.
      if (editions.some(e => e.edition === edition)) continue;
      const answers: LookupAnswer[] = [];
      let began = performance.now();
      for (const entry of index.entries) {
        answers.push(numberAnswer(line, at, entry, newItems, links));
        if (performance.now() - began < SLICE_MS) continue;
        await setImmediate();
        began = performance.now();
      }
      editions.push({ edition, answers });
    }
  }
  return { editions, numbers };
}

/** Each line of editions, oldest first; the line of the newest edition comes first. */
function linesOf(headers: readonly EditionHeader[]): string[][] {
  const replaced = new Set(headers.map(h => h.replaces));
  return headers
    .filter(h => !replaced.has(h.name))
    .reverse()
    .map(head => {
      const line = [head.name];
      for (let at = head.replaces; at !== null && !line.includes(at); ) {
        const older = headers.find(h => h.name === at);
        if (!older) break;
        line.unshift(older.name);
        at = older.replaces;
      }
      return line;
    });
}

async function readLine(published: PublishedCatalog, names: readonly string[]): Promise<EditionOfLine[]> {
  const newest = names.at(-1)!;
  const line: EditionOfLine[] = [];
  for (const [at, name] of names.entries()) {
    const index = await published.edition(name);
    line.push({
      index,
      places: index.places,
      ...(at > 0 ? { step: await published.crosswalk(names[at - 1]!, name) } : {}),
      ...(name === newest ? {} : { direct: await published.crosswalk(name, newest) }),
    });
  }
  return line;
}
