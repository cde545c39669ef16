import type { ItemId, TypeId } from './item.ts';

/**
 * How a loss is settled: put back into the catalog, stated by an heir in words that the tool did not see, or dropped on
 * purpose.
 */
export const LOSS_VERDICTS = ['restored', 'stated', 'dropped'] as const;
export type LossVerdict = (typeof LOSS_VERDICTS)[number];

/** A person's answer to one loss between two editions. It holds for the texts on which it was given. */
export interface LossAnswer {
  readonly from: string;
  readonly to: string;
  readonly item: ItemId;
  readonly types: readonly TypeId[];
  readonly kind: string;
  /** The words of the old text. */
  readonly text: string;
  readonly verdict: LossVerdict;
  readonly because: string;
  /** `Name <address>`; never the author of the change. */
  readonly by: string;
  /** ISO 8601 calendar date. */
  readonly date: string;
  /** Hash of the old text and of each heir's, as they stood when the answer was given. */
  readonly texts: readonly string[];
  /** Somebody else again who has read it and agrees. */
  readonly second?: { readonly by: string; readonly date: string };
}
