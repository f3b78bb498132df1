import { shelfExample } from "../example.ts";
import { rule } from "../finding.ts";

const room = (right: string): string =>
  shelfExample(
    ["stock:", "hold: room\nstock:"],
    ["wood: spruce", "wood: spruce, between: 1 3/8 and 1 1/2"],
    ["right: long, front", `right: ${right}, front`],
    ["like: left-leg, right: long", `like: left-leg, right: ${right}`],
    [
      "piece:",
      "piece:\n  room: { kind: space, across: between left-leg and right-leg, front: 0, back: 3 1/2, bottom: 0, top: 4 }",
    ],
  );

export const openingNotHeld = rule<{
  readonly name: string;
  readonly direction: string;
  readonly outside: "width" | "depth" | "height";
  /** The plan has that size of the outside. */
  readonly given: boolean;
  readonly drawn: string;
  readonly now: string;
}>({
  name: "opening-not-held",
  severity: "warning",
  message: (a) =>
    `${a.name} is drawn ${a.drawn} ${a.direction} and comes to ${a.now}: the outside cannot make up for it`,
  help: (a) =>
    a.given
      ? `place what bounds it by the outside (outside.${a.outside}), or give it a measure of its own`
      : `give the outside its ${a.outside} and place what bounds it by that, or give it a measure of its own`,
  explain:
    "What a plan holds keeps its size when the stock measures otherwise, because the outside moves. That takes parts that move with the outside: where they stand at measures of their own, the opening changes with the stock.",
  wrong: room("long"),
  right: room("outside.right"),
  basis: "the language",
});
