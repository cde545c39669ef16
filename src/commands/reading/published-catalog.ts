import { tellTrace } from '../../content/links/tell.ts';
import { type Step, type Trace, traceItem } from '../../content/links/trace.ts';
import { crosswalkStatistics, type Statistics } from '../../crosswalk/statistics.ts';
import { type CrosswalkLine, crosswalkLines } from '../../exports/crosswalk-lines.ts';
import { LOCAL_FOLDER, parseLocal } from '../../format/local-files.ts';
import type { Decision } from '../../model/crosswalk.ts';
import type { EditionHeader, EditionIndex, Entry } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Item, ItemId } from '../../model/item.ts';
import type { LocalRecord } from '../../model/local.ts';
import { type Places, placesOf } from '../../model/places.ts';
import { type EditionNames, editionNames } from '../../search/names.ts';
import type { SearchIndex } from '../../search/search-index.ts';
import { listEditions, listEditionTags, locate, MAIN } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readDecisions, readEdition, readIndex, readItems } from '../../store/read.ts';
import { readBeside } from '../../store/read-beside.ts';
import { readRef } from '../../store/refs.ts';
import { readSearchIndex } from '../finding/search-index-file.ts';
import type { FindWords } from '../finding/search-thread.ts';
import { remember } from '../remember.ts';
import { type ReadCrosswalk, readCrosswalk } from './read-crosswalk.ts';
import { readTogether } from './read-together.ts';
import { lineFrom } from './trace-number.ts';

/** A published edition ready to be asked. */
export interface PublishedEdition extends EditionIndex {
  readonly commit: string;
  readonly places: Places<Entry>;
  readonly names: EditionNames;
}

export interface PublishedCrosswalk extends ReadCrosswalk {
  readonly lines: readonly CrosswalkLine[];
  readonly statistics: Statistics;
}

/** A trace with its sentences. */
export interface ToldTrace extends Trace {
  readonly told: readonly string[];
}

/** What a catalog has published, as it stood at one moment: all answers of one request come from one such value. */
export interface PublishedCatalog {
  /** The tags of all editions with what they stand at: changes with every publication and erratum, and with nothing else. */
  readonly tags: string;
  /** Oldest first. */
  readonly headers: readonly EditionHeader[];
  /** Throws UnknownEdition, with the known ones; a draft is not published and so not known. */
  edition(name: string): Promise<PublishedEdition>;
  item(edition: string, id: ItemId): Promise<Item>;
  items(edition: string): Promise<ReadonlyMap<ItemId, Item>>;
  /** At least these; of a large edition no others are read. */
  itemsNamed(edition: string, ids: readonly ItemId[]): Promise<ReadonlyMap<ItemId, Item>>;
  crosswalk(from: string, to: string): Promise<PublishedCrosswalk>;
  decisions(edition: string): Promise<readonly Decision[]>;
  /** From this edition on to the newest of its line. */
  trace(edition: string, entry: Entry): Promise<ToldTrace>;
  search(edition: string): Promise<SearchIndex>;
  /** Items by their words; undefined where a server's thread has not indexed the edition yet. */
  findWords: FindWords;
  /** Local rules and variances as main has them now: they belong to no edition and change without one. */
  localRecords(): Promise<readonly LocalRecord[]>;
}

/** Crosswalks kept: a catalog of many editions has many pairs, and anybody may ask for all of them. */
const MOST_CROSSWALKS = 24;
const MOST_EDITIONS = 24;
/** With more items than these, one file is read when it is asked for: all texts of 100,000 items take half a minute. */
const MANY_ITEMS = 10_000;

/**
 * Gives what is published now. What was read is kept as long as no tag of an edition changes, so an edition published
 * while a server runs is seen by the next request.
 *
 * @param findWords where words are looked up; absent or failing: here
 */
export function publishedCatalog(catalog: Catalog, findWords?: FindWords): () => Promise<PublishedCatalog> {
  let known: { tags: string; published: Promise<PublishedCatalog> } | undefined;
  const readTags = readTogether(() => tagsOf(catalog));
  return async () => {
    const tags = await readTags();
    if (known?.tags === tags) return known.published;
    const published = readPublished(catalog, tags, findWords);
    const mine = { tags, published };
    known = mine;
    published.catch(() => {
      if (known === mine) known = undefined;
    });
    return published;
  };
}

