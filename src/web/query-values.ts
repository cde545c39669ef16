/**
 * Values of an address's query. Keys may repeat, and a value may then be a list; nothing of it is ever spread into a
 * template's values, where `settings` or `__proto__` would mean something.
 */
type Query = Readonly<Record<string, unknown>>;

/** The first value of a key, trimmed and cut; undefined where it is absent or empty. */
export function firstValue(query: Query, key: string, longest = 1000): string | undefined {
  return valuesOf(query, key, longest)[0];
}

export function valuesOf(query: Query, key: string, longest = 1000): string[] {
  const value: unknown = Object.hasOwn(query, key) ? query[key] : undefined;
  const list = Array.isArray(value) ? value : [value];
  return list
    .filter(v => typeof v === 'string')
    .map(v => v.slice(0, longest).trim())
    .filter(v => v !== '');
}

/** A page number from 1; anything else is 1. */
export function pageOf(query: Query): number {
  const text = firstValue(query, 'page') ?? '';
  return /^[1-9]\d{0,6}$/.test(text) ? Number(text) : 1;
}

/** A name for a download that every system takes, whatever an edition is called. */
export const fileName = (...parts: readonly string[]) =>
  parts.map(part => part.replace(/[^A-Za-z0-9.-]/g, '_')).join('-');
