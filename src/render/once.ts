/** What costs much, made when it is first asked for, and no second time. */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** The same for each key. */
export function onceFor<K, T>(make: (key: K) => T): (key: K) => T {
  const made = new Map<K, { readonly value: T }>();
  return (key) => {
    const found = made.get(key) ?? { value: make(key) };
    made.set(key, found);
    return found.value;
  };
}
