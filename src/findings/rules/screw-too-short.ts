import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const screwTooShort = rule<{ readonly length: string | null; readonly part: string; readonly thick: string }>({
  name: "screw-too-short",
  severity: "error",
  message: (a) =>
    a.length === null
      ? `no length that is sold goes through ${a.part} (${a.thick}) and stays in the other part`
      : `at ${a.length} it does not get through ${a.part}, which takes ${a.thick}`,
  help: (a) =>
    a.length === null
      ? "give a length, sink the head in a counterbore, or drive it from the other side"
      : `make it longer than ${a.thick}, sink the head in a counterbore, or say with from: that the other part is under the head`,
  explain: `A screw or nail holds by what is in the second part. About half to two thirds of its length should be there.`,
  wrong: stepExample(["with: screws", "with: screws, screw: { length: 1 }"]),
  right: stepExample(),
  basis: "common practice, no source",
});
