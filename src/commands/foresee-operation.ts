import { type DraftState, linksOf, nameOf } from '../editing/draft-state.ts';
import type { EditionDates } from '../model/edition.ts';
import type { Item, ItemId } from '../model/item.ts';
import { type Places, placesOf } from '../model/places.ts';
import { inWords } from '../model/said-words.ts';
import { typeName } from '../model/settings.ts';
import { compareItems, type FieldText } from './compare-items.ts';

/** What an operation makes of a draft: everything that is not the same afterwards. */
export interface Foreseen {
  /** Items that say something else, or apply to other types. */
  readonly changed: readonly ForeseenItem[];
  readonly made: readonly ForeseenItem[];
  readonly gone: readonly ForeseenItem[];
  /** Items that stand under another parent. */
  readonly moved: readonly (ForeseenItem & { readonly under: string })[];
  /** Items that only print another number. */
  readonly renumbered: readonly {
    readonly id: ItemId;
    readonly title: string;
    readonly from: string;
    readonly to: string;
  }[];
  /** Days of the draft that are not what they were. */
  readonly days: readonly { readonly name: string; readonly from: string; readonly to: string }[];
  /** What becomes of items of the older edition, where that is not what it was; a sentence each. */
  readonly lineage: readonly string[];
}

export interface ForeseenItem {
  readonly id: ItemId;
  readonly number: string;
  readonly title: string;
  /** The fields that differ, with their words marked; of a new item all that it says. */
  readonly fields: readonly FieldText[];
}

/** Compares a draft before and after. */
export function foresee(before: DraftState, after: DraftState): Foreseen {
  const [old, now] = [placesOf(before.settings, before.items), placesOf(after.settings, after.items)];
  const fields = (a: Item, b: Item) =>
    compareItems(a, b, { from: namesOf(before, old, a.id), to: namesOf(after, now, b.id) }).filter(f => f.changed);
  const told = (item: Item, differing: readonly FieldText[]): ForeseenItem => {
    const { id, number, title } = item;
    return { id, number, title, fields: differing };
  };
  const both = after.items.flatMap(item => {
    const was = old.get(item.id);
    return was ? [{ was, item, differing: fields(was, item) }] : [];
  });
  return {
    changed: both.filter(b => b.differing.length > 0).map(b => told(b.item, b.differing)),
    made: after.items
      .filter(i => !old.get(i.id))
      .map(i => told(i, fields({ id: i.id, number: '', level: i.level, parent: null, title: '' }, i))),
    gone: before.items.filter(i => !now.get(i.id)).map(i => told(i, [])),
    moved: both
      .filter(b => b.was.parent !== b.item.parent)
      .map(b => ({ ...told(b.item, []), under: underOf(now, b.item) })),
    renumbered: both
      .filter(b => b.was.number !== b.item.number)
      .map(({ was, item }) => ({ id: item.id, title: item.title, from: was.number, to: item.number })),
    days: dayChanges(before, after),
    lineage: lineageChanges(before, after),
  };
}

function dayChanges({ dates: was }: DraftState, { dates: is }: DraftState): Foreseen['days'] {
  const names = [...new Set([...Object.keys(was), ...Object.keys(is)])] as (keyof EditionDates)[];
  return names
    .filter(name => was[name] !== is[name])
    .map(name => ({ name, from: was[name] ?? '', to: is[name] ?? '' }));
}

function underOf(places: Places<Item>, { parent }: Item): string {
  const above = parent === null ? undefined : places.get(parent);
  return above ? `${above.number} ${above.title}`.trim() : 'the top';
}

function namesOf({ settings }: DraftState, places: Places<Item>, id: ItemId): string[] {
  return places.get(id) ? places.types(id).map(type => typeName(settings, type)) : [];
}

function lineageChanges(before: DraftState, after: DraftState): string[] {
  const { older } = after;
  if (!older) return [];
  const [was, is] = [heirsIn(before), heirsIn(after)];
  const names = new Map([...before.items, ...after.items].map(i => [i.id, nameOf(i)]));
  return older.items.flatMap(item => {
    const [a, b] = [was.get(item.id) ?? [], is.get(item.id) ?? []];
    if (a.join(' ') === b.join(' ')) return [];
    const said = `${nameOf(item)} of ${older.header.name}`;
    const going = b.filter(id => id !== ENDS).map(id => names.get(id) ?? id);
    const ends = b.includes(ENDS);
    if (going.length === 0) return [ends ? `${said} ends.` : `${said} is not accounted for.`];
    return [`${said} goes on in ${inWords(going)}${ends ? ', and ends for some installation types' : ''}.`];
  });
}

/** Stands for the end of an item; no id is empty. */
const ENDS = '';

function heirsIn(state: DraftState): ReadonlyMap<ItemId, readonly ItemId[]> {
  const heirs = new Map<ItemId, ItemId[]>();
  for (const { from, to } of linksOf(state)) {
    if (from !== null) heirs.set(from, [...(heirs.get(from) ?? []), to ?? ENDS]);
  }
  for (const list of heirs.values()) list.sort();
  return heirs;
}
