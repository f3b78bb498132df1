import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const stockHasNoWidth = rule<{ readonly stock: string }>({
  name: "stock-has-no-width",
  severity: "error",
  message: (a) => `how wide this is must be said: boards of \`${a.stock}\` are ripped to any width`,
  label: () => "needs a width",
  help: () => "write `wide:` here",
  explain:
    "The width of a stock can stand for the width of what is made of it only where all its boards have one: those sold as 1x4 or 2x6, or with a width under `measures`.",
  wrong: stepExample(
    ["stock:", "stock:\n  boards: { sold as: 4/4, wood: pine, planed to: 3/4, widths: 4 to 8 }"],
    ["front: 0, top: 12", "front: 0, deep: boards.width, top: 12"],
  ),
  right: stepExample(["front: 0, top: 12", "front: 0, deep: lumber.width, top: 12"]),
  basis: "the language",
});
