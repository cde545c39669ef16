import type lunr from 'lunr';
import type { Item } from '../model/item.ts';
import { placesOf } from '../model/places.ts';
import { type Settings, typeName } from '../model/settings.ts';
import { foldText, numberPrefixes, searchTerms } from './terms.ts';

/** Raised when terms or fields change, so that an index saved by an older version is built again. */
export const INDEX_VERSION = 2;

/** The index of one edition as it is saved: lunr's own, and the ids that its document numbers stand for. */
export interface SavedIndex {
  readonly version: number;
  readonly ids: readonly string[];
  readonly index: object;
}

export type Lunr = typeof lunr;

/** Loaded when first asked for: commands that do not search do not pay for it. */
export async function loadLunr(): Promise<Lunr> {
  return (await import('lunr')).default;
}

/**
 * Indexes titles, texts, purposes, outcomes and numbers; more weakly the titles above an item and the installation
 * types it is limited to, for a requirement called "Depth" is looked for as "soakaway depth terrace".
 *
 * Documents go by their place, not by their id: `__proto__` is a fine id and no key for an object.
 */
export function indexEdition(lunr: Lunr, settings: Settings, items: readonly Item[]): SavedIndex {
  const builder = new lunr.Builder();
  builder.tokenizer = tokenizerFor(lunr);
  if (settings.language.startsWith('en')) {
    builder.pipeline.add(lunr.stemmer);
    builder.searchPipeline.add(lunr.stemmer);
  }
  builder.ref('at');
  builder.field('number', { boost: 8 });
  builder.field('title', { boost: 4 });
  // One field for all that an item says: a query costs a pass over every field, and nobody asks for one of them.
  builder.field('says');
  builder.field('above', { boost: 0.3 });
  const places = placesOf(settings, items);
  items.forEach(({ id, number, title, text = '', purpose = '', outcome = '' }, at) => {
    const own = places.types(id);
    const all = own.length === settings.installationTypes.length;
    const types = all ? '' : own.map(type => typeName(settings, type)).join(' ');
    const above = places
      .ancestors(id)
      .map(item => item.title)
      .join(' ');
    builder.add({ at: String(at), number, title, says: [text, purpose, outcome, types].join('\n'), above });
  });
  return { version: INDEX_VERSION, ids: items.map(i => i.id), index: builder.build().toJSON() };
}

/** Also finds a number by its beginnings; only while building, or asking for 3.2.1 would ask for 3 as well. */
function tokenizerFor(lunr: Lunr) {
  const tokenize = (value: string, metadata: { readonly fields: readonly string[] }) => {
    const terms = searchTerms(value);
    const beginnings = metadata.fields.includes('number') ? numberPrefixes(foldText(value)) : [];
    return [...terms, ...beginnings].map(term => new lunr.Token(term, { ...metadata }));
  };
  return tokenize as unknown as typeof lunr.tokenizer;
}
