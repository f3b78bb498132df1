/** What is driven by blows has no hole of its own that would show it: whether it runs into a hole, or into something else that is driven. */
import { once } from "../../../geometry/index.ts";
import { UNITS_PER_MM } from "../../../units/length.ts";
import { toNumber } from "../../../units/rational.ts";
import { NAILS } from "../../design/fastening/catalogue.ts";
import type { Fastener, Hole } from "../../design.ts";
import { meet, type Rod, rodOf } from "./rods.ts";
import { cylindersOf } from "./slots.ts";

/** Wood that stays between two rods, half of it round each: nails wander, and a thinner wall breaks. Common practice, no source. */
const ROUND_EACH = UNITS_PER_MM / 2;

export const isDriven = ({ kind }: Fastener): boolean => NAILS.has(kind);

export const woodOf = ({ through, into }: Fastener): readonly string[] => [...through, into];

/** Two fasteners of different joints in the same wood, with too little of it between them. */
export const fastenersStrike = (a: Fastener, b: Fastener): boolean =>
  a.joint !== b.joint &&
  a.body === undefined &&
  b.body === undefined &&
  woodOf(a).some((id) => woodOf(b).includes(id)) &&
  meet(rodIn(a), rodIn(b));

/** A fastener and a hole that is not its own, in the wood of the hole. */
export const strikesHole = (fastener: Fastener, hole: Hole): boolean =>
  hole.for !== fastener.id &&
  woodOf(fastener).includes(hole.part) &&
  roomsOf(hole).some((room) => meet(rodIn(fastener), room));

const rodIn = once(
  ({ head: { at }, direction, length, rod }: Fastener): Rod =>
    rodOf(
      [toNumber(at[0]), toNumber(at[1]), toNumber(at[2])],
      direction,
      toNumber(rod) / 2 + ROUND_EACH,
      toNumber(length),
    ),
);

const roomsOf = once((hole: Hole): readonly Rod[] =>
  cylindersOf(hole).map(({ mouth, diameter, depth }) => rodOf(mouth, hole.direction, diameter / 2 + ROUND_EACH, depth)),
);
