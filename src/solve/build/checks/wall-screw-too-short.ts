import { wallScrewTooShort } from "../../../findings/rules/wall-screw-too-short.ts";
import { toMillimetres } from "../../../units/length.ts";
import { add, less, type Rational, subtract, ZERO } from "../../../units/rational.ts";
import { measureOf } from "../../design/hardware/items.ts";
import { extent, faceAxis } from "../../design/space.ts";
import { clearOfWall } from "../at-the-wall.ts";
import type { Rule, Verdict } from "./check.ts";

/** A wall screw reaches far enough into a stud, behind the wood that it passes, what is open behind that, and the plaster. */
export const wallScrewTooShortRule: Rule = ({ design, print }) =>
  design.fittings.flatMap((fitting): readonly Verdict[] => {
    const item = fitting.hardware[0]?.item;
    if (item?.kind !== "wall screw") return [];
    const passed = [fitting.part, ...fitting.through];
    const wood = design.parts
      .filter(({ id }) => passed.includes(id))
      .reduce((so: Rational, { body }) => add(so, extent(body, faceAxis(fitting.face))), ZERO);
    const before = add(add(wood, clearOfWall(fitting, design)), measureOf(item, "plaster"));
    const [length, needs] = [measureOf(item, "length"), measureOf(item, "into the stud")];
    const reach = subtract(length, before);
    const check = {
      rule: "wall-screw-too-short",
      subject: fitting.id,
      value: toMillimetres(reach),
      limit: toMillimetres(needs),
      unit: "mm",
      basis: "common practice, no source",
    };
    if (!less(reach, needs)) return [{ check: { ...check, verdict: "holds" } }];
    const finding = wallScrewTooShort(fitting.at, {
      part: fitting.part,
      length: print(length),
      reach: print(reach.n < 0n ? ZERO : reach),
      needs: print(needs),
      least: print(add(before, needs)),
    });
    return [{ check: { ...check, verdict: "fails" }, finding }];
  });
