import { mortisesMeet } from "../../../findings/rules/mortises-meet.ts";
import { distance } from "../../../geometry/index.ts";
import { UNITS_PER_MM } from "../../../units/length.ts";
import { rational } from "../../../units/rational.ts";
import { onBench } from "../../design/turning.ts";
import type { Design, Part } from "../../design.ts";
import type { Rule, Verdict } from "./check.ts";
import { roomOf } from "./rooms.ts";

/** The part whose tenon has its end mitred for this joint. */
const mitredTenon = ({ parts }: Design, joint: string | null): Part | undefined =>
  parts.find(({ features }) => features.some((each) => each.kind === "mitre" && each.for === joint));

/**
 * Two mortises in one leg keep at least 1 mm of wood between them (common practice asks for more; less breaks out).
 * Those of two mitred tenons may meet: then the tenons themselves keep that much apart.
 */
export const mortisesMeetRule: Rule = ({ design, print }) =>
  design.parts.flatMap((part): readonly Verdict[] => {
    const rooms = onBench(part).features.flatMap((feature) => {
      const room = feature.kind === "mortise" ? roomOf(feature, part.body) : null;
      return room ? [{ feature, room }] : [];
    });
    const gaps = rooms.flatMap((a, i) =>
      rooms.slice(i + 1).map((b) => {
        const tenons = [a, b].map(({ feature }) => mitredTenon(design, feature.for));
        const [first, second] = tenons;
        return first && second ? distance(first.solid, second.solid) : distance(a.room, b.room);
      }),
    );
    if (gaps.length === 0) return [];
    const least = Math.min(...gaps);
    const check = {
      rule: "mortises-meet",
      subject: part.id,
      value: least / UNITS_PER_MM,
      limit: 1,
      unit: "mm",
      basis: "common practice, no source",
    };
    if (least >= UNITS_PER_MM) return [{ check: { ...check, verdict: "holds" } }];
    const [wood, short] = [Math.round(least), Math.ceil(UNITS_PER_MM - least)].map((n) => print(rational(n)));
    const finding = mortisesMeet(part.at, { part: part.id, wood: wood as string, short: short as string });
    return [{ check: { ...check, verdict: "fails" }, finding }];
  });
