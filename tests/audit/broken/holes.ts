import { bore, crossed, knob } from "../sample/bored.ts";
import { frame } from "../sample/frame.ts";
import { slab } from "../sample/slab.ts";
import { stool } from "../sample/stool.ts";
import { box, hole } from "../sample/wood.ts";
import { action, at, type Row, the } from "./row.ts";

export const holes: readonly Row[] = [
  [
    "a hole that cuts another",
    slab,
    (r) => {
      knob(r, "a", 90, 53);
    },
    "holes do not meet",
    "parts of a line are congruent",
  ],
  [
    "a hole that just cuts another",
    slab,
    (r) => {
      knob(r, "a", 90, 56.9);
    },
    "holes do not meet",
    "parts of a line are congruent",
  ],
  [
    "two holes that run into each other end to end",
    slab,
    (r) => {
      knob(r, "b", 150, 100, 20);
      bore(
        r,
        hole("b", "knob", {
          at: [150, 20, 100],
          direction: [0, -1, 0],
          stages: [{ diameter: 6, depth: 1 }],
          for: null,
        }),
      );
    },
    "holes do not meet",
    "parts of a line are congruent",
  ],
  [
    "a hole into a mortise that is not its own",
    frame,
    (r) => {
      knob(r, "post.1", 30, 130, 16.1);
    },
    "hole keeps out of features",
    "parts of a line are congruent",
  ],
  [
    "two mortises 0.9 mm apart",
    frame,
    (r) => {
      crossed(r, 15.1);
    },
    "mortises keep 1 mm",
  ],
  [
    "two mortises that meet",
    frame,
    (r) => {
      crossed(r, 20);
    },
    "mortises keep 1 mm",
  ],
  [
    "less wood at the edge than it says",
    stool,
    (r) => {
      at(r.holes, 4).keep.edge = 8.6;
    },
    "keep is kept",
  ],
  [
    "less wood at the end than it says",
    stool,
    (r) => {
      at(r.holes, 0).keep.end = 26.1;
    },
    "keep is kept",
  ],
  [
    "less wood beside a clearance hole than it says",
    stool,
    (r) => {
      at(r.holes, 0).keep.edge = 46.1;
    },
    "keep is kept",
  ],
  [
    "less wood under it than it says",
    stool,
    (r) => {
      at(r.holes, 4).keep.under = 270.1;
    },
    "keep is kept",
  ],
  [
    "a blind hole that comes through",
    slab,
    (r) => {
      knob(r, "b", 150, 100, 20.1);
    },
    "keep is kept",
    "parts of a line are congruent",
  ],
  [
    "a point that comes out below",
    stool,
    (r) => {
      for (const fastener of r.fasteners) fastener.length = 321;
    },
    "point ends inside",
  ],
  [
    "a point that ends in the wrong part",
    stool,
    (r) => {
      the(r.fasteners, "f1").length = 19;
    },
    "point ends inside",
    "fastener passes what it says",
  ],
  [
    "a screw that runs through a part it does not name",
    slab,
    (r) => {
      Object.assign(the(r.fasteners, "j1.50"), { length: 130 });
    },
    "point ends inside",
    "fastener passes what it says",
    "travel is free",
  ],
  [
    "a spline in solid wood",
    slab,
    (r) => {
      the(r.fasteners, "j1.50").solids = [box([100, 8, 100], [104, 12, 104])];
    },
    "fastener passes what it says",
    "dowels slide along their holes",
  ],
  [
    "the slot of a key that is cut before its joint is together",
    frame,
    (r) => {
      Object.assign(at(the(r.parts, "post.1").features, 0), { inPlace: true });
    },
    "part is machined before it is added",
  ],
  [
    "a drill that nobody sells",
    stool,
    (r) => {
      at(at(r.holes, 4).stages, 0).diameter = 2.95;
      at(r.drilling, 8).diameter = 2.95;
    },
    "drills are sold",
  ],
  [
    "a hole that the drilling table leaves out",
    slab,
    (r) => {
      r.drilling.pop();
    },
    "drilling table has every hole",
  ],
  [
    "a drilling table with a depth of its own",
    slab,
    (r) => {
      at(r.drilling, 0).depth = 10;
    },
    "drilling table has every hole",
  ],
  [
    "mitred tenons that meet",
    frame,
    (r) => {
      crossed(r, 16);
      const mitre = { kind: "mitre", origin: [0, 0, 0] as const, normal: [1, 0, 0] as const };
      the(r.parts, "rail").features.push({ ...mitre, for: "j1" }, { ...mitre, for: "j2" });
      action(r, "machine", 2).features.push(2, 3);
    },
    "mortises keep 1 mm",
  ],
];
