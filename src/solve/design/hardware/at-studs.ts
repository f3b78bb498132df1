import { inches, type Length } from "../../../units/length.ts";
import { add, divide, floor, max, min, multiply, rational, subtract } from "../../../units/rational.ts";
import type { Part, Point, Wall } from "../../design.ts";
import { type AxisIndex, extent, withAxis } from "../space.ts";

/** From the end of a rail to its first screw at least; in a wall that is solid, from screw to screw, and to the ends of a short rail. Common practice, no source. */
export const END = inches(1, 2);
const [SOLID, SHORT, LEAST_APART] = [inches(16), inches(2), inches(1)];

/**
 * Where wall screws stand along a rail, about the middle of what was said: as many as can stand as far apart as the studs do, or `count` of
 * them, as far apart as whole distances of studs allow; in a solid wall two at least. Null where so many studs cannot lie behind it, or the
 * wall is solid and their number is said.
 */
export function atStuds(
  at: Point,
  run: AxisIndex,
  { body }: Part,
  { studs }: Wall,
  count: number | null,
): readonly Point[] | null {
  const long = extent(body, run);
  const within = (end: Length): Length => subtract(long, multiply(end, rational(2)));
  if (studs === null && count !== null) return null;
  const apart = studs ?? min(SOLID, max(within(SHORT), LEAST_APART));
  const room = Math.max(Number(floor(divide(within(END), apart))), studs ? 0 : 1);
  const spaces = count === null ? room : count - 1;
  if (spaces > room) return null;
  const each = multiply(apart, rational(spaces === 0 ? 1 : Math.floor(room / spaces)));
  return Array.from({ length: spaces + 1 }, (_, i) =>
    withAxis(at, run, add(at[run], multiply(each, rational(2 * i - spaces, 2)))),
  );
}
