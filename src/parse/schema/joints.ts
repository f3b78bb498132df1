import type { FastenersDraft, JointDraft } from "../draft.ts";
import { list, made } from "../kinds/combine.ts";
import { FACES, face, fromFace, reference, references } from "../kinds/places.ts";
import { type Field, may, need, settings } from "../kinds/settings.ts";
import { formula, plainNumber, text, word, yesNo } from "../kinds/simple.ts";
import { cutOf, cutSettings } from "./joint-cuts.ts";
import { method } from "./joint-words.ts";

const fastener = settings("a fastener", {
  gauge: may(plainNumber, "The gauge of a screw: 8 for a number 8 screw.", "number"),
  diameter: may(formula, "Its diameter."),
  length: may(formula, "Its length as sold.", "long"),
  head: may(
    word(["countersunk", "round", "plugged"], { flat: "countersunk" }),
    "Its head, or that it is plugged over.",
  ),
});

const keys = {
  join: need(references, "The part or parts that are joined on, or get the tongue or tenon."),
  to: need(references, "The part or parts that they are joined to."),
  with: need(method, "The kind of joint."),
  hardware: may(
    text(100),
    "Which hinge, slide or shelf pin of `hardware` it is; the usual of its kind if nothing is said.",
  ),
  opens: may(face, "The way that a door, lid or drawer opens: to the front, and what lies flat to the top."),
  "set back": may(formula, "How far a slide or hinge plate stays behind the front of what it is screwed to."),
  "up from the bottom": may(formula, "How far above the lower edge of the drawer side the middle of its slide is."),
  glue: may(yesNo, "Whether it is glued."),
  from: may(reference, "The part under the head of the screw or nail."),
  deep: may(
    formula,
    "How far a dado, rabbet, groove or sliding dovetail lets the part in; how deep the slot of a key or the hole of a shelf pin is.",
    "depth",
  ),
  play: may(formula, "The room left round what is let in."),
  stopped: may(fromFace, "How far short of a face the housing ends: 1/2 from front."),
  "join side": may(face, "Half lap: the side on which the part named under `join` stays whole."),
  ...cutSettings,
  screw: may(fastener, "The screw.", "screws"),
  dowel: may(fastener, "The dowel.", "dowels"),
  nail: may(fastener, "The nail.", "nails"),
  brad: may(fastener, "The brad.", "brads"),
  staple: may(fastener, "The staple."),
  bolt: may(fastener, "The bolt."),
  pin: may(fastener, "The pin under a shelf, its length as sold."),
  "spare holes": may(
    formula,
    "Pins under a shelf: how many more holes there are above and below each, so that it can lie higher or lower.",
  ),
  "holes apart": may(formula, "How far apart those are: 1 1/4 in or 32 mm if nothing is said."),
  count: may(formula, "How many fasteners each contact gets."),
  spacing: may(formula, "How far apart they are at most, centre to centre."),
  "in from ends": may(formula, "From the end of the contact to the first of them."),
  side: may(face, "The face that the heads are on."),
  counterbore: may(formula, "How deep the heads are sunk."),
  oversized: may(formula, "The diameter of a clearance hole that lets the wood move."),
  slot: may(formula, "How long the slots are that let the wood move, from end to end."),
  "hold still": may(
    word(["middle", ...FACES], { center: "middle", centre: "middle" }),
    "Where wood that is free to move is held: the line that it swells and shrinks away from.",
  ),
  "set with": may(word(["shims", "tape"]), "What holds the front of a drawer in its place while it is screwed on."),
  gap: may(formula, "What stays open between a button or clip and the rail, or at each end of a shelf on pins."),
};

const later = ["when", "called", "note", "washers", "clips", "buttons"];

export const joint = settings("a joint", keys, later);
type Said = NonNullable<ReturnType<typeof joint.read>>["said"];

const FASTENERS = ["screw", "dowel", "nail", "brad", "staple", "bolt", "pin"] as const;

function fastenersOf(said: Said): FastenersDraft | undefined {
  const kind = FASTENERS.find((key) => said[key] !== undefined);
  const chosen = kind && said[kind];
  const { count, spacing, side, counterbore, oversized, slot } = said;
  const [ends, spare, apart] = [said["in from ends"], said["spare holes"], said["holes apart"]];
  const first: Field<unknown> | undefined =
    chosen ?? count ?? spacing ?? ends ?? spare ?? apart ?? side ?? counterbore ?? oversized ?? slot;
  if (first === undefined) return undefined;
  const { gauge, diameter, length, head } = chosen?.value.said ?? {};
  return {
    at: first.key,
    ...(kind && { kind }),
    ...(count && { count: count.value }),
    ...(spacing && { spacing: spacing.value }),
    ...(ends && { inFromEnds: ends.value }),
    ...(spare && { spare: spare.value }),
    ...(apart && { apart: apart.value }),
    ...(length && { length: length.value }),
    ...(gauge && { gauge }),
    ...(diameter && { diameter: diameter.value }),
    ...(head && { head }),
    ...(side && { side }),
    ...(counterbore && { counterbore: counterbore.value }),
    ...(oversized && { oversized: oversized.value }),
    ...(slot && { slot: slot.value }),
  };
}

const jointDraft = made(joint, ({ at, said }, node): JointDraft => {
  const { glue, from, deep, play, stopped, gap, hardware, opens } = said;
  const fasteners = fastenersOf(said);
  return {
    at,
    join: said.join.value,
    to: said.to.value,
    with: said.with,
    ...(glue && { glue }),
    ...(hardware && { hardware }),
    ...(opens && { opens }),
    ...(said["set back"] && { setBack: said["set back"].value }),
    ...(said["up from the bottom"] && { upFromBottom: said["up from the bottom"].value }),
    ...(from && { from: from.value }),
    ...(deep && { deep: deep.value }),
    ...(play && { play: play.value }),
    ...(stopped && { stopped: { by: stopped.value.distance, from: stopped.value.face, at: stopped.at } }),
    ...(said["join side"] && { joinSide: said["join side"] }),
    ...cutOf(said),
    ...(said["hold still"] && { holdStill: said["hold still"] }),
    ...(gap && { gap: gap.value }),
    ...(said["set with"] && { setWith: said["set with"] }),
    ...(fasteners && { fasteners }),
    ...(node.kind === "map" && node.entries[0]?.key.made && { made: true }),
  };
});

export const joints = list(jointDraft, "a list of joints, each beginning with a dash");
