import type { PublishedCatalog } from '../commands/published-catalog.ts';
import { searchEditions } from '../commands/search-editions.ts';
import { type Answer, answerOf } from './answer.ts';
import { itemLink, placeLink, searchLink } from './links.ts';
import { counted } from './words.ts';

export interface SearchPage {
  readonly query: string;
  readonly sentence: string;
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

export async function searchPage(published: PublishedCatalog, query: string): Promise<SearchPage> {
  const found = await searchEditions(published, { query, most: SHOWN });
  const answers = await Promise.all(found.meanings.map(m => answerOf(published, m.trace)));
  const editions = found.editions
    .filter(e => e.total > 0)
    .map(({ edition, hits, total, matched }) => ({
      edition,
      heading: `${edition}: ${counted(total, 'item')}${{ all: '', some: ', none with all the words', alike: ', by words spelt alike' }[matched]}${total > hits.length ? `, the first ${hits.length}` : ''}`,
      hits: hits.map(({ entry, excerpt }) => ({
        word: entry.number,
        title: entry.title,
        excerpt,
        href: placeLink(edition, entry),
      })),
    }));
  return {
    query: found.query,
    sentence: sentenceOf(found.query, found.cut, answers, editions.length > 0),
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
