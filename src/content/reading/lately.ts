/**
 * A pure reading whose last results are kept by their key: the texts of a merge are compared once for each of its links and
 * types. Bounded, since a reading is far larger than its text; what was used longest ago goes first.
 */
export function lately<T>(most: number, read: (key: string) => T): (key: string) => T {
  const known = new Map<string, T>();
  return key => {
    const before = known.get(key);
    const value = before ?? read(key);
    known.delete(key);
    known.set(key, value);
    if (known.size > most) known.delete(known.keys().next().value!);
    return value;
  };
}
