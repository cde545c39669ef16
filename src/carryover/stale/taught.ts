import type { Stretch } from '../../content/reading/sentences.ts';
import type { ItemId } from '../../model/item.ts';
import { type LightReading, lightReading, quantitiesIn, sizesOf, stemsIn } from './light-reading.ts';

/** An item with what it says. */
export interface SayingItem {
  readonly id: ItemId;
  readonly title: string;
  readonly reading: LightReading;
}

/** A sentence of an item that a passage tells in its own words. */
export interface Teaching {
  readonly id: ItemId;
  /** How much of the item's sentence the passage tells, rare words counting more: 0 to 1. */
  readonly told: number;
  /** How much of what the passage says is the item's, its title included: 0 to 1. */
  readonly covered: number;
  /** Their geometric mean, by which teachings are ordered. */
  readonly score: number;
  /** Words in common, names left out: whoever names the same code twice has not said the same. */
  readonly shared: number;
  /** Sizes of values in common; see sizesOf. */
  readonly sizes: ReadonlySet<string>;
}

/** What a stretch of a passage teaches, the best first. */
export type TaughtBy = (passage: LightReading, stretch: Stretch) => readonly Teaching[];

interface Unit {
  readonly id: ItemId;
  readonly stems: ReadonlySet<string>;
  readonly title: ReadonlySet<string>;
  readonly sizes: ReadonlySet<string>;
  weight: number;
}

/** A value in common says as much as a rather rare word. */
const VALUE = 3;
/** Words in more sentences than this do not bring up candidates: they would bring up the whole edition. */
const COMMON = 60;
const LEAST_SHARED = 2;
const LEAST_TOLD = 0.25;

/**
 * Finds the items whose sentences a passage tells without citing them. A passage is compared with sentences, not with
 * whole items: a lesson tells one thing at a time. Time grows with the passage, not with passage times edition.
 */
export function taughtFinder(items: Iterable<SayingItem>): TaughtBy {
  const units: Unit[] = [];
  const postings = new Map<string, number[]>();
  for (const { id, title, reading } of items) {
    const named = new Set(lightReading(title).stems.filter(Boolean));
    for (const sentence of reading.sentences) {
      const stems = stemsIn(reading, sentence);
      if (stems.size === 0) continue;
      const sizes = new Set(quantitiesIn(reading, sentence).flatMap(q => sizesOf(reading, q)));
      for (const stem of stems) {
        const known = postings.get(stem);
        if (known) known.push(units.length);
        else postings.set(stem, [units.length]);
      }
      units.push({ id, stems, title: named, sizes, weight: 0 });
    }
  }
  const rarity = new Map([...postings].map(([stem, { length }]) => [stem, Math.log(1 + units.length / length)]));
  const weigh = (stems: Iterable<string>) => {
    let sum = 0;
    for (const stem of stems) sum += rarity.get(stem) ?? 0;
    return sum;
  };
  for (const unit of units) unit.weight = weigh(unit.stems) + VALUE * unit.sizes.size;

  return (passage, stretch) => {
    const said = stemsIn(passage, stretch);
    const sizes = new Set(quantitiesIn(passage, stretch).flatMap(q => sizesOf(passage, q)));
    const names = namesIn(passage, stretch);
    const weight = weigh(said) + VALUE * sizes.size;
    const hits = new Map<number, number>();
    for (const stem of said) {
      const found = postings.get(stem);
      if (found && found.length <= COMMON) for (const at of found) hits.set(at, (hits.get(at) ?? 0) + 1);
    }
    const best = new Map<ItemId, Teaching>();
    for (const at of hits.keys()) {
      const unit = units[at]!;
      const shared = [...said].filter(stem => unit.stems.has(stem));
      const named = [...said].filter(stem => unit.title.has(stem) && !unit.stems.has(stem));
      const values = new Set([...sizes].filter(size => unit.sizes.has(size)));
      const common = weigh(shared) + VALUE * values.size;
      const told = common / unit.weight;
      const words = shared.filter(stem => !names.has(stem)).length;
      if (words < LEAST_SHARED || told < LEAST_TOLD) continue;
      const covered = Math.min(1, (common + weigh(named)) / weight);
      const score = Math.sqrt(told * covered);
      if ((best.get(unit.id)?.score ?? 0) >= score) continue;
      best.set(unit.id, { id: unit.id, told, covered, score, shared: words, sizes: values });
    }
    return [...best.values()].sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));
  };
}

/** What stands with a capital in the middle of a sentence, and never without. */
function namesIn({ tokens, stems }: LightReading, { first, next }: Stretch): ReadonlySet<string> {
  const isName = (at: number) => at > first && /^\p{Lu}/u.test(tokens[at]!.text);
  const places = Array.from({ length: next - first }, (_, n) => first + n).filter(at => stems[at] !== '');
  const plain = new Set(places.filter(at => !isName(at)).map(at => stems[at]!));
  return new Set(places.map(at => stems[at]!).filter(stem => !plain.has(stem)));
}
