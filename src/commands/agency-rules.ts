import type { JobPolicy } from '../carryover/job-policy.ts';
import { CatalogError } from '../model/errors.ts';
import type { Finding } from '../model/finding.ts';
import type { JobAnswer } from '../model/job-answer.ts';
import type { Catalog } from '../store/open.ts';
import { policyOf } from './job-policies.ts';
import { keptDecisions } from './kept-decisions.ts';
import type { Ports } from './ports.ts';

/** What a run is told of whose jobs it carries. */
export interface NamedAgency {
  readonly policy?: string;
  readonly agency?: string;
  readonly decisions?: string;
  readonly keepDecisions?: boolean;
}

export interface AgencyRules {
  readonly policy?: JobPolicy;
  /** Absent where the catalog keeps none between these editions. */
  readonly kept?: readonly JobAnswer[];
  readonly findings: readonly Finding[];
}

/**
 * What holds for the jobs of an agency: its policy, and the decisions that the catalog keeps for it.
 *
 * @throws CatalogError BadArgument: decisions are to be kept and there are none or it is not said for whom, and as `policyOf`
 */
export async function agencyRules(
  ports: Pick<Ports, 'files'>,
  catalog: Catalog,
  named: NamedAgency,
  way: { readonly from: string; readonly to: string },
): Promise<AgencyRules> {
  const { agency, decisions, keepDecisions: keep = false } = named;
  if (keep && (agency === undefined || decisions === undefined)) {
    throw new CatalogError(
      'BadArgument',
      '--keep-decisions keeps the answers of --decisions for the agency of --agency; name both.',
    );
  }
  const { answers, findings } =
    agency === undefined ? { answers: [], findings: [] } : await keptDecisions(catalog, agency, way);
  const known = answers.length > 0;
  const policy = await policyOf(ports, catalog, { ...named, mayLack: keep || known });
  return { ...(policy ? { policy } : {}), ...(known ? { kept: answers } : {}), findings };
}
