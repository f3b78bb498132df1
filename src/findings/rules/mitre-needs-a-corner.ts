import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const mitreNeedsACorner = rule<{
  readonly join: string;
  readonly to: string;
  readonly method: string;
}>({
  name: "mitre-needs-a-corner",
  severity: "error",
  message: (a) => `${a.join} and ${a.to} do not cross at a corner, as a ${a.method} needs`,
  help: () => "let both run to the outer corner, so that their ends lie over each other, flush on both sides",
  explain: `Mitres, box joints and dovetails are cut where the ends of two parts cross: place each of them as long as it is over the corner, flush with the other on both sides. The joint then takes from each what the other fills, and the length of both is over everything.`,
  wrong: stepExample(["with: screws", "with: mitre"]),
  right: stepExample(["bottom: 0, under: tread", "bottom: 0, top: 12"], ["with: screws", "with: keyed mitre"]),
  basis: "the language",
});
