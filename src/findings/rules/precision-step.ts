import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const precisionStep = rule<{ readonly key: string; readonly units: "inch" | "mm" }>({
  name: "precision-step",
  severity: "error",
  message: (a) => (a.key === "kerf" ? "a kerf is a plain measure" : `no tape has steps of this size`),
  label: (a) => (a.key === "kerf" ? "not a plain measure" : "not a step of the tape"),
  help: (a) =>
    a.key === "kerf"
      ? `write what the saw takes away, such as ${a.units === "inch" ? "1/8" : "3.2"}`
      : `write ${a.units === "inch" ? "1/4, 1/8, 1/16, 1/32 or 1/64" : "0.5 or 1"}`,
  explain:
    "`precision` is the smallest step that the reader is asked to mark. It has to be on his tape: an inch halved up to six times, or tenths, halves and whole numbers of a millimetre.",
  wrong: stepExample(["units: inch", "units: inch\nprecision: 1/5"]),
  right: stepExample(),
  basis: "the language",
});
