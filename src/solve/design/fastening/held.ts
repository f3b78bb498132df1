import { inches, type Length, millimetres } from "../../../units/length.ts";
import {
  add,
  compare,
  divide,
  half,
  less,
  max,
  min,
  negate,
  rational,
  subtract,
  ZERO,
} from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Arrangement, Fastener, Hole } from "../../design.ts";
import type { Jointed, Pegged } from "../joinery/work.ts";
import { faceOf, isHigh, middle, triple, unit } from "../space.ts";
import type { FasteningContext, Member } from "./site.ts";

type Context = FasteningContext & { readonly member: (id: string) => Member };

/** What holds a joint besides screws and the like: what was let into both parts, or pegs. Null where the joint has neither. */
export function held(jointed: Jointed, context: Context): readonly Arrangement[] | null {
  if (jointed.loose && jointed.loose.length > 0) return [{ fasteners: letIn(jointed), holes: [] }];
  return jointed.pegged ? pegged(jointed, jointed.pegged, context) : null;
}

const letIn = ({ joining, loose = [] }: Jointed): readonly Fastener[] =>
  loose.map((each, i): Fastener => {
    const { kind, item, body, from, direction, length, thick, travels } = each;
    return {
      ...{ id: `${joining.id}.${i + 1}`, joint: joining.id, kind, item, length, rod: thick, direction, body },
      head: { at: from, diameter: thick, height: ZERO, seat: "flush" },
      through: [joining.join.id],
      into: joining.to.id,
      travelsWith: travels ? joining.join.id : null,
    };
  });

/**
 * Pegs through the cheeks of the other part and the tenon between them, driven when the joint is home. One, two where the tenon is 2 in
 * wide, one for every 6 in of a breadboard's tongue; 1/4 in thick, the hole in the tenon 1/16 in nearer to the shoulder, so that the peg
 * draws it tight (common practice, no source). From either side of the part, the one named under `side` first, else the outer one.
 */
function pegged({ joining }: Jointed, peg: Pegged, context: Context): readonly Arrangement[] {
  const { draft, touch } = joining;
  const inch = context.units === "inch";
  const { thin } = peg.section;
  const usual = inch ? inches(1, 4) : millimetres(6);
  const diameter = draft.peg?.diameter ? context.measure(draft.peg.diameter) : usual;
  const pull = inch ? inches(1, 16) : millimetres(3, 2);
  const said = draft.peg?.offset ? context.measure(draft.peg.offset) : peg.slotted ? ZERO : pull;
  if (!diameter || !said || touch.kind !== "faces") return [];
  const mate = context.member(joining.to.id);
  const outer =
    Math.sign(Number(middle(mate.body, thin).n) / Number(middle(mate.body, thin).d) - context.centre[thin]) >= 0;
  const named = draft.fasteners?.side?.value;
  const first = named === faceOf(thin, isHigh(named ?? "left")) ? isHigh(named) : outer;
  return [first, !first].flatMap((high) => onePegging(joining, peg, { high, diameter, pull: said }, context) ?? []);
}

interface Choice {
  /** Driven from the high side. */
  readonly high: boolean;
  readonly diameter: Length;
  readonly pull: Length;
}

function onePegging(
  joining: Jointed["joining"],
  { section, long, slotted }: Pegged,
  { high, diameter, pull }: Choice,
  context: Context,
): Arrangement | null {
  const { axis, sign } = joining.touch as Extract<typeof joining.touch, { kind: "faces" }>;
  const [join, mate] = [context.member(joining.join.id), context.member(joining.to.id)];
  const { thin, broad, cheek, wide } = section;
  const shoulder = sign > 0 ? join.body.high[axis] : join.body.low[axis];
  const onward = (from: Length, by: Length): Length => (sign > 0 ? add(from, by) : subtract(from, by));
  // The peg stands in the first half of the tenon, at least its own thickness from the shoulder.
  const line = onward(shoulder, max(diameter, half(min(long, multiplied(diameter, 4)))));
  const face = high ? mate.body.high[thin] : mate.body.low[thin];
  const way = high ? -1 : 1;
  const [fasteners, holes]: [Fastener[], Hole[]] = [[], []];
  const places = placesAlong(wide, slotted !== undefined, context);
  for (const [k, at] of places.entries()) {
    const mouth = triple((i) => (i === axis ? line : i === broad ? at : face));
    const near = high ? subtract(face, cheek.high) : subtract(cheek.low, face);
    const beyond = high ? subtract(cheek.low, mate.body.low[thin]) : subtract(mate.body.high[thin], cheek.high);
    // Half of the far cheek holds the point.
    const tenoned = add(near, subtract(cheek.high, cheek.low));
    const step = context.units === "inch" ? inches(1, 16) : millimetres(1);
    const whole = roundTo(add(tenoned, half(beyond)), step, "down");
    const length = less(tenoned, whole) ? whole : add(tenoned, half(beyond));
    if (!less(ZERO, near) || !less(ZERO, beyond)) return null;
    const id = `${joining.id}.${k + 1}`;
    fasteners.push({
      ...{ id, joint: joining.id, kind: "peg", length, rod: diameter, direction: unit(thin, way) },
      item: `peg ${context.printItem(diameter)} × ${context.printItem(length)}`,
      head: { at: mouth, diameter, height: ZERO, seat: "flush" },
      through: [mate.id, join.id],
      into: mate.id,
      travelsWith: null,
    });
    const common = { kind: "dowel", direction: unit(thin, way), for: id, atBench: true } as const;
    const keep = { edge: ZERO, end: ZERO, under: ZERO };
    holes.push({ ...common, part: mate.id, at: mouth, stages: [{ diameter, depth: length }], through: false, keep });
    const skin = high ? cheek.high : cheek.low;
    const own = triple((i) => (i === axis ? onward(line, negate(pull)) : i === broad ? at : skin));
    const depth = subtract(cheek.high, cheek.low);
    const moves =
      slotted && k !== (places.length - 1) / 2
        ? { slot: { along: unit(broad, 1), length: add(diameter, multiplied(slotted, 2)) } }
        : {};
    holes.push({ ...common, part: join.id, at: own, stages: [{ diameter, depth }], through: true, keep, ...moves });
  }
  return { fasteners, holes };
}

const multiplied = (length: Length, by: number): Length => ({ n: length.n * BigInt(by), d: length.d });

/** An odd number along a tongue that moves, so that one stands in the middle; one or two in a tenon. */
function placesAlong(wide: { low: Length; high: Length }, moves: boolean, { units }: Context): readonly Length[] {
  const size = subtract(wide.high, wide.low);
  const inch = units === "inch";
  const long = compare(size, inch ? inches(2) : millimetres(50)) >= 0;
  const n = moves ? (less(size, inch ? inches(9) : millimetres(225)) ? 1 : 3) : long ? 2 : 1;
  const sixth = roundTo(divide(size, rational(6)), inch ? inches(1, 16) : millimetres(1));
  const [low, middle, high] = [add(wide.low, sixth), half(add(wide.low, wide.high)), subtract(wide.high, sixth)];
  return n === 1 ? [middle] : n === 2 ? [low, high] : [low, middle, high];
}
