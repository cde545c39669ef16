import type { Finding } from '../model/finding.ts';
import type { Item, ItemId } from '../model/item.ts';

/** A number of the catalog's own that stands in one of its texts. */
export interface OwnReference {
  readonly item: ItemId;
  readonly number: string;
  readonly certain: boolean;
}

export interface ReferenceFacts {
  readonly items: readonly Item[];
  readonly references: readonly OwnReference[];
  /** Of the older edition: what a number meant there, and where that went; absent for a catalog's first edition. */
  readonly meant?: (number: string) => { readonly title: string; readonly heirs: readonly ItemId[] } | undefined;
  /** Whether the text stood in the older edition word for word: then its numbers are the older edition's. */
  readonly unchanged: (item: ItemId) => boolean;
}

/**
 * Numbers in the texts that name nothing in the draft, and - worse - numbers that name something else by now: the text
 * was left as it was while the item that it means was renumbered.
 */
export function referenceFindings({ items, references, meant, unchanged }: ReferenceFacts): Finding[] {
  const byId = new Map(items.map(i => [i.id, i]));
  const byNumber = new Map(items.map(i => [i.number, i]));
  return references.flatMap(({ item: id, number, certain }): Finding[] => {
    const item = byId.get(id)!;
    const name = [item.number, item.title].filter(Boolean).join(' ');
    const there = byNumber.get(number);
    const before = unchanged(id) ? meant?.(number) : undefined;
    const say = (rule: string, message: string): Finding => ({
      rule,
      severity: certain ? 'error' : 'warning',
      subject: id,
      message: `${name} refers to ${number}, ${message}`,
      data: { number },
    });
    if (before && !before.heirs.includes(there?.id ?? '')) {
      const now = before.heirs.map(h => byId.get(h)?.number).filter(Boolean);
      const is = there ? `is now "${there.title}"` : 'is no number of the draft';
      return [
        say(
          'reference-moved',
          `which meant "${before.title}" and ${is}; ${now.length > 0 ? `what it meant is now ${now.join(', ')}` : 'what it meant has ended'}.`,
        ),
      ];
    }
    return there ? [] : [say('reference-to-nothing', 'which is no number of the draft.')];
  });
}
