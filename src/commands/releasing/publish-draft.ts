import { dayOf } from '../../model/day.ts';
import type { EditionDates } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { placesOf } from '../../model/places.ts';
import { holding, locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { publishFromDraft } from '../../store/publish.ts';
import { fileHolding, readDecisionsAt, readEditionAt, readIndex, readLineageAt } from '../../store/read.ts';
import { refuseBranch } from '../drafts/read-draft.ts';
import { type Ports, person } from '../ports/ports.ts';
import { releaseGate } from './release-gate.ts';

export interface PublishRequest {
  readonly draft: string;
  readonly dates?: EditionDates;
  /** Publish although findings are open; the reason stands in the commit and the tag for good. */
  readonly override?: string;
  /** What is new, for those who will use the edition; stands in the commit and the tag. */
  readonly notes?: string;
  /** The commit that whoever asks has seen; absent: whatever stands there. Throws Changed where somebody was faster. */
  readonly seen?: string;
}

/**
 * Publishes a draft: its tag makes it an edition. Refused while anything stops it at the release gate, unless a reason
 * to publish all the same is put on record: it stands in the commit and the tag, with how much was open.
 */
export async function publishDraft(
  ports: Ports,
  catalog: Catalog,
  request: PublishRequest,
): Promise<{ readonly items: number; readonly findings: readonly Finding[] }> {
  const at = await locate(catalog, request.draft);
  if (at.state !== 'draft') {
    throw new CatalogError(
      'BadArgument',
      `${request.draft} is published already; open a draft with: fishplate draft open NAME`,
    );
  }
  refuseBranch(at);
  if (request.seen !== undefined && request.seen !== at.commit) {
    throw new CatalogError('Changed', `Somebody has worked on ${at.name} since; look at it again.`);
  }
  // The gate takes seconds, and other processes may write meanwhile: all of it reads this one commit.
  const held = holding(catalog, at);
  const { stops, remarks } = await releaseGate(ports, held, at.name);
  if (stops.length > 0 && request.override === undefined) {
    throw new CatalogError(
      'BadCatalog',
      `${stops.length} ${stops.length === 1 ? 'finding stops' : 'findings stop'} the publication of ${at.name}; settle them (fishplate check ${at.name} --release lists them by what they are about), or publish all the same with --override "why".`,
      { count: stops.length },
      stops,
    );
  }
  const edition = await readEditionAt(held, at);
  const [lineage, decisions] = [await readLineageAt(held, at), await readDecisionsAt(held, at)];
  const { replaces } = edition.header;
  const older = replaces === null ? undefined : await readIndex(catalog, replaces);
  const old = placesOf(older?.settings ?? edition.settings, older?.entries ?? []);
  const message = [
    `Edition ${at.name}`,
    ...(request.notes ? [request.notes] : []),
    ...(stops.length > 0 ? [`Published with ${stops.length} open findings: ${request.override}`] : []),
  ].join('\n\n');
  await publishFromDraft(
    catalog,
    {
      name: at.name,
      replaces,
      dates: { published: dayOf(ports.now()), ...edition.header.dates, ...request.dates },
      settings: edition.settings,
      items: edition.items,
      lineage,
      decisions,
      oldFileOf: id => fileHolding(old, older?.settings ?? edition.settings, id),
    },
    at.commit,
    person(ports),
    message,
  );
  return { items: edition.items.length, findings: [...stops, ...remarks] };
}
