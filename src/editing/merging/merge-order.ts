import type { ItemId } from '../../model/item.ts';
import { type Conflict, same, type Takes, type Three } from './three-way.ts';

/**
 * The order of the items below one parent. Where one side alone changed the order of what was there, its order holds;
 * what only the other side has comes right after the sibling that it follows there.
 */
export function mergeOrder(
  here: ReadonlySet<ItemId>,
  { base, ours, theirs, unsettled }: Three<readonly ItemId[]>,
  parent: string,
  takes: Takes,
  conflicts: Conflict[],
): readonly ItemId[] {
  const known = new Set(base.filter(id => ours.includes(id) && theirs.includes(id)));
  const common = (list: readonly ItemId[]) => list.filter(id => known.has(id));
  const [before, mine, other] = [common(base), common(ours), common(theirs)];
  const untouched = (side: readonly ItemId[]) => !unsettled?.has(parent) && same(before, side);
  const bothMoved = !untouched(mine) && !untouched(other) && !same(mine, other);
  const side = takes.get(parent);
  if (bothMoved && side === undefined) conflicts.push({ about: parent, what: 'order', ours: mine, theirs: other });
  const theirsLead = bothMoved ? side === 'theirs' : same(before, mine);
  const [leading, following] = theirsLead ? [theirs, ours] : [ours, theirs];
  const order = leading.filter(id => here.has(id));
  const placed = new Set(order);
  let last: ItemId | undefined;
  for (const id of [...following, ...here]) {
    if (here.has(id) && !placed.has(id)) {
      order.splice(last === undefined ? 0 : order.indexOf(last) + 1, 0, id);
      placed.add(id);
    }
    if (placed.has(id)) last = id;
  }
  return order;
}
