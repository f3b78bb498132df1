import { byForm, list, made } from "../kinds/combine.ts";
import { joinWords, measure, stockName } from "../kinds/kept.ts";
import { type Fields, may, settings } from "../kinds/settings.ts";
import { text } from "../kinds/simple.ts";

export const shelfSettings = settings("shelves", {
  count: may(measure, "How many, with equal spaces.", "fixed"),
  at: may(list(measure, "a list of heights"), "How high the top of each lies above the floor of the opening."),
  "made of": may(stockName, "Their stock, if it is another than that of the case."),
  "set back": may(measure, "How far they stay behind the front."),
  join: may(joinWords, "How they are joined, if otherwise than the case."),
  called: may(text(60), "The name that the plan prints."),
});

export type Shelves = Fields<typeof shelfSettings.keys>;

/** A number of shelves, or settings that say more. */
export const shelves = byForm({
  text: made(measure, (count): Shelves => ({ count: { value: count, at: count.at, key: count.at } })),
  map: made(shelfSettings, ({ said }): Shelves => said),
});
