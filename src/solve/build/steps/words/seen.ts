/** What a maker can lay a rule against: a part to its true ends, but for those that are inside another part. */
import { equal } from "../../../../units/rational.ts";
import { faceOf, type INDICES, triple } from "../../../design/space.ts";
import type { Part } from "../../../design.ts";
import type { Work } from "../draft.ts";
import { calledAmong } from "./by-place.ts";

export interface Seen {
  readonly box: Part["body"];
  /** What a side lies in, by the name of the side: there the rule stands on that. */
  readonly inside: ReadonlyMap<string, string>;
}

/** A part that does not stand askew, among those that it stands together with. */
export function seenOf(work: Work, id: string, there: readonly string[]): Seen {
  const { body, blank } = work.part(id);
  const inside = new Map<string, string>();
  const end = (side: "low" | "high") =>
    triple((axis) => {
      if (equal(body[side][axis], blank[side][axis])) return body[side][axis];
      const holder = holderOf(work, id, axis, side, there);
      if (holder === null) return blank[side][axis];
      inside.set(faceOf(axis, side === "high"), calledAmong(work, holder, there));
      return body[side][axis];
    });
  return { box: { low: end("low"), high: end("high") }, inside };
}

/** What a side of a part is let into, all round. A rabbet leaves it to be seen. */
function holderOf(
  { design, part }: Work,
  id: string,
  axis: (typeof INDICES)[number],
  side: "low" | "high",
  there: readonly string[],
): string | null {
  const own = part(id).body[side][axis];
  const isOpen = (joint: string, mate: string): boolean =>
    part(mate).features.some(({ kind, for: own }) => kind === "rabbet" && own === joint);
  const mates = design.joints.flatMap(({ id: joint, parts: [a, b] }) => {
    const mate = a === id ? b : b === id ? a : null;
    return mate === null || isOpen(joint, mate) ? [] : [mate];
  });
  const touches = (mate: string): boolean =>
    there.includes(mate) && !part(mate).turned && equal(part(mate).body[side === "low" ? "high" : "low"][axis], own);
  return mates.find(touches) ?? null;
}
