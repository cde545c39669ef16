import type { Entry } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { ItemId } from '../../model/item.ts';
import { idsOneSlipAway, isMistypedId, namesInQuery, pointedNumber } from '../../search/names.ts';
import type { Found } from '../../search/search-index.ts';
import { foldText, looksLikeNumber } from '../../search/terms.ts';
import { nearestNames } from '../../text/nearest.ts';
import type { PublishedCatalog, ToldTrace } from '../reading/published-catalog.ts';
import { foldedOf } from './suggest-items.ts';

export interface SearchRequest {
  readonly query: string;
  /** Absent: every edition is searched. */
  readonly edition?: string;
  /** How many items of each edition are given. */
  readonly most: number;
}

/** One meaning of a number or id that the query names, with what became of it. */
export interface Meaning {
  readonly name: string;
  readonly edition: string;
  readonly entry: Entry;
  readonly trace: ToldTrace;
}

export interface Hit {
  readonly entry: Entry;
  /** The sentence of the item's text that has the words, or its beginning. */
  readonly excerpt: string;
}

export interface SearchAnswer {
  /** What was searched for: the query, cut where it is too long. */
  readonly query: string;
  readonly cut: boolean;
  /** Every item, in every edition, that the query names by number or id. None is chosen. */
  readonly meanings: readonly Meaning[];
  /** Items by their words or, where the query is a number, those below it: `4.2` lists all of group 4.2. */
  readonly editions: readonly {
    readonly edition: string;
    readonly hits: readonly Hit[];
    readonly total: number;
    readonly matched: Found['matched'];
    /** Where the items are those whose number begins with the number asked for: that number. */
    readonly below?: string;
  }[];
  /** Whether words could not be looked up in some edition yet. */
  readonly later: boolean;
  /** A word that is an id but for one slip of the fingers, and the ids it may stand for. */
  readonly mistyped?: { readonly id: string; readonly meant: readonly ItemId[] };
  /** Where nothing was found and the query looks like a number: the numbers nearest to it. */
  readonly nearest: readonly string[];
}

const LONGEST_QUERY = 200;
/** Meanings beyond these are a defect of the numbering, and no page for a phone. */
const MOST_MEANINGS = 24;

/**
 * Looks a query up in one edition or in all. Numbers and ids come first and exactly; a number that the asked edition
 * no longer prints leads to its meanings in other editions, and so to what became of it.
 */
export async function searchEditions(published: PublishedCatalog, request: SearchRequest): Promise<SearchAnswer> {
  const typed = [...request.query.trim()].slice(0, LONGEST_QUERY).join('');
  const cut = typed.length < request.query.trim().length;
  const query = await asPrinted(published, typed);
  const all = published.headers.map(h => h.name);
  const asked = request.edition === undefined ? all : [(await published.edition(request.edition)).header.name];
  const names = namesInQuery(query);

  const inAsked = await meaningsOf(published, asked, names);
  const meanings = inAsked.length > 0 ? inAsked : await meaningsOf(published, all, names);
  const editions = [];
  let later = false;
  for (const edition of [...asked].reverse()) {
    const read = await published.edition(edition);
    const { places } = read;
    const beginning = foldText(names[0] ?? '');
    const lines = looksLikeNumber(beginning) ? foldedOf(read) : [];
    const below = lines.filter(line => isBelow(line.number, beginning)).map(line => line.entry);
    const found =
      below.length > 0
        ? { ids: below.slice(0, request.most).map(e => e.id), total: below.length, matched: 'all' as const }
        : await published.findWords(edition, query, request.most);
    if (!found) {
      later = true;
      continue;
    }
    const items = await published.itemsNamed(edition, found.ids);
    const hits = found.ids.flatMap((id): Hit[] => {
      const [entry, item] = [places.get(id), items.get(id)];
      return entry && item
        ? [{ entry, excerpt: excerptOf(item.text ?? item.outcome ?? item.purpose ?? '', query) }]
        : [];
    });
    editions.push({
      edition,
      hits,
      total: found.total,
      matched: found.matched,
      ...(below.length > 0 ? { below: names[0]! } : {}),
    });
  }

  const wrong = meanings.length > 0 ? undefined : names.find(isMistypedId);
  const answer = { query, cut, meanings: meanings.slice(0, MOST_MEANINGS), editions, later };
  const numbers = [...names, pointedNumber(query) ?? ''].filter(n => looksLikeNumber(foldText(n)));
  const nothing = meanings.length === 0 && editions.every(e => e.total === 0 || e.matched !== 'all');
  return {
    ...answer,
    ...(wrong === undefined ? {} : { mistyped: { id: wrong, meant: await idsNear(published, wrong) } }),
    nearest: nothing && numbers.length > 0 ? await nearestNumbers(published, [...names, ...numbers]) : [],
  };
}

