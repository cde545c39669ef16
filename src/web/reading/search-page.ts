import { searchEditions } from '../../commands/finding/search-editions.ts';
import type { PublishedCatalog } from '../../commands/reading/published-catalog.ts';
import { counted } from '../../model/said-words.ts';
import { itemLink, placeLink, searchLink } from '../links.ts';
import { type Answer, answerOf } from './answer.ts';

export interface SearchPage {
  readonly query: string;
  readonly sentence: string;
  /** What cannot be looked up yet; empty where all can. */
  readonly later: string;
  readonly answers: readonly Answer[];
  readonly mistyped?: { readonly id: string; readonly meant: readonly Named[] };
  readonly nearest: readonly Named[];
  readonly editions: readonly {
    readonly edition: string;
    readonly heading: string;
    readonly hits: readonly (Named & { readonly title: string; readonly excerpt: string })[];
  }[];
}

interface Named {
  readonly word: string;
  readonly href: string;
}

const SHOWN = 20;
const LATER =
  'The search of words is still being prepared, which takes a minute or two after the viewer was started or an edition was published. Numbers and ids can be looked up now. Load this page again later.';

export async function searchPage(published: PublishedCatalog, query: string): Promise<SearchPage> {
  const found = await searchEditions(published, { query, most: SHOWN });
  const answers = await Promise.all(found.meanings.map(m => answerOf(published, m.trace)));
  // What is answered above is not listed once more below.
  const answered = new Set(found.meanings.map(m => JSON.stringify([m.edition, m.entry.id])));
  const editions = found.editions.flatMap(({ edition, hits, total, matched, below }) => {
    const rest = hits.filter(({ entry }) => !answered.has(JSON.stringify([edition, entry.id])));
    if (rest.length === 0) return [];
    const how = { all: '', some: ', none with all the words', alike: ', by words spelt alike' }[matched];
    const what = below === undefined ? edition : `Below ${below} in ${edition}`;
    return {
      edition,
      heading: `${what}: ${counted(total - hits.length + rest.length, 'item')}${how}${total > hits.length ? `, the first ${rest.length}` : ''}`,
      hits: rest.map(({ entry, excerpt }) => ({
        word: entry.number,
        title: entry.title,
        excerpt,
        href: placeLink(edition, entry),
      })),
    };
  });
  return {
    query: found.query,
    sentence:
      found.later && answers.length + editions.length === 0
        ? `“${found.query}” cannot be looked for in the texts yet.`
        : sentenceOf(found.query, found.cut, answers, editions.length > 0),
    later: found.later ? LATER : '',
    answers,
    editions,
    ...(found.mistyped
      ? {
          mistyped: {
            id: found.mistyped.id,
            meant: found.mistyped.meant.map(id => ({ word: id, href: itemLink(id) })),
          },
        }
      : {}),
    nearest: found.nearest.map(number => ({ word: number, href: searchLink(number) })),
  };
}

function sentenceOf(query: string, cut: boolean, answers: readonly Answer[], found: boolean): string {
  if (query === '') return 'Type words, a number of any edition, or an id.';
  const searched = cut ? ` Only the first ${query.length} characters were looked for.` : '';
  if (answers.length === 1) return answers[0]!.headline + searched;
  if (answers.length > 1) {
    return `${query} has ${answers.length} meanings. Which one is meant depends on the edition that is cited.${searched}`;
  }
  return (found ? `Items that fit “${query}”, newest edition first.` : `Nothing fits “${query}”.`) + searched;
}
