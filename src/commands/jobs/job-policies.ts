import { type JobPolicy, parsePolicy } from '../../carryover/jobs/job-policy.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Catalog } from '../../store/open.ts';
import { readBeside } from '../../store/read-beside.ts';
import type { Ports } from '../ports/ports.ts';

const FOLDER = 'policies/';

/**
 * The policy that a run follows: a file of the user, or the one that the catalog keeps for an agency under
 * `policies/<agency>.json` on `main`. An agency that keeps decisions may lack one (`mayLack`).
 *
 * @throws CatalogError BadArgument: both are named, the agency has none, or the policy has a mistake
 */
export async function policyOf(
  ports: Pick<Ports, 'files'>,
  catalog: Catalog,
  named: { readonly policy?: string; readonly agency?: string; readonly mayLack?: boolean },
): Promise<JobPolicy | undefined> {
  const { policy, agency } = named;
  if (policy !== undefined && agency !== undefined) {
    throw new CatalogError('BadArgument', 'Name a file with --policy or an agency with --agency, not both.');
  }
  if (policy !== undefined) return parsePolicy(new TextDecoder().decode(await ports.files.read(policy)), policy);
  if (agency === undefined) return undefined;
  const path = `${FOLDER}${agency}.json`;
  const policies = await readBeside(catalog, FOLDER);
  const text = policies.get(path);
  if (text !== undefined) return parsePolicy(text, path);
  if (named.mayLack) return undefined;
  const known = [...policies.keys()].map(p => p.slice(FOLDER.length).replace(/\.json$/, ''));
  throw new CatalogError(
    'BadArgument',
    `The catalog keeps no policy of ${agency}; ${known.length > 0 ? `it has ${known.join(', ')}` : 'it has none at all'}; name a file with --policy.`,
    { agency, known },
  );
}
