import { byForm, list, made } from "../kinds/combine.ts";
import { joinWords, kept, measure, stockName } from "../kinds/kept.ts";
import { type Fields, may, settings } from "../kinds/settings.ts";
import { text } from "../kinds/simple.ts";
import { carries } from "../schema/use.ts";

export const shelfSettings = settings("shelves", {
  count: may(measure, "How many, with equal spaces.", "fixed"),
  loose: may(
    byForm({ text: measure, list: list(measure, "a list of heights") }),
    "How many on pins, with equal spaces at first, or how high the top of each lies: they can be set higher and lower.",
    "adjustable",
  ),
  "spare holes": may(measure, "How many holes there are above and below each pin: 2 if nothing is said."),
  "holes apart": may(measure, "How far apart those are: 1 1/4 in or 32 mm if nothing is said."),
  "short at the back": may(measure, "How far a loose shelf stays off the back: 1/8 in or 3 mm if nothing is said."),
  at: may(list(measure, "a list of heights"), "How high the top of each lies above the floor of the opening."),
  "made of": may(stockName, "Their stock, if it is another than that of the case."),
  "set back": may(measure, "How far they stay behind the front."),
  carries: may(kept(carries), "What each of them carries: books, or a mass such as 6 kg each."),
  join: may(joinWords, "How they are joined, if otherwise than the case."),
  called: may(text(60), "The name that the plan prints."),
});

export type Shelves = Fields<typeof shelfSettings.keys>;

/** A number of shelves, or settings that say more. */
export const shelves = byForm({
  text: made(measure, (count): Shelves => ({ count: { value: count, at: count.at, key: count.at } })),
  map: made(shelfSettings, ({ said }): Shelves => said),
});
