import { EMPTY } from "../../../geometry/index.ts";
import { millimetres } from "../../../units/length.ts";
import { add, half } from "../../../units/rational.ts";
import { type Fitter, outwards } from "./fitter.ts";
import { fromBehind } from "./from-behind.ts";
import { measureOf } from "./items.ts";
import { drum } from "./solids.ts";

/** What a seat is wider at least than the head that goes into it; the next bit bores it. Common practice, no source. */
const PLAY = millimetres(1, 2);

/** Only its head stands in the piece, or is sunk in it; the hole, bored where the stud is, goes right through to the wall. */
export const fitWallScrew: Fitter = (site) => {
  const { id, item, part, axis, at, draft } = site;
  const [head, high] = [measureOf(item, "head"), measureOf(item, "head high")];
  const seat = add(head, PLAY);
  const sunk = draft.sunk?.value === true;
  const solid = sunk ? EMPTY : drum(at, axis, outwards(site, high), half(head));
  const holes = fromBehind(site, measureOf(item, "thread"), [at]).map((hole) => ({
    ...{ ...hole, atBench: false },
    ...(sunk && hole.part === part.id && { stages: [{ diameter: seat, depth: high }, ...hole.stages] }),
  }));
  return { hardware: [{ id, item, joint: null, carriedBy: part.id, at, solid }], holes };
};
