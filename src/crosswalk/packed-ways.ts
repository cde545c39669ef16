import type { Link, Marks } from '../model/crosswalk.ts';
import type { EditionIndex } from '../model/edition.ts';
import type { ItemId } from '../model/item.ts';
import { type Joint, joinEditions } from './joint.ts';
import { isPair, type PairLink } from './pair-link.ts';

/** Two editions joined, with what changed along each link. */
export interface Way {
  readonly joint: Joint;
  readonly marks: (link: PairLink) => Marks;
}

/** All ways into one edition as plain data: what a page needs to carry files without a catalog. */
export interface PackedWays {
  readonly to: EditionIndex;
  /** Names of all editions that a text may cite. */
  readonly editions: readonly string[];
  /** From the nearest edition to the oldest. */
  readonly ways: readonly PackedWay[];
  readonly texts: PackedTexts;
}

export interface PackedWay {
  readonly from: EditionIndex;
  readonly links: readonly Link[];
  /** What changed along each link, in their order; null for withdrawals and arrivals. Worked out already, since telling a duty takes texts and a language model of megabytes. */
  readonly marks: readonly (Marks | null)[];
}

/** What the editions say, by which a lesson is searched for what is no longer asked. Pairs, since an id may be `__proto__`. */
export interface PackedTexts {
  readonly to: readonly (readonly [ItemId, string])[];
  /** In the order of the ways. */
  readonly from: readonly {
    readonly said: readonly (readonly [ItemId, string])[];
    /** Stretches of the old text with the words that took their place. */
    readonly changed: readonly (readonly [
      ItemId,
      readonly { readonly start: number; readonly end: number; readonly to: string }[],
    ])[];
  }[];
}

/** @param ways into the same edition, the nearest first; at least one */
export function packWays(ways: readonly Way[], editions: readonly string[], texts: PackedTexts): PackedWays {
  const packed = ways.map(({ joint, marks }): PackedWay => {
    const { links } = joint.crosswalk;
    return { from: joint.from, links, marks: links.map(link => (isPair(link) ? marks(link) : null)) };
  });
  return { to: ways[0]!.joint.to, editions, ways: packed, texts };
}

/** The ways again, by the name of the edition that they come from. Law: `openWays(packWays(w))` answers as `w` does. */
export function openWays({ to, ways }: PackedWays): ReadonlyMap<string, Way> {
  return new Map(
    ways.map(({ from, links, marks }) => {
      const joint = joinEditions(from, to, { from: from.header.name, to: to.header.name, links });
      const known = new Map(links.map((link, at) => [link, marks[at]]));
      return [from.header.name, { joint, marks: link => known.get(link)! }] as const;
    }),
  );
}
