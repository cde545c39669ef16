import { diff, type IChange } from 'json-diff-ts';
import { contentOf, type ItemContent } from '../../model/item.ts';

/** A field of an item that two editions fill differently. Absent values are `undefined`. */
export interface FieldChange {
  readonly field: keyof ItemContent;
  readonly from: unknown;
  readonly to: unknown;
}

/**
 * The fields in which two items' contents differ, in the order in which fields are written. Lists are compared as
 * wholes and in order: a keyed diff would call a re-ordered list unchanged.
 */
export function fieldChanges(from: ItemContent, to: ItemContent): FieldChange[] {
  const [a, b] = [contentOf(from), contentOf(to)];
  return diff(a, b).map((change: IChange) => {
    const field = change.key as keyof ItemContent;
    return { field, from: a[field], to: b[field] };
  });
}
