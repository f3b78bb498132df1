import type { HolePattern, Side } from "../../../solve/build.ts";
import type { Units } from "../../../solve/design.ts";
import { inches, toNumber, ZERO } from "../../../units/index.ts";
import type { Drawing, Pen } from "../drawing.ts";
import { type Scale, usualScales } from "../scale.ts";
import { scaleFor } from "./room.ts";
import { drawSetOut, numbersAlong, type Panel, type SetOut } from "./set-out.ts";

/** Wood drawn round the holes. */
const AROUND = toNumber(inches(3, 8));

/** The holes seen from where they are bored, the sides that they are measured from at the left and below, or above; the page is so wide. */
export function holePattern(pattern: HolePattern, units: Units, pen: Pen, page: number): Drawing & Panel {
  const { x, y, holes } = pattern;
  const half = ({ diameter, slot }: HolePattern["holes"][number], of: "x" | "y"): number =>
    toNumber(slot?.[0] === of ? slot[1] : diameter) / 2;
  const least = (of: "x" | "y"): number => Math.min(...holes.map((hole) => toNumber(hole[of]) - half(hole, of)));
  const most = (of: "x" | "y"): number => Math.max(...holes.map((hole) => toNumber(hole[of]) + half(hole, of)));
  const from = (side: Side, of: "x" | "y"): number => (side.edge === null ? least(of) - AROUND : 0);
  const set: SetOut = {
    holes,
    ...{ full: pattern.full, down: pattern.down },
    across: [from(x, "x"), most("x") + AROUND],
    up: [from(y, "y"), most("y") + AROUND],
    sides: {
      ...{ left: x.edge === null ? "open" : "edge", bottom: y.edge === null ? "open" : "edge" },
      ...{ right: "open", top: "open" },
    },
    ends: { x: [ZERO], y: [ZERO] },
  };
  const [[left, right], [bottom, top]] = [set.across, set.up];
  const scale = pattern.full
    ? (usualScales(units)[0] as Scale)
    : scaleFor(right - left, top - bottom, numbersAlong(set).length, units, page);
  const places = holes.map((hole) => `${pen.print(hole.x)} and ${pen.print(hole.y)}`).join("; ");
  const alt = `Holes for ${pattern.what}, on ${pattern.marks.join(", ")}: ${holes.length} holes, at ${places}.`;
  return { ...drawSetOut(set, scale, pen), alt, scale: scale.text };
}
