import type { Finding } from "../../../findings/finding.ts";
import { ambiguousName } from "../../../findings/rules/ambiguous-name.ts";
import { unknownName } from "../../../findings/rules/unknown-name.ts";
import { nearestPath } from "../../../findings/suggest.ts";
import type { Reference } from "../../../parse/draft.ts";

type Path = readonly string[];

/**
 * Indices of the paths that a name may mean. It is looked for in the group in which it was written, then in the groups around that:
 * in each, the path that equals the name is the only answer, else all that end in it.
 */
export function matchPath(
  paths: readonly Path[],
  { path: wanted, home = [] }: Omit<Reference, "at">,
): readonly number[] {
  for (let depth = home.length; depth >= 0; depth -= 1) {
    const group = home
      .slice(0, depth)
      .map((name) => `${name}.`)
      .join("");
    const name = wanted.join(".");
    const exact = paths.findIndex((path) => path.join(".") === `${group}${name}`);
    if (exact >= 0) return [exact];
    const ending = paths.flatMap((path, i) =>
      path.slice(-wanted.length).join(".") === name && path.join(".").startsWith(group) ? [i] : [],
    );
    if (ending.length > 0) return ending;
  }
  return [];
}

/** Tells why a reference does not lead to exactly one thing. */
export function reportMatch(
  reference: Reference,
  matches: readonly Path[],
  all: readonly Path[],
  report: (finding: Finding) => void,
): void {
  const name = reference.path.join(".");
  if (matches.length > 1) {
    report(ambiguousName(reference.at, { name, candidates: matches.map((path) => path.join(".")) }));
    return;
  }
  const words = [...new Set(all.flatMap((path) => [path.join("."), path.at(-1) as string]))];
  report(unknownName(reference.at, { name, nearest: nearestPath(name, words) }));
}
