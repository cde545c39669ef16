import { joinEditions } from '../../src/crosswalk/joint.ts';
import type { EditionIndex } from '../../src/model/edition.ts';
import type { Item, ItemContent } from '../../src/model/item.ts';

type Line = readonly [
  id: string,
  title: string,
  text: string,
  appliesTo?: readonly string[] | undefined,
  beside?: Pick<ItemContent, 'verified' | 'references'> | undefined,
];

const TYPES = [
  { id: 'villa', name: 'Villa' },
  { id: 'shop', name: 'Shop' },
];

/** Two editions without parts, of villas and shops where an item says to which it applies, and links from old ids to new ones. */
export function smallEditions(
  old: readonly Line[],
  now: readonly Line[],
  links: readonly (readonly [string, string])[],
) {
  const [a, b] = [edition('old', old), edition('now', now)];
  const joint = joinEditions(a.index, b.index, {
    from: 'old',
    to: 'now',
    links: links.map(([from, to]) => ({
      from,
      to,
      fromExtent: 'unknown',
      toExtent: 'unknown',
      basis: 'declared',
      confidence: 1,
    })),
  });
  return { joint, texts: { from: (id: string) => a.items.get(id), to: (id: string) => b.items.get(id) } };
}

function edition(name: string, lines: readonly Line[]) {
  const items = lines.map(
    ([id, title, text, appliesTo, beside]): Item => ({
      ...{ id, number: id, level: 1, parent: null, title, text },
      ...(appliesTo && { appliesTo }),
      ...beside,
    }),
  );
  const typed = lines.some(l => l[3] !== undefined);
  const index: EditionIndex = {
    header: { name, erratum: 0, replaces: null, dates: {}, state: 'published' },
    settings: {
      title: 'Small',
      language: 'en',
      levels: [{ name: 'Requirement', obliges: true }],
      fileLevel: 1,
      numbering: { levels: [{ style: 'decimal' }], numbersUnique: true },
      installationTypes: typed ? TYPES : [],
      withdrawalReasons: [],
    },
    entries: items.map(({ text, verified, references, ...item }) => ({
      ...item,
      hash: JSON.stringify([item.title, text, verified, references]),
      obliges: true,
    })),
  };
  return { index, items: new Map(items.map(i => [i.id, i])) };
}
