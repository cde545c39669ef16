import { localBeside } from '../../commands/finding/local-beside.ts';
import type { PublishedCatalog } from '../../commands/reading/published-catalog.ts';
import type { Entry } from '../../model/edition.ts';

/** A local rule or variance as the page of an item tells of it. */
export interface ItemLocal {
  /** "Local rule, hollin: Overflow of butts in Hollin". */
  readonly head: string;
  /** "approved, from 2021-04-01, with no end stated; cites 2018 3.2.1.3". */
  readonly state: string;
  readonly text: string;
  /** Which governs, one sentence. */
  readonly why: string;
  /** Whether it binds or permits anything today. */
  readonly inForce: boolean;
}

/** All local rules and variances that touch an item, those in force first. */
export async function itemLocal(
  published: PublishedCatalog,
  edition: string,
  entry: Entry,
  date: string,
): Promise<readonly ItemLocal[]> {
  const beside = await localBeside(published, edition, entry, date);
  const told = beside.map(({ record, inForce, why, on }): ItemLocal => {
    const { kind, place, title, state, from, until, cites, text } = record;
    const end = until === null ? 'with no end stated' : `until ${until}`;
    const at = on.id === entry.id ? '' : `, here ${on.number || on.title}`;
    return {
      head: `${kind === 'rule' ? 'Local rule' : 'Variance'}, ${place}: ${title}`,
      state: `${state}, from ${from}, ${end}; cites ${cites.edition} ${cites.number}${at}`,
      text,
      why,
      inForce,
    };
  });
  return [...told.filter(t => t.inForce), ...told.filter(t => !t.inForce)];
}
