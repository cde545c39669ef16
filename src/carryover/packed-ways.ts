import { joinEditions } from '../crosswalk/joint.ts';
import { isPair } from '../crosswalk/pair-link.ts';
import type { Link, Marks } from '../model/crosswalk.ts';
import type { EditionIndex } from '../model/edition.ts';
import type { Way } from './job-reader.ts';

/** All ways into one edition as plain data: what a page needs to carry files without a catalog. No text is in it. */
export interface PackedWays {
  readonly to: EditionIndex;
  /** Names of all editions that a text may cite. */
  readonly editions: readonly string[];
  /** From the nearest edition to the oldest. */
  readonly ways: readonly PackedWay[];
}

export interface PackedWay {
  readonly from: EditionIndex;
  readonly links: readonly Link[];
  /** What changed along each link, in their order; null for withdrawals and arrivals. Worked out already, since telling a duty takes texts and a language model of megabytes. */
  readonly marks: readonly (Marks | null)[];
}

/** @param ways into the same edition, the nearest first; at least one */
export function packWays(ways: readonly Way[], editions: readonly string[]): PackedWays {
  const packed = ways.map(({ joint, marks }): PackedWay => {
    const { links } = joint.crosswalk;
    return { from: joint.from, links, marks: links.map(link => (isPair(link) ? marks(link) : null)) };
  });
  return { to: ways[0]!.joint.to, editions, ways: packed };
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
