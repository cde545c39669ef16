import type { PublishedCatalog, PublishedCrosswalk } from '../../commands/reading/published-catalog.ts';
import type { Duty, Fate } from '../../model/crosswalk.ts';
import type { Entry } from '../../model/edition.ts';
import type { ItemId } from '../../model/item.ts';
import { type LifeGroup, type LifePicture, lifePicture } from '../../pictures/life-picture.ts';
import { placeLink } from '../links.ts';
import { lineThrough } from './line-of-editions.ts';

/** The life of an item, one stage for each edition, oldest first; between two stages the fates that join them. */
export interface Life {
  readonly stages: readonly LifeStage[];
  readonly picture: { readonly wide: LifePicture; readonly narrow: LifePicture };
}

export interface LifeStage {
  readonly edition: string;
  readonly here: boolean;
  readonly items: readonly Named[];
  readonly more: number;
  /** How the stage before became this one; empty for the first. */
  readonly steps: readonly Step[];
}

interface Step {
  readonly fate: Fate;
  /** What else went into the same heirs. */
  readonly with: readonly Named[];
  /** What else came of the same items. */
  readonly beside: readonly Named[];
  /** What an item that went on alone asks since then, where that is not the same; else empty. */
  readonly change: string;
}

interface Named {
  readonly id: ItemId;
  readonly number: string;
  readonly title: string;
  readonly href: string;
}

const MOST_ITEMS = 6;

/** Follows an item to the oldest and to the newest edition, each step by its own links. */
export async function lifeOf(published: PublishedCatalog, edition: string, entry: Entry): Promise<Life> {
  const line = lineThrough(published.headers, edition);
  const here = line.indexOf(edition);
  const crosswalks = await Promise.all(line.slice(1).map((to, i) => published.crosswalk(line[i]!, to)));
  const joints = crosswalks.map(c => c.joint);
  const entries: Entry[][] = line.map(() => []);
  entries[here] = [entry];
  for (let i = here; i < joints.length; i++) entries[i + 1] = heirsOf(joints[i]!, entries[i]!);
  for (let i = here - 1; i >= 0; i--) entries[i] = sourcesOf(joints[i]!, entries[i + 1]!);

  const shown = entries.map(list => list.slice(0, MOST_ITEMS));
  const groups = joints.map((joint, i) => groupsOf(joint, shown[i]!, shown[i + 1]!));
  const named = (name: string, list: readonly Entry[]) =>
    list.slice(0, MOST_ITEMS).map(e => ({ id: e.id, number: e.number, title: e.title, href: placeLink(name, e) }));
  // Beyond one edition before its birth and one after its end there is nothing to draw.
  const drawn = line.flatMap((_, i) =>
    lives(entries, i) || lives(entries, i - 1) || lives(entries, i + 1) ? [i] : [],
  );
  const stages = drawn.map(
    (i, at): LifeStage => ({
      edition: line[i]!,
      here: i === here,
      items: named(line[i]!, shown[i]!),
      more: entries[i]!.length - shown[i]!.length,
      steps:
        at === 0
          ? []
          : groups[i - 1]!.map(group => ({
              fate: group.fate,
              with: named(line[i - 1]!, group.others.from),
              beside: named(line[i]!, group.others.to),
              change: changeIn(crosswalks[i - 1]!, group, shown[i - 1]!, shown[i]!),
            })),
    }),
  );
  const life = {
    stages: drawn.map(i => ({
      edition: line[i]!,
      items: shown[i]!.map(e => ({ number: e.number, here: i === here && e.id === entry.id })),
    })),
    steps: drawn.slice(1).map(i => ({ groups: groups[i - 1]! })),
  };
  return { stages, picture: { wide: lifePicture(life, 'right'), narrow: lifePicture(life, 'down') } };
}

