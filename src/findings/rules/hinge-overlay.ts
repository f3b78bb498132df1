import { rule } from "../finding.ts";
import { hungExample } from "../hung-example.ts";

const hinge = (overlay: string): string =>
  hungExample(["{ kind: cup hinge, overlay: 1/2 }", `{ kind: cup hinge, overlay: ${overlay} }`]);

export const hingeOverlay = rule<{
  readonly door: string;
  /** How the door lies, and what the hinge is for, in words. */
  readonly lies: string;
  readonly gives: string;
  /** What would do, as settings. */
  readonly remedies: readonly string[];
}>({
  name: "hinge-overlay",
  severity: "error",
  message: (a) => `${a.door} ${a.lies}, and its hinges ${a.gives}`,
  label: () => "would not hang where it is drawn",
  help: (a) => a.remedies.join("; or "),
  explain: `A cup hinge holds its door in one place: it covers what it hangs on by the overlay of the hinge, and by as much more as its cup lies further in from the
edge of the door than the hinge asks (overlay = fixed distance + distance of the cup − height of the plate). The cup is bored where the door comes to lie as it is
drawn, as far as the makers of hinges allow: 3 to 7 mm from the edge. Beyond that another hinge, or one on another plate, has to be bought, and its overlay said.
Doors between the sides hang on hinges of their own kind. Where a hinge says no overlay, one for the overlay of the door is on the shopping list.`,
  wrong: hinge("1/4"),
  right: hinge("7/16"),
  basis: "pages of three hinge makers, reproduced",
});
