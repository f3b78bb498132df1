import type { FastenersDraft, JointDraft, TenonDraft } from "../draft.ts";
import { list, made } from "../kinds/combine.ts";
import { FACES, face, fromFace, reference, references } from "../kinds/places.ts";
import { type Field, may, need, settings } from "../kinds/settings.ts";
import { formula, plainNumber, word, yesNo } from "../kinds/simple.ts";
import { deeper, inFrom, method } from "./joint-words.ts";

const tenonSettings = settings("the tenon of a joint", {
  thick: may(formula, "Its thickness.", "thickness"),
  long: may(formula, "Its length from the shoulder.", "length"),
  "in from": may(inFrom, "From a face of the part to the tenon's cheek, or centred."),
  "shoulder above": may(formula, "The shoulder on the upper, right or back edge."),
  "shoulder below": may(formula, "The shoulder on the lower, left or front edge."),
  shoulder: may(formula, "Both of these.", "shoulders"),
  ends: may(word(["square", "mitred"], { mitered: "mitred" }), "How two tenons that meet in a leg are cut."),
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
  };
});

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
  glue: may(yesNo, "Whether it is glued."),
  from: may(reference, "The part under the head of the screw or nail."),
  deep: may(formula, "How far a dado, rabbet or groove lets the part in.", "depth"),
  play: may(formula, "The room left round what is let in."),
  stopped: may(fromFace, "How far short of a face the housing ends: 1/2 from front."),
  "join side": may(face, "Half lap: the side on which the part named under `join` stays whole."),
  tenon: may(tenon, "The size and place of the tenon."),
  mortise: may(deeper, "How much deeper the mortise is: 1/16 deeper.", "mortice"),
  screw: may(fastener, "The screw.", "screws"),
  dowel: may(fastener, "The dowel.", "dowels"),
  nail: may(fastener, "The nail.", "nails"),
  brad: may(fastener, "The brad.", "brads"),
  staple: may(fastener, "The staple."),
  bolt: may(fastener, "The bolt."),
  pin: may(fastener, "The pin under a shelf, its length as sold."),
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
  gap: may(formula, "What stays open between a button or clip and the rail, or at each end of a shelf on pins."),
};

const later = ["when", "called", "note", "washers", "peg", "pegs", "wedges", "clips", "buttons"];

export const joint = settings("a joint", keys, later);
type Said = NonNullable<ReturnType<typeof joint.read>>["said"];

const FASTENERS = ["screw", "dowel", "nail", "brad", "staple", "bolt", "pin"] as const;

function fastenersOf(said: Said): FastenersDraft | undefined {
  const kind = FASTENERS.find((key) => said[key] !== undefined);
  const chosen = kind && said[kind];
  const { count, spacing, side, counterbore, oversized, slot } = said;
  const ends = said["in from ends"];
  const first: Field<unknown> | undefined =
    chosen ?? count ?? spacing ?? ends ?? side ?? counterbore ?? oversized ?? slot;
  if (first === undefined) return undefined;
  const { gauge, diameter, length, head } = chosen?.value.said ?? {};
  return {
    at: first.key,
    ...(kind && { kind }),
    ...(count && { count: count.value }),
    ...(spacing && { spacing: spacing.value }),
    ...(ends && { inFromEnds: ends.value }),
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

const jointDraft = made(joint, ({ at, said }): JointDraft => {
  const { glue, from, deep, play, stopped, mortise, gap } = said;
  const fasteners = fastenersOf(said);
  return {
    at,
    join: said.join.value,
    to: said.to.value,
    with: said.with,
    ...(glue && { glue }),
    ...(from && { from: from.value }),
    ...(deep && { deep: deep.value }),
    ...(play && { play: play.value }),
    ...(stopped && { stopped: { by: stopped.value.distance, from: stopped.value.face, at: stopped.at } }),
    ...(said["join side"] && { joinSide: said["join side"] }),
    ...(said.tenon && { tenon: said.tenon.value }),
    ...(mortise && { mortiseDeeper: mortise.value }),
    ...(said["hold still"] && { holdStill: said["hold still"] }),
    ...(gap && { gap: gap.value }),
    ...(fasteners && { fasteners }),
  };
});

export const joints = list(jointDraft, "a list of joints, each beginning with a dash");
