import { GAUGE } from "./butt-hinge.ts";
import { deciding, degrees, type HardwareField, type HardwareKind, measure, range, word } from "./kind.ts";

const BASIS =
  "cup 35 mm, 3 to 7 mm from the edge, bored 10.5 to 13 mm, screws 45 × 9.5 mm, plate on the line 37 mm behind the front, overlay = what the hinge gives + what the cup lies further in: pages of three hinge makers; way of the door, and plate: common practice, no source";

/** Of hinges without a spring, or with one that pushes the door open. */
export const BY_A_CATCH = "by a catch";

const fields = (overlay: Readonly<Record<string, HardwareField>>, setBack: HardwareField): HardwareKind["fields"] => ({
  ...overlay,
  cup: deciding(measure("The diameter of its cup.", "35 mm", "35")),
  "cup deep": deciding(measure("How deep the cup is bored.", "12.5 mm", "12.5")),
  "cup from edge": deciding(measure("From the edge of the door to the edge of the cup.", "4 mm", "4")),
  "cup between": range(
    "How near to the edge of the door and how far from it the cup may lie: each further, the door covers that much more.",
    "3 mm to 7 mm",
    "3 to 7",
  ),
  "door thickness": deciding(range("How thick a door it takes.", "16 mm to 24 mm", "16 to 24")),
  opens: deciding(degrees("How many degrees it opens.", 110)),
  shuts: deciding(
    word("What holds its door shut: its own spring, or a catch besides.", "by its own spring", BY_A_CATCH),
  ),
  "plate set back": setBack,
  "plate high": measure("How far plate and arm stand out from what the plate is screwed to.", "12 mm", "12"),
  "moves out": measure("How far the door has moved outwards when it is open.", "4 mm", "4"),
  "moves aside": measure("How far the door has moved away from the hinge side when it is open.", "1 mm", "1"),
  "plate hole": measure("The diameter of the holes for its plate.", "5 mm", "5"),
  "plate hole deep": measure("How deep they are.", "11 mm", "11"),
  screw: measure("The length of the screws of the cup.", "5/8", "16"),
  gauge: GAUGE,
  pilot: measure("The diameter of the holes for them.", "3/32", "2.5"),
});

const overlay = (inch: string, mm: string) => ({
  overlay: deciding(
    measure(
      "How far the door covers what it hangs on where its cup lies as far from the edge as is said: as far as the door does if nothing is said.",
      inch,
      mm,
    ),
  ),
});

/** On the side of a case without a face frame, in front of which the door lies. */
export const cupHinge: HardwareKind = {
  kind: "cup hinge",
  also: ["cup hinges", "concealed hinge", "cup hinge for an overlay door"],
  meaning: "A hinge whose cup sits in a bored hole of the door; the door lies in front of the side.",
  fields: fields(
    overlay("16 mm", "16"),
    measure("How far the line of its plate lies behind the front.", "37 mm", "37"),
  ),
  basis: BASIS,
};

export const insetCupHinge: HardwareKind = {
  kind: "cup hinge for an inset door",
  also: ["inset cup hinge"],
  meaning: "A cup hinge for a door that lies between the sides.",
  fields: fields(
    {},
    measure("How far the line of its plate lies behind the front, besides the door and 1.5 mm.", "37 mm", "37"),
  ),
  basis: BASIS,
};

export const frameCupHinge: HardwareKind = {
  kind: "cup hinge for a face frame",
  also: ["face frame cup hinge"],
  meaning: "A cup hinge whose plate is screwed to the edge of a face frame that the door lies in front of.",
  fields: {
    ...fields(overlay("1/2", "12"), measure("How far the line of its plate lies behind the front.", "3/8", "9.5")),
    "plate hole": measure("The diameter of the holes for its plate.", "3/32", "2.5"),
  },
  basis: BASIS,
};
