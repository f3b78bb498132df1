import { shelfExample } from "../example.ts";
import { rule } from "../finding.ts";

export const bandIsDeducted = rule<{
  readonly part: string;
  readonly face: string;
  /** Null: its edge bounds a fit. */
  readonly thick: string | null;
}>({
  name: "band-is-deducted",
  severity: "warning",
  message: (a) =>
    a.thick === null
      ? `the ${a.face} of ${a.part} lies against another part, so its band is deducted all the same`
      : `the band at the ${a.face} of ${a.part} is ${a.thick} thick, so it is deducted all the same`,
  label: () => "deducted all the same",
  help: () => "take `deducted: no` out",
  explain:
    "A thin band on a free edge makes the part a hair larger, which nobody sees. Where the edge fits against another part, or the band is thicker than 1/32 in, the part has to be cut smaller by the band: two bands of 0.03 in take half of a gap of 1/8 in.",
  wrong: shelfExample(["bottom: 4 }", "bottom: 4, bands: { edges: front, thick: 1/8, deducted: no } }"]),
  right: shelfExample(["bottom: 4 }", "bottom: 4, bands: { edges: front, thick: 1/64, deducted: no } }"]),
  basis: "common practice, no source",
});
