import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const strap = (screw: string): string =>
  stepExample(
    ["stock:", `hardware:\n  tie: { kind: wall strap, screw: ${screw} }\nstock:`],
    ["joints:", "fittings:\n  - { fit: tie, to: right-leg, face: right }\njoints:"],
  );

export const fittingScrewComesThrough = rule<{
  readonly item: string;
  readonly part: string;
  readonly wood: string;
  /** How deep it would go. */
  readonly deep: string;
  readonly shorter: string;
}>({
  name: "fitting-screw-comes-through",
  severity: "warning",
  message: (a) =>
    `a screw of the ${a.item} would go ${a.deep} deep into ${a.part}, which is ${a.wood} thick there: its point comes through or shows`,
  label: () => "its screw is too long",
  help: (a) => `use screws that are shorter by ${a.shorter} or more (screw: …)`,
  explain: `Some wood has to stay in front of the point of a screw. A point that comes through scratches; one that nearly does pushes up the face.`,
  wrong: strap("2"),
  right: strap("3/4"),
  basis: "common practice, no source",
});
