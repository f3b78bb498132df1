import { byForm, made } from "../../kinds/combine.ts";
import { asOfPart, joinWords, measure, partName, sizeOf, stockName, yesNoOr } from "../../kinds/kept.ts";
import type { Kind } from "../../kinds/kind.ts";
import { type Fields, may, need, settings } from "../../kinds/settings.ts";
import { text, word, yesNo } from "../../kinds/simple.ts";
import { squash } from "../../names.ts";
import type { TextNode } from "../../yaml/nodes.ts";
import { type Seat, seat } from "../back-in.ts";

/** What stands round an opening, by the names of parts. */
export const walls = settings("what stands round an opening", {
  left: may(partName, "The part at its left: what the left slide is screwed to."),
  right: may(partName, "The part at its right."),
});

const sides = settings("by how much a front reaches over", {
  "each side": may(measure, "The same on all four sides.", "all round"),
  left: may(measure, "At the left."),
  right: may(measure, "At the right."),
  bottom: may(measure, "Below."),
  top: may(measure, "Above."),
});
export type Reach = Partial<Record<"left" | "right" | "bottom" | "top", TextNode>>;

/** One measure for all four sides, or each by its name. */
export const reach = byForm({
  text: made(measure, (all): Reach => ({ left: all, right: all, bottom: all, top: all })),
  map: made(sides, ({ said }): Reach => {
    const all = said["each side"]?.value;
    const entries = (["left", "right", "bottom", "top"] as const).flatMap((side) => {
      const value = said[side]?.value ?? all;
      return value ? [[side, value] as const] : [];
    });
    return Object.fromEntries(entries);
  }),
});

const front = settings("the front of a drawer", {
  "made of": need(stockName, "Its stock."),
  lies: may(
    word(["inset", "overlay", "lipped"]),
    "Whether it lies in its opening, over its edges, or half in it with a lip over them; in it if nothing is said.",
  ),
  gap: may(measure, "What stays open round an inset front: 1/8 in or 3 mm if nothing is said."),
  overlay: may(reach, "How far it reaches over each edge: 3/8 in or 10 mm if nothing is said."),
  "is the box front": may(
    yesNo,
    "Whether the box has no other front. If nothing is said, it has, and this is screwed to it.",
  ),
  "between the sides": may(
    yesNo,
    "Whether a front that is the box's own lies between its sides, whose ends are then seen; if nothing is said, the sides end on it.",
  ),
  "hangs down": may(
    measure,
    "How far a front that is the box's own reaches down below the sides, to be pulled by, and to stop the drawer as it goes in.",
  ),
  lap: may(
    measure,
    "With half-blind dovetails: how much of it stays in front of the sides; 1/4 in or 6 mm if nothing is said.",
  ),
  "set with": may(
    word(["shims", "tape"]),
    "What holds it in its place while it is screwed on: shims if nothing is said.",
  ),
  screws: may(joinWords, "What holds it to the box, if not two screws from inside."),
  "from one strip": may(asOfPart, "The strip that it is cut from in one row with others."),
  cut: may(
    asOfPart,
    "How it comes to its size: an inset one as the drawer does, another from the list, if nothing is said.",
  ),
  grain: may(asOfPart, "The direction of its grain: across if nothing is said."),
  boards: may(asOfPart, "How many boards it is glued up from."),
  edges: may(asOfPart, "How its edges are worked."),
  "edge banding": may(asOfPart, "Edges that get a band."),
  called: may(text(60), "The name that the plan prints."),
});
export type Front = Fields<typeof front.keys>;

const stockOr = <T extends { readonly "made of": { readonly value: TextNode } }>(value: TextNode): T =>
  ({ "made of": { value, at: value.at, key: value.at } }) as unknown as T;

const BETWEEN = "between the sides";
/** How a back is let in, or `between the sides`. */
const bottomSeat: Kind<Seat | { readonly in: typeof BETWEEN }> = {
  ...seat,
  read: (node, where) =>
    node.kind === "text" && squash(node.text) === squash(BETWEEN) ? { in: BETWEEN } : seat.read(node, where),
};

const bottom = settings("the bottom of a drawer", {
  "made of": need(stockName, "Its stock."),
  in: may(
    bottomSeat,
    "How it is let in: in a groove if nothing is said, laid on under the sides, or between them, level with their lower edges.",
  ),
  "under the back": may(
    yesNo,
    "Whether it goes on under the back, which is so much lower, and is fastened to it from below; no if nothing is said.",
  ),
  up: may(
    measure,
    "How far a bottom in a groove lies above the lower edges: 1/4 in or 6 mm, over slides below it what they want.",
  ),
  play: may(
    measure,
    "How much room it has in its grooves at each edge: 1/32 in or 0.5 mm if nothing is said. Between the sides, how far it stays behind the front: against it if nothing is said.",
  ),
  fasten: may(
    joinWords,
    "What holds a bottom that lies under a wall or between two: glue and brads if nothing is said.",
  ),
});
export type Bottom = Fields<typeof bottom.keys>;

