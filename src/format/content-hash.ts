import { createHash } from 'node:crypto';
import { CONTENT_FIELDS, type ItemContent } from '../model/item.ts';

/** 20 hex digits of SHA-256 over what an item says; number, parent and place do not count. */
export function contentHash(item: ItemContent): string {
  const fields: unknown[] = [];
  for (const field of CONTENT_FIELDS) {
    const value = item[field];
    if (value !== undefined) fields.push(field, value);
  }
  return createHash('sha256').update(JSON.stringify(fields), 'utf8').digest('hex').slice(0, 20);
}
