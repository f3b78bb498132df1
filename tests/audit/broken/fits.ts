import { frame } from "../sample/frame.ts";
import { slab } from "../sample/slab.ts";
import { stool } from "../sample/stool.ts";
import { box } from "../sample/wood.ts";
import { at, type Row, the } from "./row.ts";

export const fits: readonly Row[] = [
  [
    "a tenon too thick by 0.03 mm",
    frame,
    (r) => {
      the(r.parts, "rail").solids[1] = box([20, 15.97, 110], [40, 24, 150]);
    },
    "parts do not overlap",
    "contact is as measured",
    "travel is free",
  ],
  [
    "a tenon longer than its mortise",
    frame,
    (r) => {
      the(r.parts, "rail").solids[1] = box([17, 16, 110], [40, 24, 150]);
    },
    "parts do not overlap",
    "contact is as measured",
    "travel is free",
    "solid fits its sizes",
  ],
  [
    "a foot beside its leg",
    stool,
    (r) => {
      at(r.hardware, 0).solids = [box([-20, 0, 0], [-10, 10, 3])];
    },
    "hardware is on what carries it",
  ],
  [
    "an upright short by 0.5 mm, with no gap said",
    stool,
    (r) => {
      the(r.parts, "left").solids = [box([20, 0, 0], [40, 200, 299.5])];
    },
    "fixed joints touch",
    "contact is as measured",
    "parts of a line are congruent",
  ],
  [
    "an upright short by less than the gap that is said",
    stool,
    (r) => {
      for (const [id, x] of [
        ["left", 20],
        ["right", 360],
      ] as const)
        the(r.parts, id).solids = [box([x, 0, 0], [x + 20, 200, 299.5])];
      for (const joint of r.joints) joint.gap = 0.8;
    },
    "fixed joints touch",
  ],
  [
    "a gap wider than a step",
    stool,
    (r) => {
      the(r.joints, "j1").gap = 1.2;
    },
    "gap is at most one step",
  ],
  [
    "a floating joint far apart",
    stool,
    (r) => {
      the(r.joints, "j1").kind = "floating";
      the(r.parts, "left").solids = [box([20, 0, 0], [40, 200, 298])];
    },
    "other joints are near",
    "parts of a line are congruent",
  ],
  [
    "too large an area of contact",
    stool,
    (r) => {
      at(the(r.joints, "j1").contact, 0).area = 4100;
    },
    "contact is as measured",
  ],
  [
    "contact beside its place",
    stool,
    (r) => {
      at(the(r.joints, "j1").contact, 0).centre = [31, 100, 300];
    },
    "contact is as measured",
  ],
  [
    "contact in another plane",
    frame,
    (r) => {
      at(the(r.joints, "j1").contact, 0).centre = [39, 20, 130];
    },
    "contact is as measured",
  ],
  [
    "contact that looks the wrong way",
    slab,
    (r) => {
      at(the(r.joints, "j2").contact, 0).normal = [-1, 0, 0];
    },
    "contact is as measured",
  ],
  [
    "no contact told",
    slab,
    (r) => {
      the(r.joints, "j2").contact = [];
    },
    "contact is as measured",
  ],
];
