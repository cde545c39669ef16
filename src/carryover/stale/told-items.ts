import { plainDashes } from '../../citing/plain-dashes.ts';
import type { Passage } from '../../model/document.ts';
import type { ItemId } from '../../model/item.ts';
import { lightReading } from './light-reading.ts';
import { tellsHistory } from './stale-history.ts';
import { type SayingItem, taughtFinder } from './taught.ts';

/** A requirement that a passage tells without its number. */
export interface ToldItem {
  readonly id: ItemId;
  readonly passage: Passage;
  /** The sentence that tells it. */
  readonly text: string;
}

/** A sentence that shares less with a requirement speaks of the same things without teaching it. */
const TEACHES = { told: 0.45, covered: 0.45, shared: 3 };
/** Texts in which a word more or less is shared are twins, and the passage teaches them all. */
const TWIN = 0.98;

/**
 * What a document teaches in words alone, sentence by sentence. Of several requirements that a sentence tells only the
 * best counts, with its twins.
 *
 * @param others names of further editions that a sentence may tell of
 * @param prints whether the edition prints a number
 */
export function toldFinder(
  items: Iterable<SayingItem>,
  edition: string,
  others: readonly string[],
  prints: (number: string) => boolean,
): (passages: readonly Passage[]) => readonly ToldItem[] {
  const taught = taughtFinder(items);
  return passages =>
    passages.flatMap(passage => {
      const reading = lightReading(plainDashes(passage.text).text);
      return reading.sentences.flatMap(sentence => {
        const [first, last] = [reading.tokens[sentence.first]!, reading.tokens[sentence.next - 1]!];
        const text = reading.text.slice(first.start, last.end).replace(/\s+/g, ' ');
        const tokens = reading.tokens.slice(sentence.first, sentence.next);
        // A sentence that cites a requirement tells that one, not another one that is worded alike.
        if (tokens.some(t => t.kind === 'number' && t.low.includes('.') && prints(t.low))) return [];
        if (tellsHistory(text, edition, others)) return [];
        const [best, ...rest] = taught(reading, sentence);
        if (!best || best.told < TEACHES.told || best.covered < TEACHES.covered || best.shared < TEACHES.shared) {
          return [];
        }
        return [best, ...rest.filter(t => t.score >= TWIN * best.score)].map(({ id }) => ({ id, passage, text }));
      });
    });
}
