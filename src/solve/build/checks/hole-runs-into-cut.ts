import { holeRunsIntoCut } from "../../../findings/rules/hole-runs-into-cut.ts";
import { hullHits } from "../../../geometry/index.ts";
import { onBench } from "../../design/turning.ts";
import type { Rule, Verdict } from "./check.ts";
import { boresOf, holesIn, jointOf, roomOf } from "./rooms.ts";

/** A hole that runs into a mortise, groove or lap of another joint leaves its screw without wood, or cuts a tenon. */
export const holeRunsIntoCutRule: Rule = ({ design, holes }) =>
  design.parts.flatMap((part): readonly Verdict[] => {
    const own = holesIn(part, holes);
    const met = onBench(part).features.flatMap((feature) => {
      const room = roomOf(feature, part.body);
      if (!room) return [];
      return own
        .filter((hole) => feature.for === null || jointOf(hole) !== feature.for)
        .filter((hole) => boresOf(hole).some((bore) => hullHits(bore, room)))
        .map((hole) => ({ hole, feature }));
    });
    const check = {
      rule: "hole-runs-into-cut",
      subject: part.id,
      value: met.length,
      limit: 0,
      unit: "holes",
      basis: "geometry",
    };
    const first = met[0];
    if (!first) return own.length > 0 ? [{ check: { ...check, verdict: "holds" } }] : [];
    const finding = holeRunsIntoCut(part.at, { part: part.id, hole: first.hole.kind, cut: first.feature.kind });
    return [{ check: { ...check, verdict: "fails" }, finding }];
  });
