import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const holeRunsIntoCut = rule<{
  readonly part: string;
  readonly hole: string;
  readonly cut: string;
  /** Where along the part it is, where that is known. */
  readonly spot?: {
    readonly from: string;
    readonly end: string;
    /** The part that its screw goes into, and the one that the cut is for; null where no joint has them. */
    readonly holds: string | null;
    readonly cutFor: string | null;
    /** Where the cut begins and ends, from that end; null where it runs along the whole part. */
    readonly cut: readonly [string, string] | null;
  };
}>({
  name: "hole-runs-into-cut",
  severity: "error",
  message: ({ part, hole, cut, spot }) =>
    spot
      ? `the ${hole} hole in ${part} ${spot.from} from its ${spot.end} end${spot.holds ? `, for ${spot.holds},` : ""} runs into ${spot.cutFor ? `the ${cut} for ${spot.cutFor}` : `a ${cut}`}`
      : `a ${hole} hole in ${part} runs into a ${cut} that is not of its own joint`,
  help: ({ cut, spot }) => {
    if (!spot) return "move the fastener (count, in from ends), or the cut";
    if (!spot.cut)
      return `the ${cut} runs along the whole part there: move ${spot.holds ?? "the hole"} or the ${cut} sideways`;
    const move = spot.holds
      ? `give its joint with ${spot.holds} another \`count\`, or \`in from ends\``
      : "move the hole";
    return `${move}, so that none lies between ${spot.cut[0]} and ${spot.cut[1]} from that end; or move the ${cut}`;
  },
  explain: `A hole that breaks into a mortise, a groove or a lap leaves its screw without wood, or cuts what sits there.`,
  wrong: stepExample([
    "top: 12 }",
    "top: 12, groove: { in: bottom, near: front, in from: 1 1/2, wide: 1/2, deep: 3/4 }, hole: { in: top, from left: 12, from front: 1 3/4, diameter: 1/2, deep: 1 } }",
  ]),
  right: stepExample(),
  basis: "geometry",
});
