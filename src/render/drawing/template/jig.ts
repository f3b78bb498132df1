import type { Jig } from "../../../solve/build.ts";
import type { Units } from "../../../solve/design.ts";
import { half, less, toNumber, ZERO } from "../../../units/index.ts";
import type { Drawing, Pen } from "../drawing.ts";
import { scaleFor } from "./room.ts";
import { drawSetOut, numbersAlong, type Panel, type SetOut } from "./set-out.ts";

export interface JigDrawing extends Drawing, Panel {
  /** Points on paper for each unit. */
  readonly points: number;
}

/** Its longer side lies across the page, which is so wide. */
export function jigDrawing(jig: Jig, units: Units, pen: Pen, page: number): JigDrawing {
  const strip = jig.laid === "on the end";
  const side = jig.laid === "in the corner" ? "fence" : "edge";
  const lies = less(jig.width, jig.length);
  const [long, high] = lies ? [jig.length, jig.width] : [jig.width, jig.length];
  const set: SetOut = {
    holes: jig.holes.map(({ x, y, diameter }) => ({ x: lies ? y : x, y: lies ? x : y, diameter })),
    across: [0, toNumber(long)],
    up: [0, toNumber(high)],
    sides: { left: side, bottom: side, right: "edge", top: "edge" },
    ...(strip && { middle: half(jig.width) }),
    ends: { x: [ZERO, long], y: [ZERO, high] },
  };
  const numbers = numbersAlong(set).length;
  const scale = scaleFor(toNumber(long), toNumber(high), numbers, units, page);
  const alt = `Jig for ${jig.what}: ${pen.print(jig.width)} by ${pen.print(jig.length)}${
    jig.holes.length === 0
      ? ""
      : `, with ${jig.holes.length === 1 ? "a hole" : "holes"} at ${jig.holes
          .map(({ x, y }) => `${pen.print(y)} and ${pen.print(x)}`)
          .join("; ")} from its corner`
  }.`;
  return {
    ...drawSetOut(set, scale, pen),
    alt: `${alt.charAt(0).toUpperCase()}${alt.slice(1)}`,
    scale: scale.text,
    points: scale.points,
  };
}
