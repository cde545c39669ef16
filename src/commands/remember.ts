/**
 * A reading that is done once for each key and then remembered, the keys used last being kept. A reading that fails
 * is not remembered and pushes nothing out; two that ask at the same time share one.
 */
export function remember<T>(most: number, read: (key: string) => Promise<T>): (key: string) => Promise<T> {
  const known = new Map<string, Promise<T>>();
  return key => {
    const before = known.get(key);
    const value = before ?? read(key);
    known.delete(key);
    known.set(key, value);
    if (!before) {
      value.then(
        () => {
          if (known.size > most) known.delete(known.keys().next().value!);
        },
        () => known.delete(key),
      );
    }
    return value;
  };
}
