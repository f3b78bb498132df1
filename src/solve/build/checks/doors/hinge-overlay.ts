import { hingeOverlay } from "../../../../findings/rules/hinge-overlay.ts";
import { type Length, millimetres, toMillimetres } from "../../../../units/length.ts";
import { add, half, max, negate, subtract, ZERO } from "../../../../units/rational.ts";
import { measureOf } from "../../../design/hardware/items.ts";
import { cupRange } from "../../../design/hinges/cup-place.ts";
import type { Checked, Rule, Verdict } from "../check.ts";
import { type Door, doorsOf } from "./doors.ts";
import { atLeast, atMost } from "./enough.ts";

/** What the screws that set a door leave for something else. Common practice, no source. */
const SLACK = millimetres(1, 2);

/** A cup hinge, its cup where it is bored, holds the door where it is drawn. */
export const hingeOverlayRule: Rule = (checked) =>
  doorsOf(checked).flatMap((door): readonly Verdict[] => {
    const [cup] = checked.holes.filter(({ part, kind }) => part === door.hung.id && kind === "cup");
    if (!cup) return [];
    const { item, motion, joint, inset } = door;
    const own = item.measures.get("overlay") ?? null;
    const covers = inset ? ZERO : overlayOf(door, checked);
    const radius = half(cup.stages.map(({ diameter }) => diameter).reduce(max));
    const further = subtract(subtract(fromEdge(door, cup.at[door.wide]), radius), measureOf(item, "cup from edge"));
    const gives = own ? add(own, inset ? ZERO : further) : ZERO;
    const off = subtract(covers, gives);
    const check = {
      ...{ rule: "hinge-overlay", subject: motion.name, unit: "mm" },
      ...{ value: Math.abs(toMillimetres(off)), limit: toMillimetres(SLACK) },
      basis:
        "overlay = what the hinge gives + what its cup lies further in, 3 to 7 mm: pages of hinge makers, reproduced",
    };
    if (check.value <= check.limit) return [{ check: { ...check, verdict: "holds" } }];
    const print = (length: Length): string => checked.print(length);
    const finding = hingeOverlay(joint.at, {
      door: motion.name,
      lies: inset ? "lies between what it hangs on" : `covers what it hangs on by ${print(covers)}`,
      gives: own ? `are for an overlay of ${print(own)}` : "are for a door between the sides",
      remedies: remedies(door, covers, own, checked),
    });
    return [{ check: { ...check, verdict: "fails" }, finding }];
  });

function remedies(
  { item, inset }: Door,
  covers: Length,
  own: Length | null,
  { design, print }: Checked,
): readonly string[] {
  if (inset) return ["take hinges for it (kind: cup hinge for an inset door)"];
  if (!own) return [`take hinges for it (kind: cup hinge, overlay: ${print(covers)})`];
  const { low, high } = cupRange(item);
  const at = (cup: Length): Length => add(own, subtract(cup, measureOf(item, "cup from edge")));
  const [least, most] = [atLeast(max(at(low), ZERO), design.units), atMost(at(high), design.units)];
  return [
    `take hinges for that (overlay: ${print(covers)} in the settings of the hinge)`,
    `let the door cover ${least} to ${most} there (overlay, in the settings of the door)`,
  ];
}

/** How far the door reaches over the inner edge of what it hangs on. */
function overlayOf({ joint, free, wide, body }: Door, { design }: Checked): Length {
  const hold = design.parts.find(({ id }) => id === joint.parts[1]);
  if (!hold) return ZERO;
  return free > 0 ? subtract(hold.body.high[wide], body.low[wide]) : subtract(body.high[wide], hold.body.low[wide]);
}

/** From the hinged edge of the door. */
const fromEdge = ({ free, wide, body }: Door, at: Length): Length =>
  free > 0 ? subtract(at, body.low[wide]) : negate(subtract(at, body.high[wide]));
