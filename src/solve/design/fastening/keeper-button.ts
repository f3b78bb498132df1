/** The sizes of a wooden button, and where it lies. */
import { solidBox, unite } from "../../../geometry/index.ts";
import type { Units } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, half, less, subtract } from "../../../units/rational.ts";
import type { Button, Point } from "../../design.ts";
import { faceAxis, isHigh, ORIGIN, withAxis } from "../space.ts";
import type { KeeperPlan } from "./keeper-groove.ts";
import type { Site } from "./site.ts";

/** The tongue has play in the groove, and lies so much higher than that by which the screw draws the wood down. */
export function buttonSizes({ keeper, tongue }: KeeperPlan, units: Units): Omit<Button, "solid"> {
  const inch = units === "inch";
  return {
    thick: inch ? inches(3, 4) : millimetres(19),
    wide: keeper.across,
    long: add(keeper.body, tongue),
    tongue: {
      thick: subtract(keeper.wide, inch ? inches(1, 16) : millimetres(2)),
      long: tongue,
      down: subtract(keeper.down, inch ? inches(1, 32) : millimetres(1)),
    },
    toScrew: keeper.toScrew,
  };
}

/** Its middle at a place along the rail. */
export function buttonOf({ head, axis, sign, area }: Site, plan: KeeperPlan, at: Length, units: Units): Button {
  const sizes = buttonSizes(plan, units);
  const { keeper, face, gap, run } = plan;
  const thin = faceAxis(face);
  const top = area.low[axis];
  const down = (by: Length): Length => (sign > 0 ? subtract(top, by) : add(top, by));
  const skin = isHigh(face) ? head.body.high[thin] : head.body.low[thin];
  const out = (by: Length): Length => (isHigh(face) ? add(skin, by) : subtract(skin, by));
  const box = (upper: Length, lower: Length, near: Length, far: Length) => {
    const corner = (along: Length, height: Length, off: Length): Point =>
      withAxis(withAxis(withAxis(ORIGIN, run, along), axis, height), thin, off);
    const order = (a: Length, b: Length): readonly [Length, Length] => (less(a, b) ? [a, b] : [b, a]);
    const [heights, offs] = [order(down(upper), down(lower)), order(out(near), out(far))];
    return solidBox(
      corner(subtract(at, half(sizes.wide)), heights[0], offs[0]),
      corner(add(at, half(sizes.wide)), heights[1], offs[1]),
    );
  };
  const none = subtract(top, top);
  return {
    ...sizes,
    solid: unite([
      box(none, sizes.thick, gap, add(gap, keeper.body)),
      // In the middle of the groove's width, so that no edges of both fall together.
      box(
        add(keeper.down, half(subtract(keeper.wide, sizes.tongue.thick))),
        add(keeper.down, half(add(keeper.wide, sizes.tongue.thick))),
        subtract(gap, sizes.tongue.long),
        gap,
      ),
    ]),
  };
}
