import { retentionOf } from '../../content/lost/lost.ts';
import { type Reading, readText } from '../../content/reading/reading.ts';
import type { Joint } from '../../crosswalk/joint.ts';
import type { ItemId, TypeId } from '../../model/item.ts';
import { type BareTexts, type ChangedText, type EditionTexts, textsAfter } from './old-sayings.ts';
import { type TypeValue, valuesByType } from './type-values.ts';

/**
 * Texts with the values that changed between them. It stands apart from all that only uses them: telling a change takes
 * the language library and its model, which a page in a browser is spared by being handed the changes ready-made.
 */
export function withChanges(joint: Joint, texts: BareTexts): EditionTexts {
  return {
    ...texts,
    changed: id => {
      const text = texts.from(id);
      if (text === undefined) return [];
      const from = readText(text);
      const { changed } = retentionOf(from, textsAfter(joint, texts, id).map(readText));
      if (changed.length === 0) return [];
      const groups = typeGroups(joint, texts, id, from);
      return changed.map(({ start, end, to }): ChangedText => {
        const byType = merged(groups.flatMap(group => group.valueOf(start)));
        if (byType.length > 1) return { start, end, to, byType };
        // An item for house lots only became "500 mm, or 450 mm on a house lot": 450 mm is its value, and no other.
        const isForAll = byType[0] && joint.old.types(id).every(type => byType[0]!.types.includes(type));
        return { start, end, to: isForAll ? byType[0]!.to : to };
      });
    },
  };
}

interface TypeGroup {
  /** The values that take the place of the old one that begins there, for the types of the group. */
  valueOf(start: number): readonly TypeValue[];
}

/** Installation types of an old item whose heirs are the same. */
function typeGroups(joint: Joint, texts: BareTexts, id: ItemId, from: Reading): readonly TypeGroup[] {
  const groups = new Map<string, { types: TypeId[]; says: readonly string[] }>();
  for (const type of joint.old.types(id)) {
    const says = textsAfter(joint, texts, id, type);
    const key = JSON.stringify(says);
    const known = groups.get(key);
    if (known) known.types.push(type);
    else groups.set(key, { types: [type], says });
  }
  const names = [...joint.to.settings.installationTypes, ...joint.from.settings.installationTypes];
  return [...groups.values()].map(({ types, says }) => {
    const { changed } = retentionOf(from, says.map(readText));
    return {
      valueOf: start => {
        const to = changed.find(c => c.start === start)?.to;
        if (to === undefined) return [];
        const split = says.filter(text => text.includes(to)).map(text => valuesByType(text, to, names, types));
        return split.find(values => values.length > 0) ?? [{ types, to }];
      },
    };
  });
}

/** Types that have the same value stand together. */
function merged(values: readonly TypeValue[]): readonly TypeValue[] {
  const byValue = new Map<string, TypeId[]>();
  for (const { types, to } of values) byValue.set(to, [...(byValue.get(to) ?? []), ...types]);
  return [...byValue].map(([to, types]) => ({ types: [...new Set(types)], to }));
}
