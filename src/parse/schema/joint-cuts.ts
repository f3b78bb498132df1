import type { JointDraft, TenonDraft } from "../draft.ts";
import { made } from "../kinds/combine.ts";
import { type Fields, may, settings } from "../kinds/settings.ts";
import { formula, plainNumber, word, yesNo } from "../kinds/simple.ts";
import { deeper, inFrom } from "./joint-words.ts";

/** The settings of joints that are cut in wood: tenons, splines, fingers, tails. */
const tenonSettings = settings("the tenon of a joint", {
  thick: may(formula, "Its thickness.", "thickness"),
  long: may(formula, "Its length from the shoulder.", "length"),
  "in from": may(inFrom, "From a face of the part to the tenon's cheek, or centred."),
  "shoulder above": may(formula, "The shoulder on the upper, right or back edge."),
  "shoulder below": may(formula, "The shoulder on the lower, left or front edge."),
  shoulder: may(formula, "Both of these.", "shoulders"),
  haunch: may(formula, "Haunched: how far the stub beside the tenon goes in; a third of the tenon if nothing is said."),
  wedges: may(yesNo, "Through: whether wedges are driven into its end.", "wedged"),
  ends: may(
    word(["square", "mitred"], { mitered: "mitred" }),
    "How tenons that meet in a leg are cut: mitred ones keep 1 mm apart, and their mortises may meet. In a table: `join: { with: mortise and tenon, tenon: { ends: mitred } }`.",
  ),
});

const tenon = made(tenonSettings, ({ at, said }): TenonDraft => {
  const cheek = said["in from"];
  const above = said["shoulder above"] ?? said.shoulder;
  const below = said["shoulder below"] ?? said.shoulder;
  return {
    at,
    ...(said.thick && { thick: said.thick.value }),
    ...(said.long && { long: said.long.value }),
    ...(cheek && cheek.value !== "centred" && { inFrom: { ...cheek.value, at: cheek.at } }),
    ...(above && { shoulderAbove: above.value }),
    ...(below && { shoulderBelow: below.value }),
    ...(said.ends && { ends: said.ends }),
    ...(said.haunch && { haunch: said.haunch.value }),
    ...(said.wedges && { wedges: said.wedges }),
  };
});

const loose = settings("a spline, key or loose tenon", {
  thick: may(formula, "Its thickness; about a third of the wood if nothing is said.", "thickness"),
  wide: may(formula, "How wide it is: a spline measured from slot to slot, a loose tenon across.", "width"),
  long: may(formula, "How long a loose tenon is, in both parts together.", "length"),
});

const peg = settings("a peg", {
  diameter: may(formula, "Its diameter: 1/4 in or 6 mm if nothing is said."),
  offset: may(
    formula,
    "How much nearer to the shoulder the hole in the tenon is: 1/16 in or 1.5 mm if nothing is said.",
  ),
});

export const cutSettings = {
  tenon: may(tenon, "The size and place of the tenon, or of the tongue.", "tongue"),
  mortise: may(deeper, "How much deeper the mortise is: 1/16 deeper.", "mortice"),
  spline: may(
    loose,
    "The spline, key or loose tenon that is let into both parts.",
    "splines",
    "key",
    "keys",
    "loose tenon",
  ),
  finger: may(formula, "Box joint: how wide a finger is; as wide as the wood is thick if nothing is said.", "fingers"),
  tails: may(formula, "Dovetail: how many tails the joined part has."),
  "pin width": may(formula, "Dovetail: how wide a pin is where it is narrow.", "width of pins"),
  slope: may(plainNumber, "Dovetail and sliding dovetail: 8 for tails that slope one in eight, 7 for one in seven."),
  biscuit: may(plainNumber, "The number of the biscuit: 0, 10 or 20."),
  peg: may(peg, "The peg through a drawbored tenon or a breadboard end.", "pegs"),
};

/** Those of a joint, as its draft has them. */
export function cutOf(said: Fields<typeof cutSettings>) {
  const { mortise, spline, finger, tails, slope, biscuit } = said;
  const sizes = spline?.value.said;
  const held = said.peg?.value.said;
  return {
    ...(said.tenon && { tenon: said.tenon.value }),
    ...(mortise && { mortiseDeeper: mortise.value }),
    ...(spline && {
      loose: {
        at: spline.key,
        ...(sizes?.thick && { thick: sizes.thick.value }),
        ...(sizes?.wide && { wide: sizes.wide.value }),
        ...(sizes?.long && { long: sizes.long.value }),
      },
    }),
    ...(finger && { finger: finger.value }),
    ...(tails && { tails: tails.value }),
    ...(said["pin width"] && { pin: said["pin width"].value }),
    ...(slope && { slope }),
    ...(biscuit && { biscuit }),
    ...(said.peg && {
      peg: {
        at: said.peg.key,
        ...(held?.diameter && { diameter: held.diameter.value }),
        ...(held?.offset && { offset: held.offset.value }),
      },
    }),
  } satisfies Partial<JointDraft>;
}
