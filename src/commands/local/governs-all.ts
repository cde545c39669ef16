import { governing, isInForce } from '../../carryover/local/governs.ts';
import { localProvisions, type Provision } from '../../carryover/local/local-provisions.ts';
import type { Finding } from '../../model/finding.ts';
import type { LocalRecord } from '../../model/local.ts';
import { placesOf } from '../../model/places.ts';
import { listEditions } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readIndex, readItems } from '../../store/read.ts';
import { follower, localFiles } from './governs.ts';

/**
 * How a local record stands to an edition: `overtaken` the catalog now asks as much or more, `short` it asks less than
 * the catalog where it did not before, `moot` the edition permits what the variance permitted, or has nothing left to
 * depart from, `alone` what a rule cites has no heir, `person` it cannot be compared.
 */
export type Standing = 'stands' | 'overtaken' | 'short' | 'moot' | 'alone' | 'person' | 'not in force';

export interface LocalStanding {
  readonly record: LocalRecord;
  readonly standing: Standing;
  readonly why: string;
  /** Numbers of the edition that its citation leads to. */
  readonly heirs: readonly string[];
}

/** Each local rule and variance beside an edition; absent the newest one. Nothing is changed. */
export async function governsAll(
  catalog: Catalog,
  { to, date }: { readonly to?: string; readonly date: string },
): Promise<{
  readonly edition: string;
  readonly standings: readonly LocalStanding[];
  readonly findings: readonly Finding[];
}> {
  const edition = to ?? (await listEditions(catalog)).at(-1)?.name ?? '';
  const index = await readIndex(catalog, edition);
  const places = placesOf(index.settings, index.entries);
  const local = await localFiles(catalog);
  const follow = follower(catalog, edition);
  const standings: LocalStanding[] = [];
  for (const { record } of local.records) {
    const heirs = await follow(record);
    const numbers = heirs.map(h => h.number || h.id);
    if (!isInForce(record, date)) {
      standings.push({ record, standing: 'not in force', why: governing('', record, date).why, heirs: numbers });
      continue;
    }
    const texts = await readItems(
      catalog,
      index,
      places,
      heirs.map(h => h.id),
    );
    const now = heirs.map(h => localProvisions(texts.get(h.id)?.text ?? '', record.text));
    const before = await provisionsBefore(catalog, record);
    standings.push({ record, heirs: numbers, ...standingOf(record, edition, before, now) });
  }
  return { edition, standings, findings: local.findings };
}

async function provisionsBefore(catalog: Catalog, record: LocalRecord): Promise<readonly Provision[]> {
  const index = await readIndex(catalog, record.cites.edition);
  const places = placesOf(index.settings, index.entries);
  const cited = index.entries.find(e => e.id === record.cites.item || e.number === record.cites.number);
  if (!cited) return [];
  const texts = await readItems(catalog, index, places, [cited.id]);
  return localProvisions(texts.get(cited.id)?.text ?? '', record.text);
}

function standingOf(
  { kind, title, cites }: LocalRecord,
  edition: string,
  before: readonly Provision[],
  now: readonly (readonly Provision[])[],
): { standing: Standing; why: string } {
  if (now.length === 0) {
    return kind === 'variance'
      ? { standing: 'moot', why: `Nothing in ${edition} follows ${cites.number}, so "${title}" departs from nothing.` }
      : {
          standing: 'alone',
          why: `Nothing in ${edition} follows ${cites.number}; "${title}" stands alone and has to be cited by itself.`,
        };
  }
  // What neither side measures, and what the catalog adds, says nothing about the values that both state.
  const compared = now.flat().filter(p => p.place !== '');
  const has = (provisions: readonly Provision[], local: Provision['local']) => provisions.some(p => p.local === local);
  if (now.length > 1) {
    return {
      standing: 'person',
      why: `${cites.number} has ${now.length} heirs in ${edition}; say which of them "${title}" is about.`,
    };
  }
  if (kind === 'variance') {
    if (has(compared, 'relaxed'))
      return { standing: 'stands', why: `"${title}" still permits what ${edition} does not.` };
    const permitted = compared.some(p => p.catalog !== '') && !has(compared, 'unclear');
    return permitted
      ? { standing: 'moot', why: `${edition} permits what "${title}" permitted.` }
      : { standing: 'person', why: `Whether ${edition} permits what "${title}" permits has to be read from both.` };
  }
  if (has(compared, 'unclear')) {
    return { standing: 'person', why: `"${title}" cannot be compared with ${edition} by a program.` };
  }
  if (has(compared, 'relaxed') && !has(before, 'relaxed')) {
    return { standing: 'short', why: `"${title}" now asks less than ${edition}.` };
  }
  if (!has(compared, 'stricter') && !has(compared, 'adds')) {
    return has(compared, 'relaxed')
      ? { standing: 'short', why: `"${title}" asks less than ${edition}, as it did before.` }
      : { standing: 'overtaken', why: `${edition} asks as much as "${title}".` };
  }
  return { standing: 'stands', why: `"${title}" still asks more than ${edition} in at least one thing.` };
}