/** What was typed, with points where only these make it a number that an edition prints, or begins one with. */
export async function asPrinted(published: PublishedCatalog, typed: string): Promise<string> {
  const pointed = pointedNumber(typed);
  if (pointed === undefined) return typed;
  const editions = await Promise.all(published.headers.map(h => published.edition(h.name)));
  const printed = (number: string) =>
    editions.some(e => foldedOf(e).some(line => line.number === number || isBelow(line.number, number)));
  return !printed(foldText(typed)) && printed(foldText(pointed)) ? pointed : typed;
}

async function meaningsOf(published: PublishedCatalog, editions: readonly string[], names: readonly string[]) {
  const meanings: Meaning[] = [];
  for (const edition of [...editions].reverse()) {
    const { names: known } = await published.edition(edition);
    for (const name of names) {
      for (const entry of known.named(name)) {
        // An id lives in several editions and means one thing: its newest edition speaks for it.
        if (entry.id === name && meanings.some(m => m.entry.id === name)) continue;
        meanings.push({ name, edition, entry, trace: await published.trace(edition, entry) });
      }
    }
  }
  return meanings;
}

const isBelow = (number: string, beginning: string) =>
  number.length > beginning.length && number.startsWith(beginning) && /[.:_/-]/.test(number[beginning.length]!);

async function idsNear(published: PublishedCatalog, wrong: string): Promise<ItemId[]> {
  const ids = new Set<ItemId>();
  for (const { name } of published.headers) {
    for (const id of idsOneSlipAway(
      wrong,
      (await published.edition(name)).entries.map(e => e.id),
    ))
      ids.add(id);
  }
  return [...ids].slice(0, 3);
}

/** The numbers nearest to one that none of these editions (or no edition at all) has. */
export async function nearestNumbers(published: PublishedCatalog, names: readonly string[], edition?: string) {
  const numbers = new Set<string>();
  for (const header of published.headers) {
    if (edition !== undefined && header.name !== edition) continue;
    for (const number of (await published.edition(header.name)).names.numbers) numbers.add(number);
  }
  return [...new Set(names.flatMap(name => nearestNames(name, numbers)))].slice(0, 5);
}

/** Throws UnknownNumber where no item of the edition has this number; says what is near it. */
export async function entriesAt(published: PublishedCatalog, edition: string, number: string) {
  const { names, header } = await published.edition(edition);
  const found = names.named(number);
  if (found.length > 0) return found;
  const nearest = await nearestNumbers(published, [number], header.name);
  throw new CatalogError(
    'UnknownNumber',
    `Edition ${edition} has no number ${number}${nearest.length > 0 ? `; the nearest are ${nearest.join(', ')}.` : '.'}`,
    { number, edition, nearest },
  );
}

const EXCERPT = 160;

function excerptOf(text: string, query: string): string {
  const folded = foldText(text);
  const stems = query
    .split(/\s+/)
    .map(w => foldText(w).slice(0, 5))
    .filter(w => w.length > 3);
  const at = Math.max(0, Math.min(...stems.map(s => folded.indexOf(s)).filter(i => i >= 0), text.length));
  if (at === text.length || at < EXCERPT - 40) return cutAtWord(text, 0);
  return `… ${cutAtWord(text, text.lastIndexOf(' ', at - 40) + 1)}`;
}

function cutAtWord(text: string, start: number): string {
  if (text.length - start <= EXCERPT) return text.slice(start);
  return `${text.slice(start, text.lastIndexOf(' ', start + EXCERPT))} …`;
}
