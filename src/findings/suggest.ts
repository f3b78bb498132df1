/**
 * The known words nearest to one that is not known: one edit away, or two from five letters on if it begins alike, and more alike
 * than not; at most three, and none when unsure. Case, hyphens and blanks do not count as edits.
 */
export function nearest(word: string, known: readonly string[]): readonly string[] {
  const wanted = bare(word);
  if (wanted.length === 0 || wanted.length > 60) return [];
  const most = [...wanted].length < 5 ? 1 : 2;
  const near = known
    .filter((candidate) => Math.abs(candidate.length - word.length) <= 6)
    .map((candidate, order) => ({ candidate, order, distance: editDistance(wanted, bare(candidate)) }))
    .filter(({ candidate, distance }) => distance <= most && alike(distance, wanted, bare(candidate)));
  const best = Math.min(...near.map(({ distance }) => distance));
  return near
    .filter(({ distance }) => distance === best)
    .sort((a, b) => a.order - b.order)
    .slice(0, 3)
    .map(({ candidate }) => candidate);
}

/** A path that skips a group: known paths that hold all its names in their order, the last of them last; at most three. */
export function nearestPath(path: string, known: readonly string[]): readonly string[] {
  const wanted = path.split(".");
  if (wanted.length < 2) return nearest(path, known);
  const whole = known.filter((candidate) => {
    const names = candidate.split(".");
    const reached = names.reduce((so, name) => (name === wanted[so] ? so + 1 : so), 0);
    return reached === wanted.length && names.at(-1) === wanted.at(-1);
  });
  return whole.length > 0 ? whole.slice(0, 3) : nearest(path, known);
}

const bare = (word: string): string => word.toLowerCase().replace(/[\s_-]+/g, "");

/** Two edits make `height` of `lenght`, which was meant as `length`: people seldom mistake the first letter. */
const alike = (distance: number, a: string, b: string): boolean => {
  const longest = Math.max(a.length, b.length);
  return (longest - distance) * 5 > longest * 2 && (distance < 2 || a.charAt(0) === b.charAt(0));
};

/** Insertions, deletions, replacements and swaps of neighbours (optimal string alignment) that turn a into b. */
export function editDistance(a: string, b: string): number {
  const [from, to] = [[...a], [...b]];
  let [twoBack, oneBack]: [number[], number[]] = [[], to.map((_, j) => j).concat(to.length)];
  for (let i = 1; i <= from.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= to.length; j += 1) {
      const same = from[i - 1] === to[j - 1] ? 0 : 1;
      let best = Math.min((oneBack[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (oneBack[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1])
        best = Math.min(best, (twoBack[j - 2] ?? 0) + 1);
      row.push(best);
    }
    [twoBack, oneBack] = [oneBack, row];
  }
  return oneBack[to.length] ?? 0;
}

/** "`a`", "`a` or `b`", "`a`, `b` or `c`"; undefined for an empty list. */
export function orList(words: readonly string[]): string | undefined {
  const quoted = words.map((word) => `\`${word}\``);
  const last = quoted.pop();
  if (last === undefined) return undefined;
  return quoted.length === 0 ? last : `${quoted.join(", ")} or ${last}`;
}
