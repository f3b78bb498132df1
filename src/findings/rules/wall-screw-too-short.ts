import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const fixed = (length: string): string =>
  stepExample(
    ["stock:", `wall: solid\nhardware:\n  stud: { kind: wall screw, length: ${length} }\nstock:`],
    ["joints:", "fittings:\n  - { fit: stud, to: right-leg, face: front }\njoints:"],
  );

export const wallScrewTooShort = rule<{
  readonly part: string;
  readonly length: string;
  readonly reach: string;
  readonly needs: string;
  readonly least: string;
}>({
  name: "wall-screw-too-short",
  severity: "error",
  message: (a) =>
    `the wall screw through ${a.part} is ${a.length} long and reaches ${a.reach} into the stud, where ${a.needs} are needed`,
  label: () => "too short for the wall",
  help: (a) => `take a wall screw of at least ${a.least} (length: …)`,
  explain: `What hangs on a wall hangs on the part of its screws that is in the studs. Board, back and plaster hold nothing.`,
  wrong: fixed("3"),
  right: fixed("6"),
  basis: "common practice, no source",
});
