import { holeRunsIntoCut } from "../../../findings/rules/hole-runs-into-cut.ts";
import { hullHits, type Solid } from "../../../geometry/index.ts";
import type { Length } from "../../../units/length.ts";
import { rational, subtract, toNumber } from "../../../units/rational.ts";
import { mateOf } from "../../design/mate.ts";
import { faceOf, indexOf } from "../../design/space.ts";
import { onBench } from "../../design/turning.ts";
import type { Design, Feature, Hole, Part } from "../../design.ts";
import type { Rule, Verdict } from "./check.ts";
import { boresOf, holesIn, jointOf, roomOf } from "./rooms.ts";

/** A hole that runs into a mortise, groove or lap of another joint leaves its screw without wood, or cuts a tenon. */
export const holeRunsIntoCutRule: Rule = ({ design, holes, print }) =>
  design.parts.flatMap((part): readonly Verdict[] => {
    const own = holesIn(part, holes);
    const met = onBench(part).features.flatMap((feature) => {
      const room = roomOf(feature, part.body);
      if (!room) return [];
      return own
        .filter((hole) => feature.for === null || jointOf(hole) !== feature.for)
        .filter((hole) => boresOf(hole).some((bore) => hullHits(bore, room)))
        .map((hole) => ({ hole, feature, room }));
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
    const joint = design.joints.find(({ id }) => id === jointOf(first.hole));
    const said = {
      part: part.id,
      hole: first.hole.kind,
      cut: first.feature.kind,
      spot: spotOf(part, first, design, print),
    };
    const also = joint ? [{ at: part.at, label: "the part" }] : [];
    return [{ check: { ...check, verdict: "fails" }, finding: holeRunsIntoCut(joint?.at ?? part.at, said, { also }) }];
  });

interface Met {
  readonly hole: Hole;
  readonly feature: Feature;
  readonly room: Solid;
}

/** Where along its part a hole is, what it is for, and what the cut is for that it meets. */
function spotOf(part: Part, { hole, feature, room }: Met, design: Design, print: (length: Length) => string) {
  const axis = indexOf(part.axes.length);
  const low = part.blank.low[axis];
  const [first, last] = [toNumber(part.body.low[axis]), toNumber(part.body.high[axis])];
  const isAlong = room.low[axis] <= first && room.high[axis] >= last;
  const mate = (joint: string | null): string | null => mateOf(design, part.id, joint);
  const from = (at: number): string => print(rational(Math.round(at - toNumber(low))));
  return {
    ...{ from: print(subtract(hole.at[axis], low)), end: faceOf(axis, false) },
    ...{ holds: mate(jointOf(hole)), cutFor: mate(feature.for) },
    // What runs from end to end leaves no place along it.
    cut: isAlong ? null : ([from(room.low[axis]), from(room.high[axis])] as const),
  };
}
