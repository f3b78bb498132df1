/** Records that keep every promise, some of them only just. */
import type { BuildRecord } from "../record.ts";
import { crossed, knob } from "./bored.ts";
import { chipped } from "./chipped.ts";
import { type Corner, corner } from "./corner.ts";
import { finished } from "./finished.ts";
import { banded, fitted } from "./fitted.ts";
import { frame } from "./frame.ts";
import { lidded, lowered, underTheLid } from "./lid.ts";
import { slab } from "./slab.ts";
import { stool } from "./stool.ts";
import { weigh } from "./weigh.ts";
import { box } from "./wood.ts";

type Sound = readonly [what: string, record: () => BuildRecord];

const but = (what: string, sample: () => BuildRecord, change: (record: BuildRecord) => void): Sound => [
  what,
  () => {
    const record = sample();
    change(record);
    weigh(record);
    return record;
  },
];

const beside = (what: string, where: Corner): Sound => [what, () => corner(where)];

export const SOUND: readonly Sound[] = [
  ["screws, and a sheet laid out", stool],
  ["mortise and tenon", frame],
  ["two coats, and times", finished],
  ["dowels, and units", slab],
  but("uprights as short as the gap that is said", stool, (r) => {
    for (const part of r.parts.slice(1)) {
      const x = part.id === "left" ? 20 : 360;
      part.solids = [box([x, 0, 0], [x + 20, 200, 299.2])];
    }
    for (const joint of r.joints) joint.gap = 0.8;
  }),
  but("a tenon too thick by 0.009 mm", frame, (r) => {
    for (const part of r.parts.slice(2)) part.solids[1] = box([20, 15.991, 110], [40, 24, 150]);
  }),
  ["an upright cut to the piece", fitted],
  ["bands that are deducted", banded],
  ["a pair of mirror images, each on its line", () => chipped("front", true)],
  ["a part and the same turned, on one line", () => chipped("back", false)],
  beside("a straight drill 30 mm from a wall", { beside: 30, tool: "straight" }),
  beside("a straight drill with a roof 350 mm behind the head", { beside: 80, under: 353, tool: "straight" }),
  beside("a long bit that leans away from a wall", { beside: 10, tool: "long", lean: 5 }),
  beside("an angle drill with just its room", { beside: 17, under: 88, tool: "angle" }),
  beside("a stubby driver with just its room", { beside: 15, under: 123, tool: "stubby" }),
  beside("a hammer with just its room", { beside: 20, under: 123, tool: "hammer" }),
  but("two mortises 1 mm apart", frame, (r) => crossed(r, 15)),
  but("a hole 0.1 mm beside another", slab, (r) => {
    knob(r, "a", 90, 57.1);
    knob(r, "d", 310, 142.9);
  }),
  but("holes that meet, one plugged before the other is bored", slab, (r) => {
    for (const [part, x, z] of [
      ["a", 90, 53],
      ["d", 310, 147],
    ] as const)
      knob(r, part, x, z);
    for (const hole of r.holes.slice(-2)) hole.plugged = true;
  }),
  but("lumber bought by volume", slab, (r) => {
    // Four boards of 20 × 100 × 200 mm: 0.678 board feet.
    for (const line of r.purchases.slice(1, 2)) Object.assign(line, { quantity: 0.7, unit: "board feet" });
  }),
  ["a lid", () => lidded(-110)],
  ["a slide under an open lid", () => underTheLid(90)],
  ["a roof let down to a screw's head", () => lowered(397)],
  but("a sheet squared at the other long edge", stool, (r) => {
    for (const layout of r.layouts) {
      for (const rectangle of [...layout.placements, ...layout.offcuts]) rectangle.x -= 3;
      for (const cut of layout.cuts)
        for (const end of [cut.from, cut.to]) if (cut.kind === "rip" || end[0] > 0) end[0] -= 3;
    }
  }),
];
