/** Things by a text that they share, in the order of the first of each. */
export function together<T>(all: readonly T[], key: (each: T) => string): readonly (readonly [T, ...T[]])[] {
  const groups = new Map<string, [T, ...T[]]>();
  for (const each of all) {
    const group = groups.get(key(each));
    if (group) group.push(each);
    else groups.set(key(each), [each]);
  }
  return [...groups.values()];
}
