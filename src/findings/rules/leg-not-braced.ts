import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const legNotBraced = rule<{
  readonly leg: string;
  readonly mate: string;
  readonly method: string;
  /** Somebody sits on it. */
  readonly seat: boolean;
}>({
  name: "leg-not-braced",
  severity: "warning",
  message: (a) =>
    `${a.leg} is held by nothing but the ${a.method} in its end: ${a.seat ? "whoever sits on it and leans back" : "a push from the side"} breaks it out of ${a.mate}`,
  label: () => "not braced",
  help: () =>
    "brace it: a rail or stretcher to the other legs, an apron under what it carries, or a joint that lets it into the wood (a through tenon, a bridle)",
  explain: `A leg is a lever: what pushes its foot pulls at its head with many times that force. Dowels, screws and glue in end grain do not hold that. A leg needs a second hold some way below the
first, or a tenon that fills much of its end.`,
  // Four legs under a tread, screwed to nothing else.
  wrong: stepExample(
    ["depth: 3 1/2", "depth: 7"],
    ["front: 0, top: 12 }", "front: 0, back: 7, boards: 2, top: 12 }"],
    ["facing: left, left: 0, front: 0, ", "width: 1 1/2, facing: left, left: 2, front: 1, "],
    [
      "right: long }",
      "right: 22 }\n  back-left-leg: { like: left-leg, back: 6 }\n  back-right-leg: { like: right-leg, back: 6 }",
    ],
    ["to: [left-leg, right-leg]", "to: [left-leg, right-leg, back-left-leg, back-right-leg]"],
    ["screws }\n", "screws }\nused for: { seats: 1 }\n"],
  ),
  right: stepExample(),
  basis: "common practice, no source",
});