/** "Kept, kept" would hide the step that made an item stricter. */
function changeIn(
  { joint, marks }: PublishedCrosswalk,
  { from, to }: LifeGroup,
  old: readonly Entry[],
  heirs: readonly Entry[],
): string {
  const [source, heir] = [old[from[0] ?? -1], heirs[to[0] ?? -1]];
  if (from.length !== 1 || to.length !== 1 || !source || !heir) return '';
  const link = joint.leaving(source.id).find((l): l is typeof l & { from: ItemId; to: ItemId } => l.to === heir.id);
  if (!link) return '';
  const { duty, dutyByType } = marks(link);
  const ends = dutyByType.some(d => d.duty === 'ends') ? 'holds for fewer installation types since then' : '';
  return { same: ends, ...CHANGES }[duty];
}

const CHANGES: Readonly<Record<Exclude<Duty, 'same'>, string>> = {
  stricter: 'asks more since then',
  relaxed: 'asks less since then',
  mixed: 'asks more in some ways and less in others since then',
  unclear: 'reworded; read both texts',
};

const lives = (entries: readonly (readonly Entry[])[], i: number) => (entries[i]?.length ?? 0) > 0;

type Joint = PublishedCrosswalk['joint'];

const heirsOf = (joint: Joint, entries: readonly Entry[]) =>
  joined(
    entries.flatMap(e => joint.leaving(e.id).map(l => l.to)),
    id => joint.new.get(id),
  );

const sourcesOf = (joint: Joint, entries: readonly Entry[]) =>
  joined(
    entries.flatMap(e => joint.arriving(e.id).map(l => l.from)),
    id => joint.old.get(id),
  );

function joined(ids: readonly (string | null)[], get: (id: string) => Entry | undefined): Entry[] {
  return [...new Set(ids)].flatMap(id => (id === null ? [] : (get(id) ?? [])));
}

interface Group extends LifeGroup {
  readonly others: { readonly from: readonly Entry[]; readonly to: readonly Entry[] };
}

/** Items of two stages that links connect, each connected set as one; an item without any is a set of its own. */
function groupsOf(joint: Joint, old: readonly Entry[], heirs: readonly Entry[]): Group[] {
  const [olds, news] = [new Set(old.map(e => e.id)), new Set(heirs.map(e => e.id))];
  const grouped = new Set<string>();
  const groups: Group[] = [];
  const add = (side: 'from' | 'to', seed: Entry) => {
    const [from, to] = [new Set<ItemId>(), new Set<ItemId>()];
    (side === 'from' ? from : to).add(seed.id);
    const ids = (links: readonly (ItemId | null)[], known: Set<ItemId>) =>
      links.filter(id => id !== null && known.has(id));
    for (let size = 0; size < from.size + to.size; ) {
      size = from.size + to.size;
      for (const id of from)
        for (const heir of ids(
          joint.leaving(id).map(l => l.to),
          news,
        ))
          to.add(heir!);
      for (const id of to)
        for (const source of ids(
          joint.arriving(id).map(l => l.from),
          olds,
        ))
          from.add(source!);
    }
    for (const id of from) grouped.add(`from ${id}`);
    for (const id of to) grouped.add(`to ${id}`);
    const [fromEntries, toEntries] = [old.filter(e => from.has(e.id)), heirs.filter(e => to.has(e.id))];
    const also = sourcesOf(joint, toEntries).filter(e => !from.has(e.id));
    const beside = heirsOf(joint, fromEntries).filter(e => !to.has(e.id));
    groups.push({
      fate: fromEntries[0] ? joint.fateOfOld(fromEntries[0].id) : joint.fateOfNew(seed.id),
      from: old.flatMap((e, i) => (from.has(e.id) ? [i] : [])),
      to: heirs.flatMap((e, i) => (to.has(e.id) ? [i] : [])),
      alsoFrom: also.length,
      alsoTo: beside.length,
      others: { from: also, to: beside },
    });
  };
  for (const e of old) if (!grouped.has(`from ${e.id}`)) add('from', e);
  for (const e of heirs) if (!grouped.has(`to ${e.id}`)) add('to', e);
  return groups;
}
