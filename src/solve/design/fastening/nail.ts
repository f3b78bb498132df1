import { holeRunsIntoCut } from "../../../findings/rules/hole-runs-into-cut.ts";
import { screwComesThrough } from "../../../findings/rules/screw-comes-through.ts";
import { screwTooShort } from "../../../findings/rules/screw-too-short.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, less, multiply, negate, rational, subtract } from "../../../units/rational.ts";
import type { Arrangement, Fastener } from "../../design.ts";
import { shift, unit } from "../space.ts";
import { NAIL_STOPS, SOLD_LENGTHS, wireOf } from "./catalogue.ts";
import { depthAt, runAt } from "./line.ts";
import { placesOf } from "./places-of.ts";
import { type RowPlan, usualRow } from "./row.ts";
import { type FasteningContext, options, type RowShift, type Site } from "./site.ts";

export type Driven = "nail" | "brad" | "staple";

/** Nails, brads and staples through the headed part, without holes. Staples stand 5 in apart, 3/4 in from the ends (common practice, no source). */
export function nails(kind: Driven, site: Site, moved: RowShift, context: FasteningContext): readonly Arrangement[] {
  const { head, hold, axis, sign } = site;
  const inch = context.units === "inch";
  const places = placesOf(site, moved, context, kind === "staple" ? stapleRow(inch) : usualRow(inch));
  if (!places) return [];
  const fasteners: Fastener[] = [];
  for (const [number, at] of places.points.entries()) {
    const { depth: through, interrupted } = runAt(head.solid, at, axis, sign > 0 ? -1 : 1);
    if (interrupted || through.n === 0n) {
      context.report(holeRunsIntoCut(site.draft.at, { part: head.id, hole: kind, cut: "cut" }));
      return [];
    }
    const room = depthAt(hold.solid, at, axis, sign);
    const length = lengthFor(kind, site, through, room, context);
    if (!length) return [];
    const { shank, head: headSize } = wireOf(kind, length);
    fasteners.push({
      id: `${site.joint}.${number + 1}`,
      joint: site.joint,
      kind,
      item: `${kind} ${context.printItem(length)} long`,
      length,
      rod: shank,
      head: {
        at: shift(at, axis, sign > 0 ? negate(through) : through),
        diameter: headSize,
        height: shank,
        seat: "flush",
      },
      direction: unit(axis, sign),
      through: [head.id],
      into: hold.id,
      travelsWith: null,
    });
  }
  return [{ fasteners, holes: [] }];
}

const stapleRow = (inch: boolean): RowPlan => ({
  ...usualRow(inch),
  spacing: inch ? inches(5) : millimetres(125),
  fromEnds: inch ? inches(3, 4) : millimetres(19),
});

/** The length asked for, or the longest sold that has at most two thirds in the second part and stays in it. */
function lengthFor(kind: Driven, site: Site, through: Length, room: Length, context: FasteningContext): Length | null {
  const { draft, head, hold } = site;
  const said = options(draft);
  const inch = context.units === "inch";
  const place = said.at ?? draft.at;
  const asked = said.length ? context.measure(said.length) : undefined;
  if (asked === null) return null;
  const most = subtract(add(through, room), NAIL_STOPS[context.units]);
  const usual = SOLD_LENGTHS[kind][inch ? "inch" : "mm"].filter(
    (length) =>
      compare(length, most) <= 0 && compare(length, multiply(through, rational(3))) <= 0 && less(through, length),
  );
  const length = asked ?? usual.at(-1);
  if (!length || compare(length, through) <= 0) {
    context.report(
      screwTooShort(place, {
        length: length ? context.print(length) : null,
        part: head.id,
        thick: context.print(through),
      }),
    );
    return null;
  }
  const left = subtract(add(through, room), length);
  if (left.n > 0n) return length;
  context.report(
    screwComesThrough(place, { length: context.print(length), part: hold.id, left: context.print(left), out: true }),
  );
  return null;
}
