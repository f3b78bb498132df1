/** The boards that the stand is cut from: kerf 3 mm, ends already square. */
import type { Cut, Layout, Placement } from "../../../src/solve/build.ts";
import { millimetres as mm, ZERO } from "../../../src/units/index.ts";

type Four = readonly [x: number, y: number, width: number, length: number];
const rectangle = ([x, y, width, length]: Four) => ({ x: mm(x), y: mm(y), width: mm(width), length: mm(length) });
const placed = (mark: string, where: Four): Placement => ({
  blank: `blank-${mark}`,
  mark,
  turned: false,
  ...rectangle(where),
});
const cut = (number: number, kind: Cut["kind"], [x0, y0, x1, y1]: Four, fence: number): Cut => ({
  number,
  kind,
  from: [mm(x0), mm(y0)],
  to: [mm(x1), mm(y1)],
  fence: mm(fence),
});
const board = { kind: "board", source: "buy", length: mm(700), kerf: mm(3), squaring: ZERO } as const;

export const layouts: readonly Layout[] = [
  {
    ...board,
    stock: "squares",
    thickness: mm(40),
    width: mm(40),
    placements: [placed("A", [0, 0, 40, 300])],
    cuts: [cut(1, "crosscut", [0, 300, 40, 300], 300)],
    offcuts: [rectangle([0, 303, 40, 397])],
  },
  {
    ...board,
    stock: "boards",
    thickness: mm(20),
    width: mm(60),
    placements: [placed("B", [0, 0, 60, 320]), placed("C", [0, 323, 40, 300])],
    cuts: [
      cut(1, "crosscut", [0, 320, 60, 320], 320),
      cut(2, "crosscut", [0, 623, 60, 623], 300),
      cut(3, "rip", [40, 323, 40, 623], 40),
    ],
    offcuts: [rectangle([43, 323, 17, 300]), rectangle([0, 626, 60, 74])],
  },
];
