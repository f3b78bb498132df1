/** How many hinges something gets, and where along its edge. */
import type { JointDraft } from "../../../parse/draft.ts";
import { inches, type Length, millimetres, toInches } from "../../../units/length.ts";
import { add, compare, divide, half, min, multiply, rational, subtract } from "../../../units/rational.ts";
import type { Lie } from "./lie.ts";

const KG_PER_POUND = 0.45359237;

/**
 * How many hinges a door wants, by its height and its mass in kg, whichever asks for more: 2 up to 40 in and 15 lb, one more for each further 20 in
 * or 15 lb. A hinge maker's chart for cup hinges, interpreted; used for butt hinges as well, for which common practice asks the same.
 */
export function hingesFor(high: Length, kilograms: number): number {
  const [tall, heavy] = [toInches(high), kilograms / KG_PER_POUND];
  const byHeight = Math.max(2, Math.ceil((tall - 1e-9) / 20));
  const byMass = Math.max(2, 1 + Math.ceil((heavy - 1e-9) / 15));
  return Math.max(byHeight, byMass);
}

interface SpotsContext {
  readonly units: "inch" | "mm";
  readonly measure: (formula: NonNullable<JointDraft["gap"]>) => Length | null;
  readonly count: (formula: NonNullable<JointDraft["gap"]>) => number | null;
  /** kg of all that hangs there. */
  readonly hangs: (id: string) => number;
}

/**
 * The middles of the hinges, along their line. The outer ones lie 4 in (100 mm) in from the ends, of a low door a quarter of its height, the rest evenly
 * between them. Null: a formula of the maker's failed.
 */
export function spotsOf(
  draft: JointDraft,
  door: string,
  { door: body, hold, along }: Lie,
  context: SpotsContext,
  /** Moves the outer ones, and what lies between them, away from the ends. */
  by: Length = rational(0),
): readonly Length[] | null {
  const said = draft.fasteners;
  const [low, high] = [later(body.low[along], hold.low[along]), min(body.high[along], hold.high[along])];
  const long = subtract(high, low);
  const count = said?.count
    ? context.count(said.count)
    : hingesFor(subtract(body.high[along], body.low[along]), context.hangs(door));
  const usual = min(context.units === "inch" ? inches(4) : millimetres(100), divide(long, rational(4)));
  const ends = said?.inFromEnds ? context.measure(said.inFromEnds) : usual;
  if (count === null || ends === null) return null;
  if (count === 1) return [add(add(low, half(long)), by)];
  const first = add(add(low, ends), by);
  const between = subtract(subtract(subtract(high, ends), by), first);
  if (between.n <= 0n) return [];
  return Array.from({ length: count }, (_, i) => add(first, multiply(between, rational(i, count - 1))));
}

const later = (a: Length, b: Length): Length => (compare(a, b) < 0 ? b : a);
