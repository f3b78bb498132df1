import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const unknownHardwareKind = rule<{
  readonly kind: string;
  readonly near: readonly string[];
  readonly known: readonly string[];
}>({
  name: "unknown-hardware-kind",
  severity: "error",
  message: (a) => `there is no kind of hardware called ${shorten(a.kind)}`,
  label: () => "not known",
  help: (a) => (a.near.length > 0 ? `write ${a.near.join(" or ")}` : `write one of ${a.known.join(", ")}`),
  explain: `Each entry of \`hardware:\` says what kind of thing it is, and may give the measures that decide whether a piece sold somewhere would do. The kinds and their measures stand in the reference.`,
  wrong: stepExample(["piece:", "hardware:\n  pull: { kind: nob }\npiece:"]),
  right: stepExample(["piece:", "hardware:\n  pull: { kind: knob }\npiece:"]),
  basis: "the language",
});