const runners = settings("the runners of a drawer", {
  "made of": need(stockName, "Their stock."),
  wide: may(
    sizeOf,
    "How far they reach in from the side: 1 in or 25 mm if nothing is said, where their stock does not say it.",
  ),
  join: may(joinWords, "How they are joined to what stands at the sides: screws if nothing is said."),
});
export type Runners = Fields<typeof runners.keys>;

const packing = settings("packing behind slides", {
  "made of": need(stockName, "Its stock, exactly as thick as the frame laps inside the case."),
  high: may(sizeOf, "How high it is: as high as the slide if nothing is said."),
  join: may(joinWords, "How it is joined to the side of the case: screws if nothing is said."),
});
export type Packing = Fields<typeof packing.keys>;

const pull = settings("the pull of a drawer", {
  fit: need(text(100), "Which of the plan's hardware it is, or its kind."),
  up: may(measure, "How far its middle is above the lower edge of the front: in the middle if nothing is said."),
  count: may(word(["1", "2"]), "One in the middle, or two, a quarter of the width from the ends."),
});
export type Pull = Fields<typeof pull.keys>;

/** What a drawer has in whatever it goes. */
export const drawerKeys = {
  "made of": need(stockName, "The stock of its sides, and of the front and back of its box if nothing else is said."),
  high: may(sizeOf, "How high its sides are: as high as its opening leaves room for if nothing is said."),
  long: may(sizeOf, "How long its sides are: as long as the longest slide that fits if nothing is said."),
  cut: may(
    asOfPart,
    "How its parts come to their sizes: to the opening, measured when what stands round it is together, if nothing is said; from the list, if they need not wait.",
  ),
  front: may(
    yesNoOr(
      byForm({
        text: made(stockName, (value): Front => stockOr<Front>(value)),
        map: made(front, ({ said }): Front => said),
      }),
    ),
    "Its front: its stock, or settings that say more; `no` for a box without one.",
  ),
  "box front": may(stockName, "The stock of the front of its box, if it is another."),
  "box back": may(stockName, "The stock of the back of its box, if it is another."),
  join: may(joinWords, "The joint in its corners: rabbets if nothing is said."),
  "back join": may(joinWords, "The joint of its back, if it is another."),
  bottom: may(
    byForm({
      text: made(stockName, (value): Bottom => stockOr<Bottom>(value)),
      map: made(bottom, ({ said }): Bottom => said),
    }),
    "Its bottom: its stock, or settings that say more.",
  ),
  slides: may(partName, "Its slides, by their name in `hardware` or their kind: side slides if nothing is said."),
  runners: may(
    byForm({
      text: made(stockName, (value): Runners => stockOr<Runners>(value)),
      map: made(runners, ({ said }): Runners => said),
    }),
    "Wooden runners in place of slides: their stock, or settings that say more.",
  ),
  "runs on": may(partName, "What its sides run on, if neither slides nor runners: a shelf, the bottom of a case."),
  packing: may(
    byForm({
      text: made(stockName, (value): Packing => stockOr<Packing>(value)),
      map: made(packing, ({ said }): Packing => said),
    }),
    "Strips behind the slides, where a frame laps inside the case: their stock, or settings that say more.",
  ),
  "up from the bottom": may(measure, "How far above the lower edges of its sides the middle of its slides is."),
  "set back": may(
    measure,
    "How far the slides stay behind the front of what they are screwed to: where the box begins if nothing is said.",
  ),
  under: may(measure, "The room under the box: 1/4 in or 6 mm if nothing is said."),
  above: may(
    measure,
    "The room above it: 3/4 in or 19 mm over a drawer on side slides, 1/8 in or 3 mm over one on runners or with `runs on`, as its slides want over one on undermount slides, if nothing is said.",
  ),
  pull: may(
    byForm({
      text: made(partName, (value): Pull => ({ fit: { value: value.text, at: value.at, key: value.at } }) as Pull),
      map: made(pull, ({ said }): Pull => said),
    }),
    "What it is pulled by: a piece of hardware by its name or kind, or settings that say more.",
  ),
  stop: may(
    partName,
    "What keeps it from being pulled right out, inside its back: a drawer stop by its name in `hardware`, or its kind.",
  ),
  carries: may(asOfPart, "What lies in it: clothes, or a mass such as 20 lb."),
};

export const drawerSettings = settings("a drawer", {
  in: need(partName, "The opening that it goes in: a space by its name."),
  walls: may(
    walls,
    "What its slides or runners are screwed to: the parts at its left and right. A drawer that is written in an opening of a case finds them by itself.",
  ),
  "least wide": may(
    measure,
    "How wide the front takes its opening to be, if it is to be as wide as another in a narrower one.",
  ),
  "least high": may(measure, "How high it takes its opening to be, if it is to be as high as another in a lower one."),
  covers: may(reach, "How far an overlay front reaches over each edge of the opening, where `front` does not say it."),
  ...drawerKeys,
});
export type Said = Fields<typeof drawerSettings.keys>;
