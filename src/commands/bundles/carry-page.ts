import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { CARRY_SCRIPTS, type CarryPage, carryDataScript, carryPage } from '../../exports/site-carry.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Catalog } from '../../store/open.ts';
import type { PublishedCatalog } from '../reading/published-catalog.ts';
import { remember } from '../remember.ts';
import { readCarryData } from './bundle-carry.ts';
import { CARRY_ENGINE_FILE, SITE_VIEWS } from './bundle-templates.ts';

export type { CarryPage } from '../../exports/site-carry.ts';

/** The page of a site that carries files over, for the newest edition of a catalog that is served. */
export interface ServedCarry {
  /** @param folder the address that `data.js` and the files below stand under */
  readonly page: (published: PublishedCatalog, folder: string) => Promise<CarryPage>;
  /** The script with the editions. */
  readonly data: (published: PublishedCatalog) => Promise<string>;
  /** What stands beside it, by name: the file of each. */
  readonly files: ReadonlyMap<string, string>;
}

const ENGINE = 'engine.js';

/** Undefined where the program's part for browsers was not built. */
export function servedCarry(catalog: Catalog): ServedCarry | undefined {
  if (!existsSync(CARRY_ENGINE_FILE)) return undefined;
  let asked: PublishedCatalog;
  // By the commits of all editions that are passed: an erratum between two of them changes the way.
  const packed = remember(1, async (key: string) => {
    const [newest, ...older] = (JSON.parse(key) as [string, string][]).map(([name]) => name);
    const ways = [];
    for (const name of older) ways.push(await asked.crosswalk(name, newest!));
    return readCarryData(catalog, ways);
  });
  const packedOf = async (published: PublishedCatalog) => {
    const line = lineOf(published);
    asked = published;
    return packed(JSON.stringify(await Promise.all(line.map(async n => [n, (await published.edition(n)).commit]))));
  };
  return {
    page: async (published, folder) => {
      const data = await packedOf(published);
      const editions = data.ways.map(way => way.from.header.name);
      const older = editions.map(edition => ({ edition, href: `/edition/${encodeURIComponent(edition)}` }));
      const scripts = ['data.js', ENGINE, ...CARRY_SCRIPTS].map(name => folder + name);
      return carryPage(data, editions[0]!, older, scripts);
    },
    data: async published => carryDataScript(await packedOf(published)),
    files: new Map([
      ...[...CARRY_SCRIPTS, 'carry.css'].map(name => [name, join(SITE_VIEWS, name)] as const),
      [ENGINE, CARRY_ENGINE_FILE],
    ]),
  };
}

/** The newest edition and all that led to it, newest first. @throws CatalogError NoPath where there is none before it */
function lineOf({ headers }: PublishedCatalog): string[] {
  const line: string[] = [];
  for (let at = headers.at(-1); at && !line.includes(at.name); ) {
    line.push(at.name);
    const before: string | null = at.replaces;
    at = headers.find(h => h.name === before);
  }
  if (line.length > 1) return line;
  throw new CatalogError(
    'NoPath',
    'There is no older edition to carry files from; come back when a new one is published.',
  );
}
