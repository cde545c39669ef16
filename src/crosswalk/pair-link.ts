import type { Link } from '../model/crosswalk.ts';
import type { ItemId } from '../model/item.ts';

/** A link that joins two items; withdrawals and arrivals have no marks. */
export type PairLink = Link & { readonly from: ItemId; readonly to: ItemId };

export function isPair(link: Link): link is PairLink {
  return link.from !== null && link.to !== null;
}
