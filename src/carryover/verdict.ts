import type { Cause, OutcomeKind } from '../model/citation.ts';
import type { Entry } from '../model/edition.ts';

/** An outcome while it still points to entries; `resolveCitation` turns it into plain values. */
export interface Verdict {
  readonly kind: OutcomeKind;
  readonly cause: Cause;
  readonly why: string;
  readonly toDo?: string;
  readonly from?: Entry;
  readonly heirs?: readonly Entry[];
}
