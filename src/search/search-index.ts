import type { ItemId } from '../model/item.ts';
import { INDEX_VERSION, type Lunr, type SavedIndex } from './index-edition.ts';
import { looksLikeNumber, searchTerms } from './terms.ts';

/** The index of an edition, ready to be asked. User text of any kind is taken; none of it is read as a query language. */
export interface SearchIndex {
  /** The ids of the items that match best, best first. */
  find(text: string, most: number): Found;
}

export interface Found {
  readonly ids: readonly ItemId[];
  readonly total: number;
  /** `all` words stand in each item found; else words spelt `alike`, or only `some` of them. */
  readonly matched: 'all' | 'some' | 'alike';
}

/** A longer query asks nothing more and costs more. */
const MOST_TERMS = 16;
/** Shorter words are too like others for a slip of a letter to be guessed. */
const LEAST_LETTERS = 5;

/** Opens a saved index; undefined where it is damaged or of another version, and has to be built again. */
export function openIndex(lunr: Lunr, saved: unknown): SearchIndex | undefined {
  try {
    const { version, ids, index: stored } = saved as SavedIndex;
    if (version !== INDEX_VERSION || !Array.isArray(ids)) return undefined;
    const index = lunr.Index.load(stored);
    index.query(q => q.term('probe', {}));
    return { find: (text, most) => find(lunr, index, ids, text, most) };
  } catch {
    return undefined;
  }
}

function find(lunr: Lunr, index: lunr.Index, ids: readonly ItemId[], text: string, most: number): Found {
  const terms = [...new Set(searchTerms(text))].slice(0, MOST_TERMS);
  if (terms.length === 0) return { ids: [], total: 0, matched: 'all' };
  const { pipeline: stemmer } = index as unknown as { readonly pipeline: lunr.Pipeline };
  const stemmed = terms.flatMap(term => (looksLikeNumber(term) ? [term] : stemmer.runString(term)));
  const ask = (presence: lunr.Query.presence, clause: (term: string, at: number) => object) =>
    index.query(q => {
      for (const [at, term] of stemmed.entries()) q.term(term, { usePipeline: false, presence, ...clause(term, at) });
    });
  const { REQUIRED, OPTIONAL } = lunr.Query.presence;
  const isWord = (term: string) => /^[\p{L}\p{M}]+$/u.test(term);
  // lunr would stem a word with its wildcard sign, and so not at all.
  const unfinished = (term: string, at: number) =>
    at === stemmed.length - 1 && isWord(term) && term.length > 2 ? { wildcard: lunr.Query.wildcard.TRAILING } : {};
  const alike = (term: string) => (isWord(term) && term.length >= LEAST_LETTERS ? { editDistance: 1 } : {});
  const tries = [
    ['all', () => ask(REQUIRED, () => ({}))],
    ['all', () => ask(REQUIRED, unfinished)],
    ['alike', () => ask(REQUIRED, alike)],
    ['some', () => ask(OPTIONAL, () => ({}))],
    ['alike', () => ask(OPTIONAL, alike)],
  ] as const;
  for (const [matched, results] of tries) {
    const found = results();
    if (found.length === 0) continue;
    return { ids: found.slice(0, most).map(r => ids[Number(r.ref)]!), total: found.length, matched };
  }
  return { ids: [], total: 0, matched: 'all' };
}
