import type { Finding } from "../../../findings/finding.ts";
import type { Reference } from "../../../parse/draft.ts";
import type { Entry } from "./entry.ts";
import type { Expansion } from "./expand.ts";
import { matchPath, reportMatch } from "./match.ts";

/** Finds parts by what a maker calls them: a path or the unambiguous end of one. A row of copies or a group is all its parts. */
export interface Directory {
  /** Null when nothing, or more than one thing, fits; reported. */
  readonly find: (reference: Reference) => readonly Entry[] | null;
  /** Whether the words name something, one thing or several; never reported. */
  readonly knows: (name: Omit<Reference, "at">) => boolean;
  readonly byId: ReadonlyMap<string, Entry>;
}

export function createDirectory(
  { entries, groups, apart, failed }: Expansion,
  report: (finding: Finding) => void,
): Directory {
  const things = new Map<string, Entry[]>();
  const put = (name: string, entry: Entry): void => {
    const list = things.get(name);
    if (list) list.push(entry);
    else things.set(name, [entry]);
  };
  for (const entry of entries) {
    put(entry.id, entry);
    if (entry.copy) put(entry.path.slice(0, -1).join("."), entry);
  }
  for (const group of groups) {
    const others = [...apart].filter((path) => path.startsWith(`${group}.`));
    const inside = entries.filter(
      ({ id }) => id.startsWith(`${group}.`) && !others.some((path) => id.startsWith(`${path}.`)),
    );
    // A group is its wood; where it has none, the room that it keeps.
    const wood = inside.filter((entry) => !entry.draft.space);
    for (const entry of wood.length > 0 ? wood : inside) put(group, entry);
  }
  const paths = [...things.keys()].map((name) => name.split("."));
  const known = new Map<string, readonly Entry[] | null>();
  return {
    byId: new Map(entries.map((entry) => [entry.id, entry])),
    knows: (name) => matchPath(paths, name).length > 0,
    find(reference) {
      const words = `${(reference.home ?? []).join(".")} ${reference.path.join(".")}`;
      const before = known.get(words);
      // Asked again for the same words: found, or told already.
      if (before !== undefined) return before;
      const matches = matchPath(paths, reference).map((i) => paths[i] as readonly string[]);
      const found = matches.length === 1 ? (things.get((matches[0] as readonly string[]).join(".")) ?? null) : null;
      if (found === null && !meansFailed(reference.path, failed)) reportMatch(reference, matches, paths, report);
      known.set(words, found);
      return found;
    },
  };
}

/** Whether a reference names a part that failed, or something inside it. */
const meansFailed = (wanted: readonly string[], failed: readonly (readonly string[])[]): boolean =>
  failed.some((path) =>
    wanted.some((_, i) => {
      const head = wanted.slice(0, wanted.length - i);
      return path.slice(-head.length).join(".") === head.join(".");
    }),
  );
