import type { Finding } from "../../../findings/finding.ts";
import { nothingToHold } from "../../../findings/rules/nothing-to-hold.ts";
import type { Reference } from "../../../parse/draft.ts";
import type { Directory } from "../expand/directory.ts";
import type { Entry } from "../expand/entry.ts";

/** The space that a plan holds; null where there is none, which has been told. */
export function heldSpace(hold: Reference, directory: Directory, report: (finding: Finding) => void): Entry | null {
  const spaces = [...directory.byId.values()].filter(({ draft }) => draft.space);
  const inner = isInside(hold) ? outermost(spaces.filter(({ path }) => path.at(-1) === "inside")) : undefined;
  const known = directory.knows(hold);
  const found = inner ? [inner] : known || !isInside(hold) ? directory.find(hold) : [];
  if (found === null) return null;
  const [space] = found;
  if (space?.draft.space && found.every(({ copy }) => found.length === 1 || copy)) return space;
  report(nothingToHold(hold.at, { name: hold.path.join("."), known, spaces: spaces.map(({ id }) => id) }));
  return null;
}

const isInside = ({ path }: Reference): boolean => path.length === 1 && path[0] === "inside";

/** The inside of the main case: the only one that lies in fewer groups than the others. */
function outermost(spaces: readonly Entry[]): Entry | undefined {
  const least = Math.min(...spaces.map(({ path }) => path.length));
  const shallow = spaces.filter(({ path }) => path.length === least);
  return shallow.length === 1 ? shallow[0] : undefined;
}
