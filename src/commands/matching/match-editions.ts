import type { Answer } from '../../matching/answers.ts';
import type { LineageRecord } from '../../model/crosswalk.ts';
import { dayOf } from '../../model/day.ts';
import type { Edition } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Item } from '../../model/item.ts';
import type { Catalog } from '../../store/open.ts';
import { indexOf, readEdition, readLineage } from '../../store/read.ts';
import { type ErratumReport, readStepTo, writeErratum } from '../importing/add-erratum.ts';
import { type Ports, person } from '../ports/ports.ts';
import type { BareEdition } from './bare-edition.ts';
import { type Matched, type MatchReport, matchBareEditions } from './match-tables.ts';

/** Matches two editions of a catalog. Equal ids and declared lineage stand; only what they leave open is guessed. */
export async function matchEditions(
  ports: Ports,
  catalog: Catalog,
  fromName: string,
  toName: string,
  answerFiles: readonly string[],
): Promise<MatchReport> {
  const { from, to, known } = await readForMatching(catalog, fromName, toName);
  return matchBareEditions(ports, from, to, answerFiles, known);
}

/** Two editions of a catalog as bare ones, and what the catalog itself knows of their links. */
export async function readForMatching(
  catalog: Catalog,
  fromName: string,
  toName: string,
): Promise<{ readonly from: BareEdition; readonly to: BareEdition; readonly known: readonly Answer[] }> {
  const [older, newer] = [await readEdition(catalog, fromName), await readEdition(catalog, toName)];
  const [from, to] = [bareEditionOf(older), bareEditionOf(newer)];
  const records = newer.header.replaces === older.header.name ? await readLineage(catalog, toName) : [];
  return { from, to, known: declared(from, to, records) };
}

/** A record of lineage that a matching gives, before anybody has written it. */
export interface MatchedRecord {
  readonly record: Omit<LineageRecord, 'by' | 'date'>;
  /** Who answered, where somebody did. */
  readonly by: string | undefined;
  /** Numbers and titles, for people. */
  readonly old: { readonly number: string; readonly title: string };
  readonly heirs: readonly { readonly number: string; readonly title: string }[];
}

/**
 * The links of the band accept as lineage of the newer edition: for old items that have neither an heir nor a record,
 * and for no others. A withdrawal is among them only where a person answered it; that nothing was found proves none.
 *
 * @throws CatalogError BadArgument where the newer edition does not replace the older one
 */
export async function matchedLineage(
  catalog: Catalog,
  { from, to, matching, answers }: Matched,
  toName: string,
): Promise<readonly MatchedRecord[]> {
  const step = await readStepTo(catalog, toName);
  if (step.older.header.name !== from.index.header.name) {
    throw new CatalogError(
      'BadArgument',
      `Lineage is kept for one step only; match ${step.older.header.name} with ${step.name}, which replaces it.`,
    );
  }
  const known = new Set((await readLineage(catalog, toName)).map(r => r.from));
  const newer = new Set(to.ids);
  const leaving = new Map<number, (typeof matching.links)[number][]>();
  for (const link of matching.links) {
    if (link.from === null || link.band !== 'accept') continue;
    const before = leaving.get(link.from);
    if (before) before.push(link);
    else leaving.set(link.from, [link]);
  }
  const records: MatchedRecord[] = [];
  from.ids.forEach((id, at) => {
    if (known.has(id) || newer.has(id)) return;
    const links = leaving.get(at) ?? [];
    const heirs = links.flatMap(l => (l.to === null ? [] : [l.to]));
    const told = links.find(l => l.answered !== undefined);
    const gone = heirs.length === 0 && told !== undefined;
    if (heirs.length === 0 && !gone) return;
    const least = Math.min(...links.map(l => l.confidence));
    records.push({
      record: {
        from: id,
        heirs: heirs.map(j => ({ to: to.ids[j]!, fromExtent: 'unknown', toExtent: 'unknown' })),
        ...(gone ? { reason: told.answered || 'withdrawn' } : {}),
        // A person's yes without a reason is no figure of the matcher's.
        ...(gone
          ? {}
          : told
            ? { note: told.answered || 'Found by matching, and answered by a person.' }
            : { note: `Found by matching, ${Math.floor(least * 100)} % sure.` }),
        basis: told ? 'confirmed' : 'inferred',
      },
      by: answerers(answers, at),
      old: named(from, at),
      heirs: heirs.map(j => named(to, j)),
    });
  });
  return records;
}

