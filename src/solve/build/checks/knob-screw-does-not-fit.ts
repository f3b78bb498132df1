import { knobScrewDoesNotFit } from "../../../findings/rules/knob-screw-does-not-fit.ts";
import { toMillimetres } from "../../../units/length.ts";
import { add, compare, less, type Rational, subtract, ZERO } from "../../../units/rational.ts";
import { measureOf } from "../../design/hardware/items.ts";
import { extent, faceAxis } from "../../design/space.ts";
import type { Part } from "../../design.ts";
import type { Rule, Verdict } from "./check.ts";

/** A knob's screw reaches far enough into it, and not to the end of its thread. */
export const knobScrewDoesNotFitRule: Rule = ({ design, print }) =>
  design.fittings.flatMap((fitting): readonly Verdict[] => {
    const item = fitting.hardware[0]?.item;
    if (!item || (item.kind !== "knob" && item.kind !== "pull")) return [];
    const axis = faceAxis(fitting.face);
    const parts = new Map(design.parts.map((part) => [part.id, part] as const));
    const wood = [fitting.part, ...fitting.through]
      .flatMap((id): Part | readonly Part[] => parts.get(id) ?? [])
      .reduce((so: Rational, part) => add(so, extent(part.body, axis)), ZERO);
    const screw = measureOf(item, "screw");
    const low = add(wood, measureOf(item, `into the ${item.kind}`));
    const high = add(wood, measureOf(item, `most into the ${item.kind}`));
    const short = less(screw, low);
    const check = {
      rule: "knob-screw-does-not-fit",
      subject: fitting.id,
      value: toMillimetres(subtract(screw, wood)),
      limit: toMillimetres(subtract(short ? low : high, wood)),
      unit: "mm into it",
      basis: "arithmetic; depth of threads: common practice, no source",
    };
    if (!short && compare(screw, high) <= 0) return [{ check: { ...check, verdict: "holds" } }];
    const told = { item: item.kind, part: fitting.part, screw: print(screw), wood: print(wood), short };
    const finding = knobScrewDoesNotFit(fitting.at, { ...told, low: print(low), high: print(high) });
    return [{ check: { ...check, verdict: "fails" }, finding }];
  });
