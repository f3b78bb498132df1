/**
 * The three tests of stability of clothing storage (ASTM F2057-23, 9.2, as described in 88 FR 28403), as moments about the line on which the piece
 * stands in front. Positive: it stays. Newton metres, worked out in millimetres and kg.
 */
import { GRAVITY } from "../wood/beam.ts";
import { contents, type Store } from "./clothing.ts";
import { opened, openPose, posed } from "./opened.ts";
import { type Bounds, type Heavy, pounds } from "./weight-and-feet.ts";

export interface Tested {
  readonly name: string;
  /** N·m */
  readonly moment: number;
}

/** 10 lb pulled at the highest hand-hold, at most 56 in up; 60 lb on the edge of an open drawer, the piece tilted by carpet 0.43 in thick. */
export const [PULL, HAND, CHILD, CARPET] = [pounds(10), 56 * 25.4, pounds(60), 0.43 * 25.4];
const THOUSAND = 1000;

export function stabilityTests(
  wood: readonly Heavy[],
  all: readonly Store[],
  { feet, outside }: { readonly feet: Bounds; readonly outside: Bounds },
): readonly Tested[] {
  const motions = all.map(({ motion }) => motion);
  const drawers = all.filter(({ drawer }) => drawer);
  const volume = (some: readonly Store[]): number => some.reduce((so, each) => so + each.volume, 0);
  const filled = drawers.length > 0 && volume(drawers) >= 0.5 * volume(all);
  const open = opened(wood, motions);
  const full = filled ? [...open, ...opened(contents(all), motions)] : open;
  const [front, floor, deep] = [feet.low[1], feet.low[2], feet.high[1] - feet.low[1]];
  const tilt = CARPET / deep;
  const cos = 1 / Math.sqrt(1 + tilt * tilt);
  const level = (some: readonly Heavy[]): number => some.reduce((so, { kg, at }) => so + kg * (at[1] - front), 0);
  const tilted = (some: readonly Heavy[]): number =>
    some.reduce((so, { kg, at }) => so + kg * ((at[1] - front) * cos - (at[2] - floor) * cos * tilt), 0);
  const hand = Math.min(outside.high[2] - floor, HAND);
  // Full or empty, whichever is worse: nobody knows which it is when a child climbs.
  const worse = (of: (some: readonly Heavy[]) => number): number => Math.min(of(full), of(open));
  const moment = (kgmm: number): number => (kgmm * GRAVITY) / THOUSAND;
  return [
    { name: "everything open and filled with clothes", moment: moment(level(full)) },
    { name: "pulled forward with 10 lb", moment: moment(worse(level) - PULL * hand) },
    ...drawers.map(({ motion, bounds }) => {
      const edge: Heavy["at"] = [(bounds.low[0] + bounds.high[0]) / 2, bounds.low[1], bounds.high[2]];
      const pose = openPose(motion, edge);
      const child = { id: "", kg: CHILD, at: pose ? posed(edge, pose) : edge };
      return { name: `60 lb on the open ${motion.name}`, moment: moment(worse(tilted) + tilted([child])) };
    }),
  ];
}
