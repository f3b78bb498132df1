/** What a part takes up in the room. */
import { exactBounds } from "../../../geometry/index.ts";
import type { Length } from "../../../units/length.ts";
import { min, negate } from "../../../units/rational.ts";
import { axisOf } from "../../design/space.ts";
import type { Box, Direction, Part } from "../../design.ts";
import type { Work } from "./draft.ts";

/** Square to the piece, exact: the body of a part that lies aslant is longer or shorter than what is left of it. */
export const boxOf = ({ body, turned, solid }: Part): Box => (turned ? exactBounds(solid) : body);

/** How high a place on the axis of a way up lies along it. */
export const heightOf = (at: Length, up: Direction): Length => (up[axisOf(up)] > 0 ? at : negate(at));

/** How high a box begins, and ends, as the work lies. */
export const bottomOf = ({ low, high }: Box, up: Direction): Length =>
  heightOf((up[axisOf(up)] > 0 ? low : high)[axisOf(up)], up);
export const topOf = ({ low, high }: Box, up: Direction): Length =>
  heightOf((up[axisOf(up)] > 0 ? high : low)[axisOf(up)], up);

/** How high some parts begin, as the work lies. */
export const lowestOf = ({ part }: Pick<Work, "part">, ids: readonly string[], up: Direction): Length =>
  ids.map((id) => bottomOf(boxOf(part(id)), up)).reduce(min);
