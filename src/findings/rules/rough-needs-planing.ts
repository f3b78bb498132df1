import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const roughNeedsPlaning = rule<{ readonly text: string; readonly units: "inch" | "mm" }>({
  name: "rough-needs-planing",
  severity: "error",
  message: (a) => `\`${a.text}\` is how thick the board is before it is planed, not after`,
  label: () => "sold rough",
  why: () => "there is no custom for what a rough board of that thickness is planed to",
  help: (a) => `add what it will be when it is flat, such as \`planed to: ${a.units === "inch" ? "3/4" : "20"}\``,
  explain:
    "Rough hardwood is named by its thickness from the saw. For quarters of an inch (`4/4`) there are customs for what is left when both faces are flat; for other thicknesses the plan has to say it: `planed to: 3/4`.",
  wrong: stepExample(
    ["{ sold as: 2x4, wood: spruce }", "{ sold as: 2 in rough, wood: white oak }"],
    ["lying flat, left", "lying flat, deep: 3 1/2, left"],
    ["facing: left, left", "facing: left, width: 3 1/2, left"],
  ),
  right: stepExample(
    ["{ sold as: 2x4, wood: spruce }", "{ sold as: 2 in rough, wood: white oak, planed to: 1 1/2 }"],
    ["lying flat, left", "lying flat, deep: 3 1/2, left"],
    ["facing: left, left", "facing: left, width: 3 1/2, left"],
  ),
  basis: "common practice, no source",
});
