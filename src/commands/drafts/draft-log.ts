import { draftLog } from '../../store/draft-log.ts';
import type { Catalog } from '../../store/open.ts';
import { OPERATION } from './draft-operations.ts';
import { readDraft } from './read-draft.ts';

/** One step of work on a draft. */
export interface LoggedStep {
  /** The commit. */
  readonly commit: string;
  readonly by: string;
  /** ISO 8601, in universal time. */
  readonly at: string;
  readonly did: string;
  readonly why: string;
  /** Whether a later step took it back. */
  readonly undone: boolean;
  readonly kind: 'operation' | 'undo' | 'merge' | 'other';
  readonly operation?: unknown;
}

/** The trailer of a commit that takes another one back. */
export const UNDOES = 'Undoes: ';
/** The trailer of a commit that joins somebody's branch. */
export const MERGES = 'Merges: ';

/** What was done to a draft, newest first. */
export async function logDraft(catalog: Catalog, draft: string | undefined): Promise<readonly LoggedStep[]> {
  const { branch } = await readDraft(catalog, draft);
  return stepsUpTo(catalog, branch.tip);
}

/** @param known commits at which the log ends */
export async function stepsUpTo(
  catalog: Catalog,
  tip: string,
  known?: ReadonlySet<string>,
): Promise<readonly LoggedStep[]> {
  const undone = new Set<string>();
  const steps: LoggedStep[] = [];
  for (const { oid, message, author } of await draftLog(catalog, tip, known)) {
    const trailer = (name: string) =>
      message
        .split('\n')
        .find(line => line.startsWith(name))
        ?.slice(name.length);
    const undoes = trailer(UNDOES);
    // An undo that was taken back itself undoes nothing.
    if (undoes !== undefined && !undone.has(oid)) undone.add(undoes);
    const operation = trailer(OPERATION);
    const [did = '', , ...rest] = message.split('\n');
    const why = rest
      .filter(line => !/^(Operation|Undoes|Merges): /.test(line))
      .join('\n')
      .trim();
    steps.push({
      commit: oid,
      by: author.name,
      at: author.date.toISOString(),
      did,
      why,
      undone: undone.has(oid),
      kind: undoes !== undefined ? 'undo' : operation !== undefined ? 'operation' : trailer(MERGES) ? 'merge' : 'other',
      ...(operation === undefined ? {} : { operation: JSON.parse(operation) as unknown }),
    });
  }
  return steps;
}
