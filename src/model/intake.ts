import type { ItemId } from './item.ts';

export const INTAKE_KINDS = ['feedback', 'site comment', 'variance request'] as const;
export type IntakeKind = (typeof INTAKE_KINDS)[number];

/**
 * What somebody told the program about an item between two editions. Kept under `intake/<edition>/<id>.json` on `main`.
 * The id is made from the content, so that the same report told twice is kept once.
 */
export interface IntakeRecord {
  readonly id: string;
  readonly kind: IntakeKind;
  /** The edition whose number was named. */
  readonly edition: string;
  readonly item: ItemId;
  /** As it was printed there. */
  readonly number: string;
  /** In a word or two: `damage seen`, `unclear`. Reports are counted by it. */
  readonly cause: string;
  /** ISO 8601 calendar date. */
  readonly date: string;
  /** Who told it, in words: `crew lead`. */
  readonly from: string;
  readonly text: string;
}
