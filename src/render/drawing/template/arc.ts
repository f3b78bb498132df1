import type { Spot } from "../drawing.ts";

/** A chord is nowhere farther from its arc than this: 0.02 mm, in points. */
const FLAT = (0.02 * 72) / 25.4;

/** Points on an arc of less than half a circle, both ends among them. */
export function alongArc(from: Spot, to: Spot, centre: Spot): readonly Spot[] {
  const [ax, ay] = [from[0] - centre[0], from[1] - centre[1]];
  const [bx, by] = [to[0] - centre[0], to[1] - centre[1]];
  const radius = Math.sqrt(ax * ax + ay * ay);
  const [sx, sy] = [ax + bx, ay + by];
  const chordAway = Math.sqrt(sx * sx + sy * sy) / 2;
  if (chordAway === 0 || radius - chordAway <= FLAT) return [from, to];
  const middle: Spot = [centre[0] + (sx * radius) / (2 * chordAway), centre[1] + (sy * radius) / (2 * chordAway)];
  return [...alongArc(from, middle, centre), ...alongArc(middle, to, centre).slice(1)];
}
