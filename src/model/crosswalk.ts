import type { Evidence } from './duty-evidence.ts';
import type { ItemId, TypeId } from './item.ts';

/** How much of an item a link covers. */
export const EXTENTS = ['all', 'part', 'unknown'] as const;
export type Extent = (typeof EXTENTS)[number];

/** Where a link comes from, strongest first. */
export const BASES = ['declared', 'confirmed', 'inferred'] as const;
export type Basis = (typeof BASES)[number];

/**
 * One item's path between two editions. `to: null` = withdrawn, with a reason; `from: null` = new. The two are never
 * joined into one link.
 */
export interface Link {
  readonly from: ItemId | null;
  readonly to: ItemId | null;
  readonly fromExtent: Extent;
  readonly toExtent: Extent;
  readonly basis: Basis;
  /** 0 to 1. */
  readonly confidence: number;
  /** Of a withdrawal: the installation types that it ends for; absent = all that the item applied to. */
  readonly types?: readonly TypeId[];
  readonly reason?: string;
  readonly note?: string;
  readonly governs?: string;
  /** An item of the newer edition that the reader is pointed to although it is no heir. */
  readonly pointsTo?: ItemId;
  readonly decision?: string;
  readonly by?: string;
  readonly date?: string;
  /** Composed through a merge that was later split: the pair may be false. */
  readonly doubtful?: true;
}

/** The links between two named editions. */
export interface Crosswalk {
  readonly from: string;
  readonly to: string;
  readonly links: readonly Link[];
}

/**
 * What became of an old item, or where a new one comes from. `unaccounted`: gone, and no record says why - a defect
 * of the catalog's lineage that is shown, never papered over with a withdrawal nobody decided.
 */
export const FATES = ['kept', 'merged', 'split', 'recombined', 'withdrawn', 'new', 'unaccounted'] as const;
export type Fate = (typeof FATES)[number];

/** A connected group of links: helps to see a regrouping; never the answer to a question about one item. */
export interface Row {
  readonly number: number;
  readonly fate: Fate;
  readonly from: readonly ItemId[];
  readonly to: readonly ItemId[];
  readonly links: readonly Link[];
}

export type Wording = 'same' | 'editorial' | 'substantive';
export type Duty = 'same' | 'stricter' | 'relaxed' | 'mixed' | 'unclear';
export type AppliesTo = 'same' | 'wider' | 'narrower' | 'shifted';

/** What changed along one link. */
export interface Marks {
  readonly renumbered: boolean;
  readonly moved: boolean;
  readonly wording: Wording;
  /** The gravest of `dutyByType`, of the types that go on; which came or ended is said by `appliesTo`. */
  readonly duty: Duty;
  readonly appliesTo: AppliesTo;
  readonly dutyByType: readonly { readonly type: TypeId; readonly duty: Duty | 'ends' }[];
  /** The phrases of both texts on which the duty rests, with the types that each holds for; no types = for all. */
  readonly evidence: readonly (Evidence & { readonly types: readonly TypeId[] })[];
}

/** The end of an item: for whom, why, and what there is in its place. */
export interface Ending {
  /** Absent = for all types that the item applied to. */
  readonly types?: readonly TypeId[];
  readonly reason?: string;
  readonly governs?: string;
  /** The day on which somebody read what governs, ISO 8601. */
  readonly governsChecked?: string;
  readonly pointsTo?: ItemId;
  readonly decision?: string;
}

/**
 * One step of lineage as it is kept on disk: the sole source of links besides equal ids.
 * `heirs: []` with a reason = withdrawn. A continuing item that also gave something away lists itself as an heir.
 * What the record says of ends is read with `endingsOf` and said with `withEndings` (model/endings.ts).
 */
export interface LineageRecord extends Omit<Ending, 'types'> {
  readonly from: ItemId | null;
  readonly heirs: readonly { readonly to: ItemId; readonly fromExtent: Extent; readonly toExtent: Extent }[];
  /** The equal id in the newer edition no longer means the same thing. */
  readonly notSame?: true;
  /** Where heirs carry on for some installation types only: the types for which the item ends. */
  readonly withdrawnFor?: readonly TypeId[];
  /** Beside `withdrawnFor`: ends for further types, each with a reason of its own. */
  readonly alsoEnds?: readonly (Ending & { readonly types: readonly TypeId[] })[];
  readonly note?: string;
  readonly by?: string;
  readonly date?: string;
  readonly basis: Basis;
}

/** A decision that holds edition-wide and settles every fragment it covers, also inside requirements that stay. */
export interface Decision {
  readonly id: string;
  readonly title: string;
  readonly reason: string;
  readonly authority: string;
  readonly governs?: string;
  readonly scope: string;
  readonly date?: string;
}
