import { rule } from "../finding.ts";
import { shelfExample } from "../shelf-example.ts";

export const slidesOnItsFace = rule<{ readonly part: string; readonly method: string }>({
  name: "slides-on-its-face",
  severity: "error",
  message: (a) =>
    `${a.method} hold the broad side of a board, and ${a.part} meets the other part with an edge or an end`,
  help: () => "use screws, or join the part by its broad side",
  explain: `Slotted screws, buttons, clips and figure-eight fasteners let a board swell and shrink on what it lies on. That makes sense where its broad side lies there: a top on its rails, a top on battens.`,
  wrong: shelfExample([
    "lid, to: [left-side, right-side], with: screws, from: left-side",
    "lid, to: [left-side, right-side], with: slotted screws",
  ]),
  right: shelfExample(),
  basis: "common practice, no source",
});
