import { type Corner, corner } from "../sample/corner.ts";
import { slab } from "../sample/slab.ts";
import { stool } from "../sample/stool.ts";
import type { Check } from "../violation.ts";
import { action, at, type Row, the, without } from "./row.ts";

const tight = (what: string, where: Corner, ...found: Check[]): Row => [what, () => corner(where), () => {}, ...found];

/** A proud head is 3 high: the tools begin that much nearer to the roof. */
export const driving: readonly Row[] = [
  [
    "a screw that is never driven",
    stool,
    (r) => {
      action(r, "drive").fasteners = ["f1"];
    },
    "fastener is driven once",
  ],
  [
    "a screw driven twice",
    stool,
    (r) => {
      action(r, "drive").fasteners = ["f1", "f2", "f1"];
    },
    "fastener is driven once",
  ],
  [
    "a screw that is driven before its part is there",
    stool,
    (r) => {
      at(r.steps, 1).actions.splice(1, 0, without(r, action(r, "drive")));
    },
    "all that it joins is there",
    "hole is bored before its fastener",
  ],
  [
    "a screw driven into wood without its hole",
    stool,
    (r) => {
      at(r.steps, 2).actions.push(without(r, action(r, "machine", 2)));
    },
    "hole is bored before its fastener",
  ],
  [
    "a dowel that is driven",
    slab,
    (r) => {
      at(r.steps, 2).actions.push({ do: "drive", fasteners: ["j1.50"], tool: "hammer", axis: null });
    },
    "what travels is not driven",
  ],
  [
    "a head that falls through its hole",
    stool,
    (r) => {
      the(r.fasteners, "f1").head.diameter = 4.4;
    },
    "head does not pass its hole",
  ],
  tight("a straight drill 29.9 mm from a wall", { beside: 29.9, tool: "straight" }, "tool fits"),
  tight("a straight drill under a roof", { beside: 80, under: 352.9, tool: "straight" }, "tool fits"),
  tight("a long bit beside a wall", { beside: 10, tool: "long" }, "tool fits"),
  tight("a straight drill that leans away from a wall", { beside: 10, tool: "straight", lean: 5 }, "tool fits"),
  tight("a long bit that leans too far", { beside: 10, tool: "long", lean: 6 }, "driver leans at most 5 degrees"),
  tight("a long bit that leans into the wall", { beside: 40, tool: "long", lean: -5 }, "tool fits"),
  tight("an angle drill under a roof", { beside: 80, under: 87.9, tool: "angle" }, "tool fits"),
  tight("an angle drill by a wall", { beside: 16.9, tool: "angle" }, "tool fits"),
  tight("a stubby driver under a roof", { beside: 80, under: 122.9, tool: "stubby" }, "tool fits"),
  tight("a hammer under a roof", { beside: 80, under: 122.9, tool: "hammer" }, "tool fits"),
  tight("a wrench by a wall", { beside: 19.9, tool: "wrench" }, "tool fits"),
  [
    "parts that only seem to be gone through",
    () => corner({ beside: 10, tool: "long" }),
    (r) => {
      the(r.fasteners, "f1").through.push("wall");
    },
    "fastener passes what it says",
  ],
];
