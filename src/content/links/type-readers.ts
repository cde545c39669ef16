import type { Joint } from '../../crosswalk/joint.ts';
import type { Item, ItemContent, TypeId } from '../../model/item.ts';
import { namesTypes, type TypeReader, typeReader } from '../reading/for-type.ts';
import { remembered } from '../reading/remembered.ts';
import { nameTheSame } from './titles.ts';

/** Reads texts of two editions for one installation type, by the names that either edition gives to its types. */
export interface Readers {
  readonly forType: TypeReader;
  /** An item without what it says for other types that it holds for; the item itself where it names none. */
  itemFor(item: Item, type: TypeId, holdsFor: readonly TypeId[]): Item;
  /** Whether a text says something for some of the types by name. */
  namesTypes(text: string): boolean;
  /** Whether titles name the same thing, whichever types they name beside it. */
  nameTheSame(from: readonly ItemContent[], to: readonly ItemContent[], type: TypeId | undefined): boolean;
}

export const readersOf = remembered(({ from, to }: Joint): Readers => {
  const all = [from, to].flatMap(e => e.settings.installationTypes);
  const types = all.filter((t, at) => all.findIndex(o => o.id === t.id && o.name === t.name) === at);
  const forType = typeReader(types);
  const isTyped = namesTypes(types);
  return {
    forType,
    namesTypes: isTyped,
    nameTheSame: (from, to, type) => nameTheSame(from, to, type, types),
    itemFor: (item, type, holdsFor) => {
      const fields = (['text', 'outcome', 'caution'] as const).filter(f => item[f] !== undefined && isTyped(item[f]));
      if (fields.length === 0) return item;
      return { ...item, ...Object.fromEntries(fields.map(f => [f, forType(item[f]!, type, holdsFor).text])) };
    },
  };
});
