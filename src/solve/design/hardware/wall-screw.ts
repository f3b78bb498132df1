import { EMPTY } from "../../../geometry/index.ts";
import { half } from "../../../units/rational.ts";
import { type Fitter, outwards } from "./fitter.ts";
import { fromBehind } from "./from-behind.ts";
import { measureOf } from "./items.ts";
import { drum } from "./solids.ts";

/** Only its head stands in the piece, or is sunk in it; the hole, bored where the stud is, goes right through to the wall. */
export const fitWallScrew: Fitter = (site) => {
  const { id, item, part, axis, at, draft } = site;
  const [head, high] = [measureOf(item, "head"), measureOf(item, "head high")];
  const sunk = draft.sunk?.value === true;
  const solid = sunk ? EMPTY : drum(at, axis, outwards(site, high), half(head));
  const holes = fromBehind(site, measureOf(item, "thread"), [at]).map((hole) => ({
    ...{ ...hole, atBench: false },
    ...(sunk && hole.part === part.id && { stages: [{ diameter: head, depth: high }, ...hole.stages] }),
  }));
  return { hardware: [{ id, item, joint: null, carriedBy: part.id, at, solid }], holes };
};
