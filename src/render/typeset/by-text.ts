/** A pure function of a text that works each value out once: the same words come again and again. */
export function byText<V>(make: (text: string) => V): (text: string) => V {
  const made = new Map<string, { readonly value: V }>();
  return (text) => {
    let known = made.get(text);
    if (!known) {
      known = { value: make(text) };
      made.set(text, known);
    }
    return known.value;
  };
}
