import { groupBy } from '../../model/group-by.ts';
import { CONTENT_FIELDS, type Item, type ItemId } from '../../model/item.ts';
import { mergeOrder } from './merge-order.ts';
import { byKey, type Conflict, same, spread, type Takes, type Three, threeWay } from './three-way.ts';

/** What is merged of an item besides its place. Its number is not: it follows from the place, or stays as printed. */
const FIELDS = [...CONTENT_FIELDS, 'kind', 'alsoAt'] as const;

/** The items of both sides in document order, each with what either side did to it. */
export function mergeItems(sides: Three<readonly Item[]>, takes: Takes, conflicts: Conflict[]): readonly Item[] {
  const maps = spread(sides, items => byKey(items, i => i.id));
  const merged = new Map<ItemId, Item>();
  for (const id of new Set([...maps.base.keys(), ...maps.ours.keys(), ...maps.theirs.keys()])) {
    const item = mergeItem(
      id,
      spread(maps, m => m.get(id)),
      takes,
      conflicts,
    );
    if (item) merged.set(id, item);
  }
  keepParents(merged, maps, takes, conflicts);
  breakCircles(merged, maps, takes, conflicts);
  return inOrder(merged, sides, takes, conflicts);
}

function mergeItem(
  id: ItemId,
  { base, ours, theirs, unsettled }: Three<Item | undefined>,
  takes: Takes,
  conflicts: Conflict[],
): Item | undefined {
  if (ours && theirs) {
    // Both brought it in: with either of them for a base, the other's words would win without a word.
    const sides = base
      ? { base, ours, theirs, ...(unsettled ? { unsettled } : {}) }
      : { base: ours, ours, theirs, unsettled: new Set([id]) };
    return mergeFields(id, sides, takes, conflicts);
  }
  const side = takes.get(id);
  if (side !== undefined) return side === 'ours' ? ours : theirs;
  const there = ours ?? theirs;
  if (!there || !base) return there;
  if (!unsettled?.has(id) && unchanged(base, there)) return undefined;
  conflicts.push({ about: id, what: 'gone', ours: said(ours), theirs: said(theirs) });
  return there;
}

const said = (item: Item | undefined) => (item ? (item.text ?? item.title) : 'ended');

/** Whether a side left an item alone. */
function unchanged(base: Item, now: Item): boolean {
  return base.parent === now.parent && FIELDS.every(f => same(base[f], now[f]));
}

function mergeFields(id: ItemId, sides: Three<Item>, takes: Takes, conflicts: Conflict[]): Item {
  const parent = threeWay(
    spread(sides, s => s.parent),
    id,
    'place',
    takes,
    conflicts,
  );
  const fields = FIELDS.map(field => [
    field,
    threeWay<unknown>(
      spread(sides, s => s[field]),
      id,
      field,
      takes,
      conflicts,
    ),
  ]);
  const { number, level } = sides.ours;
  const told = Object.fromEntries(fields.filter(([, value]) => value !== undefined));
  return { id, number, level, parent, ...told } as unknown as Item;
}

/**
 * What one side put below an item that the other side ended keeps its parent, and the conflict is told. Where the end was
 * taken it stands where that side has it, or goes with its parent.
 */
function keepParents(
  merged: Map<ItemId, Item>,
  maps: Three<Map<ItemId, Item>>,
  takes: Takes,
  conflicts: Conflict[],
): void {
  for (let missing = true; missing; ) {
    missing = false;
    for (const item of [...merged.values()]) {
      const { id, parent } = item;
      if (parent === null || merged.has(parent) || !merged.has(id)) continue;
      missing = true;
      const side = takes.get(parent);
      const elsewhere = side && maps[side].get(id);
      if (side && elsewhere && (elsewhere.parent === null || merged.has(elsewhere.parent))) {
        merged.set(id, { ...item, parent: elsewhere.parent });
        continue;
      }
      // Taken itself, it needs its parent whatever was taken for that one.
      if (side && takes.get(id) === undefined) {
        merged.delete(id);
        continue;
      }
      merged.set(parent, (maps.ours.get(parent) ?? maps.theirs.get(parent))!);
      conflicts.push({ about: parent, what: 'gone', ours: maps.ours.has(parent) ? `holds ${id}` : 'ended' });
    }
  }
}

/** One moved A below B, the other B below A: both stay where ours has them, or the side that was taken. */
function breakCircles(
  merged: Map<ItemId, Item>,
  maps: Three<Map<ItemId, Item>>,
  takes: Takes,
  conflicts: Conflict[],
): void {
  for (const { id } of [...merged.values()]) {
    const seen = new Set<ItemId>([id]);
    for (let at = merged.get(id)?.parent ?? null; at !== null; at = merged.get(at)?.parent ?? null) {
      if (!seen.has(at)) {
        seen.add(at);
        continue;
      }
      const side = [...seen].map(inCircle => takes.get(inCircle)).find(taken => taken !== undefined);
      for (const inCircle of seen) {
        const there = maps[side ?? 'ours'].get(inCircle);
        if (there) merged.set(inCircle, { ...merged.get(inCircle)!, parent: there.parent });
      }
      if (side === undefined) conflicts.push({ about: at, what: 'place' });
      break;
    }
  }
}

function inOrder(
  merged: ReadonlyMap<ItemId, Item>,
  sides: Three<readonly Item[]>,
  takes: Takes,
  conflicts: Conflict[],
): readonly Item[] {
  const idsIn = (items: readonly Item[] = []) => items.map(i => i.id);
  const children = spread(sides, items => groupBy(items, i => i.parent));
  const under = groupBy([...merged.values()], i => i.parent);
  const items: Item[] = [];
  const walk = (parent: ItemId | null, level: number) => {
    const order = mergeOrder(
      new Set(idsIn(under.get(parent))),
      spread(children, c => idsIn(c.get(parent))),
      parent ?? 'outline',
      takes,
      conflicts,
    );
    for (const id of order) {
      items.push({ ...merged.get(id)!, level });
      walk(id, level + 1);
    }
  };
  walk(null, 1);
  return items;
}
