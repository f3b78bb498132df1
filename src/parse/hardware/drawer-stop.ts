import { deciding, type HardwareKind, measure } from "./kind.ts";

/** A button on one screw inside the back of a drawer: turned up when the drawer is in, it catches behind the rail above. */
export const drawerStop: HardwareKind = {
  kind: "drawer stop",
  also: ["drawer stops", "turn button"],
  meaning:
    "A button inside the back of a drawer that is turned up once the drawer is in, and keeps it from coming right out.",
  fields: {
    long: deciding(measure("How long it is: turned up it has to reach above the drawer.", "1 1/2", "40"), "# long"),
    wide: deciding(measure("How wide it is.", "3/4", "20"), "# wide"),
    thick: deciding(measure("How thick it is.", "3/8", "10"), "# thick"),
    screw: measure("The length of its screw.", "3/4", "20"),
    thread: measure("The diameter of its screw.", "9/64", "3.5"),
  },
  basis: "common practice, no source",
};
