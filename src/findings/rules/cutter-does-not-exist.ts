import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const withRail = (thick: string): string =>
  stepExample(
    [
      "  right-leg:",
      "  rail: { made of: lumber, as: on edge, between: [left-leg, right-leg], front: 0, bottom: 2 }\n  right-leg:",
    ],
    [
      "joints:",
      `joints:\n  - { join: rail, to: [left-leg, right-leg], with: mortise and tenon, tenon: { thick: ${thick} } }`,
    ],
  );

export const cutterDoesNotExist = rule<{
  readonly part: string;
  /** "mortise", "groove" */
  readonly cut: string;
  readonly wide: string;
  /** The nearest that there are, narrower and wider. */
  readonly near: readonly string[];
  readonly owned: boolean;
  /** As wide as a sheet of the plan is thick: it takes that. */
  readonly sheet: boolean;
}>({
  name: "cutter-does-not-exist",
  severity: "warning",
  message: (a) =>
    a.owned
      ? `the ${a.cut} in ${a.part} is ${a.wide} wide, and none of the bits under \`tools owned\` is`
      : `the ${a.cut} in ${a.part} is ${a.wide} wide, and no bit of that width is sold`,
  label: (a) => `there is ${a.near.join(" and ")}`,
  help: (a) =>
    a.cut === "mortise"
      ? `make the tenon ${a.near.join(" or ")} thick`
      : a.sheet
        ? "cut it in two passes with a narrower bit, as is usual where a sheet goes in, and try it with a piece of the sheet"
        : `cut it in two passes with a narrower bit, and try it in scrap; or make it ${a.near.join(" or ")} wide`,
  explain: `A mortise is as wide as the bit or chisel that cuts it, and a narrow groove or dado as wide as its router bit. Widths beyond the widest bit
are cut in passes, and any will do. \`tools owned\` says which bits there are; without it, those that are commonly sold are taken.`,
  wrong: withRail("0.45"),
  right: withRail("1/2"),
  basis: "common practice, no source",
});
