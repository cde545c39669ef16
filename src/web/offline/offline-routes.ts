import { readFileSync } from 'node:fs';
import { type ServedLookup, servedLookup } from '../../commands/finding/served-lookup.ts';
import type { PublishedCatalog } from '../../commands/reading/published-catalog.ts';
import { counted, inWords } from '../../model/said-words.ts';
import { placeLink } from '../links.ts';
import type { Routes } from '../routes.ts';
import { editionLine } from '../site.ts';
import { KEPT_FILES, type OfflineStates, WORKER_FILE } from './offline-state.ts';

/** The page with all numbers, which a device keeps. */
export interface LookupPage extends ServedLookup {
  readonly lead: string;
  readonly editionLine: string;
}

/** How long a device waits for an answer before it shows what it has kept. */
export const PATIENCE_MS = 10_000;

/**
 * Looking up where there is no network: a page with the numbers of all editions, and the worker that keeps it and what
 * else was read. Browsers run such a worker on https and on localhost only; elsewhere the page is one among others.
 */
export function offlineRoutes({ get, show }: Routes, states: OfflineStates, patience: number): void {
  const lookups = new WeakMap<PublishedCatalog, Promise<ServedLookup>>();
  const lookupOf = (published: PublishedCatalog) => {
    const before = lookups.get(published);
    if (before) return before;
    const lookup = servedLookup(published, placeLink);
    lookups.set(published, lookup);
    lookup.catch(() => lookups.delete(published));
    return lookup;
  };

  get('/lookup', async asked => {
    const { published } = asked;
    const newest = published.headers.at(-1);
    const lookup = await lookupOf(published);
    const line = newest ? editionLine({ header: newest }) : '';
    await show(asked, 'offline-lookup', { ...lookup, lead: leadOf(lookup), editionLine: line }, 'Look up a number');
  });

  const worker = readFileSync(WORKER_FILE, 'utf8');
  get('/offline-worker.js', async ({ published, response }) => {
    const state = { ...(await states(published)), patience, files: KEPT_FILES };
    response.setHeader('Cache-Control', 'no-cache');
    response.type('js').send(`const STATE = ${JSON.stringify(state)};\n${worker}`);
  });
}

function leadOf({ editions, numbers }: ServedLookup): string {
  if (numbers === 0) return 'Nothing is published yet.';
  if (editions.length === 0) {
    return `This catalog has ${numbers.toLocaleString('en')} numbers, too many for a device to keep; only pages that were opened are kept. Ask the office for the file of the numbers that you need.`;
  }
  return `What became of ${counted(numbers, 'number')} of ${inWords(editions.map(e => e.edition).reverse())}.`;
}
