import { isCutLater, makingOf } from "../../design/making/plain.ts";
import type { Design, Part } from "../../design.ts";
import { fastBodies } from "./links.ts";

/** Places of parts that are cut when the piece tells their size, but for those of doors and drawers, which are made by themselves. */
export function waitingOf({ parts, joints }: Pick<Design, "parts" | "joints">): ReadonlySet<number> {
  const moved = new Set(
    joints.flatMap(({ kind, parts: [id] }) => (kind === "hinged" || kind === "running" ? [id] : [])),
  );
  const apart = new Set(
    fastBodies({ parts, joints }).flatMap((body) => (body.some((i) => moved.has(parts[i]?.id ?? "")) ? body : [])),
  );
  // What only lies in rabbets, or goes round what stands, keeps its place in the order of work.
  const isSaid = (part: Part): boolean => {
    const { between } = makingOf(part);
    return isCutLater(part) && (between === undefined || between.some(({ letIn, round }) => !letIn && !round));
  };
  return new Set(parts.flatMap((part, i) => (isSaid(part) && !apart.has(i) ? [i] : [])));
}
