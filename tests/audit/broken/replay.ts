import { frame } from "../sample/frame.ts";
import { slab } from "../sample/slab.ts";
import { stool } from "../sample/stool.ts";
import { action, at, type Row, the, without } from "./row.ts";

export const replay: readonly Row[] = [
  [
    "steps out of order",
    stool,
    (r) => {
      r.steps.push(...r.steps.splice(2, 1));
    },
    "steps are in order",
  ],
  [
    "a step that waits for a later one",
    stool,
    (r) => {
      at(r.steps, 1).after = [3];
    },
    "steps are in order",
  ],
  [
    "a blank that is never made",
    stool,
    (r) => {
      action(r, "make").blanks.pop();
    },
    "blank is made once and first",
  ],
  [
    "a blank that is made after it is used",
    stool,
    (r) => {
      at(r.steps, 1).actions.push(without(r, action(r, "make")));
    },
    "blank is made once and first",
  ],
  [
    "a mortise that is never cut",
    frame,
    (r) => {
      action(r, "machine").features = [];
    },
    "features and holes are made once",
  ],
  [
    "a tenon that is cut twice",
    frame,
    (r) => {
      action(r, "machine", 2).features = [0, 1, 0];
    },
    "features and holes are made once",
  ],
  [
    "a hole that is never bored",
    slab,
    (r) => {
      action(r, "machine").holes.pop();
    },
    "features and holes are made once",
  ],
  [
    "a mortise cut when the post is built in",
    frame,
    (r) => {
      at(r.steps, 2).actions.push(without(r, action(r, "machine")));
    },
    "part is machined before it is added",
  ],
  [
    "dowel holes bored when the board is built in",
    slab,
    (r) => {
      at(r.steps, 2).actions.push(without(r, action(r, "machine", 1)));
    },
    "part is machined before it is added",
  ],
  [
    "a part added twice",
    slab,
    (r) => {
      at(r.steps, 2).actions.push({ ...action(r, "add", 1), to: ["c"] });
    },
    "part is added once",
    "whole bodies move",
    "travel is free",
  ],
  [
    "a body begun with what is in one",
    slab,
    (r) => {
      at(r.steps, 1).actions.push({ ...action(r, "add", 0) });
    },
    "part is added once",
    "whole bodies move",
  ],
  [
    "half a unit moved",
    slab,
    (r) => {
      action(r, "add", 4).parts = ["c"];
    },
    "whole bodies move",
  ],
  [
    "two new parts at once",
    frame,
    (r) => {
      without(r, action(r, "add", 2));
      action(r, "add", 1).parts = ["post.1", "post.2"];
    },
    "whole bodies move",
    "travel is free",
  ],
  [
    "a part added to what is not there",
    frame,
    (r) => {
      action(r, "add", 1).to = ["post.2"];
    },
    "whole bodies move",
    "joint is glued once, in time",
    "all ends in one body",
  ],
  [
    "a joint without its glue",
    frame,
    (r) => {
      action(r, "glue").joints = ["j1"];
    },
    "joint is glued once, in time",
  ],
  [
    "glue in a dry joint",
    frame,
    (r) => {
      the(r.joints, "j1").glue = false;
    },
    "joint is glued once, in time",
  ],
  [
    "glue that comes when the joint is closed",
    frame,
    (r) => {
      at(r.steps, 2).actions.push(without(r, action(r, "glue")));
    },
    "joint is glued once, in time",
  ],
  [
    "glue that comes a step before the part",
    slab,
    (r) => {
      at(r.steps, 1).actions.push(without(r, action(r, "glue", 2)));
    },
    "joint is glued once, in time",
  ],
  [
    "clamps before the joint is closed",
    slab,
    (r) => {
      at(r.steps, 1).actions.push({ do: "clamp", joints: ["j2"] });
    },
    "joint is glued once, in time",
  ],
  [
    "a part left on the bench",
    stool,
    (r) => {
      without(r, action(r, "add", 2));
      without(r, action(r, "drive", 1));
    },
    "all ends in one body",
    "joint is glued once, in time",
    "fastener is driven once",
  ],
  [
    "two halves that never meet",
    slab,
    (r) => {
      r.steps.pop();
    },
    "all ends in one body",
    "joint is glued once, in time",
  ],
];
