import { deciding, type HardwareField, type HardwareKind, measure } from "./kind.ts";

const fields = (inch: string, mm: string): Readonly<Record<string, HardwareField>> => ({
  across: deciding(measure("The diameter of its hole.", "1/4", "5"), "# across"),
  long: deciding(measure("How long it is, in its hole and out of it.", "3/4", "16"), "# long"),
  deep: measure("How deep its hole is.", "3/8", "8"),
  play: measure("How much shorter than its opening a shelf on them is, in all.", inch, mm),
});

/** A plain pin under a loose shelf. */
export const shelfPin: HardwareKind = {
  kind: "shelf pin",
  also: ["shelf pins", "shelf peg", "shelf support"],
  meaning: "A pin in a hole in the side, on which a loose shelf lies: four to a shelf.",
  fields: fields("1/8", "3"),
  basis: "common practice, no source",
};

/** Its plate lies against the side, in the room at the end of the shelf. */
export const platePin: HardwareKind = {
  kind: "shelf pin with a plate",
  also: ["shelf pins with plates", "plate support", "spoon"],
  meaning: "A shelf pin with a plate that lies against the side, so that the shelf is shorter.",
  fields: fields("3/16", "5"),
  basis: "common practice, no source",
};
