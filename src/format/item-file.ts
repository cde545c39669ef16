import { CONTENT_FIELDS, type Item, type ItemId } from '../model/item.ts';
import { parseJson, writeJson } from './json.ts';
import { type StoredItem, storedItem } from './schemas.ts';

/**
 * The items of one file of `items/`, without the edition around it: the file's own item stands at level 1, and numbers
 * are only those that are printed as they came. Undefined where the text is no such file.
 */
export function parseItemFile(path: string, source: string): readonly Item[] | undefined {
  const parsed = parseJson(path, source, storedItem);
  if (!('value' in parsed)) return undefined;
  const items: Item[] = [];
  const put = ({ items: nested = [], number = '', ...said }: StoredItem, parent: ItemId | null, level: number) => {
    items.push({ ...said, number, level, parent } as Item);
    for (const inner of nested) put(inner, said.id, level + 1);
  };
  put(parsed.value, null, 1);
  return items;
}

/** The file of these items; the first is the file's own. */
export function writeItemFile([own, ...below]: readonly Item[]): string {
  const stored = new Map<ItemId, StoredItem>();
  const store = (item: Item): StoredItem => {
    const entry: Record<string, unknown> = { id: item.id };
    if (item.number !== '') entry.number = item.number;
    for (const field of ['kind', 'alsoAt', ...CONTENT_FIELDS] as const) {
      if (item[field] !== undefined) entry[field] = item[field];
    }
    return entry as unknown as StoredItem;
  };
  const root = store(own!);
  stored.set(own!.id, root);
  for (const item of below) {
    const entry = store(item);
    stored.set(item.id, entry);
    const parent = stored.get(item.parent!)!;
    parent.items = [...(parent.items ?? []), entry];
  }
  return writeJson(root);
}
