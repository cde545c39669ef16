import type { Joint } from '../../crosswalk/joint.ts';
import type { Fate, Link, Marks } from '../../model/crosswalk.ts';
import type { Entry } from '../../model/edition.ts';
import type { ItemId, TypeId } from '../../model/item.ts';
import type { Settings, WithdrawalReason } from '../../model/settings.ts';
import { isPair, type PairLink } from './marks.ts';

/** One step between two editions, with a way to read its marks. */
export interface Step {
  readonly joint: Joint;
  readonly marks: (link: PairLink) => Marks;
}

export interface Heir {
  readonly entry: Entry;
  readonly link: PairLink;
  readonly marks: Marks;
  readonly types: readonly TypeId[];
}

export interface HopEnding {
  readonly link: Link;
  readonly pointsTo?: Entry;
}

/** What became of one item from one edition to the next. */
export interface Hop {
  readonly from: string;
  readonly to: string;
  /** Of the older edition. */
  readonly settings: Settings;
  /** Of both editions, the newer one's first. */
  readonly reasons: readonly WithdrawalReason[];
  readonly entry: Entry;
  readonly types: readonly TypeId[];
  readonly fate: Fate;
  readonly heirs: readonly Heir[];
  /** Other old items that share an heir with this one. */
  readonly together: readonly Entry[];
  /** The ends of it, each for all types or for some, with a reason of its own. */
  readonly endings: readonly HopEnding[];
  /** Where the first that points somewhere points to. */
  readonly pointsTo?: Entry;
}

/** The life of an item from one edition on. */
export interface Trace {
  readonly edition: string;
  /** The edition is a draft: nothing of it is published. */
  readonly draft?: true;
  readonly entry: Entry;
  readonly hops: readonly Hop[];
  /** The edition that the trace ends in. */
  readonly lastEdition: string;
  /** What stands in its place there; empty where nothing does. */
  readonly now: readonly Entry[];
  /** Links that brought the item into its edition, from the edition before; absent for the first edition. */
  readonly origin?: { readonly from: string; readonly sources: readonly Entry[] };
}

/**
 * Follows an item hop by hop, each step by its own links: a composed crosswalk would hide where on the way it was
 * merged, split or lost. With a type, only heirs that apply to it are followed.
 *
 * @param steps all steps from the item's edition on, oldest first
 * @param before the step into the item's edition
 */
export function traceItem(edition: string, entry: Entry, steps: readonly Step[], before?: Step, type?: TypeId): Trace {
  const hops: Hop[] = [];
  let now: Entry[] = [entry];
  for (const step of steps) {
    const next = new Map<ItemId, Entry>();
    for (const item of now) {
      const hop = hopOf(step, item, type);
      hops.push(hop);
      for (const heir of hop.heirs) next.set(heir.entry.id, heir.entry);
    }
    now = [...next.values()];
  }
  const origin = before && {
    from: before.joint.from.header.name,
    sources: before.joint.arriving(entry.id).flatMap(l => (l.from === null ? [] : [before.joint.old.get(l.from)!])),
  };
  return {
    edition,
    entry,
    hops,
    lastEdition: steps.at(-1)?.joint.to.header.name ?? edition,
    now,
    ...(origin ? { origin } : {}),
  };
}

function hopOf({ joint, marks }: Step, entry: Entry, type: TypeId | undefined): Hop {
  const leaving = joint.leaving(entry.id);
  const heirs = leaving.filter(isPair).flatMap((link): Heir[] => {
    const types = joint.new.types(link.to);
    if (type !== undefined && !types.includes(type)) return [];
    return [{ entry: joint.new.get(link.to)!, link, marks: marks(link), types }];
  });
  const pointedTo = ({ pointsTo }: Link) => {
    const entry = pointsTo === undefined ? undefined : joint.new.get(pointsTo);
    return entry ? { pointsTo: entry } : {};
  };
  const endings = leaving
    .filter(l => l.to === null && (type === undefined || (l.types?.includes(type) ?? true)))
    .map((link): HopEnding => ({ link, ...pointedTo(link) }));
  const together = new Map<ItemId, Entry>();
  for (const heir of heirs) {
    for (const link of joint.arriving(heir.entry.id)) {
      if (link.from !== null && link.from !== entry.id) together.set(link.from, joint.old.get(link.from)!);
    }
  }
  const pointing = [...heirs, ...endings].find(e => e.link.pointsTo !== undefined)?.link;
  return {
    from: joint.from.header.name,
    to: joint.to.header.name,
    settings: joint.from.settings,
    reasons: [...joint.to.settings.withdrawalReasons, ...joint.from.settings.withdrawalReasons],
    entry,
    types: joint.old.types(entry.id),
    fate: joint.fateOfOld(entry.id),
    heirs,
    together: [...together.values()],
    endings,
    ...(pointing ? pointedTo(pointing) : {}),
  };
}
