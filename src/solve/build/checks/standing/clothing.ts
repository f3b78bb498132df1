/**
 * Clothing storage as the safety standard for its stability has it. Scope: free-standing, 27 in high or more, 30 lb or more, enclosed storage of 3.2 ft³ or more
 * (ASTM F2057-23, 1.1 and 1.3; law in the United States by 16 CFR 1261). Millimetres and kg.
 */
import type { BuiltMotion } from "../../../build.ts";
import type { Checked } from "../check.ts";
import { around, type Bounds, type Heavy, pounds } from "./weight-and-feet.ts";

const FOOT = 304.8;
const CUBIC_FOOT = FOOT * FOOT * FOOT;
export const SCOPE = { high: 27 * 25.4, kg: pounds(30), volume: 3.2 * CUBIC_FOOT };
/** What lies in a drawer: 8.5 lb/ft³. */
const FILL = pounds(8.5) / CUBIC_FOOT;
/** Behind a door half of the room counts. */
const BEHIND_DOOR = 0.5;

/** Room that a drawer takes with it, or that a door shuts off. A drawer is taken with the thickness of its wood, which is on the safe side. */
export interface Store {
  readonly motion: BuiltMotion;
  readonly bounds: Bounds;
  /** mm³ */
  readonly volume: number;
  readonly drawer: boolean;
}

export function stores({ design, motions }: Pick<Checked, "design" | "motions">): readonly Store[] {
  const deep = around(design.parts.map(({ solid }) => solid));
  return motions.flatMap((motion): readonly Store[] => {
    const moving = design.parts.filter(({ id }) => motion.moves.includes(id));
    if (moving.length === 0 || motion.kind === "lift") return [];
    const bounds = around(moving.map(({ solid }) => solid));
    const size = (i: 0 | 1 | 2): number => bounds.high[i] - bounds.low[i];
    if (motion.kind === "slide") return [{ motion, bounds, volume: size(0) * size(1) * size(2), drawer: true }];
    // A lid lies flat; a door stands.
    if (size(2) < size(1)) return [];
    const volume = BEHIND_DOOR * size(0) * size(2) * (deep.high[1] - deep.low[1]);
    return [{ motion, bounds, volume, drawer: false }];
  });
}

/** What lies in the drawers, in the middle of each. It is carried by the first part that moves. */
export const contents = (all: readonly Store[]): readonly Heavy[] =>
  all
    .filter(({ drawer }) => drawer)
    .map(({ motion, bounds: { low, high }, volume }) => ({
      id: motion.moves[0] ?? "",
      kg: volume * FILL,
      at: [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2],
    }));
