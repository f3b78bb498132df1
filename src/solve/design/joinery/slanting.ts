import { contact, distance, placedSolid, type Solid } from "../../../geometry/index.ts";
import { rational } from "../../../units/rational.ts";
import type { Entry } from "../expand/entry.ts";
import { isTurned } from "../placing/slants.ts";
import { solidOf } from "../shapes/workpiece.ts";
import { type Touch, touchOf } from "./touch.ts";
import type { Bench } from "./work.ts";

/**
 * How two parts meet of which one is turned, or ends on a sloping plane without a face against the other: judged by their solids before
 * any joint is cut. Null for parts that are square to each other.
 */
export function slantingOn(bench: Bench): (a: Entry, b: Entry) => Touch | null {
  const solids = new Map<string, Solid | null>();
  const solidAt = (entry: Entry): Solid | null => {
    const known = solids.get(entry.id);
    if (known !== undefined) return known;
    const piece = bench.pieces.get(entry.id);
    const solid = piece ? solidOf(piece) : null;
    const placed = solid && piece?.placement ? placedSolid(solid, piece.placement) : solid;
    solids.set(entry.id, placed);
    return placed;
  };
  return (a, b) => {
    const [p, q] = [bench.pieces.get(a.id), bench.pieces.get(b.id)];
    if (!p || !q) return null;
    const turned = isTurned(a) || isTurned(b);
    const ends = [...p.features, ...q.features].some(({ kind }) => kind === "angled end");
    if (!turned && (!ends || touchOf(p.body, q.body).kind === "faces")) return null;
    const [one, other] = [solidAt(a), solidAt(b)];
    if (!one || !other) return null;
    if (contact(one, other).length > 0) return { kind: "slanting" };
    const by = distance(one, other);
    return by > 0 ? { kind: "apart", by: rational(Math.round(by)) } : { kind: "edge" };
  };
}
