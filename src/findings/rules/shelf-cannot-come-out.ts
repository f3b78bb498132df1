import { shelfExample } from "../example.ts";
import { rule } from "../finding.ts";
import { nameSome } from "../name-some.ts";

interface Args {
  readonly shelf: string;
  readonly inTheWay: readonly string[];
  /** Between what stands at both sides of the way out, where that is it. */
  readonly opening?: string;
  readonly length?: string;
}

const PINS: readonly (readonly [string, string])[] = [
  ["join: [left-leg, right-leg], to: shelf, with: screws", "join: shelf, to: [left-leg, right-leg], with: shelf pins"],
  ["front: 0, back: 3 1/2, bottom: 4", "front: 3/4, back: 2 3/4, bottom: 4"],
];
const board = (side: string): string =>
  `${side}-board: { made of: panel, as: upright, facing: ${side}, grain: up, between: [left-leg, right-leg], ${side}: ${side === "front" ? "0" : "3 1/2"}, bottom: 0, under: tread }`;
const FLOOR =
  "floor-board: { made of: panel, as: lying flat, grain: across, between: [left-leg, right-leg], front: 3/4, back: 2 3/4, bottom: 0 }";
const JOINT = "joints:\n  - { join: back-board, to: [left-leg, right-leg], with: dowels }";

export const shelfCannotComeOut = rule<Args>({
  name: "shelf-cannot-come-out",
  severity: "error",
  message: ({ shelf, inTheWay, opening, length }) =>
    `${shelf} cannot be put in or taken out when the rest stands, not even tilted: ${nameSome(inTheWay)} ${inTheWay.length === 1 ? "is" : "are"} in the way${opening && length ? `, ${opening} apart, and it is ${length} long` : ""}`,
  label: () => "lies on pins, and is shut in",
  help: ({ opening }) =>
    opening
      ? `make it no longer than ${opening}, widen the opening, or leave more room above it to tilt it`
      : "open the front, or fix it for good: with: dado, or screws",
  explain:
    "A shelf on pins is put in after everything is glued, and taken out again when it is set higher or lower. Every straight way is tried, then one tilt: lifted, turned about the line along which it leaves, until it stands almost on end. The pins are pulled out for it.",
  wrong: shelfExample(...PINS, [
    "joints:",
    `  ${FLOOR}\n  ${board("back")}\n  ${board("front")}\n${JOINT}\n  - { join: [front-board, floor-board], to: [left-leg, right-leg], with: dowels }`,
  ]),
  right: shelfExample(...PINS, ["joints:", `  ${board("back")}\n${JOINT}`]),
  basis: "geometry",
});
