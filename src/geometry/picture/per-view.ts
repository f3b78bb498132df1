import type { View } from "./view.ts";

/** What is worked out of a thing as seen along a view, once for each direction of the view and for as long as the thing lives. */
export function perView<K extends object, V>(make: (thing: K, view: View) => V): (thing: K, view: View) => V {
  const made = new WeakMap<K, Map<string, V>>();
  return (thing, view) => {
    const ofViews = made.get(thing) ?? new Map<string, V>();
    const known = ofViews.get(view.key);
    if (known !== undefined) return known;
    if (ofViews.size === 0) made.set(thing, ofViews);
    const value = make(thing, view);
    ofViews.set(view.key, value);
    return value;
  };
}
