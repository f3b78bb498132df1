/** What speaks against a place of a mark: that it stands on wood, and that its leader runs over other parts than its own. */
import { circlePoint } from "../../geometry/angle.ts";
import { LARGE, type Look } from "./balloon.ts";
import type { Spot } from "./drawing.ts";
import { ahead, heading } from "./ink.ts";
import type { Manner } from "./place-balloons.ts";

/** A balloon that stands on parts altogether, and each point of a leader that runs over another, in points of a leader's length. */
const ON_WOOD = 150;
const OVER_ANOTHER = 2;
const STEP = 3;
const AROUND = Array.from({ length: 8 }, (_, i) => circlePoint(i, 8));

/** `part`: of what a face is seen at a spot. */
export const tollOf =
  (part: (spot: Spot) => string | null, { radius }: Look = LARGE): NonNullable<Manner["toll"]> =>
  (label, centre, [from, to]) => {
    const { along, distance } = heading(from, to);
    const spots = Array.from({ length: Math.floor(distance / STEP) }, (_, i) => ahead(from, along, i * STEP));
    const over = spots.map(part).filter((id) => id !== null && !label.parts?.includes(id)).length * STEP;
    const rim = AROUND.map(([cos, sin]): Spot => [centre[0] + cos * radius, centre[1] + sin * radius]);
    const covered = [centre, ...rim].filter((spot) => part(spot) !== null).length / (rim.length + 1);
    return ON_WOOD * covered + OVER_ANOTHER * over;
  };
