/** A pure function of one value that is asked for again and again while the value is about; forgotten together with it. */
export function remembered<K extends object, V extends object>(give: (key: K) => V): (key: K) => V {
  const known = new WeakMap<K, V>();
  return key => {
    const value = known.get(key) ?? give(key);
    known.set(key, value);
    return value;
  };
}
