import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const wide = (deep: string): string =>
  stepExample(
    ["depth: 3 1/2, height: 12", `depth: ${deep}, height: 32`],
    ["width: 24", "width: 90"],
    ["long: 24", "long: 90"],
    ["lumber: { sold as: 2x4, wood: spruce }", "lumber: { sold as: 3/4 MDF, measures: 3/4 }"],
    ["front: 0, top: 12 }", `front: 0, back: ${deep}, top: 32 }`],
    ["front: 0, bottom: 0, under", `front: 0, back: ${deep}, bottom: 0, under`],
    ["with: screws }", "with: screws, screw: { gauge: 8, length: 1 1/2 } }"],
  );

export const doesNotGoThroughTheDoor = rule<{
  readonly what: string;
  readonly sizes: string;
  readonly door: string;
  readonly most: string;
}>({
  name: "does-not-go-through-the-door",
  severity: "warning",
  message: (a) => `${a.what} is ${a.sizes} large and does not go through a doorway of ${a.door}`,
  label: () => "too large for a doorway",
  help: (a) =>
    `make its smallest size at most ${a.most}, or let it come apart with bolts (with: bolts and cross dowels); if the way is wider, say allow`,
  explain: `What is built in a workshop has to come out of it and into the room. A piece goes through a doorway when its smallest size is less than the
doorway is wide and the next less than it is high, with room for fingers. Where it is joined with bolts or screws that are meant to be undone, each of its
parts has to go through by itself.`,
  wrong: wide("31"),
  right: wide("24"),
  basis: "a doorway of 29 × 78 in (737 × 1981 mm), 1 in for fingers: common practice, no source",
});
