import { chipped } from "../sample/chipped.ts";
import { frame } from "../sample/frame.ts";
import { slab } from "../sample/slab.ts";
import { stool } from "../sample/stool.ts";
import { box, fixed, part } from "../sample/wood.ts";
import { action, at, type Row, the, without } from "./row.ts";

export const lists: readonly Row[] = [
  [
    "a part on no line",
    stool,
    (r) => {
      Object.assign(at(r.cutList, 1), { parts: ["left"], quantity: 1 });
    },
    "part is on one line",
  ],
  [
    "a part that gets thinner with its stock",
    stool,
    (r) => {
      const top = the(r.parts, "top");
      top.slope = { [top.stock]: { thickness: -1, width: 0, length: 0 } };
    },
    "slope is that of its own stock",
  ],
  [
    "a part that gets thicker with another stock",
    stool,
    (r) => {
      the(r.parts, "top").slope = { other: { thickness: 1, width: 0, length: 0 } };
    },
    "slope is that of its own stock",
  ],
  [
    "a part on two lines",
    stool,
    (r) => {
      Object.assign(at(r.cutList, 0), { parts: ["top", "left"], quantity: 2 });
    },
    "part is on one line",
    "parts of a line are congruent",
  ],
  [
    "a wrong quantity",
    stool,
    (r) => {
      at(r.cutList, 1).quantity = 3;
    },
    "quantity is the number of parts",
  ],
  [
    "a line of another length",
    stool,
    (r) => {
      at(r.cutList, 1).length = 301;
    },
    "sizes agree",
  ],
  [
    "a blank of another width",
    stool,
    (r) => {
      at(r.blanks, 0).width = 199;
    },
    "blanks give the part",
    "placement has the blank's size",
  ],
  [
    "a part printed shorter than it is",
    slab,
    (r) => {
      at(r.cutList, 0).length = 198;
      for (const id of ["a", "d"]) the(r.parts, id).length = 198;
      for (const id of ["a", "d"]) the(r.blanks, `blank of ${id}`).length = 198;
      for (const i of [0, 3]) at(at(r.layouts, i).placements, 0).length = 198;
    },
    "solid fits its sizes",
    "cuts give the placements",
  ],
  [
    "a part without a blank",
    stool,
    (r) => {
      r.blanks = r.blanks.filter((blank) => blank.part !== "right");
      at(r.layouts, 0).placements.pop();
      action(r, "make").blanks.pop();
    },
    "part is made of blanks",
  ],
  [
    "a blank that is not laid out",
    stool,
    (r) => {
      at(r.layouts, 0).placements.pop();
    },
    "blank is placed once",
  ],
  [
    "a blank laid out twice",
    stool,
    (r) => {
      const { placements } = at(r.layouts, 0);
      placements.push({ ...at(placements, 2), x: 409, y: 3 });
    },
    "blank is placed once",
    "cuts give the placements",
  ],
  [
    "a placement under another mark",
    stool,
    (r) => {
      at(at(r.layouts, 0).placements, 0).mark = "B";
    },
    "placement has the blank's size",
  ],
  [
    "a part that is in no joint",
    frame,
    (r) => {
      r.joints = r.joints.filter((joint) => joint.id !== "j2");
      the(r.parts, "rail").features.pop();
      the(r.parts, "post.2").features.pop();
      action(r, "machine", 2).features.pop();
      action(r, "machine", 1).features.pop();
      for (const kind of ["glue", "clamp", "release"] as const) action(r, kind).joints.pop();
    },
    "part is joined",
    "all is connected",
  ],
  [
    "two halves without a joint",
    slab,
    (r) => {
      r.joints = r.joints.filter((joint) => joint.id !== "j2");
      r.fasteners = r.fasteners.filter((fastener) => !fastener.id.startsWith("j2"));
      r.holes = r.holes.map((hole) => (hole.for?.startsWith("j2") ? { ...hole, for: null } : hole));
      without(r, action(r, "glue", 2));
    },
    "all is connected",
  ],
  [
    "a screw of two joints",
    stool,
    (r) => {
      the(r.joints, "j2").fasteners.push("f1");
    },
    "fastener belongs to one joint",
  ],
  [
    "a screw of no joint",
    stool,
    (r) => {
      the(r.joints, "j1").fasteners.pop();
    },
    "fastener belongs to one joint",
  ],
  [
    "a line whose parts differ by half a millimetre",
    frame,
    (r) => {
      the(r.parts, "post.2").solids[1] = box([340, 0, 150], [380, 40, 299.5]);
    },
    "parts of a line are congruent",
  ],
  [
    "a line whose parts are bored differently",
    slab,
    (r) => {
      for (const hole of r.holes) if (hole.part === "d") at(hole.stages, 0).depth = 24;
    },
    "parts of a line are congruent",
    "keep is kept",
    "drilling table has every hole",
  ],
  [
    "a line whose parts have the grain in different ways",
    stool,
    (r) => {
      the(r.parts, "right").grain = [0, 1, 0];
    },
    "parts of a line are congruent",
  ],
  ["a mirror image among its originals", () => chipped("front", false), () => {}, "parts of a line are congruent"],
  ["a turned part called a mirror image", () => chipped("back", true), () => {}, "mirrored line is mirrored"],
  [
    "a fixed part more than the steps know",
    stool,
    (r) => {
      const shelf = part({
        id: "shelf",
        mark: "C",
        stock: "ply",
        axes: [2, 1, 0],
        solids: [box([40, 0, 100], [360, 200, 120])],
      });
      r.parts.push(shelf);
      r.joints.push(
        fixed("j3", ["shelf", "left"], { contact: [{ centre: [40, 100, 110], normal: [-1, 0, 0], area: 4000 }] }),
      );
    },
    "references resolve",
  ],
];
