import { byForm, list, made } from "../kinds/combine.ts";
import { asOfPart, joinWords, kept, measure, partName, sizeOf, stockName } from "../kinds/kept.ts";
import { type Fields, may, need, settings } from "../kinds/settings.ts";
import { text, word, yesNo } from "../kinds/simple.ts";
import { carries } from "../schema/use.ts";

const pins = settings("the pins of loose shelves", {
  with: may(partName, "Which of the plan's hardware they are."),
  deep: may(measure, "How deep their holes are, if otherwise than their hardware says."),
  "in from each edge": may(
    measure,
    "From the edges of the shelf to their middles: 1 1/2 in or 37 mm if nothing is said.",
    "in from edges",
  ),
  "spare holes": may(measure, "How many holes there are above and below each pin: 2 if nothing is said."),
  apart: may(measure, "How far apart those are: 1 1/4 in or 32 mm if nothing is said.", "holes apart"),
  ladder: may(yesNo, "Holes from bottom to top, and each shelf on one of them."),
});
export type Pins = Partial<Fields<typeof pins.keys>>;

const lip = settings("the front edge of a shelf", {
  lip: need(stockName, "The stock of the strip along its front."),
  high: need(sizeOf, "How high the strip is."),
  "flush with": may(
    word(["top", "bottom"]),
    "The face of the shelf that it is flush with: the top, so that it hangs down and stiffens; the bottom, so that nothing falls off.",
  ),
});
export type Lip = Fields<typeof lip.keys>;

export const shelfSettings = settings("shelves", {
  count: may(measure, "How many, with equal spaces.", "fixed"),
  loose: may(
    byForm({ text: measure, list: list(measure, "a list of heights") }),
    "How many on pins, with equal spaces at first, or how high the top of each lies: they can be set higher and lower.",
    "adjustable",
  ),
  play: may(measure, "How much shorter than the opening a loose shelf is, in all: as its pins say if nothing is said."),
  pins: may(
    byForm({
      text: made(partName, (name): Pins => ({ with: { value: name, at: name.at, key: name.at } })),
      map: made(pins, ({ said }): Pins => said),
    }),
    "The pins of loose shelves: their name in `hardware`, or settings that say more.",
  ),
  "front edge": may(lip, "A strip of solid wood along the front of each."),
  "short at the back": may(measure, "How far a loose shelf stays off the back: 1/8 in or 3 mm if nothing is said."),
  at: may(list(measure, "a list of heights"), "How high the top of each lies above the floor of the opening."),
  "made of": may(stockName, "Their stock, if it is another than that of the case."),
  "set back": may(
    measure,
    "How far they stay behind the front; 1/4 in or 6 mm behind an inset door of the same opening if nothing is said.",
  ),
  carries: may(kept(carries), "What each of them carries: books, or a mass such as 6 kg each."),
  cut: may(
    asOfPart,
    "How loose ones come to their size: to the opening, measured when the case stands, if nothing is said; from the list, if they need not wait.",
  ),
  join: may(joinWords, "How they are joined, if otherwise than the case."),
  called: may(text(60), "The name that the plan prints."),
});

export type Shelves = Fields<typeof shelfSettings.keys>;

/** A number of shelves, or settings that say more. */
export const shelves = byForm({
  text: made(measure, (count): Shelves => ({ count: { value: count, at: count.at, key: count.at } })),
  map: made(shelfSettings, ({ said }): Shelves => said),
});
