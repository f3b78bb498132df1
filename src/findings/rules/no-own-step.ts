import { shelfExample } from "../example.ts";
import { rule } from "../finding.ts";
import { nameSome } from "../name-some.ts";
import { shorten } from "../shorten.ts";

/** Two shelves from one strip. */
const STRIP = [
  [
    "bottom: 4 }",
    "back: 1 1/2, bottom: 4, from one strip: front }\n  back-shelf: { like: shelf, front: 2, back: 3 1/2 }",
  ],
  ["front: 0, back: 3 1/2, back", "front: 0, back"],
  ["to: shelf,", "to: [shelf, back-shelf],"],
] as const;

export const noOwnStep = rule<{
  /** What the plan wishes, as it says it. */
  readonly what: string;
  /** The parts in the way. */
  readonly parts: readonly string[];
}>({
  name: "no-own-step",
  severity: "error",
  message: ({ what, parts }) =>
    `${shorten(what)} cannot have a step of its own: ${nameSome(parts)} ${parts.length === 1 ? "is" : "are"} worked in one with it`,
  label: () => "this wish cannot be carried out",
  help: () => "name all of them in the wish, or leave it out",
  explain:
    "A step is taken apart wherever its work can be done in two goes. What is sawn from one strip, or put on by one piece of hardware, is done at once.",
  wrong: shelfExample(...STRIP, ["joints:", "order:\n  - { in its own step: saw back-shelf }\njoints:"]),
  right: shelfExample(...STRIP, ["joints:", "order:\n  - { in its own step: saw left-leg }\njoints:"]),
  basis: "the order of work",
});
