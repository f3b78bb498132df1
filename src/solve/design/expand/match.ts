import type { Finding } from "../../../findings/finding.ts";
import { ambiguousName } from "../../../findings/rules/ambiguous-name.ts";
import { unknownName } from "../../../findings/rules/unknown-name.ts";
import { nearest } from "../../../findings/suggest.ts";
import type { Reference } from "../../../parse/draft.ts";

/** Indices of the paths that end in `wanted`; the one that equals it, if there is one, is the only answer. */
export function matchPath(paths: readonly (readonly string[])[], wanted: readonly string[]): readonly number[] {
  const name = wanted.join(".");
  const exact = paths.findIndex((path) => path.join(".") === name);
  if (exact >= 0) return [exact];
  return paths.flatMap((path, i) => (path.slice(-wanted.length).join(".") === name ? [i] : []));
}

/** Tells why a reference does not lead to exactly one thing. */
export function reportMatch(
  reference: Reference,
  matches: readonly (readonly string[])[],
  all: readonly (readonly string[])[],
  report: (finding: Finding) => void,
): void {
  const name = reference.path.join(".");
  if (matches.length > 1) {
    report(ambiguousName(reference.at, { name, candidates: matches.map((path) => path.join(".")) }));
    return;
  }
  const words = [...new Set(all.flatMap((path) => [path.join("."), path.at(-1) as string]))];
  report(unknownName(reference.at, { name, nearest: nearest(name, words) }));
}
