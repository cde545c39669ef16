import { searchEditions } from '../../commands/finding/search-editions.ts';
import { suggestItems } from '../../commands/finding/suggest-items.ts';
import type { PublishedCatalog } from '../../commands/reading/published-catalog.ts';
import { isMintedId } from '../../model/ids.ts';
import { itemLink, placeLink } from '../links.ts';
import { type Answer, answerOf } from './answer.ts';

/** What the look-up box offers while somebody types: each in two lines, what is meant and what became of it. */
export interface Suggestions {
  readonly suggestions: readonly Suggestion[];
  /** Told where nothing can be offered: an id with a wrong character, or that nothing begins so. */
  readonly note: string;
}

export interface Suggestion {
  readonly edition: string;
  readonly number: string;
  readonly title: string;
  readonly became: string;
  readonly href: string;
}

const MOST = 8;

export async function suggestionsFor(published: PublishedCatalog, typed: string): Promise<Suggestions> {
  if (typed === '') return { suggestions: [], note: '' };
  const mistyped = await idMeantBy(published, typed);
  if (mistyped) return mistyped;
  const found = await suggestItems(published, typed, MOST);
  const suggestions = await Promise.all(
    found.map(async ({ edition, entry }) => {
      const shared = (await published.edition(edition)).places.withNumber(entry.number).length > 1;
      const answer = await answerOf(published, await published.trace(edition, entry));
      const { number, title } = entry;
      return { edition, number, title, became: becameOf(answer), href: placeLink(edition, entry, shared) };
    }),
  );
  return { suggestions, note: found.length === 0 ? 'No number, id or title begins so. Enter looks in the texts.' : '' };
}

/** An id's last character checks the others, so that a slip is said rather than answered with nothing. */
async function idMeantBy(published: PublishedCatalog, typed: string): Promise<Suggestions | undefined> {
  if (!/^(?=.*\d)(?=.*[a-z])[0-9a-z]{8}$/i.test(typed) || isMintedId(typed.toLowerCase())) return undefined;
  const { mistyped } = await searchEditions(published, { query: typed, most: 1 });
  if (!mistyped) return undefined;
  const suggestions = [];
  for (const id of mistyped.meant) {
    for (const { name } of [...published.headers].reverse()) {
      const entry = (await published.edition(name)).places.get(id);
      if (!entry) continue;
      const answer = await answerOf(published, await published.trace(name, entry));
      suggestions.push({
        edition: name,
        number: id,
        title: `${entry.number} ${entry.title}`.trim(),
        became: becameOf(answer),
        href: itemLink(id),
      });
      break;
    }
  }
  const perhaps = suggestions.length > 0 ? ' Perhaps one of these.' : '';
  return {
    suggestions,
    note: `One character of ${mistyped.id} is wrong: its check character does not agree.${perhaps}`,
  };
}

/** One line: what became of it and, where that is short, what changed; else the first sentence about that. */
function becameOf({ became, second }: Answer): string {
  const told = second.length < 90 ? second : second.slice(0, second.indexOf('. ') + 1);
  return told !== '' && told.length < 90 ? `${became} ${told}` : became;
}
