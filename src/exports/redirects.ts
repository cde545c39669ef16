import type { Entry } from '../model/edition.ts';
import type { Places } from '../model/places.ts';
import { writeCsv } from '../tables/write-csv.ts';
import type { Publication } from './publication.ts';
import { siteNames } from './site-names.ts';

/** Where an address of the older edition leads now: `from`, `to`, `candidates` are addresses of the viewer. */
export interface Redirect {
  readonly from: string;
  /** Empty unless there is exactly one heir: sending a reader to one of two would deny the other. */
  readonly to: string;
  readonly status: 'moved' | 'choose' | 'gone' | 'no record';
  readonly candidates: readonly string[];
  /** In the published site: the one heir, else what became of the old item and why. Seen from the bundle's folder. */
  readonly page: string;
}

/** The address of an item in the viewer: by its number where that is its own, as people read addresses out. */
export function addressOf(edition: string, entry: Entry, places: Places<Entry>): string {
  const { id, number } = entry;
  if (number === '' || /^\.{1,2}$/.test(number) || places.withNumber(number).length > 1) {
    return `/item/${encodeURIComponent(id)}?in=${encodeURIComponent(edition)}`;
  }
  return `/at/${encodeURIComponent(edition)}/${encodeURIComponent(number)}`;
}

export function redirects(publication: Publication): Redirect[] {
  const { joint, line } = publication;
  const site = siteNames(publication);
  const at = line.findIndex(e => e.index.header.name === joint.from.header.name);
  const [from, to] = [joint.from.header.name, joint.to.header.name];
  return joint.from.entries.map(entry => {
    const links = joint.leaving(entry.id);
    const heirs = links.flatMap(l => (l.to === null ? [] : [addressOf(to, joint.new.get(l.to)!, joint.new)]));
    const pointed = links.flatMap(l => (l.pointsTo ? (joint.new.get(l.pointsTo) ?? []) : []));
    // An item that ends for some installation types and goes on for others has no one place to send its readers to.
    const sole = heirs.length === 1 && links.length === 1;
    const page = sole ? site.item(links[0]!.to!) : site.old(at, entry.id);
    return {
      from: addressOf(from, entry, joint.old),
      to: sole ? heirs[0]! : '',
      status: sole ? 'moved' : heirs.length > 0 ? 'choose' : links.length > 0 ? 'gone' : 'no record',
      candidates: sole ? [] : heirs.length > 0 ? heirs : pointed.map(e => addressOf(to, e, joint.new)),
      page: `site/${page}`,
    };
  });
}

export function redirectsCsv(all: readonly Redirect[]): string {
  return writeCsv([
    ['from', 'to', 'status', 'candidates', 'page'],
    ...all.map(r => [r.from, r.to, r.status, r.candidates.join(' '), r.page]),
  ]);
}
