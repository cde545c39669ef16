import { governing, type LocalVerdict, leadSentence, typesOfLocal } from '../../carryover/local/governs.ts';
import { isPair } from '../../content/links/marks.ts';
import { LOCAL_FOLDER, type LocalFile, parseLocal } from '../../format/local-files.ts';
import type { Entry } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import type { ItemId, TypeId } from '../../model/item.ts';
import { placesOf } from '../../model/places.ts';
import { listEditions } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readIndex, readItems } from '../../store/read.ts';
import { readBeside } from '../../store/read-beside.ts';
import { nearestNames } from '../../text/nearest.ts';
import { readJoint } from '../reading/read-crosswalk.ts';
import { remember } from '../remember.ts';

export interface GovernsRequest {
  readonly number: string;
  readonly place: string;
  /** Calendar date (2024-03-01). */
  readonly date: string;
  readonly type?: TypeId;
  /** Absent: the newest edition that is in effect on the date. */
  readonly edition?: string;
}

export interface GovernsAnswer {
  readonly edition: string;
  readonly number: string;
  readonly title: string;
  readonly text: string;
  readonly lead: string;
  readonly verdicts: readonly LocalVerdict[];
  /** Files of local rules that could not be read. */
  readonly findings: readonly Finding[];
}

/**
 * What governs a requirement at a place on a day. A record that cites an older edition is followed to this one along the
 * lineage; one that cites the requirement's work item or what stands below it touches it as well.
 *
 * @throws CatalogError UnknownNumber, UnknownEdition, BadArgument: no such place, type or edition in effect
 */
export async function governs(catalog: Catalog, request: GovernsRequest): Promise<GovernsAnswer> {
  const { number, place, date, type } = request;
  const name = request.edition ?? (await inEffect(catalog, date));
  const index = await readIndex(catalog, name);
  const places = placesOf(index.settings, index.entries);
  const types = index.settings.installationTypes.map(t => t.id);
  if (type !== undefined && !types.includes(type)) {
    throw new CatalogError('BadArgument', `${name} has no installation type ${type}; use one of ${types.join(', ')}.`, {
      type,
    });
  }
  const bearers = index.entries.filter(e => e.number === number || e.id === number);
  if (bearers.length === 0) {
    const nearest = nearestNames(
      number,
      index.entries.map(e => e.number),
    );
    throw new CatalogError(
      'UnknownNumber',
      `Edition ${name} has no number ${number}; the nearest are ${nearest.join(', ')}. Name another edition with --edition.`,
      { number, nearest },
    );
  }
  if (bearers.length > 1) {
    throw new CatalogError(
      'BadArgument',
      `Edition ${name} prints ${number} on ${bearers.length} items; ask by id: ${bearers.map(b => b.id).join(', ')}.`,
      { number },
    );
  }
  const entry = bearers[0]!;
  const local = await localFiles(catalog);
  const known = [...new Set(local.records.map(r => r.record.place))].sort();
  if (!known.includes(place)) {
    throw new CatalogError(
      'BadArgument',
      `The catalog keeps no local rules of ${place}; it has ${known.join(', ') || 'none at all'}.`,
      { place, known },
    );
  }
  const follow = follower(catalog, name);
  const near = new Set<ItemId>([entry.id, ...places.ancestors(entry.id).map(e => e.id)]);
  const below = index.entries.filter(e => places.ancestors(e.id).some(a => a.id === entry.id));
  for (const e of below) near.add(e.id);
  const touching: { record: LocalFile['record']; on: ItemId }[] = [];
  for (const { record } of local.records) {
    if (record.place !== place) continue;
    const held = typesOfLocal(record, index.settings);
    if (type !== undefined && held && !held.includes(type)) continue;
    for (const on of (await follow(record)).filter(e => near.has(e.id))) {
      const isBelow = below.some(e => e.id === on.id);
      touching.push({ record, on: isBelow ? on.id : entry.id });
    }
  }
  const texts = await readItems(catalog, index, places, new Set([entry.id, ...touching.map(t => t.on)]));
  const textOf = (id: ItemId) => texts.get(id)?.text ?? '';
  const verdicts = touching.map(({ record, on }) => governing(textOf(on), record, date));
  return {
    edition: name,
    number: entry.number,
    title: entry.title,
    text: textOf(entry.id),
    lead: leadSentence(entry.number || entry.title, name, date, verdicts),
    verdicts,
    findings: local.findings,
  };
}

/** All local rules and variances of the catalog. */
export async function localFiles(catalog: Catalog) {
  return parseLocal(await readBeside(catalog, LOCAL_FOLDER));
}

/** Where a record's citation stands in an edition; each step is read once. Unknown numbers lead nowhere. */
export function follower(catalog: Catalog, to: string): (record: LocalFile['record']) => Promise<readonly Entry[]> {
  const jointFrom = remember(16, async (from: string) => (await readJoint(catalog, from, to)).joint);
  return async ({ cites }) => {
    const joint = await jointFrom(cites.edition);
    const cited =
      cites.item === undefined ? joint.old.withNumber(cites.number) : [joint.old.get(cites.item)!].filter(Boolean);
    const heirs = cited.flatMap(c =>
      joint
        .leaving(c.id)
        .filter(isPair)
        .map(l => l.to),
    );
    return [...new Set(heirs)].map(id => joint.new.get(id)!);
  };
}

async function inEffect(catalog: Catalog, date: string): Promise<string> {
  const editions = await listEditions(catalog);
  const found = editions.findLast(h => (h.dates.effective ?? h.dates.published ?? '') <= date);
  if (found) return found.name;
  throw new CatalogError(
    'BadArgument',
    `No edition is in effect on ${date}; name one with --edition: ${editions.map(h => h.name).join(', ')}.`,
    { date },
  );
}
