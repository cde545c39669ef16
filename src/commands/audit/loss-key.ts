import { createHash } from 'node:crypto';
import type { ItemId, TypeId } from '../../model/item.ts';

/**
 * Names the question whether a phrase of an old item was lost, in 16 hex digits of SHA-256. Texts are no part of it: an
 * answer is replaced in its file when the question is asked again.
 */
export function lossKey(
  from: string,
  to: string,
  item: ItemId,
  types: readonly TypeId[],
  kind: string,
  text: string,
): string {
  const question = JSON.stringify([from, to, item, types, kind, text]);
  return createHash('sha256').update(question, 'utf8').digest('hex').slice(0, 16);
}
