import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const bareMitre = rule<{
  readonly join: string;
  readonly to: string;
}>({
  name: "bare-mitre",
  severity: "warning",
  message: (a) => `nothing but glue on end grain holds the mitre of ${a.join} and ${a.to}`,
  label: () => "glue alone",
  help: () =>
    "join them `with: keyed mitre`, whose keys are let in across the corner when the glue is dry, or with a `splined mitre`, a `bridle` or dowels; or fix both to something that holds the corner",
  explain: `A mitre across the ends of two pieces of wood is end grain on end grain. That soaks up the glue, and what is left bears a fraction of what the wood does: a frame or a door opens at its corners. Keys,
a spline, a bridle or dowels bring long grain across the joint. What is nailed or glued to the same panel or case on both sides of its corner is held by that.`,
  wrong: stepExample(["bottom: 0, under: tread", "bottom: 0, top: 12"], ["with: screws", "with: mitre"]),
  right: stepExample(["bottom: 0, under: tread", "bottom: 0, top: 12"], ["with: screws", "with: keyed mitre"]),
  basis:
    "Wood Handbook FPL-GTR-190, chapter 10, “End-Grain Joints”: glued butt joints of end grain reach about 25 % of the strength of the wood; that mitres are like them is common practice, no source",
});
