import { isCutLater } from "../../design/making/plain.ts";
import type { Design } from "../../design.ts";
import { fastBodies } from "./links.ts";

/** Places of parts that are cut when the piece tells their size, but for those of doors and drawers, which are made by themselves. */
export function waitingOf({ parts, joints }: Pick<Design, "parts" | "joints">): ReadonlySet<number> {
  const moved = new Set(
    joints.flatMap(({ kind, parts: [id] }) => (kind === "hinged" || kind === "running" ? [id] : [])),
  );
  const apart = new Set(
    fastBodies({ parts, joints }).flatMap((body) => (body.some((i) => moved.has(parts[i]?.id ?? "")) ? body : [])),
  );
  return new Set(parts.flatMap((part, i) => (isCutLater(part) && !apart.has(i) ? [i] : [])));
}
