/** Heads that something is laid on later: one that stands out by a hair keeps it off. */
import { cylinder, hullHits, type Vec } from "../../../../geometry/index.ts";
import { plus, times } from "../../../../geometry/vec.ts";
import { inches, millimetres, UNITS_PER_MM } from "../../../../units/length.ts";
import { toNumber } from "../../../../units/rational.ts";
import type { Fastener } from "../../../design.ts";
import type { Drive } from "../../order/index.ts";
import { definite, type Work } from "../draft.ts";
import { isStruck } from "../moves.ts";
import { whichHeads } from "./close.ts";

/** How far below the surface they lie. Common practice, no source. */
const DEEP = { inch: inches(1, 32), mm: millimetres(1) } as const;
/** What is not nearer to a head does not lie on it, mm. */
const BEHIND = { from: 0.05, to: 0.5 } as const;

/** `there`: ids of what stands together by then. */
export function coveredTexts(work: Work, drives: readonly Drive[], there: readonly string[]): readonly string[] {
  const later = work.design.parts.map(({ id }) => id).filter((id) => !there.includes(id));
  const covered = drives.flatMap((drive) => {
    const over = drive.fastener.head.seat === "flush" ? later.filter((id) => liesOver(work, drive.fastener, id)) : [];
    return over.length > 0 ? [{ drive, over }] : [];
  });
  if (covered.length === 0) return [];
  const own = covered.map(({ drive }) => drive);
  const over = [...new Set(covered.flatMap((each) => each.over))];
  const how = own.every(isStruck) ? "with a nail set " : "";
  const [it, comes] = [own.length === 1 ? "it" : "them", over.length === 1 ? "comes" : "come"];
  return [
    `Sink ${whichHeads(work, own, drives)} ${how}${work.print(DEEP[work.design.units])} below the surface: ${definite(work, over)} ${comes} to lie on ${it}.`,
  ];
}

/** Whether a part lies on the head when the piece is together. */
function liesOver(work: Work, { head, direction }: Fastener, id: string): boolean {
  const at: Vec = [toNumber(head.at[0]), toNumber(head.at[1]), toNumber(head.at[2])];
  const back = times(direction, -1);
  const start = plus(at, times(back, BEHIND.from * UNITS_PER_MM));
  const room = cylinder(start, back, toNumber(head.diameter) / 2, (BEHIND.to - BEHIND.from) * UNITS_PER_MM);
  return hullHits(room, work.part(id).solid);
}
