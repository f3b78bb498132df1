import { drawerExample } from "../drawer-example.ts";
import { rule } from "../finding.ts";

const FRAME = `  face: { kind: frame, made of: panel, wide: 1 15/32, join: { with: dowels }, front: 0, left: 0, right: outside.right, bottom: 0, top: outside.top }
  bay: { kind: space, left: face.left-stile.right, right: face.right-stile.left, bottom: face.bottom-rail.top, top: face.top-rail.bottom, front: 0, back: cabinet.back-panel.front }
  planes:`;
const framed = (more: string): string =>
  drawerExample(
    ["units: inch", "units: inch\nprecision: 1/32"],
    ["floor: { sold", "packing: { wood: maple, sold as: 4/4, planed to: 3/4, widths: 1 1/2 to 6 }\n  floor: { sold"],
    ["{ kind: case, made", "{ kind: case, front: 23/32, made"],
    ["  planes:", FRAME],
    ["in: cabinet.inside", `in: bay${more}`],
    [
      "carries: 12 lb",
      "carries: 12 lb\njoints:\n  - { join: [face.left-stile, face.right-stile], to: [cabinet.left-side, cabinet.right-side], with: dowels }",
    ],
  );

export const slideNeedsPacking = rule<{
  readonly part: string;
  readonly wall: string;
  readonly drawer: string;
  readonly lap: string;
}>({
  name: "slide-needs-packing",
  severity: "error",
  message: (a) => `${a.part} stands ${a.lap} in the way of the slide of ${a.drawer}`,
  label: (a) => `laps ${a.lap} beyond ${a.wall}`,
  help: (a) =>
    `put packing ${a.lap} thick between the slide and ${a.wall} (packing: the name of a stock as thick); or make ${a.part} lap as much as a stock is thick that you have: as wide as ${a.wall} and the packing are thick together`,
  explain: `A face frame, or whatever else stands before the side of a case, often laps inside it. A slide that is screwed to the side then runs into the stile. Packing exactly as thick
as the lap brings it forward; the opening of the drawer is that of the frame.`,
  wrong: framed(""),
  right: framed("\n    packing: packing"),
  basis: "geometry",
});
