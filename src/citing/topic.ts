import { stemmer } from 'stemmer';
import type { Entry } from '../model/edition.ts';
import { words } from '../text/words.ts';
import type { CitedBook } from './cited-book.ts';

/** What an edition is about, by the words of its titles. */
export interface Topic {
  of(text: string): TopicOfText;
  /** Whether a word stands in the title of one of these numbers' items, or above. */
  names(word: string, numbers: readonly string[]): boolean;
}

/** How much a text talks of what an edition is about. */
export interface TopicOfText {
  /**
   * How near an item stands to the text among all items of the edition, by the words of its title and of those above it:
   * 1 nearest of all, 0 no word in common. On the scale of log ranks, so that large editions are no harder.
   */
  nearness(numbers: readonly string[]): number;
  /** The share of the text's own words that stand in titles of the edition, 0 to 1. */
  readonly share: number;
}

const known = new WeakMap<CitedBook, Topic>();

/** What an edition is about, indexed once. */
export function topicOf(book: CitedBook): Topic {
  const topic = known.get(book) ?? indexTopic(book);
  known.set(book, topic);
  return topic;
}

function indexTopic({ edition, places }: CitedBook): Topic {
  const bearers = new Map<string, Set<Entry>>();
  for (const entry of edition.entries) {
    for (const { title } of [entry, ...places.ancestors(entry.id)]) {
      for (const stem of stemsOf(title)) {
        const with_ = bearers.get(stem);
        if (with_) with_.add(entry);
        else bearers.set(stem, new Set([entry]));
      }
    }
  }
  const size = edition.entries.length;
  const rareness = (stem: string) => Math.log(1 + size / bearers.get(stem)!.size);
  return {
    of: text => {
      const stems = stemsOf(text);
      const shared = [...stems].filter(s => bearers.has(s));
      const scores = new Map<Entry, number>();
      for (const stem of shared) {
        for (const entry of bearers.get(stem)!) scores.set(entry, (scores.get(entry) ?? 0) + rareness(stem));
      }
      return {
        share: stems.size === 0 ? 0 : shared.length / stems.size,
        nearness: numbers => {
          const own = Math.max(0, ...numbers.flatMap(n => places.withNumber(n).map(e => scores.get(e) ?? 0)));
          if (own === 0) return 0;
          let nearer = 0;
          for (const score of scores.values()) nearer += score > own ? 1 : score === own ? 0.5 : 0;
          return size < 2 ? 1 : Math.max(0, 1 - Math.log(0.5 + nearer) / Math.log(size));
        },
      };
    },
    names: (word, numbers) =>
      [...stemsOf(word)].some(stem => numbers.some(n => places.withNumber(n).some(e => bearers.get(stem)?.has(e)))),
  };
}

const EMPTY = new Set(
  `a an the of to in on at by for from with without into over under and or nor but as is are was were be been being it its this
  that these those there their them they he she his her we us our you your i me my who which what when where why how if then than
  so such each any all every other same own shall should must may can will would could not no do does did done has have had
  also only both either more most less least up out off about between through during before after until above below again
  further once here very per via see`
    .split(/\s+/)
    .filter(Boolean),
);

function stemsOf(text: string): ReadonlySet<string> {
  const stems = new Set<string>();
  for (const word of words(text)) {
    if (word.length < 3 || !/^\p{L}/u.test(word) || EMPTY.has(word)) continue;
    stems.add(/^[a-z]+$/.test(word) ? stemmer(word) : word);
  }
  return stems;
}
