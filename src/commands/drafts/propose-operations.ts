import { textHash } from '../../drafting/answers.ts';
import { clusterNearDuplicates } from '../../drafting/near-duplicates.ts';
import { isRequirement } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Operation } from '../../model/operation.ts';
import { type Proposal, propose } from '../../release/propose.ts';
import type { Catalog } from '../../store/open.ts';
import { authorText } from '../comments/comments-store.ts';
import type { Ports } from '../ports/ports.ts';
import { checkDrafting } from '../texts/check-drafting.ts';
import { type OperationsReport, operateOnDraft } from './draft-operations.ts';
import { readDraft } from './read-draft.ts';

/** A proposal with a key by which it is accepted; it stays the same while the texts do. */
export interface KeyedProposal extends Proposal {
  readonly key: string;
}

/** What the evidence suggests to do to a draft. */
export async function proposals(
  ports: Ports,
  catalog: Catalog,
  draft: string | undefined,
): Promise<{ readonly draft: string; readonly proposals: readonly KeyedProposal[] }> {
  const { header, branch, state } = await readDraft(catalog, draft);
  const name = branch.ref.replace(/^refs\/heads\/(draft\/)?/, '');
  const { settings, items } = state;
  const texts = items.flatMap(i => (isRequirement(settings, i) && i.text ? [{ id: i.id, text: i.text }] : []));
  const clusters = clusterNearDuplicates(texts).map(({ first, others }) => ({
    items: [first.id, ...others.map(o => o.id)],
    differs: others.flatMap(o => o.differs.map(d => `"${d.first}" and "${d.here}"`)),
  }));
  const { findings } = await checkDrafting(ports, catalog, { edition: name });
  const found = propose(settings, items, clusters, findings);
  return {
    draft: header.name,
    proposals: found.map(p => ({ ...p, key: textHash(JSON.stringify(p.operation)).slice(0, 8) })),
  };
}

/** What whoever accepts a proposal may add to it. */
export interface Additions {
  readonly text?: string;
  readonly title?: string;
  readonly governs?: string;
  readonly governsChecked?: string;
}

/** Does what a proposal says, in one step, signed by who accepts it; the record says that the tool proposed it. */
export async function acceptProposal(
  ports: Ports,
  catalog: Catalog,
  request: { readonly draft?: string; readonly key: string; readonly additions: Additions },
): Promise<OperationsReport> {
  const { draft, key, additions } = request;
  const found = (await proposals(ports, catalog, draft)).proposals.find(p => p.key === key);
  if (!found) {
    throw new CatalogError(
      'BadArgument',
      `${key} is no proposal on the draft as it stands; list them with: fishplate review propose`,
    );
  }
  const { text, title, ...governing } = additions;
  const note = `Proposed from the evidence (${found.because}); accepted by ${authorText(ports)}.`;
  const words = { ...(text === undefined ? {} : { text }), ...(title === undefined ? {} : { title }) };
  const operation: Operation =
    found.operation.op === 'combine'
      ? { ...found.operation, ...(Object.keys(words).length > 0 ? { to: words } : {}), note }
      : { ...found.operation, ...governing, note };
  return operateOnDraft(ports, catalog, {
    ...(draft === undefined ? {} : { draft }),
    operations: [operation as never],
  });
}
