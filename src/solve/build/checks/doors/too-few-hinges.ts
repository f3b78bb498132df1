import { tooFewHinges } from "../../../../findings/rules/too-few-hinges.ts";
import { subtract } from "../../../../units/rational.ts";
import { hingesFor } from "../../../design/hinges/spots.ts";
import type { Rule, Verdict } from "../check.ts";
import { massText } from "../standing/weight-and-feet.ts";
import { doorsOf } from "./doors.ts";

/** As many as its height and its mass ask for; a continuous hinge is one, and enough. */
export const tooFewHingesRule: Rule = (checked) =>
  doorsOf(checked).flatMap((door): readonly Verdict[] => {
    const { design, mass, print } = checked;
    if (door.joint.method === "continuous hinge") return [];
    const high = subtract(door.body.high[door.along], door.body.low[door.along]);
    const kg = door.parts.reduce((so, part) => so + mass(part), 0);
    const [count, wanted] = [door.hinges.length, hingesFor(high, kg)];
    const check = {
      ...{ rule: "too-few-hinges", subject: door.motion.name, value: count, limit: wanted, unit: "hinges" },
      basis: "a hinge maker's chart, interpreted: 2 up to 40 in and 15 lb, one more for each 20 in or 15 lb",
    };
    if (count >= wanted) return [{ check: { ...check, verdict: "holds" } }];
    const told = { door: door.motion.name, high: print(high), weighs: massText(kg, design.units) };
    return [
      { check: { ...check, verdict: "warns" }, finding: tooFewHinges(door.joint.at, { ...told, count, wanted }) },
    ];
  });