const named = ({ rows }: BareEdition, at: number) => ({ number: rows[at]!.number, title: rows[at]!.title });

/** Writes what matching found as an erratum, under the name of whoever runs it where nobody answered. */
export async function recordLineage(
  ports: Ports,
  catalog: Catalog,
  found: readonly MatchedRecord[],
  toName: string,
): Promise<ErratumReport> {
  const step = await readStepTo(catalog, toName);
  // A record that somebody has written meanwhile stands; an erratum would take its place.
  const known = new Set((await readLineage(catalog, toName)).map(r => r.from));
  const missing = found.filter(({ record }) => !known.has(record.from));
  if (missing.length === 0) {
    throw new CatalogError(
      'BadArgument',
      `Nothing is to be recorded: every item of ${step.older.header.name} has its heirs or its record, or no link that can be accepted; answer the others with --answers.`,
    );
  }
  const { name, date } = person(ports);
  const day = dayOf(date);
  const records = missing.map(({ record, by }): LineageRecord => ({ ...record, by: by ?? name, date: day }));
  return writeErratum(ports, catalog, step, records, `Lineage of ${records.length} items, found by matching`);
}

/** `matchedLineage` and `recordLineage` in one. */
export async function recordMatches(
  ports: Ports,
  catalog: Catalog,
  report: MatchReport,
  toName: string,
): Promise<ErratumReport> {
  return recordLineage(ports, catalog, await matchedLineage(catalog, report, toName), toName);
}

/** Whose answers an old row's links rest on, where the answers say so: they decided, whoever writes it down. */
function answerers(answers: readonly Answer[], from: number): string | undefined {
  const by = new Set(answers.flatMap(a => (a.kind !== 'new' && a.kind !== 'no' && a.from === from && a.by) || []));
  return by.size === 0 ? undefined : [...by].join(', ');
}

function bareEditionOf(edition: Edition): BareEdition {
  const at = new Map(edition.items.map((item, position) => [item.id, position]));
  const items = edition.items.map((item, position): Item => {
    const parent = item.parent === null ? null : String(at.get(item.parent)!);
    const { alsoAt: _, ...rest } = item;
    return { ...rest, id: String(position), parent };
  });
  return {
    index: indexOf({ ...edition, items }),
    items: new Map(items.map(item => [item.id, item])),
    rows: edition.items.map(item => ({
      number: item.number,
      level: String(item.level),
      parent: item.parent === null ? -1 : at.get(item.parent)!,
      title: item.title,
      text: [item.text, item.purpose, item.outcome].filter(Boolean).join('\n'),
      table: 0,
    })),
    ids: edition.items.map(item => item.id),
    tables: [],
    findings: [],
  };
}

function declared(from: BareEdition, to: BareEdition, records: readonly LineageRecord[]): Answer[] {
  const news = new Map(to.ids.map((id, at) => [id, at]));
  const byFrom = new Map(records.map(r => [r.from, r]));
  return from.ids.flatMap((id, at): Answer[] => {
    const record = byFrom.get(id);
    const own = record?.notSame ? undefined : news.get(id);
    const heirs = new Set((record?.heirs ?? []).map(h => news.get(h.to)));
    heirs.add(own);
    heirs.delete(undefined);
    const because = 'declared in the catalog';
    if (heirs.size > 0) return [...heirs].map(j => ({ kind: 'yes', from: at, to: j!, because }));
    return record?.reason === undefined ? [] : [{ kind: 'withdrawn', from: at, because: record.reason }];
  });
}
