import { mortiseBreaksOut } from "../../../findings/rules/mortise-breaks-out.ts";
import { splineDoesNotFit } from "../../../findings/rules/spline-does-not-fit.ts";
import { solidBox } from "../../../geometry/index.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, half, less, max, min, multiply, rational, subtract, ZERO } from "../../../units/rational.ts";
import type { Box } from "../../design.ts";
import { boxFeature } from "../shapes/workpiece.ts";
import { extent, middle, triple, unit, withAxis } from "../space.ts";
import type { Section } from "./section.ts";
import { deeperOf } from "./tenon.ts";
import { boxOf, facing, sectionOf, shouldersOf, usualLength } from "./tenon-section.ts";
import { type Bench, type Craft, type JoineryContext, type Joining, type Loose, measured } from "./work.ts";

/** A tenon of its own, half in a mortise of each part. */
export const beginLooseTenon: Craft = (joining, bench, context) => {
  const { draft, touch } = joining;
  if (touch.kind !== "faces") return null;
  const section = sectionOf(joining, bench, context, shouldersOf(joining, bench, context));
  if (!section) return null;
  const { thin, broad, wide, cheek } = section;
  const width = measured(draft.loose?.wide, subtract(wide.high, wide.low), context);
  const room = extent(bench.piece(joining.to.id).body, touch.axis);
  const usual = multiply(usualLength(room, context.units === "inch", context.precision), rational(2));
  const long = measured(draft.loose?.long, usual, context);
  const deeper = deeperOf(joining, context);
  if (!width || !long || !deeper) return null;
  const centre = half(add(wide.low, wide.high));
  const narrowed: Section = {
    ...{ thin, broad, cheek },
    wide: { low: subtract(centre, half(width)), high: add(centre, half(width)) },
  };
  const print = context.printItem;
  const item = `loose tenon ${print(subtract(cheek.high, cheek.low))} × ${print(width)} × ${print(long)}`;
  const filled = { kind: "loose tenon", item, feature: "mortise", length: long, slack: deeper, grow: ZERO } as const;
  return letIn(joining, [narrowed], filled, bench, context);
};

/** A spline along the whole edge, in a groove in each part: 3/4 in wide (common practice, no source). */
export const beginEdgeSpline: Craft = (joining, bench, context) => {
  const { draft, touch } = joining;
  if (touch.kind !== "faces") return null;
  const whole = sectionOf(joining, bench, context, { low: ZERO, high: ZERO });
  const inch = context.units === "inch";
  const wide = measured(draft.loose?.wide, inch ? inches(3, 4) : millimetres(20), context);
  if (!whole || !wide) return null;
  const mate = bench.piece(joining.to.id).body;
  const section: Section = {
    ...whole,
    wide: { low: max(whole.wide.low, mate.low[whole.broad]), high: min(whole.wide.high, mate.high[whole.broad]) },
  };
  const slack = inch ? inches(1, 32) : millimetres(1);
  const print = context.printItem;
  const long = subtract(section.wide.high, section.wide.low);
  const item = `spline ${print(subtract(whole.cheek.high, whole.cheek.low))} × ${print(wide)} × ${print(long)}`;
  return letIn(
    joining,
    [section],
    { kind: "spline", item, feature: "groove", length: wide, slack, grow: ZERO },
    bench,
    context,
  );
};

/** Biscuits: number, length, width and thickness in mm, and how much longer their slots are (common practice, from memory). */
const BISCUITS = [
  { number: 0, long: 47, wide: 15 },
  { number: 10, long: 53, wide: 19 },
  { number: 20, long: 56, wide: 23 },
] as const;
const BISCUIT_THICK = millimetres(4);
const SLOT_LONGER = millimetres(4);

