/** Promise 4: every fastener is driven once, when all that it joins is there, by a tool that has room behind the head. */
import { type Cylinder, hits } from "./cylinder.ts";
import type { Model } from "./model.ts";
import { type Body, bodyOf, type Replay, together } from "./moments.ts";
import type { Fastener } from "./record.ts";
import { along, dot, size, times, type V3 } from "./vector.ts";
import { type Violations, violation } from "./violation.ts";

export function* driving(model: Model, { moments }: Replay): Violations {
  const driven = new Set<string>();
  const bored = new Set<number>();
  for (const { action, bodies } of moments) {
    if (action.do === "machine") for (const hole of action.holes) bored.add(hole);
    if (action.do === "remove") for (const id of action.undrives) driven.delete(id);
    if (action.do !== "drive") continue;
    for (const id of action.fasteners) {
      const fastener = model.fasteners.get(id);
      if (fastener === undefined) continue;
      if (driven.has(id)) yield violation("fastener is driven once", id, "is driven again");
      driven.add(id);
      if (model.record.holes.some((hole, i) => hole.for === id && !bored.has(i)))
        yield violation("hole is bored before its fastener", id, "is driven before its holes are there");
      const joins = partsOf(fastener);
      if (!together(bodies, joins))
        yield violation("all that it joins is there", id, `${joins.join(" ")} are not together`);
      yield* reach(model, fastener, action.tool, action.axis ?? fastener.direction, bodyOf(bodies, joins[0]));
    }
  }
  for (const fastener of model.record.fasteners) yield* headHolds(model, fastener);
  for (const { id, travelsWith } of model.record.fasteners) {
    if (travelsWith === null && !driven.has(id)) yield violation("fastener is driven once", id, "is not driven");
    if (travelsWith !== null && driven.has(id)) yield violation("what travels is not driven", id, "sits in its part");
  }
}

/** A screw or bolt pulls where its head, or the washer under it, is wider than what its shank goes through. */
function* headHolds({ record }: Model, { id, kind, head, through }: Fastener): Violations {
  if (!HEADED.test(kind)) return;
  for (const hole of record.holes.filter((each) => each.for === id && each.through && through.includes(each.part)))
    if (hole.stages.every(({ diameter }) => diameter > head.diameter - 0.01))
      yield violation("head does not pass its hole", id, `its head of ${head.diameter} goes through ${hole.part}`);
}

const HEADED = /screw|bolt/u;

export const partsOf = ({ through, into }: Fastener): string[] => [...through, ...(into === null ? [] : [into])];

/** What stands behind the head, from the head on: [across, long] in mm. */
const TOOLS = new Map<string, readonly (readonly [number, number])[]>([
  [
    "straight",
    [
      [8, 150],
      [60, 200],
    ],
  ],
  [
    "long",
    [
      [8, 25],
      [13, 275],
      [60, 200],
    ],
  ],
  [
    "angle",
    [
      [8, 25],
      [34, 60],
    ],
  ],
  [
    "stubby",
    [
      [8, 50],
      [30, 70],
    ],
  ],
  ...["hammer", "stapler", "hand", "wrench"].map((tool) => [tool, [[40, 120]]] as const),
]);
const COSINE_OF_5_DEGREES = 0.99619469;

function* reach(model: Model, fastener: Fastener, tool: string, axis: V3, body: Body | undefined): Violations {
  const lean = dot(axis, fastener.direction) / size(axis);
  if (lean < COSINE_OF_5_DEGREES - 1e-6 || Math.abs(size(axis) - 1) > 1e-5)
    yield violation("driver leans at most 5 degrees", fastener.id, `its axis ${axis} leans from ${fastener.direction}`);
  const ignored = partsOf(fastener);
  const others = [...(body ?? [])].filter((part) => !ignored.includes(part));
  for (const other of others)
    if (envelope(fastener, tool, axis).some((room) => model.solid(other).some((piece) => hits(room, piece))))
      yield violation("tool fits", fastener.id, `the ${tool} driver hits ${other}`);
  const hand = handRoom(fastener);
  for (const other of hand ? others : [])
    if (hand && model.solid(other).some((piece) => hits(hand, piece)))
      yield violation("tool fits", fastener.id, `the hand that brings the nut hits ${other}`);
}

/** A nut or cross dowel is brought by hand: 40 mm across, 120 mm long. */
const handRoom = ({ nut }: Fastener): Cylinder | undefined =>
  nut ? { from: nut.at, axis: times(nut.direction, -1), length: 120, radius: 20 } : undefined;

/** Heads that are not countersunk stand on the point that their length is measured from; the tool begins behind them. */
function envelope({ head }: Fastener, tool: string, axis: V3): Cylinder[] {
  const out = times(axis, -1);
  let start = head.seat === "proud" || head.seat === "pocket" ? head.height : 0;
  return (TOOLS.get(tool) ?? []).map(([across, length]) => {
    const from = along(head.at, out, start);
    start += length;
    return { from, axis: out, length, radius: across / 2 };
  });
}
