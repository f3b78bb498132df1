import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const fingersDoNotFit = rule<{
  readonly join: string;
  readonly to: string;
  readonly finger: string;
  readonly tall: string;
  readonly least: string;
  readonly most: string;
}>({
  name: "fingers-do-not-fit",
  severity: "error",
  message: (a) => `fingers ${a.finger} wide leave slivers in the ${a.tall} that ${a.join} and ${a.to} meet over`,
  help: (a) => `write a \`finger:\` of at least ${a.least}, and at most ${a.most}`,
  explain: `A box joint has an odd number of fingers, three or more, so that both ends look alike; the outer two share what is left over. Wider fingers than half of the corner leave only slivers beside them, and thin ones break off.`,
  wrong: stepExample(["bottom: 0, under: tread", "bottom: 0, top: 12"], ["with: screws", "with: box joint, finger: 3"]),
  right: stepExample(
    ["bottom: 0, under: tread", "bottom: 0, top: 12"],
    ["with: screws", "with: box joint, finger: 1/2"],
  ),
  basis: "common practice, no source",
});
