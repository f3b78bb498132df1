import { deciding, type HardwareKind, measure } from "./kind.ts";

/** A hook on a thread of its own. */
export const hook: HardwareKind = {
  kind: "hook",
  also: ["hooks", "cup hook", "key hook", "screw hook"],
  meaning: "A hook that is screwed in by its own thread.",
  fields: {
    out: deciding(measure("How far it stands out.", "3/4", "20"), "# out"),
    across: measure("How much room it takes on the wood.", "1/2", "12"),
    screw: deciding(measure("How long its thread is.", "1/2", "12")),
    pilot: measure("The diameter of the hole for it.", "3/32", "2.5"),
  },
  basis: "common practice, no source",
};