/** A row of biscuits along the middle of the contact, 6 in apart, the first 2 in from the end (common practice, no source). */
export const beginBiscuits: Craft = (joining, bench, context) => {
  const { draft, touch } = joining;
  const inch = context.units === "inch";
  const sides = facing(joining, bench);
  if (touch.kind !== "faces" || !sides) return null;
  const { thin, broad } = sides;
  const [own, mate] = [bench.piece(joining.join.id).body, bench.piece(joining.to.id).body];
  const area = { low: max(own.low[broad], mate.low[broad]), high: min(own.high[broad], mate.high[broad]) };
  const across = half(add(max(own.low[thin], mate.low[thin]), min(own.high[thin], mate.high[thin])));
  const tall = subtract(area.high, area.low);
  const roomy = BISCUITS.filter(
    ({ wide, long }) =>
      [own, mate].every((body) => compare(extent(body, touch.axis), millimetres(wide)) > 0) &&
      compare(add(millimetres(long), SLOT_LONGER), tall) <= 0,
  );
  const size = draft.biscuit
    ? BISCUITS.find(({ number }) => number === draft.biscuit?.value)
    : (roomy.at(-1) ?? BISCUITS[0]);
  const spacing = measured(draft.fasteners?.spacing, inch ? inches(6) : millimetres(150), context);
  const first = measured(draft.fasteners?.inFromEnds, inch ? inches(2) : millimetres(50), context);
  const said = draft.fasteners?.count;
  const counted = said ? context.count(said) : null;
  if (!size || !spacing || !first || (said && counted === null)) return null;
  const slot = add(millimetres(size.long), SLOT_LONGER);
  const free = max(subtract(tall, multiply(max(first, half(slot)), rational(2))), ZERO);
  const fitting = Number(free.n / free.d) === 0 ? 1 : 1 + Number((free.n * spacing.d) / (free.d * spacing.n));
  const n = counted ?? Math.max(1, Math.min(200, fitting));
  const centre = half(add(area.low, area.high));
  const sections = Array.from({ length: n }, (_, k): Section => {
    const at = n === 1 ? centre : add(centre, multiply(free, rational(2 * k - n + 1, 2 * (n - 1))));
    const reach = half(millimetres(size.long));
    return {
      ...{ thin, broad },
      cheek: { low: subtract(across, half(BISCUIT_THICK)), high: add(across, half(BISCUIT_THICK)) },
      wide: { low: subtract(at, reach), high: add(at, reach) },
    };
  });
  const [lowest, last] = [sections[0], sections.at(-1)];
  const grow = half(SLOT_LONGER);
  if (
    lowest &&
    last &&
    (less(subtract(lowest.wide.low, grow), area.low) || less(area.high, add(last.wide.high, grow)))
  ) {
    context.report(
      splineDoesNotFit(draft.biscuit?.at ?? draft.with.at, {
        ...{ join: joining.join.id, to: joining.to.id },
        spline: `${context.print(BISCUIT_THICK)} × ${context.print(slot)}`,
        room: `${context.print(min(extent(own, thin), extent(mate, thin)))} × ${context.print(tall)}`,
      }),
    );
    return null;
  }
  const filled: Filling = {
    ...{ kind: "biscuit", item: `biscuit no. ${size.number}`, feature: "slot", grow },
    ...{ length: millimetres(size.wide), slack: millimetres(1) },
  };
  return letIn(joining, sections, filled, bench, context);
};

/** What fills two slots: how long it is in both together, how much deeper each slot is, and how much longer at each end. */
interface Filling {
  readonly kind: Loose["kind"];
  readonly item: string;
  readonly feature: "mortise" | "groove" | "slot";
  readonly length: Length;
  readonly slack: Length;
  readonly grow: Length;
}

function letIn(
  joining: Joining,
  sections: readonly Section[],
  { kind, item, feature, length, slack, grow }: Filling,
  bench: Bench,
  context: JoineryContext,
): ReturnType<Craft> {
  const { axis, sign } = joining.touch as Extract<Joining["touch"], { kind: "faces" }>;
  const deep = add(half(length), slack);
  for (const id of [joining.join.id, joining.to.id]) {
    const thick = extent(bench.piece(id).body, axis);
    if (compare(deep, thick) < 0) continue;
    const at = joining.draft.loose?.at ?? joining.draft.with.at;
    context.report(mortiseBreaksOut(at, { part: id, deep: context.print(deep), thick: context.print(thick) }));
    return null;
  }
  return () => {
    const loose = sections.map((section): Loose => {
      const { wide, broad, cheek } = section;
      const slot: Section = { ...section, wide: { low: subtract(wide.low, grow), high: add(wide.high, grow) } };
      const into = (way: 1 | -1) => ({ axis, sign: (way * sign) as 1 | -1 });
      const [far, near] = [boxOf(slot, joining, bench, deep), boxOf(slot, joining, bench, ZERO, deep)];
      bench.cut(joining.to.id, { kind: "box", box: far }, boxFeature(feature, joining.id, far, into(1), broad));
      bench.cut(joining.join.id, { kind: "box", box: near }, boxFeature(feature, joining.id, near, into(-1), broad));
      const box: Box = boxOf(section, joining, bench, half(length), half(length));
      const centre = triple((i) => middle(box, i));
      return {
        ...{ kind, item, length, travels: true },
        body: solidBox(box.low, box.high),
        from: withAxis(centre, axis, sign > 0 ? box.low[axis] : box.high[axis]),
        direction: unit(axis, sign),
        thick: subtract(cheek.high, cheek.low),
      };
    });
    return { joining, insertion: unit(axis, sign), gap: ZERO, loose };
  };
}
