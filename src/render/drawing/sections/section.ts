/** What is seen of a piece that is cut open. */
import { FRONT, RIGHT, type View, visibleFaces } from "../../../geometry/picture/index.ts";
import type { VisibleFace } from "../../../geometry/types.ts";
import { panesOf } from "../../../solve/build/order/glazing.ts";
import type { Build } from "../../../solve/build.ts";
import { type Length, subtract, toNumber } from "../../../units/index.ts";
import type { Pen } from "../drawing.ts";
import { openHoles } from "../open-holes.ts";
import { outsideOf } from "../outside.ts";
import { Sight } from "../sight.ts";
import type { Aspect, Outside } from "../three-views/aspect.ts";
import { cutOpen } from "./cut-open.ts";

export interface Section extends Aspect {
  /** The faces that the cut has made. */
  readonly cut: readonly VisibleFace[];
  /** Ids of what is glass. */
  readonly clear: ReadonlySet<string>;
}

/** Across the depth, seen from the front (`axis` 1), or across the width, seen from the right. */
export function sectionOf({ parts, holes, design }: Build, outside: Outside, axis: 0 | 1, pen: Pen): Section {
  const view = axis === 1 ? FRONT : RIGHT;
  const away = axis === 1 ? -1 : 1;
  const opened = cutOpen(parts, outside, axis, away);
  const axes: Aspect["axes"] = axis === 1 ? [0, 2] : [1, 2];
  const corner = (of: Outside["low"]) => [toNumber(of[axes[0]]), toNumber(of[axes[1]])] as const;
  const distance = axis === 1 ? subtract(opened.at, outside.low[1]) : subtract(opened.at, outside.low[0]);
  const clear = panesOf(design);
  const sight = new Sight(opened.parts, view, clear);
  // Of a hole that is cut in two or off there is no whole rim.
  const there = new Set(opened.parts.map(({ id }) => id));
  const whole = holes.filter(({ part, at, stages: [widest] }) => {
    const reach = widest ? (away * toNumber(widest.diameter)) / 2 : 0;
    return there.has(part) && (toNumber(at[axis]) + reach - toNumber(opened.at)) * away <= 0;
  });
  const unit = design.units === "mm" ? "mm" : "in";
  const [name, off] = axis === 1 ? ["Front", "front"] : ["Side", "left"];
  return {
    caption: `${name} section, ${pen.print(distance)}\u202f${unit} from the ${off}`,
    axes,
    // Drawn in the place of the whole, to one line with the other section; measured as far as there is wood.
    extent: { low: corner(outside.low), high: corner(outside.high) },
    outside: outsideOf(opened.parts) ?? outside,
    lines: sight.lines(),
    panes: sight.panes(),
    rims: openHoles(whole, sight.stage, () => [0, 0, 0]),
    clear,
    cut: facesAt(opened.parts, view, opened.at, axis),
  };
}

/** Cut faces are the visible ones that lie in the plane of the cut. */
function facesAt(
  parts: ReturnType<typeof cutOpen>["parts"],
  view: View,
  at: Length,
  axis: 0 | 1,
): readonly VisibleFace[] {
  const place = toNumber(at);
  const touching = parts.filter(({ solid }) => Math.abs(solid[axis === 1 ? "low" : "high"][axis] - place) < 1e-6);
  const slices = touching.map(({ id, solid }) => ({
    id,
    solid: {
      ...solid,
      pieces: solid.pieces.filter((piece) => Math.abs(piece[axis === 1 ? "low" : "high"][axis] - place) < 1e-6),
    },
  }));
  const square = (face: VisibleFace) => Math.abs(Math.abs(face.normal[axis]) - 1) < 1e-9;
  return visibleFaces(slices, view).filter(square);
}
