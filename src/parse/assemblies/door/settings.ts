import { byForm, made } from "../../kinds/combine.ts";
import { asOfPart, joinWords, measure, partName, sizeOf, stockName } from "../../kinds/kept.ts";
import { type Fields, may, need, settings } from "../../kinds/settings.ts";
import { text, word, yesNo } from "../../kinds/simple.ts";
import { method } from "../../schema/joint-words.ts";
import type { TextNode } from "../../yaml/nodes.ts";
import { reach, walls } from "../drawer/settings.ts";

const glazing = settings("the rabbet of a door", {
  wide: need(sizeOf, "How far it reaches in from the inner edge of stiles and rails."),
  deep: need(measure, "How deep it is cut into the back."),
});

const frame = settings("the frame of a door", {
  "made of": may(stockName, "The stock of its stiles and rails: that of the door if nothing is said."),
  stiles: may(sizeOf, "How wide its stiles are."),
  rails: may(sizeOf, "How wide its rails are: as wide as the stiles if nothing is said."),
  join: may(joinWords, "The joint in its corners: mortise and tenon if nothing is said."),
  groove: may(measure, "How deep the groove for the panel is: 3/8 in or 10 mm if nothing is said."),
  rabbet: may(
    glazing,
    "A rabbet round its inside at the back, for glass that is put in when the door is glued; where the panel is glass, 3/8 in or 10 mm wide and as deep as the pane if nothing is said.",
  ),
});
export type FrameSaid = Fields<typeof frame.keys>;

const panel = settings("the panel of a door", {
  "made of": need(stockName, "Its stock: solid wood, a sheet, or glass."),
  play: may(
    measure,
    "How much room it has at each edge: in its grooves, for solid wood what it moves; a pane in its rabbet, 1/16 in or 1.5 mm.",
  ),
  grain: may(word(["across", "up"]), "The direction of its grain: up if nothing is said."),
  beads: may(
    stockName,
    "The stock of the beads that hold a pane, ripped 1/4 in or 8 mm deep and as wide as it is thick: that of the frame if nothing is said.",
  ),
});
export type PanelSaid = Partial<Fields<typeof panel.keys>> & { readonly stock: TextNode };

const strips = settings("strips applied to a door", {
  "made of": need(stockName, "Their stock."),
  wide: may(sizeOf, "How wide they are: 2 in or 50 mm if nothing is said."),
  join: may(joinWords, "What holds them on: glue and brads if nothing is said."),
});
export type StripsSaid = Fields<typeof strips.keys>;

const hinges = settings("the hinges of a door", {
  hardware: may(partName, "Which of the plan's hardware they are."),
  with: may(method, "Cup hinges, butt hinges or a continuous hinge."),
  count: may(measure, "How many; as its height and mass ask for if nothing is said."),
  "in from ends": may(measure, "From the ends of the door to the first and the last."),
});
export type HingesSaid = Partial<Fields<typeof hinges.keys>>;

const pull = settings("the pull of a door", {
  fit: need(text(100), "Which of the plan's hardware it is, or its kind."),
  up: may(
    measure,
    "How far its middle is above the lower edge: in the middle if nothing is said.",
    "up from the bottom",
  ),
  in: may(
    measure,
    "How far its middle is from the edge that opens: in the middle of a stile or strip, else 2 in or 50 mm.",
    "in from edge",
  ),
});
export type PullSaid = Fields<typeof pull.keys>;

/** What a door has in whatever it goes. */
export const doorKeys = {
  "made of": may(stockName, "The stock of a slab, or of a frame that says none of its own."),
  boards: may(asOfPart, "How many boards a slab of solid wood is glued up from."),
  strips: may(strips, "Strips applied round the front of a slab."),
  frame: may(frame, "Stiles and rails, with a panel in their grooves: there too where only a `panel` is said."),
  panel: may(
    byForm({
      text: made(stockName, (stock): PanelSaid => ({ stock })),
      map: made(panel, ({ said }): PanelSaid => ({ ...said, stock: said["made of"].value })),
    }),
    "The panel of a framed door: its stock, or settings that say more.",
  ),
  lies: may(word(["inset", "overlay"]), "Whether it lies in its opening or over its edges; in it if nothing is said."),
  gap: may(
    measure,
    "What stays open round an inset door: 1/8 in or 3 mm if nothing is said, half of what its hinges close to where they say fit: mortised.",
  ),
  overlay: may(reach, "How far it reaches over each edge: 1/2 in or 12 mm if nothing is said."),
  pair: may(yesNo, "Whether there are two, hung at the left and at the right."),
  "gap between": may(measure, "What stays open between the two of a pair: 1/8 in or 3 mm if nothing is said."),
  hinged: may(
    word(["left", "right"]),
    "The side on which a single door hangs, as you face it: the left if nothing is said.",
  ),
  hinges: may(
    byForm({
      text: made(partName, (name): HingesSaid => ({ hardware: { value: name, at: name.at, key: name.at } })),
      map: made(hinges, ({ said }): HingesSaid => said),
    }),
    "Its hinges, by their name in `hardware`, or settings that say more: butt hinges in an opening, cup hinges over it, if none are named.",
  ),
  against: may(measure, "How far an overlay door is kept off by its bumpers: nothing if nothing is said."),
  "set back": may(measure, "How far an inset door stays behind the front."),
  cut: may(
    asOfPart,
    "How its parts come to their sizes: to the opening, measured when what stands round it is together, if nothing is said of an inset door; else from the list.",
  ),
  pull: may(
    byForm({
      text: made(partName, (name): PullSaid => ({ fit: { value: name.text, at: name.at, key: name.at } }) as PullSaid),
      map: made(pull, ({ said }): PullSaid => said),
    }),
    "What it is pulled by: a piece of hardware by its name or kind, or settings that say more.",
  ),
};

export const doorSettings = settings("a door", {
  in: need(partName, "The opening that it closes: a space by its name."),
  walls: need(walls, "What it hangs on: the parts at the left and right of the opening."),
  "least wide": may(
    measure,
    "How wide the door takes its opening to be, if it is to be as wide as another in a narrower one.",
  ),
  "least high": may(measure, "How high it takes its opening to be, if it is to be as high as another in a lower one."),
  covers: may(reach, "How far an overlay door reaches over each edge, where `overlay` does not say it."),
  ...doorKeys,
});
export type Said = Fields<typeof doorSettings.keys>;
