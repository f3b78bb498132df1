import { frame } from "../sample/frame.ts";
import { stool } from "../sample/stool.ts";
import { box } from "../sample/wood.ts";
import type { V3 } from "../vector.ts";
import { action, at, type Row, the } from "./row.ts";

export const form: readonly Row[] = [
  [
    "a joint of a part that is not there",
    stool,
    (r) => {
      the(r.joints, "j1").parts[0] = "lid";
    },
    "references resolve",
  ],
  [
    "a step that waits for a step that is not there",
    stool,
    (r) => {
      at(r.steps, 1).after = [9];
    },
    "references resolve",
  ],
  [
    "a feature that the part does not have",
    frame,
    (r) => {
      action(r, "machine").features = [0, 1];
    },
    "references resolve",
  ],
  [
    "a hole of another part",
    stool,
    (r) => {
      action(r, "machine").holes = [0, 1, 2, 3, 4];
    },
    "references resolve",
  ],
  [
    "a finding under options of a choice that is not there",
    stool,
    (r) => {
      r.findings.push({ rule: "shelf-sags", when: { wood: "pine" } });
    },
    "references resolve",
  ],
  [
    "a finding under other options that are those chosen",
    stool,
    (r) => {
      r.source.choices.wood = "pine";
      r.findings.push({ rule: "shelf-sags", when: { wood: "pine or oak" } });
    },
    "references resolve",
  ],
  [
    "two parts of one name",
    stool,
    (r) => {
      r.parts.push(the(r.parts, "left"));
    },
    "ids are unique",
  ],
  [
    "a face that is missing",
    stool,
    (r) => {
      at(the(r.parts, "top").solids, 0).faces.pop();
    },
    "pieces are closed",
  ],
  [
    "a face that looks inwards",
    stool,
    (r) => {
      at(at(the(r.parts, "top").solids, 0).faces, 0).reverse();
    },
    "pieces are closed",
  ],
  [
    "a piece turned inside out",
    frame,
    (r) => {
      for (const face of at(the(r.parts, "rail").solids, 1).faces) face.reverse();
    },
    "pieces are convex",
  ],
  [
    "a corner pushed in",
    stool,
    (r) => {
      at(the(r.parts, "top").solids, 0).points[6] = [390, 190, 310];
    },
    "pieces are convex",
  ],
  [
    "two pieces that overlap",
    frame,
    (r) => {
      the(r.parts, "rail").solids[1] = box([20, 16, 110], [41, 24, 150]);
    },
    "pieces of a part do not overlap",
  ],
  [
    "an origin that is not the corner",
    stool,
    (r) => {
      r.bounds.min = [1, 0, 0];
    },
    "bounds are those of the parts",
  ],
  [
    "bounds of another size",
    stool,
    (r) => {
      r.bounds.max = [400, 200, 321];
    },
    "bounds are those of the parts",
  ],
  [
    "a rounded edge that is not in the wood",
    frame,
    (r) => {
      const made = action(r, "machine");
      const [along, across, into]: [V3, V3, V3] = [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ];
      const curve = { kind: "round-over", for: null, along, across, into, radius: 3 };
      const { features, solids } = the(r.parts, made.part);
      made.features.push(features.push({ ...curve, origin: at(at(solids, 0).points, 0), size: [10, 3, 3] }) - 1);
    },
    "curves are as told",
  ],
  [
    "a tail that does not slope",
    frame,
    (r) => {
      const made = action(r, "machine");
      const [along, across, into]: [V3, V3, V3] = [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ];
      const tail = { kind: "tail", for: null, along, across, into, lean: 1 };
      const { features, solids } = the(r.parts, made.part);
      made.features.push(features.push({ ...tail, origin: at(at(solids, 0).points, 0), size: [10, 8, 8] }) - 1);
    },
    "dovetails are as told",
  ],
];
