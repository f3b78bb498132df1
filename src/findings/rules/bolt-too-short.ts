import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const boltTooShort = rule<{
  readonly length: string;
  readonly needs: string;
  readonly passes: string;
  readonly asked: boolean;
}>({
  name: "bolt-too-short",
  severity: "error",
  message: (a) =>
    `${a.asked ? "a bolt" : "the longest bolt that is sold,"} ${a.length} long${a.asked ? "" : ","} is too short: it needs ${a.needs} for ${a.passes}`,
  help: (a) => (a.asked ? `write a length of ${a.needs} or more` : "sink the head (counterbore: 1), or use screws"),
  explain: `A bolt goes through both parts, or through one and into a cross dowel in the other, and needs length for its washers and the whole nut besides. Where no length is written, the shortest that is sold and long enough is taken.`,
  wrong: stepExample(["with: screws", "with: bolts, bolt: { diameter: 1/4, length: 4 }"]),
  right: stepExample(),
  basis: "geometry; lengths that are sold: common practice, no source",
});
