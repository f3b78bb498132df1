import { doesNotGoThroughTheDoor } from "../../../findings/rules/does-not-go-through-the-door.ts";
import type { Method } from "../../../parse/draft.ts";
import { millimetres } from "../../../units/length.ts";
import type { Part } from "../../design.ts";
import { components, linksOf } from "../order/links.ts";
import type { Rule, Verdict } from "./check.ts";
import { around } from "./standing/weight-and-feet.ts";

/** A usual doorway, and what is lost on fingers. Common practice, no source. */
const [WIDE, HIGH, FINGERS] = [29 * 25.4, 78 * 25.4, 25.4];

/** Joints that are undone for the move. */
const COMES_APART: ReadonlySet<Method> = new Set([
  ...(["bolts", "bolts and cross dowels", "lag screws", "loose", "shelf pins", "runs on", "hangs on"] as const),
  ...(["slotted screws", "buttons in a groove", "buttons in mortises", "clips", "figure-eight fasteners"] as const),
  ...(["cup hinges", "butt hinges", "continuous hinge", "slides", "undermount slides"] as const),
]);

/** Whatever cannot be taken apart goes through a doorway, lying or standing. */
export const doesNotGoThroughTheDoorRule: Rule = ({ design, print }) => {
  const { parts } = design;
  const joints = design.joints.filter(({ method }) => !COMES_APART.has(method));
  const bodies = components(
    parts.map((_, i) => i),
    linksOf({ parts, joints }),
  ).map((places) => places.flatMap((place): Part | readonly Part[] => parts[place] ?? []));
  return bodies.flatMap((body): readonly Verdict[] => {
    const [first] = body;
    if (!first) return [];
    const { low, high } = around(body.map(({ solid }) => solid));
    const sizes = [high[0] - low[0], high[1] - low[1], high[2] - low[2]].toSorted((a, b) => a - b);
    const [least, next] = sizes as [number, number, number];
    const check = {
      rule: "does-not-go-through-the-door",
      subject: body.length === parts.length ? "piece" : first.id,
      value: next > HIGH - FINGERS ? next : least,
      limit: next > HIGH - FINGERS ? HIGH - FINGERS : WIDE - FINGERS,
      unit: "mm",
      basis: "a doorway of 29 × 78 in, common practice, no source",
    };
    if (least <= WIDE - FINGERS && next <= HIGH - FINGERS) return [{ check: { ...check, verdict: "holds" } }];
    const tell = (mm: number): string => print(millimetres(Math.round(mm * 100), 100));
    const finding = doesNotGoThroughTheDoor(first.at, {
      what: body.length === parts.length ? "the piece" : `what is joined to ${first.id}`,
      sizes: sizes.map(tell).join(" × "),
      door: `${tell(WIDE)} × ${tell(HIGH)}`,
      most: tell(WIDE - FINGERS),
    });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });
};
