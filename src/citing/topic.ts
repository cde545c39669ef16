import { stemmer } from 'stemmer';
import type { Entry } from '../model/edition.ts';
import { words } from '../text/words.ts';
import type { CitedBook } from './cited-book.ts';

/** What an edition is about, by the words of its titles and texts. */
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
  /** The same by the words of its title and its own text. */
  nearnessOfText(numbers: readonly string[]): number;
  /**
   * Of what the text says in the edition's words, the share that the item says too, 0 to 1, rare words counting more;
   * undefined where it says hardly anything in them.
   */
  agreement(numbers: readonly string[]): number | undefined;
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

/** So many words of the edition a text has to say before it can be held against an item that it says none of its own. */
const SAID = 3;

function indexTopic({ edition, places, textOf }: CitedBook): Topic {
  const { entries } = edition;
  const titles = indexStems(entries, entry => [entry, ...places.ancestors(entry.id)].map(e => e.title));
  const texts = indexStems(entries, entry => [entry.title, textOf(entry.id) ?? '']);
  const bearersOf = (numbers: readonly string[]) => numbers.flatMap(n => places.withNumber(n));
  return {
    of: text => {
      const stems = stemsOf(text);
      const byTitle = titles.scores(stems);
      const byText = texts.scores(stems);
      const known = [...stems].filter(texts.knows);
      return {
        share: stems.size === 0 ? 0 : [...stems].filter(titles.knows).length / stems.size,
        nearness: numbers => nearest(byTitle, bearersOf(numbers), entries.length),
        nearnessOfText: numbers => nearest(byText, bearersOf(numbers), entries.length),
        agreement: numbers => {
          if (known.length < SAID) return undefined;
          const all = known.reduce((sum, stem) => sum + texts.rareness(stem), 0);
          return Math.max(0, ...bearersOf(numbers).map(e => (byText.get(e) ?? 0) / all));
        },
      };
    },
    names: (word, numbers) => [...stemsOf(word)].some(stem => bearersOf(numbers).some(e => titles.has(stem, e))),
  };
}

/** Which entries say a word, and how rare it is among them. */
function indexStems(entries: readonly Entry[], said: (entry: Entry) => readonly string[]) {
  const bearers = new Map<string, Set<Entry>>();
  for (const entry of entries) {
    for (const stem of new Set(said(entry).flatMap(text => [...stemsOf(text)]))) {
      const with_ = bearers.get(stem);
      if (with_) with_.add(entry);
      else bearers.set(stem, new Set([entry]));
    }
  }
  const rareness = (stem: string) => Math.log(1 + entries.length / bearers.get(stem)!.size);
  return {
    knows: (stem: string) => bearers.has(stem),
    has: (stem: string, entry: Entry) => bearers.get(stem)?.has(entry) ?? false,
    rareness,
    scores: (stems: Iterable<string>): ReadonlyMap<Entry, number> => {
      const scores = new Map<Entry, number>();
      for (const stem of stems) {
        for (const entry of bearers.get(stem) ?? []) scores.set(entry, (scores.get(entry) ?? 0) + rareness(stem));
      }
      return scores;
    },
  };
}

function nearest(scores: ReadonlyMap<Entry, number>, entries: readonly Entry[], size: number): number {
  const own = Math.max(0, ...entries.map(e => scores.get(e) ?? 0));
  if (own === 0) return 0;
  let nearer = 0;
  for (const score of scores.values()) nearer += score > own ? 1 : score === own ? 0.5 : 0;
  return size < 2 ? 1 : Math.max(0, 1 - Math.log(0.5 + nearer) / Math.log(size));
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
    stems.add(/^[a-z]+$/.test(word) ? stemOf(word) : word);
  }
  return stems;
}

const stemsKnown = new Map<string, string>();

/** Stemming takes longer than looking up, and texts say the same words again and again. */
function stemOf(word: string): string {
  const known = stemsKnown.get(word) ?? stemmer(word);
  stemsKnown.set(word, known);
  return known;
}
