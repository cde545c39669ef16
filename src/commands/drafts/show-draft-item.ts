import { sourcesOf, typesOf } from '../../editing/draft-state.ts';
import type { Item } from '../../model/item.ts';
import type { Catalog } from '../../store/open.ts';
import { namedInDraft } from '../reading/named-item.ts';
import { readDraft } from './read-draft.ts';

/** An item of a draft with what it was made of at hand. */
export interface DraftItem {
  readonly item: Item;
  readonly types: readonly string[];
  /** The old items that it stands for, with their words. */
  readonly sources: readonly Item[];
  /** Its lineage says this about them. */
  readonly notes: readonly string[];
  readonly children: readonly Item[];
}

/** Looks an item of a draft up; without a name, the outline's top. */
export async function showDraftItem(
  catalog: Catalog,
  draft: string | undefined,
  name: string | undefined,
): Promise<DraftItem | { readonly children: readonly Item[] }> {
  const { state } = await readDraft(catalog, draft);
  if (name === undefined) return { children: state.items.filter(i => i.parent === null) };
  const id = namedInDraft(state, name);
  const from = new Set(sourcesOf(state, id));
  return {
    item: state.items.find(i => i.id === id)!,
    types: typesOf(state, id),
    sources: state.older?.items.filter(i => from.has(i.id)) ?? [],
    notes: state.lineage.flatMap(r => (r.note !== undefined && from.has(r.from ?? '') ? [r.note] : [])),
    children: state.items.filter(i => i.parent === id),
  };
}
