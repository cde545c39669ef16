import type { PublishedCatalog } from '../../commands/reading/published-catalog.ts';
import type { Entry } from '../../model/edition.ts';
import { itemLink } from '../links.ts';
import { editionLine } from '../site.ts';
import { type Answer, answerOf } from './answer.ts';

/** A number that several items of one edition share: all are shown, none is chosen. */
export interface NumberPage {
  readonly edition: string;
  readonly editionLine: string;
  readonly number: string;
  readonly answers: readonly Answer[];
}

export async function numberPage(
  published: PublishedCatalog,
  name: string,
  number: string,
  entries: readonly Entry[],
): Promise<NumberPage> {
  const edition = await published.edition(name);
  const answers = await Promise.all(
    entries.slice(0, 50).map(async entry => ({
      ...(await answerOf(published, await published.trace(name, entry))),
      href: itemLink(entry.id, name),
    })),
  );
  return { edition: edition.header.name, editionLine: editionLine(edition), number, answers };
}
