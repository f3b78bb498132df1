import { deciding, type HardwareKind, measure } from "./kind.ts";
import { screwed } from "./screwed.ts";

/** A block that a door or lid comes to lie against. */
export const stop: HardwareKind = {
  kind: "stop",
  also: ["stops", "door stop", "stop block"],
  meaning: "A block of wood or metal, screwed on, that a door, lid or drawer comes to lie against.",
  fields: {
    long: deciding(measure("How long it is.", "2", "50"), "# long"),
    wide: deciding(measure("How wide it is.", "3/4", "20"), "# wide"),
    thick: deciding(measure("How far it stands off what it is screwed to.", "1/2", "12"), "# thick"),
    ...screwed(2, "1", "25"),
  },
  basis: "common practice, no source",
};
