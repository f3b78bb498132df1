import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

/** `neck`: null where nothing would be left. */
export const slidingTailTooThin = rule<{ readonly join: string; readonly thick: string; readonly neck: string | null }>(
  {
    name: "sliding-tail-too-thin",
    severity: "error",
    message: (a) =>
      `the tail of ${a.join} is ${a.thick} thick at its end, and ${a.neck === null ? "nothing would be left of it" : `only ${a.neck} thick`} at its shoulder`,
    help: () => "write a smaller depth, or a gentler slope such as 8",
    explain: `The tail of a sliding dovetail loses its slope on both sides, more of it the deeper it goes in. At its shoulder at least half of the thickness has to be left, or it breaks off.`,
    wrong: stepExample(
      ["with: screws", "with: sliding dovetail, deep: 1/2, slope: 1"],
      ["join: tread, to: [left-leg, right-leg]", "join: [left-leg, right-leg], to: tread"],
    ),
    right: stepExample(
      ["with: screws", "with: sliding dovetail, deep: 1/2, slope: 8"],
      ["join: tread, to: [left-leg, right-leg]", "join: [left-leg, right-leg], to: tread"],
    ),
    basis: "common practice, no source",
  },
);
