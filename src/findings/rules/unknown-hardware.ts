import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const unknownHardware = rule<{
  readonly name: string;
  /** What it is, where it is something that does not go here. */
  readonly kind: string | null;
  readonly known: readonly string[];
  readonly near: readonly string[];
}>({
  name: "unknown-hardware",
  severity: "error",
  message: (a) =>
    a.kind === null ? `no hardware is called ${a.name}` : `${a.name} is a ${a.kind}, which does not go here`,
  label: (a) => (a.kind === null ? "not in hardware" : `a ${a.kind}`),
  help: (a) =>
    a.near.length > 0 ? `write ${a.near.join(" or ")}` : `write one of ${[...new Set(a.known)].join(", ")}`,
  explain: `A joint or a fitting names an entry of \`hardware:\`, or a kind of hardware, of which it then takes the usual one.`,
  wrong: stepExample(["joints:", "fittings:\n  - { fit: pul, to: right-leg, face: right }\njoints:"]),
  right: stepExample([
    "joints:",
    "hardware:\n  pull: { kind: knob, screw: 2 }\nfittings:\n  - { fit: pull, to: right-leg, face: right }\njoints:",
  ]),
  basis: "the language",
});
