/** What a part takes up in the room. */
import { exactBounds } from "../../../geometry/index.ts";
import type { Box, Part } from "../../design.ts";

/** Square to the piece, exact: the body of a part that lies aslant is longer or shorter than what is left of it. */
export const boxOf = ({ body, turned, solid }: Part): Box => (turned ? exactBounds(solid) : body);
