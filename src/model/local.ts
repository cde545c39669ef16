import type { TypeId } from './item.ts';

/** How far a local rule or a variance has come. */
export const LOCAL_STATES = ['requested', 'approved', 'denied', 'expired', 'moot'] as const;
export type LocalState = (typeof LOCAL_STATES)[number];

/**
 * A rule of a place, or a variance: a permission to depart from a requirement, for a place and a time. Kept under
 * `local/<place>/<id>.json` on `main`, outside any edition. Dates are calendar dates (2024-03-01), both included.
 */
export interface LocalRecord {
  readonly id: string;
  readonly kind: 'rule' | 'variance';
  readonly place: string;
  readonly title: string;
  readonly text: string;
  readonly cites: { readonly edition: string; readonly number: string; readonly item?: string };
  /** Installation types that it holds for; absent: those that its text names, else all. */
  readonly types?: readonly TypeId[];
  readonly from: string;
  /** The last day; null: until it is withdrawn. */
  readonly until: string | null;
  readonly approver: string;
  readonly holder?: string;
  /** Why a variance was asked for, in a word or two, so that requests can be counted by cause. */
  readonly cause?: string;
  /** What the program found about paying for more than the catalog asks; absent: not decided. */
  readonly costEffective?: boolean;
  readonly state: LocalState;
}
