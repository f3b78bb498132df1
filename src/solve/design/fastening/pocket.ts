import { pocketNeedsRoom } from "../../../findings/rules/pocket-needs-room.ts";
import { screwComesThrough } from "../../../findings/rules/screw-comes-through.ts";
import type { Face } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { compare, divide, half, less, multiply, negate, subtract, toNumber, ZERO } from "../../../units/rational.ts";
import type { Arrangement, Direction, Fastener, Hole, Point } from "../../design.ts";
import { type AxisIndex, extent, faceOf, isHigh, middle, triple } from "../space.ts";
import { POCKET, SOLD_LENGTHS } from "./catalogue.ts";
import { depthAt } from "./line.ts";
import { placesOf } from "./places-of.ts";
import type { RowPlan } from "./row.ts";
import { type FasteningContext, options, type RowShift, type Site } from "./site.ts";

/**
 * Pocket screws: the axis leaves the end at mid-thickness, 15 degrees to the face; the flat for the head (the shoulder) lies half the
 * screw's length back along it. The point should end 1/8 in under the far face; under 1/16 in is an error (common practice, no source).
 */
export function pocketScrews(site: Site, moved: RowShift, context: FasteningContext): readonly Arrangement[] {
  const thin = site.head.frame.thickness;
  if (thin === site.axis) {
    context.report(
      pocketNeedsRoom(site.draft.at, { part: site.head.id, why: "its broad side lies on the other part" }),
    );
    return [];
  }
  if (site.head.slanting) {
    context.report(
      pocketNeedsRoom(site.draft.at, { part: site.head.id, why: "its faces meet the other part at a slant" }),
    );
    return [];
  }
  const asked = options(site.draft).side?.value;
  const sides = asked ? [asked] : facesByPreference(site, thin, context);
  return sides.flatMap((side) => onSide(site, side, thin, moved, context) ?? []);
}

/** Faces of the drilled part, the one that looks into the piece first, so that pockets are not seen. */
function facesByPreference({ head }: Site, thin: AxisIndex, { centre }: FasteningContext): readonly Face[] {
  const inside = toNumber(middle(head.body, thin)) < centre[thin];
  // A rail in the middle of the piece shows its pockets to the back or below.
  return [faceOf(thin, thin === 0 ? inside : thin === 1), faceOf(thin, thin === 0 ? !inside : thin !== 1)];
}

function rowPlan(thick: Length, wide: Length, inch: boolean): RowPlan {
  const panel = less(inches(8), wide);
  return {
    spacing: panel ? (inch ? inches(7) : millimetres(180)) : inch ? inches(5, 2) : millimetres(64),
    fromEnds: panel ? (inch ? inches(2) : millimetres(50)) : inch ? inches(3, 4) : millimetres(19),
    count: null,
    // Two from 1 1/2 in in 3/4 in stock, so that the part cannot turn; a fat screw in thick stock splits a narrow end.
    twoFrom: compare(thick, inches(1)) <= 0 ? inches(3, 2) : inches(5, 2),
  };
}

/** Screw length by the thickness of the drilled part (common practice, no source). */
const BY_THICKNESS: readonly (readonly [Length, number])[] = [
  [inches(11, 16), 1],
  [inches(13, 16), 2],
  [inches(9, 8), 3],
  [inches(11, 8), 4],
  [inches(3), 5],
];

function onSide(
  site: Site,
  side: Face,
  thin: AxisIndex,
  moved: RowShift,
  context: FasteningContext,
): Arrangement | null {
  const { draft, head, hold, axis, sign } = site;
  const inch = context.units === "inch";
  const units = inch ? "inch" : "mm";
  const said = options(draft);
  const thick = extent(head.body, thin);
  const run = (3 - axis - thin) as AxisIndex;
  const places = placesOf(
    site,
    moved,
    context,
    rowPlan(thick, subtract(site.area.high[run], site.area.low[run]), inch),
  );
  const sold = SOLD_LENGTHS["pocket screw"][units];
  const usual = sold[BY_THICKNESS.find(([most]) => compare(thick, most) <= 0)?.[1] ?? 5] as Length;
  const length = said.length ? context.measure(said.length) : usual;
  if (!places || !length) return null;
  const shoulder = half(length);
  const mouth = divide(half(thick), POCKET.sine);
  if (compare(mouth, shoulder) <= 0) {
    context.report(pocketNeedsRoom(draft.at, { part: head.id, why: `it is only ${context.print(thick)} thick` }));
    return null;
  }
  const bite = multiply(subtract(length, shoulder), POCKET.cosine);
  const away = isHigh(side) ? negate(POCKET.sine) : POCKET.sine;
  const exact = triple((i) =>
    i === axis ? (sign > 0 ? POCKET.cosine : negate(POCKET.cosine)) : i === thin ? away : ZERO,
  );
  const direction = exact.map((c) => toNumber(c)) as unknown as Direction;
  const [fasteners, holes]: [Fastener[], Hole[]] = [[], []];
  for (const [number, contact] of places.points.entries()) {
    const centred = triple((i) => (i === thin ? middle(head.body, thin) : contact[i])) as Point;
    const left = subtract(depthAt(hold.solid, centred, axis, sign), bite);
    if (less(left, inches(1, 8)) && number === 0)
      context.report(
        screwComesThrough(
          said.at ?? draft.at,
          { length: context.print(length), part: hold.id, left: context.print(left), out: left.n <= 0n },
          { severity: less(left, inches(1, 16)) ? "error" : "warning" },
        ),
      );
    if (less(left, inches(1, 16))) return null;
    const back = (by: Length): Point => triple((i) => subtract(centred[i], multiply(exact[i], by)));
    const id = `${site.joint}.${number + 1}`;
    fasteners.push({
      id,
      joint: site.joint,
      kind: "pocket screw",
      item: `pocket screw ${context.printItem(length)}, ${hold.softwood ? "coarse" : "fine"} thread`,
      length,
      rod: inch ? inches(3, 20) : millimetres(4),
      head: {
        at: back(shoulder),
        diameter: POCKET.head[units],
        height: inch ? inches(1, 8) : millimetres(3),
        seat: "pocket",
      },
      direction,
      through: [head.id],
      into: hold.id,
      travelsWith: null,
    });
    holes.push({
      part: head.id,
      kind: "pocket",
      at: back(mouth),
      direction,
      stages: [
        { diameter: POCKET.bore[units], depth: subtract(mouth, shoulder) },
        { diameter: POCKET.pilot[units], depth: mouth },
      ],
      through: true,
      for: id,
      keep: { edge: ZERO, end: ZERO, under: ZERO },
      atBench: true,
    });
  }
  return { fasteners, holes };
}
