import type { PublishedCatalog } from '../commands/published-catalog.ts';
import type { Fate } from '../model/crosswalk.ts';
import type { Entry } from '../model/edition.ts';
import { lineThrough } from './line-of-editions.ts';
import { placeLink } from './links.ts';

/** The life of an item, one stage for each edition, oldest first; between two stages the fates that join them. */
export interface Life {
  readonly stages: readonly LifeStage[];
}

export interface LifeStage {
  readonly edition: string;
  readonly here: boolean;
  readonly items: readonly { readonly number: string; readonly title: string; readonly href: string }[];
  readonly more: number;
  /** How the stage before became this one; empty for the first. */
  readonly fates: readonly Fate[];
}

const MOST_ITEMS = 6;

/** Follows an item to the oldest and to the newest edition, each step by its own links. */
export async function lifeOf(published: PublishedCatalog, edition: string, entry: Entry): Promise<Life> {
  const line = lineThrough(published.headers, edition);
  const at = line.indexOf(edition);
  const joints = await Promise.all(line.slice(1).map(async (to, i) => (await published.crosswalk(line[i]!, to)).joint));
  const entries: Entry[][] = line.map(() => []);
  const fates: Fate[][] = line.map(() => []);
  entries[at] = [entry];
  for (let i = at; i < joints.length; i++) {
    const joint = joints[i]!;
    entries[i + 1] = joined(
      entries[i]!.flatMap(e => joint.leaving(e.id).map(l => l.to)),
      id => joint.new.get(id),
    );
    fates[i + 1] = [...new Set(entries[i]!.map(e => joint.fateOfOld(e.id)))];
  }
  for (let i = at - 1; i >= 0; i--) {
    const joint = joints[i]!;
    entries[i] = joined(
      entries[i + 1]!.flatMap(e => joint.arriving(e.id).map(l => l.from)),
      id => joint.old.get(id),
    );
    fates[i + 1] = [...new Set(entries[i + 1]!.map(e => joint.fateOfNew(e.id)))];
  }
  const stages = line.map((name, i) => ({
    edition: name,
    here: i === at,
    items: entries[i]!.slice(0, MOST_ITEMS).map(e => ({ number: e.number, title: e.title, href: placeLink(name, e) })),
    more: Math.max(0, entries[i]!.length - MOST_ITEMS),
    fates: fates[i]!,
  }));
  // Before its birth and after its end there is nothing to draw but the end itself.
  return { stages: stages.filter((s, i) => s.items.length > 0 || (stages[i - 1]?.items.length ?? 0) > 0) };
}

function joined(ids: readonly (string | null)[], get: (id: string) => Entry | undefined): Entry[] {
  return [...new Set(ids)].flatMap(id => (id === null ? [] : (get(id) ?? [])));
}
