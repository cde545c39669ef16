import type { Joint } from '../crosswalk/joint.ts';
import type { CommentRecord } from '../model/comment.ts';
import type { Entry } from '../model/edition.ts';
import type { Finding } from '../model/finding.ts';
import type { ItemId } from '../model/item.ts';
import type { Places } from '../model/places.ts';
import { needsChange } from './comments.ts';

/** Where a comment's items stand today. */
export interface CommentNow {
  readonly record: CommentRecord;
  readonly now: readonly Pick<Entry, 'id' | 'number' | 'title'>[];
  /** At least one of its items has no place and no heir any more: withdrawn, or gone without a record. */
  readonly gone?: 'withdrawn' | 'gone';
  /** The text of one of the draft's own items differs from what was circulated. */
  readonly changed: boolean;
}

/**
 * Finds a comment's items in the draft as it is now: by id, since numbers move while a draft is worked on; of an older
 * edition's items, and of those that the draft no longer has, the heirs.
 *
 * @param present the draft, or the edition that it became
 * @param stepFrom the crosswalk from an older edition to it
 */
export function commentNow(
  record: CommentRecord,
  present: { readonly name: string; readonly places: Places<Entry> },
  stepFrom: (edition: string) => Joint | undefined,
  replaced: string | null,
): CommentNow {
  const now = new Map<ItemId, Entry>();
  let gone: CommentNow['gone'];
  let changed = false;
  for (const { edition, id, hash } of record.items) {
    const own = edition === present.name ? present.places.get(id) : undefined;
    if (own) {
      now.set(own.id, own);
      changed ||= own.hash !== hash;
      continue;
    }
    // An item that was taken out of the draft after it went round may still be accounted for from the edition before.
    const step = stepFrom(edition === present.name ? (replaced ?? '') : edition);
    const links = step?.leaving(id) ?? [];
    const heirs = links.flatMap(l => (l.to === null ? [] : (present.places.get(l.to) ?? [])));
    for (const heir of heirs) now.set(heir.id, heir);
    if (heirs.length === 0) gone = links.length > 0 && gone !== 'gone' ? 'withdrawn' : 'gone';
    changed ||= edition === present.name;
  }
  return { record, now: [...now.values()], changed, ...(gone ? { gone } : {}) };
}

/** An accepted comment whose change names an item that still says what was circulated. */
export function stillAsCirculated(
  { code, edition, items, answer }: CommentRecord,
  hashNow: (id: ItemId) => string | undefined,
): Finding[] {
  const change = answer?.change;
  if (!answer || !needsChange(answer) || !change || !('item' in change)) return [];
  const circulated = items.find(i => i.edition === edition && i.id === change.item);
  if (!circulated || circulated.hash !== hashNow(change.item)) return [];
  const message = `${code}: ${change.number} is said to answer it and still says what was circulated.`;
  return [{ rule: 'comment-unchanged', severity: 'warning', subject: code, message }];
}

/** The places as they are printed: `1.1.1.6`, `1.1.1.6, 1.2`, `gone`; empty for a comment on the whole. */
export function toldNow({ record, now, gone }: CommentNow): string {
  if (record.unplaced) return 'not placed';
  if (record.items.length === 0) return '';
  const numbers = now.map(e => e.number || e.title);
  return [
    ...(numbers.length > 6 ? [...numbers.slice(0, 5), `and ${numbers.length - 5} more`] : numbers),
    ...(gone ? [gone] : []),
  ].join(', ');
}
