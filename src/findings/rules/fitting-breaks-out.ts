import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const strap = (up: string): string =>
  stepExample(["joints:", `fittings:\n  - { fit: wall strap, to: right-leg, face: right, up: ${up} }\njoints:`]);

export const fittingBreaksOut = rule<{
  readonly item: string;
  readonly part: string;
  readonly side: string;
  /** Null: it lies outside of the wood. */
  readonly left: string | null;
  readonly least: string;
  readonly move: string;
  /** The setting that moves it so far; null: none moves it that way. */
  readonly place: string | null;
}>({
  name: "fitting-breaks-out",
  severity: "error",
  message: (a) =>
    a.left === null
      ? `a hole of the ${a.item} breaks out of ${a.part} at its ${a.side}`
      : `a hole of the ${a.item} leaves ${a.left} of wood at the ${a.side} of ${a.part}, less than ${a.least}`,
  label: () => "too near to the edge",
  help: (a) =>
    a.place === null
      ? `take a smaller ${a.item}, or let ${a.part} reach ${a.move} further there`
      : `move it by at least ${a.move}, away from the ${a.side} (${a.place})`,
  explain: `A hole that opens at the side of a board holds no screw, and one with a sliver of wood beside it splits the board.`,
  wrong: strap("right-leg.top - 1/4"),
  right: strap("right-leg.top - 3"),
  basis: "geometry; the least wood is common practice, no source",
});
