import { screwComesThrough } from "../../../findings/rules/screw-comes-through.ts";
import { screwSizeUnknown } from "../../../findings/rules/screw-size-unknown.ts";
import { screwTooShort } from "../../../findings/rules/screw-too-short.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, less, multiply, rational, subtract } from "../../../units/rational.ts";
import { INCH_SCREWS, METRIC_SCREWS, type ScrewSize, SOLD_LENGTHS } from "./catalogue.ts";
import { type FasteningContext, options, type Site } from "./site.ts";

/** Wood that should stay under a point: 1/8 in (common practice, no source). */
export const underLimit = (context: FasteningContext): Length =>
  context.units === "inch" ? inches(1, 8) : millimetres(3);

/** The gauge asked for, or by the wood under the head (common practice, no source): #6 under 1/2 in, #8 to 1 1/2, #10 above. */
export function sizeFor({ draft }: Site, through: Length, context: FasteningContext): ScrewSize | null {
  const said = options(draft);
  const inch = context.units === "inch";
  const sizes = inch ? INCH_SCREWS : METRIC_SCREWS;
  const diameter = said.diameter ? context.measure(said.diameter) : undefined;
  if (diameter === null) return null;
  const asked = said.gauge?.value;
  const usual = less(through, inches(1, 2)) ? 1 : compare(through, inches(3, 2)) <= 0 ? 2 : 4;
  const found =
    asked !== undefined
      ? INCH_SCREWS.find(({ gauge }) => gauge === asked)
      : diameter !== undefined
        ? sizes.find(({ shank }) => compare(shank, diameter) === 0)
        : sizes[inch && usual === 4 ? 3 : usual];
  if (found) return found;
  context.report(
    screwSizeUnknown(said.gauge?.at ?? said.at ?? draft.at, { sold: sizes.map(({ name }) => name), metric: !inch }),
  );
  return null;
}

/** Screws of a gauge are sold up to about this length (common practice, no source). */
const LONGEST: ReadonlyMap<string, Length> = new Map([
  ["#4", inches(1)],
  ["#6", inches(2)],
  ["#8", inches(3)],
  ["#10", inches(4)],
]);

/** The length asked for, or the longest sold that has at most two thirds in the second part (where it passes wood: `balanced`) and leaves 1/4 in under its far face. */
export function lengthFor(
  site: Site,
  size: ScrewSize,
  through: Length,
  room: Length,
  context: FasteningContext,
  balanced = true,
): Length | null {
  const { draft, head, hold } = site;
  const said = options(draft);
  const inch = context.units === "inch";
  const place = said.at ?? draft.at;
  if (said.length) {
    const length = context.measure(said.length);
    if (!length) return null;
    const bite = subtract(length, through);
    if (bite.n <= 0n) {
      context.report(
        screwTooShort(place, { length: context.print(length), part: head.id, thick: context.print(through) }),
      );
      return null;
    }
    const left = subtract(room, bite);
    if (less(left, underLimit(context)))
      context.report(
        screwComesThrough(
          place,
          { length: context.print(length), part: hold.id, left: context.print(left), out: left.n <= 0n },
          { severity: left.n <= 0n ? "error" : "warning" },
        ),
      );
    return left.n <= 0n ? null : length;
  }
  const most = subtract(add(through, room), inch ? inches(1, 4) : millimetres(6));
  const longest = LONGEST.get(size.name);
  const fitting = SOLD_LENGTHS.screw[inch ? "inch" : "mm"].filter(
    (length) =>
      compare(length, most) <= 0 &&
      (!balanced || compare(length, multiply(through, rational(3))) <= 0) &&
      less(through, length) &&
      (!longest || compare(length, longest) <= 0),
  );
  const best = fitting.at(-1);
  if (!best) context.report(screwTooShort(place, { length: null, part: head.id, thick: context.print(through) }));
  return best ?? null;
}
