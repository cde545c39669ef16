import type { Wording } from '../../model/crosswalk.ts';
import type { ItemContent } from '../../model/item.ts';
import { words } from '../../text/words.ts';
import { fieldChanges } from './changes.ts';
import { wordingOfTexts } from './edited.ts';

/**
 * Whether two items say the same: letter for letter, but for how it is written (editorial: capitals, punctuation,
 * hyphens, spelling, digits for number words, order of a list, passive), or not (substantive). In doubt substantive.
 */
export function compareWording(from: ItemContent, to: ItemContent): Wording {
  // Where an item applies and when it is verified have marks or rows of their own; here only words count.
  const changes = fieldChanges(from, to).filter(c => c.field !== 'appliesTo');
  if (changes.length === 0) return 'same';
  const edited = changes.every(
    ({ from: a, to: b }) =>
      foldedWords(a) === foldedWords(b) ||
      (typeof a === 'string' && typeof b === 'string' && wordingOfTexts(a, b) !== 'substantive'),
  );
  return edited ? 'editorial' : 'substantive';
}

/** All strings inside a value, in order, as folded words. */
function foldedWords(value: unknown): string {
  if (typeof value === 'string') return words(value).join(' ');
  if (typeof value !== 'object' || value === null) return '';
  return Object.values(value).map(foldedWords).join(' | ');
}
