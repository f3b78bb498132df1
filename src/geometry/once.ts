/** A pure function of one object that works each value out once, for as long as the object lives. */
export function once<K extends object, V>(make: (key: K) => V): (key: K) => V {
  const made = new WeakMap<K, { readonly value: V }>();
  return (key) => {
    let known = made.get(key);
    if (!known) {
      known = { value: make(key) };
      made.set(key, known);
    }
    return known.value;
  };
}