async function tagsOf(catalog: Catalog): Promise<string> {
  const { repo } = catalog;
  const tags = await listEditionTags(repo);
  const oids = await Promise.all(tags.map(t => readRef(repo.fs, repo.gitdir, t.ref)));
  return tags.map((t, at) => `${t.ref} ${oids[at]}`).join('\n');
}

async function readPublished(catalog: Catalog, tags: string, elsewhere?: FindWords): Promise<PublishedCatalog> {
  const headers = await listEditions(catalog);
  const edition = remember(MOST_EDITIONS, async (name: string): Promise<PublishedEdition> => {
    const at = await locate(catalog, name).catch(() => undefined);
    if (at?.state !== 'published') throw unknownEdition(name, headers);
    const index = await readIndex(catalog, name);
    const places = placesOf(index.settings, index.entries);
    return { ...index, commit: at.commit, places, names: editionNames(index.entries) };
  });
  const items = remember(MOST_EDITIONS, async (name: string) => {
    await edition(name);
    return new Map((await readEdition(catalog, name)).items.map(i => [i.id, i]));
  });
  const itemsNamed = async (name: string, ids: readonly ItemId[]) => {
    const index = await edition(name);
    return index.entries.length > MANY_ITEMS ? readItems(catalog, index, index.places, ids) : items(name);
  };
  const crosswalk = remember(MOST_CROSSWALKS, async (pair: string): Promise<PublishedCrosswalk> => {
    const [from, to] = JSON.parse(pair) as [string, string];
    await Promise.all([edition(from), edition(to)]);
    const read = await readCrosswalk(catalog, from, to);
    return lazily(read);
  });
  const step = (from: string, to: string): Promise<Step> => crosswalk(JSON.stringify([from, to]));
  const search = remember(MOST_EDITIONS, async (name: string) => {
    const { commit, settings } = await edition(name);
    return readSearchIndex(catalog, commit, settings, async () => [...(await items(name)).values()]);
  });
  // Read once for each state of main, and not with every page of an item.
  const localAt = remember(1, async (_main: string) =>
    parseLocal(await readBeside(catalog, LOCAL_FOLDER)).records.map(r => r.record),
  );
  return {
    tags,
    headers,
    edition,
    items,
    itemsNamed,
    crosswalk: (from, to) => crosswalk(JSON.stringify([from, to])),
    decisions: remember(MOST_EDITIONS, (name: string) => readDecisions(catalog, name)),
    search,
    findWords: async (name, text, most) => {
      const here = async () => (await search(name)).find(text, most);
      return elsewhere ? elsewhere(name, text, most).catch(here) : here();
    },
    localRecords: async () => localAt(String(await readRef(catalog.repo.fs, catalog.repo.gitdir, MAIN))),
    item: async (name, id) => {
      const item = (await edition(name)).places.get(id) && (await itemsNamed(name, [id])).get(id);
      if (item) return item;
      throw new CatalogError(
        'UnknownItem',
        `Edition ${name} has no item ${id}; look for it by its number or its words.`,
      );
    },
    trace: async (name, entry) => {
      const line = lineFrom(headers, name);
      const steps = await Promise.all(line.slice(1).map((to, at) => step(line[at]!, to)));
      const replaces = headers.find(h => h.name === name)?.replaces;
      const trace = traceItem(name, entry, steps, replaces ? await step(replaces, name) : undefined);
      return { ...trace, told: tellTrace(trace) };
    },
  };
}

/** Lines and counts are worked out when first asked for: what became of one number needs neither of them. */
function lazily(read: ReadCrosswalk): PublishedCrosswalk {
  let lines: PublishedCrosswalk['lines'] | undefined;
  let statistics: Statistics | undefined;
  return {
    ...read,
    get lines() {
      lines ??= crosswalkLines(read.joint, read.marks);
      return lines;
    },
    get statistics() {
      statistics ??= crosswalkStatistics(read.joint);
      return statistics;
    },
  };
}

function unknownEdition(name: string, headers: readonly EditionHeader[]): CatalogError {
  const known = headers.map(h => h.name);
  return new CatalogError(
    'UnknownEdition',
    known.length === 0
      ? `There is no edition ${name}: the catalog is empty; import one with: fishplate import TABLE --edition NAME`
      : `There is no edition ${name}; use one of: ${known.join(', ')}.`,
    { name, known },
  );
}
