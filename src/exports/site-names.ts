import type { Entry } from '../model/edition.ts';
import type { ItemId } from '../model/item.ts';
import type { Places } from '../model/places.ts';
import type { Publication } from './publication.ts';

/** Where things stand in the published site. Names hold letters, digits, points and hyphens only, whatever the ids hold. */
export interface SiteNames {
  /** The page of a part of the published edition, by its order: numbers may be empty or shared. */
  readonly part: (id: ItemId) => string;
  /** An item of the published edition on the page of its part. */
  readonly item: (id: ItemId) => string;
  /** The page of the numbers of an older edition, by its place in the line. */
  readonly edition: (at: number) => string;
  /** An item of an older edition. */
  readonly old: (at: number, id: ItemId) => string;
}

/** An id that is safe and unique as the anchor of an element. */
export const anchorOf = (id: ItemId) =>
  `i-${encodeURIComponent(id).replace(/[%'()*!~]/g, c => (c === '%' ? '~' : `~~${c.charCodeAt(0)}`))}`;

export function siteNames({ line, joint }: Publication): SiteNames {
  const files = new Map(joint.to.entries.filter(e => e.parent === null).map((e, at) => [e.id, `part-${at + 1}.html`]));
  const part = (id: ItemId) => files.get(topOf(joint.new, id).id)!;
  const edition = (at: number) => `numbers-${safe(line[at]!.index.header.name)}.html`;
  return {
    part,
    item: id => `${part(id)}#${anchorOf(id)}`,
    edition,
    old: (at, id) => `${edition(at)}#${anchorOf(id)}`,
  };
}

function topOf(places: Places<Entry>, id: ItemId): Entry {
  return places.part(id)!;
}

const safe = (name: string) => name.replace(/[^A-Za-z0-9.-]/g, c => `_${c.codePointAt(0)!.toString(16)}`);
