import { less } from "../../units/rational.ts";
import type { Axis, Part } from "../design.ts";

/** The directions across a part's length, the thinner first: a strip that was ripped off an edge may be thicker than it is wide, and its face is what was the edge. */
export const acrossOf = ({
  axes,
  thickness,
  width,
}: Pick<Part, "axes" | "thickness" | "width">): readonly [Axis, Axis] =>
  less(width, thickness) ? [axes.width, axes.thickness] : [axes.thickness, axes.width];
