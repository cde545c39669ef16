import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Response } from 'express';
import type { PublishedCatalog } from '../../commands/reading/published-catalog.ts';
import { VIEWS } from '../render.ts';
import { editionLine } from '../site.ts';

/** What a device that keeps pages is told of the viewer that they come from. */
export interface OfflineState {
  /** Changes with every publication and erratum, and with the program: what a device keeps is then fetched anew. */
  readonly version: string;
  /** Tells this catalog from another one that is served at the same address some other day. */
  readonly catalog: string;
  /** `Edition 2024, in force from 1 July 2024` */
  readonly edition: string;
  readonly title: string;
}

/** What stands beside kept pages; the worker keeps these files. */
export const KEPT_FILES = [
  '/style.css',
  '/desk.css',
  '/lookup.css',
  '/icon.svg',
  '/suggest.js',
  '/lookup.js',
  '/offline.js',
];

/** Where each of them lies. */
export const fileOfAsset = (asset: string) => join(VIEWS, /^\/?lookup\./.test(asset) ? 'site' : '', asset);

export const WORKER_FILE = join(VIEWS, 'offline-worker.js');

/** The pages that everybody sees alike; nothing that asks for a name, sends a form or is for one person is among them. */
const KEPT_PAGES: ReadonlySet<string> = new Set([
  'home',
  'search',
  'item',
  'number',
  'edition',
  'crosswalk',
  'losses',
  'offline-lookup',
]);

/** Which headers a device reads, and the worker with it. */
const EDITION = 'Fishplate-Edition';
const VERSION = 'Fishplate-Version';

export type OfflineStates = (published: PublishedCatalog) => Promise<OfflineState>;

/** Works the state out once for each state of what is published. */
export function offlineStates(): OfflineStates {
  const program = programHash();
  const known = new WeakMap<PublishedCatalog, Promise<OfflineState>>();
  return published => {
    const before = known.get(published);
    if (before) return before;
    const state = stateOf(published, program);
    known.set(published, state);
    state.catch(() => known.delete(published));
    return state;
  };
}

async function stateOf(published: PublishedCatalog, program: string): Promise<OfflineState> {
  const newest = published.headers.at(-1);
  const [first = ''] = published.tags.split('\n');
  return {
    version: hashOf(program, published.tags),
    catalog: hashOf(first),
    edition: newest ? editionLine({ header: newest }) : 'No edition',
    title: (newest && (await published.edition(newest.name)).settings.title) || 'Catalog',
  };
}

/**
 * Says of a page that a device may keep it, and what it tells the state of. Without this nothing is kept: a list of
 * pages that must not be kept would be one new page short some day.
 *
 * @param signedIn a page that says a name, or that was made for somebody
 */
export function markKept(response: Response, page: string, state: OfflineState, signedIn: boolean): void {
  if (signedIn || !KEPT_PAGES.has(page) || response.hasHeader('Set-Cookie')) return;
  response.setHeader(EDITION, encodeURIComponent(state.edition));
  response.setHeader(VERSION, state.version);
}

/** The program's version, and all that a device keeps of it. */
function programHash(): string {
  const { version } = JSON.parse(readFileSync(join(VIEWS, '..', 'package.json'), 'utf8')) as { version: string };
  const beside = KEPT_FILES.map(fileOfAsset);
  const templates = [join(VIEWS, 'offline-lookup.ejs'), join(VIEWS, 'site', 'lookup-body.ejs')];
  return hashOf(version, ...[WORKER_FILE, ...beside, ...templates].map(file => readFileSync(file, 'utf8')));
}

const hashOf = (...texts: readonly string[]) =>
  createHash('sha256').update(JSON.stringify(texts)).digest('hex').slice(0, 16);
