import { CatalogError } from '../../model/errors.ts';
import type { Catalog } from '../../store/open.ts';
import { hashOf } from '../carrying/carry-mark.ts';
import type { ErratumReport } from '../importing/add-erratum.ts';
import { inTurn } from '../in-turn.ts';
import type { Person } from '../people.ts';
import type { Ports } from '../ports/ports.ts';
import type { HeldReview } from './held-review.ts';
import type { MatchedRecord } from './match-editions.ts';

/** A review on a desk. */
export interface DeskReview extends HeldReview {
  /** From 1, in the order in which they were told. */
  readonly key: string;
  /** The command that uses the answers. */
  readonly command: string;
}

/** The reviews of matched links that people work off while a viewer runs. */
export interface MatchDesk {
  readonly reviews: readonly DeskReview[];
  /** A matching that is done this soon is waited for; for a longer one there is a page. */
  readonly patienceMs: number;
  /** What would become lineage of the newer edition, and a mark of it; nothing where the tables are no editions. */
  lineage(review: DeskReview): Promise<{ readonly records: readonly MatchedRecord[]; readonly seen: string }>;
  /** Writes it as an erratum. Throws Changed where it is not what was seen. */
  record(review: DeskReview, seen: string, by: Person): Promise<ErratumReport>;
}

/**
 * @param writing opens the catalog for writing, asked when something is to be recorded; absent: nothing can be
 */
export function matchDesk(
  ports: Ports,
  reviews: readonly DeskReview[],
  writing?: () => Promise<Catalog>,
  patienceMs = 1500,
): MatchDesk {
  const turn = inTurn();
  const lineage = async ({ review }: DeskReview) => {
    const records = await review.lineage();
    return { records, seen: hashOf(JSON.stringify(records)) };
  };
  return {
    reviews,
    patienceMs,
    lineage,
    record: (review, seen, { name, address }) =>
      turn(async () => {
        const found = await lineage(review);
        if (!writing || found.seen !== seen) {
          throw new CatalogError('Changed', 'Answers have changed since this page was made; look at it again.');
        }
        const { recordLineage } = await import('./match-editions.ts');
        const author = { ...ports, author: { name, email: address } };
        return recordLineage(author, await writing(), found.records, review.review.names.to);
      }),
  };
}
