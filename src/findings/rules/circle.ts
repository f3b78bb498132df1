import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const circle = rule<{ readonly names: readonly string[] }>({
  name: "circle",
  severity: "error",
  message: (a) => `these need each other: ${[...a.names, a.names[0]].join(" → ")}`,
  label: () => "the circle begins here",
  help: (a) => `give one of them its own measure, for instance ${a.names[0]}: 24`,
  explain: `A size or position is worked out from others. Here the chain comes back to where it began, so there is nothing to start from.

Write one of them as a plain measure, or work it out from something outside the circle.`,
  wrong: stepExample(["long: 24", "long: half + half\n  half: long / 2"]),
  right: stepExample(),
  basis: "the language",
});
