import { wallScrewsMissStuds } from "../../../findings/rules/wall-screws-miss-studs.ts";
import { inches, toInches } from "../../../units/length.ts";
import { add, less, multiply, rational } from "../../../units/rational.ts";
import { END } from "../../design/hardware/at-studs.ts";
import { extent, faceAxis } from "../../design/space.ts";
import { wallOf } from "../../design/use/wall.ts";
import type { Rule, Verdict } from "./check.ts";

/** Half the width of a stud: so far may a screw stand from where it belongs. Common practice, no source. */
const NEAR = inches(3, 4);
const LEAST = 2;

/** Wall screws stand so that each can be in a stud; and in two studs, where two can lie behind the part. */
export const wallScrewsMissStudsRule: Rule = ({ design, print }) => {
  const { studs } = design.wall ?? wallOf(undefined, design.units, () => null);
  if (studs === null) return [];
  const apart = toInches(studs);
  const screws = design.fittings.filter(
    ({ hardware, face }) => hardware[0]?.item.kind === "wall screw" && faceAxis(face) !== 2,
  );
  return [...new Set(screws.map(({ part }) => part))].flatMap((id): readonly Verdict[] => {
    const part = design.parts.find((each) => each.id === id);
    const own = screws.filter((each) => each.part === id);
    const [first] = own;
    if (!part || !first) return [];
    const level = faceAxis(first.face) === 0 ? 1 : 0;
    const places = own.flatMap(({ hardware }) => hardware.map(({ at }) => toInches(at[level])));
    // With a stud behind each screw in turn: in which stud, counted from there, the others are.
    const studsHit = places.map((from) =>
      places.flatMap((to) => {
        const steps = Math.round((to - from) / apart);
        return Math.abs(to - from - steps * apart) <= toInches(NEAR) ? [steps] : [];
      }),
    );
    const best = studsHit.reduce((a, b) => (rank(b) > rank(a) ? b : a));
    const room = !less(extent(part.body, level), add(studs, multiply(END, rational(2))));
    const many = new Set(best).size;
    const missing = places.length - best.length;
    const check = {
      ...{ rule: "wall-screws-miss-studs", subject: id, value: many, limit: room ? LEAST : 1, unit: "studs" },
      basis: "arithmetic: places of the screws over distance of the studs; common practice, no source",
    };
    if (missing === 0 && many >= check.limit) return [{ check: { ...check, verdict: "holds" } }];
    const finding = wallScrewsMissStuds(first.at, {
      ...{ part: id, apart: print(studs), screws: places.length, hit: best.length, studs: many, room },
    });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });
};

/** As many screws as can be, and of those into as many studs. */
const rank = (hit: readonly number[]): number => hit.length * 100 + new Set(hit).size;
