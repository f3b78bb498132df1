import { deciding, type HardwareKind, measure } from "./kind.ts";

/** A screw through a rail into a stud. */
export const wallScrew: HardwareKind = {
  kind: "wall screw",
  also: ["wall screws", "wall fixing screw", "stud screw"],
  meaning: "A screw with a wide flat head, through a rail of the piece into a stud of the wall.",
  fields: {
    length: deciding(measure("How long it is.", "3", "75"), "# long"),
    thread: deciding(measure("Its diameter.", "3/16", "5"), "# thick"),
    head: deciding(measure("The diameter of its head or washer.", "1/2", "13"), "head #"),
    "head high": deciding(measure("How far its head stands out of the wood.", "1/8", "3"), "# high"),
    plaster: measure("How thick what lies on the studs is.", "1/2", "13"),
    "into the stud": measure("How far it has to reach into a stud.", "1 1/2", "38"),
  },
  basis: "common practice, no source",
};
