import { openCatalog } from '../../store/open.ts';
import type { Ports } from '../ports/ports.ts';
import { matchedLineage, readForMatching } from './match-editions.ts';
import { type MatchReview, openMatchReview } from './match-review.ts';
import { readBareEditions } from './match-tables.ts';

/** What a review is of, as plain values, since it may be opened in another thread. */
export interface ToldReview {
  /** The old tables and the new one behind them; two editions where a catalog is named. */
  readonly tables: readonly string[];
  /** The folder of the catalog whose editions they are. */
  readonly catalog?: string;
  /** Role (number, title, text …) → header, for tables whose headers are spelt otherwise. */
  readonly columns?: ReadonlyMap<string, string>;
  /** Tables with answers that stand; every new answer goes to the last, a csv. */
  readonly answers: readonly string[];
}

/** Opens a review of tables, or of two editions of a catalog. Takes as long as the matching. */
export async function openToldReview(
  ports: Ports,
  { tables, catalog: dir, columns, answers }: ToldReview,
): Promise<MatchReview> {
  const kept = { earlier: answers.slice(0, -1), file: answers.at(-1)! };
  if (dir === undefined) {
    const told = columns ? { columns } : {};
    const both = await readBareEditions(ports, { from: tables.slice(0, -1), to: tables.slice(-1), ...told });
    return openMatchReview(ports, { ...both, known: [], ...kept });
  }
  const [from, to] = tables as readonly [string, string];
  const catalog = await openCatalog(dir);
  return openMatchReview(ports, {
    ...(await readForMatching(catalog, from, to)),
    ...kept,
    lineage: report => matchedLineage(catalog, report, to),
  });
}
