import { onlyOneStud } from "../../../findings/rules/only-one-stud.ts";
import { divide, floor, less, max, multiply, rational, subtract, toNumber } from "../../../units/rational.ts";
import { END } from "../../design/hardware/at-studs.ts";
import { enclosing, extent, INDICES } from "../../design/space.ts";
import { wallOf } from "../../design/use/wall.ts";
import type { Rule, Verdict } from "./check.ts";

/** Studs that lie behind something are as many as their distance goes into its length: one more only by good luck. */
const LEAST = 2;

/** What the piece hangs by is long enough that two studs are behind it, wherever it hangs. */
export const onlyOneStudRule: Rule = ({ design, print }) => {
  const { studs } = design.wall ?? wallOf(undefined, design.units, () => null);
  if (studs === null) return [];
  const least = multiply(studs, rational(LEAST));
  const { low, high } = design.parts.map(({ body }) => body).reduce(enclosing);
  // A piece is no longer for the sake of its cleat.
  const width = [subtract(high[0], low[0]), subtract(high[1], low[1])].reduce(max);
  const fixed = design.fittings.filter(({ hardware }) => hardware[0]?.item.kind === "wall screw");
  const rails = new Map(fixed.map((fitting) => [fitting.part, fitting]));
  return [...rails.values()].flatMap((fitting): readonly Verdict[] => {
    const part = design.parts.find(({ id }) => id === fitting.part);
    if (!part) return [];
    // Along a wall: whichever level way is the longer.
    const long = INDICES.filter((i) => i < 2)
      .map((i) => extent(part.body, i))
      .reduce((a, b) => (less(a, b) ? b : a));
    const share = divide(long, studs);
    const check = {
      ...{ rule: "only-one-stud", subject: part.id, value: toNumber(share), limit: LEAST, unit: "studs" },
      basis: "arithmetic: length over distance of the studs; at least two, common practice, no source",
    };
    if (check.value >= LEAST) return [{ check: { ...check, verdict: "holds" } }];
    const last = subtract(subtract(long, studs), END);
    const certain = Number(floor(share));
    const finding = onlyOneStud(fitting.at, {
      ...{ part: part.id, long: print(long), apart: print(studs), certain },
      fits: !less(width, least),
      least: print(least),
      within: certain === 1 && !less(last, END) ? [print(END), print(last)] : null,
    });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });
};
