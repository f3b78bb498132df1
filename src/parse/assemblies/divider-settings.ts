import { joinWords, measure, sizeOf, stockName } from "../kinds/kept.ts";
import { type Fields, may, settings } from "../kinds/settings.ts";
import { text, word } from "../kinds/simple.ts";

/** What the maker says of what stands between two openings. */
export const dividerSettings = settings("a divider", {
  divider: may(
    word(["panel", "rail", "rail and panel"], { shelf: "panel", "panel and rail": "rail and panel", stile: "rail" }),
    "A panel, a rail at the front, or both.",
  ),
  "made of": may(stockName, "Its stock, if it is another than that of the case."),
  rail: may(stockName, "The stock of its rail, if it is another."),
  wide: may(sizeOf, "How far the rail reaches back, or up if it stands on edge."),
  "on edge": may(word(["yes", "no"]), "Whether the rail stands on edge."),
  lower: may(measure, "How far the panel lies below the top of the rail."),
  "set back": may(measure, "How far it stays behind the front of the case."),
  join: may(joinWords, "How it is joined, if otherwise than the case."),
  called: may(text(60), "The name that the plan prints."),
});
export type Divider = Fields<typeof dividerSettings.keys>;
