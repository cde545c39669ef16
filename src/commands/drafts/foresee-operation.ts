import { type DraftState, linksOf, nameOf } from '../../editing/draft-state.ts';
import type { Decision, Extent } from '../../model/crosswalk.ts';
import type { EditionDates } from '../../model/edition.ts';
import type { Item, ItemId } from '../../model/item.ts';
import { type Places, placesOf } from '../../model/places.ts';
import { inWords } from '../../model/said-words.ts';
import { typeName } from '../../model/settings.ts';
import { compareItems, type FieldText } from './compare-items.ts';
import { settingsChanges } from './foresee-settings.ts';

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
  /** Where siblings stand in another order; a sentence each. */
  readonly orders: readonly string[];
  /** Names and numbers of the catalog that are not what they were; a sentence each. */
  readonly settings: readonly string[];
  /** Decisions that hold edition-wide and were not on record. */
  readonly decisions: readonly Decision[];
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
    // Types by the names of afterwards on both sides: a type that is renamed changes no item.
    compareItems(a, b, { from: namesOf(after, old, a.id), to: namesOf(after, now, b.id) }).filter(f => f.changed);
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
    orders: orderChanges(before, after, now),
    settings: settingsChanges(before.settings, after.settings),
    decisions: after.decisions.filter(d => !before.decisions.some(known => known.id === d.id)),
    lineage: lineageChanges(before, after),
  };
}

function dayChanges({ dates: was }: DraftState, { dates: is }: DraftState): Foreseen['days'] {
  const names = [...new Set([...Object.keys(was), ...Object.keys(is)])] as (keyof EditionDates)[];
  return names
    .filter(name => was[name] !== is[name])
    .map(name => ({ name, from: was[name] ?? '', to: is[name] ?? '' }));
}

/** Parents whose children of before stand in another order; what only came or went says nothing about order. */
function orderChanges(before: DraftState, after: DraftState, now: Places<Item>): string[] {
  const stays = new Set(after.items.map(i => i.id));
  const was = new Map(before.items.filter(i => stays.has(i.id)).map(i => [i.id, i.parent]));
  const under = (items: readonly Item[]) => {
    const children = new Map<ItemId | null, ItemId[]>();
    for (const { id, parent } of items) {
      if (was.has(id)) children.set(parent, [...(children.get(parent) ?? []), id]);
    }
    return children;
  };
  const [old, is] = [under(before.items), under(after.items)];
  return [...is].flatMap(([parent, children]) => {
    const same = new Set(children);
    const known = (old.get(parent) ?? []).filter(id => same.has(id));
    const left = new Set(known);
    if (children.filter(id => left.has(id)).join(' ') === known.join(' ')) return [];
    return [`What stands under ${parent === null ? 'the top' : nameOf(now.get(parent)!)} is put in another order.`];
  });
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
    const [before, after] = [was.get(item.id) ?? [], is.get(item.id) ?? []];
    const heirs = after.map(h => h.to);
    const said = `${nameOf(item)} of ${older.header.name}`;
    const known = new Map(before.map(h => [h.to, h.extents]));
    if (before.length === after.length && heirs.every(id => known.has(id))) {
      return after
        .filter(h => h.extents !== known.get(h.to))
        .map(h => `${said} still goes on in ${names.get(h.to) ?? h.to}: ${h.extents}.`);
    }
    const going = heirs.filter(id => id !== ENDS).map(id => names.get(id) ?? id);
    const ends = heirs.includes(ENDS);
    if (going.length === 0) return [ends ? `${said} ends.` : `${said} is not accounted for.`];
    return [`${said} goes on in ${inWords(going)}${ends ? ', and ends for some installation types' : ''}.`];
  });
}

/** Stands for the end of an item; no id is empty. */
const ENDS = '';

interface HeirSaid {
  readonly to: ItemId;
  /** How much of which, in words. */
  readonly extents: string;
}

function heirsIn(state: DraftState): ReadonlyMap<ItemId, readonly HeirSaid[]> {
  const heirs = new Map<ItemId, HeirSaid[]>();
  for (const { from, to, fromExtent, toExtent } of linksOf(state)) {
    if (from === null) continue;
    const extents = to === null ? '' : `${GOING_ON[fromExtent]}, and ${BEING[toExtent]}`;
    heirs.set(from, [...(heirs.get(from) ?? []), { to: to ?? ENDS, extents }]);
  }
  const place = new Map(state.items.map((item, at) => [item.id, at]));
  const at = ({ to }: HeirSaid) => place.get(to) ?? -1;
  for (const list of heirs.values()) list.sort((a, b) => at(a) - at(b));
  return heirs;
}

const GOING_ON: Readonly<Record<Extent, string>> = {
  all: 'as a whole',
  part: 'in part',
  unknown: 'nobody said how far',
};
const BEING: Readonly<Record<Extent, string>> = {
  all: 'is all of it',
  part: 'is a part of it',
  unknown: 'nobody said how much of it that is',
};
