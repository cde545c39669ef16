import type { Passage } from '../model/document.ts';
import type { CitedBook } from './cited-book.ts';
import { plainDashes } from './plain-dashes.ts';
import { sameTitle } from './titles.ts';

const NUMBERED = /^[\s#*_>|-]*(\d+(?:\.\d+)+|[A-Z](?:[.-]\d+)+)[.):]?\s+(\p{L}.*)$/su;

/**
 * The numbers that a document gives to its own headings: "## 3.2.1 Laying the pipe". They look like the catalog's and
 * mean the document itself, unless the heading bears the title of the item with that number.
 */
export function ownNumbers(book: CitedBook, passages: readonly Passage[]): ReadonlySet<string> {
  const own = new Set<string>();
  let titled = 0;
  for (const passage of passages) {
    if (passage.heading === undefined || !isHeading(passage)) continue;
    const found = NUMBERED.exec(plainDashes(passage.text).text.trim());
    if (!found) continue;
    const items = book.places.withNumber(found[1]!);
    if (items.some(item => sameTitle(item.title, found[2]!))) titled++;
    else own.add(found[1]!);
  }
  // One such heading may be a lesson on that item under a title of its own.
  return own.size >= 2 && own.size > titled ? own : new Set();
}

function isHeading(passage: Passage): boolean {
  const bare = (text: string) =>
    text
      .replace(/\u00ad|^#+|#+\s*$/g, '')
      .replace(/\s+/g, ' ')
      .trim();
  return passage.heading !== undefined && bare(passage.text) === bare(passage.heading);
}
