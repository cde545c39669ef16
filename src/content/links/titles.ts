import type { ItemContent, TypeId } from '../../model/item.ts';
import type { InstallationType } from '../../model/settings.ts';
import { words } from '../../text/words.ts';
import { isEmptyWord } from '../reading/empty-words.ts';
import { base, meaning } from '../reading/meaning.ts';
import { namesOf } from '../reading/type-names.ts';

/**
 * Whether titles name the same thing, by the words that say something, in no order. Names of installation types are none
 * of it where the type itself is among them: "Downpipe, house lot" is a downpipe, for a house. For a terrace it may be
 * another. Parts of a split name beside the whole what they are of it: "Downpipe" → "Downpipe insulation", "Downpipe test".
 */
export function nameTheSame(
  from: readonly ItemContent[],
  to: readonly ItemContent[],
  type: TypeId | undefined,
  types: readonly InstallationType[],
): boolean {
  const named = (items: readonly ItemContent[]) => {
    const all = items.flatMap(i => withoutTypes(words(i.title), type, types)).filter(w => !isEmptyWord(w));
    return new Set(all.map(meaning));
  };
  const [before, after] = [named(from), named(to)];
  const goesOn = [...before].every(w => after.has(w));
  return from.length === 1 && to.length > 1 ? before.size > 0 && goesOn : goesOn && before.size === after.size;
}

function withoutTypes(title: readonly string[], type: TypeId | undefined, types: readonly InstallationType[]) {
  if (type === undefined) return title;
  const names = namesOf(types);
  const [left, named]: [string[], Set<TypeId>] = [[], new Set()];
  for (let at = 0; at < title.length; ) {
    const name = names.find(n => n.stems.every((stem, i) => base(title[at + i] ?? '') === stem));
    if (name) named.add(name.type);
    else left.push(title[at]!);
    at += name?.stems.length ?? 1;
  }
  // A title of nothing but types names them.
  return named.has(type) && left.some(w => !isEmptyWord(w)) ? left : title;
}
