import type { PairLink } from '../content/links/marks.ts';
import { type Step, traceItem } from '../content/links/trace.ts';
import type { Joint } from '../crosswalk/joint.ts';
import type { PackedWays } from '../crosswalk/packed-ways.ts';
import type { Statistics } from '../crosswalk/statistics.ts';
import type { Decision, Marks } from '../model/crosswalk.ts';
import type { EditionIndex, Entry } from '../model/edition.ts';
import type { Finding } from '../model/finding.ts';
import type { Item, ItemId } from '../model/item.ts';
import { type Places, placesOf } from '../model/places.ts';
import type { SavedIndex } from '../search/index-edition.ts';

/** An edition on the way to the one that is published. */
export interface EditionOfLine {
  readonly index: EditionIndex;
  readonly places: Places<Entry>;
  /** From the edition before into this one; absent for the first. */
  readonly step?: Step;
  /** From this edition to the published one, over all between; absent for the published one. */
  readonly direct?: Step;
}

/** Everything that a bundle is written from: an edition, the one that it is compared with, and all that led to it. */
export interface Publication {
  readonly joint: Joint;
  readonly marks: (link: PairLink) => Marks;
  readonly statistics: Statistics;
  readonly findings: readonly Finding[];
  readonly decisions: readonly Decision[];
  readonly oldItems: ReadonlyMap<ItemId, Item>;
  readonly newItems: ReadonlyMap<ItemId, Item>;
  /** All editions up to the published one, oldest first. */
  readonly line: readonly EditionOfLine[];
  /** Of the published edition; absent where no site is asked for. */
  readonly searchIndex?: SavedIndex;
  /** What a page needs to carry files; absent where the site has no such page. */
  readonly carry?: PackedWays;
  /** The address below which data for machines name the catalog's items, with its last slash; absent: NO_ADDRESS. */
  readonly base?: string;
}

export function editionOfLine(index: EditionIndex, step?: Step, direct?: Step): EditionOfLine {
  return {
    index,
    places: placesOf(index.settings, index.entries),
    ...(step ? { step } : {}),
    ...(direct ? { direct } : {}),
  };
}

/** The life of an item from one edition of the line on, to the published one. */
export function traceInLine(line: readonly EditionOfLine[], at: number, entry: Entry) {
  const steps = line.slice(at + 1).map(e => e.step!);
  return traceItem(line[at]!.index.header.name, entry, steps, line[at]!.step);
}
