import { chestExample } from "../chest-example.ts";
import { rule } from "../finding.ts";

export const lidNotHeld = rule<{
  readonly lid: string;
  readonly weighs: string;
  readonly carries: string;
  readonly because: "none" | "open" | "weak";
  readonly count: number;
}>({
  name: "lid-not-held",
  severity: "warning",
  message: (a) =>
    ({
      none: `nothing keeps the lid ${a.lid} from falling`,
      open: `the support of the lid ${a.lid} holds it only when it is open: on the way there it falls`,
      weak: `the lid ${a.lid} weighs ${a.weighs}, and its supports hold ${a.carries}`,
    })[a.because],
  label: () => "can fall",
  help: (a) =>
    a.because === "weak"
      ? `fit ${a.count} of these supports, or stronger ones (carries: …)`
      : "fit lid supports that hold at every angle (hardware: { kind: lid support, holds: every angle })",
  explain: `The lid of a chest has killed children who leaned into it. A support that holds the lid wherever it is let go keeps it from falling; one that
locks only when the lid is all the way up does not. All supports of a lid together carry at least what it weighs. This counts for chests of 1.1 ft³ (31 dm³) and more.`,
  wrong: chestExample(["holds: every angle", "holds: open only"]),
  right: chestExample(),
  basis:
    "a notice of the product safety commission of the United States, 1 April 1982, on lids of toy chests; scope: ASTM F834",
});
