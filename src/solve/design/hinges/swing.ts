/** How what hangs moves. */
import type { Length } from "../../../units/length.ts";
import { toNumber, ZERO } from "../../../units/rational.ts";

import type { Motion, Point, Pose } from "../../design.ts";
import { unit, withAxis } from "../space.ts";
import type { Lie, Way } from "./lie.ts";

/** Degrees between poses; half of it near the start, where gaps are small. */
const STEP = 2;
const FINE = 0.5;
const FINE_UNTIL = 10;

/** Turns about the line through `pin`, and shifts by as much of `moves` as it is open. */
export function swing(
  lie: Lie,
  pin: Point,
  range: number,
  moves: readonly { readonly way: Way; readonly by: Length }[] = [],
): Motion {
  const at = pin.map(toNumber) as unknown as readonly [number, number, number];
  const line = unit(lie.along, handOf(lie));
  const whole = moves
    .reduce<Point>(
      (so, { way, by }) => withAxis(so, way.axis, way.sign > 0 ? by : { ...by, n: -by.n }),
      [ZERO, ZERO, ZERO],
    )
    .map(toNumber) as unknown as readonly [number, number, number];
  const poses = degreesTo(range).map((degrees): Pose => {
    const open = degrees / range;
    const share = open * open * (3 - 2 * open);
    return {
      at: degrees,
      rotate: { about: [at, line], degrees },
      shift: [whole[0] * share, whole[1] * share, whole[2] * share],
    };
  });
  const lifts = lie.opens.axis === 2 && lie.along !== 2;
  return { kind: lifts ? "lift" : "swing", range, poses };
}

function degreesTo(range: number): readonly number[] {
  const found: number[] = [];
  for (let at = 0; at < range; at += at < FINE_UNTIL ? FINE : STEP) found.push(at);
  return [...found, range];
}

/** Right-handed about the line so that the free edge goes the way that the door opens. */
function handOf({ edge, opens }: Lie): 1 | -1 {
  // From the hinged edge to the free one, and from there the way that it opens: e × o lies along the line.
  const free = -edge.sign;
  const next = (edge.axis + 1) % 3 === opens.axis;
  return (free * opens.sign * (next ? 1 : -1) > 0 ? 1 : -1) as 1 | -1;
}
