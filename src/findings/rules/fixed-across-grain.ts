import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const CLEATED =
  "  batten: { made of: strip, as: lying flat, grain: deep, across: middle, under: tread, front: 0, back: 11 1/4 }";
const withBatten = (joint: string): string =>
  stepExample(
    ["depth: 3 1/2", "depth: 11 1/4"],
    ["sold as: 2x4", "sold as: 2x12"],
    ["stock:", "stock:\n  strip: { sold as: 2x2, wood: spruce }"],
    ["  right-leg:", `${CLEATED}\n  right-leg:`],
    ["joints:", `joints:\n  - { join: batten, to: tread, ${joint} }`],
  );

export const fixedAcrossGrain = rule<{
  readonly part: string;
  readonly movement: string;
  readonly between: string;
  readonly to: readonly string[];
  readonly from: number;
  readonly until: number;
  readonly place: string;
  readonly limit: string;
  readonly remedy: string;
}>({
  name: "fixed-across-grain",
  severity: "warning",
  message: (a) => `${a.part} is held over ${a.between} of its width, where its wood moves ${a.movement}`,
  label: () => "will split or push its joints apart",
  why: (a) =>
    `from ${a.from} % moisture to ${a.until} % in ${a.place}; ${a.to.join(" and ")} ${a.to.length === 1 ? "does" : "do"} not move with it, and more than ${a.limit} is too much`,
  help: (a) => a.remedy,
  explain: `Solid wood grows wider in damp air and narrower in dry air, and hardly changes its length. A board that is glued or screwed over its width to
parts that do not move with it splits, or pushes the piece apart. The change is its width × the published coefficient of the wood × the change of moisture: the larger of
that from the day of building (\`moisture\`, or 8 %) and that between the seasons of its \`place\`. Hold it fast at one place only, and let it slide
elsewhere: \`oversized\` makes the clearance holes of screws wide enough, a groove without glue lets a panel move.`,
  wrong: withBatten("with: glue"),
  right: withBatten(
    "with: screws, from: batten, screw: { gauge: 8, length: 2 1/2, head: round }, oversized: 5/16, count: 3",
  ),
  basis: "Wood Handbook FPL-GTR-190, Table 13-5 and Eq. 13-2; the limit of 1/16 in is common practice, no source",
});
