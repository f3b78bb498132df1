import { shelfExample } from "../example.ts";
import { rule } from "../finding.ts";

export const alikeOfTwoStocks = rule<{ readonly part: string; readonly other: string }>({
  name: "alike-of-two-stocks",
  severity: "error",
  message: (a) => `${a.part} and ${a.other} cannot come from one sheet: they are made of two stocks`,
  label: () => "of another stock",
  help: () => "make both of one stock, or take it out of `alike`",
  explain:
    "`alike` asks that parts are cut from the same sheet or board, so that they are of one thickness and colour.",
  wrong: shelfExample(["bottom: 4 }", "bottom: 4, alike: tread }"]),
  right: shelfExample(
    ["bottom: 4 }", "bottom: 4, alike: upper-shelf }\n  upper-shelf: { like: shelf, bottom: 7 }"],
    ["to: shelf,", "to: [shelf, upper-shelf],"],
  ),
  basis: "the language",
});
