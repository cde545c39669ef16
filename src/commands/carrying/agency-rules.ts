import type { JobPolicy } from '../../carryover/jobs/job-policy.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import type { JobAnswer } from '../../model/job-answer.ts';
import type { Catalog } from '../../store/open.ts';
import { policyOf } from '../jobs/job-policies.ts';
import type { Ports } from '../ports/ports.ts';
import { keptDecisions } from './kept-decisions.ts';

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
  const { agency, keepDecisions: keep = false } = named;
  refuseToKeepNothing(named);
  const { answers, findings } =
    agency === undefined ? { answers: [], findings: [] } : await keptDecisions(catalog, agency, way);
  const known = answers.length > 0;
  const policy = await policyOf(ports, catalog, { ...named, mayLack: keep || known });
  return { ...(policy ? { policy } : {}), ...(known ? { kept: answers } : {}), findings };
}

/**
 * The decisions that the catalog keeps for the texts of an agency. A policy says nothing of texts, so that an agency
 * without any decision may be a misspelt one.
 *
 * @throws CatalogError BadArgument: decisions are to be kept and there are none or it is not said for whom, or none are kept
 */
export async function agencyDecisions(
  catalog: Catalog,
  named: Omit<NamedAgency, 'policy'>,
  way: { readonly from: string; readonly to: string },
): Promise<Pick<AgencyRules, 'kept' | 'findings'>> {
  const { agency, keepDecisions: keep = false } = named;
  refuseToKeepNothing(named);
  if (agency === undefined) return { findings: [] };
  const { answers, findings } = await keptDecisions(catalog, agency, way);
  if (answers.length > 0) return { kept: answers, findings };
  if (keep) return { findings };
  throw new CatalogError(
    'BadArgument',
    `The catalog keeps no decisions of ${agency} from ${way.from} to ${way.to}; check the name, or leave --agency out.`,
    { agency },
  );
}

function refuseToKeepNothing({ agency, decisions, keepDecisions }: Omit<NamedAgency, 'policy'>): void {
  if (!keepDecisions || (agency !== undefined && decisions !== undefined)) return;
  throw new CatalogError(
    'BadArgument',
    '--keep-decisions keeps the answers of --decisions for the agency of --agency; name both.',
  );
}
