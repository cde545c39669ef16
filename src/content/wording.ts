import type { Wording } from '../model/crosswalk.ts';
import type { ItemContent } from '../model/item.ts';
import { words } from '../text/words.ts';
import { fieldChanges } from './changes.ts';

/**
 * Whether two items say the same: letter for letter, but for capitals, punctuation, hyphens and spaces (editorial), or
 * not (substantive). In doubt substantive: a changed word, digit, unit or list order is never called editorial.
 */
export function compareWording(from: ItemContent, to: ItemContent): Wording {
  // Where an item applies and when it is verified have marks or rows of their own; here only words count.
  const changes = fieldChanges(from, to).filter(c => c.field !== 'appliesTo');
  if (changes.length === 0) return 'same';
  return changes.every(c => foldedWords(c.from) === foldedWords(c.to)) ? 'editorial' : 'substantive';
}

/** All strings inside a value, in order, as folded words. */
function foldedWords(value: unknown): string {
  if (typeof value === 'string') return words(value).join(' ');
  if (typeof value !== 'object' || value === null) return '';
  return Object.values(value).map(foldedWords).join(' | ');
}
