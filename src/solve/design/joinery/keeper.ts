import type { Method } from "../../../parse/draft.ts";
import { add, half, less, subtract, ZERO } from "../../../units/rational.ts";
import type { Box } from "../../design.ts";
import { keeperPlaces } from "../fastening/keeper.ts";
import { grooveBox, keeperPlan, mortiseLength, type RailAndTop } from "../fastening/keeper-groove.ts";
import { besidesOf, moverOf, stillOf } from "../fastening/movement.ts";
import { boxFeature } from "../shapes/workpiece.ts";
import { common, faceAxis, isHigh, withAxis } from "../space.ts";
import type { Bench, JoineryContext, Joining, Jointed } from "./work.ts";

export const KEEPING: readonly Method[] = ["buttons in a groove", "buttons in mortises", "clips"];

/** Cuts the groove or the mortises of buttons and clips into the rail. `all`: every pair of the same entry. */
export function cutKeeper(
  joining: Joining,
  all: readonly Joining[],
  bench: Bench,
  context: JoineryContext,
): Jointed | null {
  const { draft, touch } = joining;
  if (touch.kind !== "faces") return { joining, insertion: null, gap: ZERO };
  const pieceOf = (id: string) => ({ id, body: bench.piece(id).body, frame: bench.piece(id).frame });
  const [join, to] = [pieceOf(joining.join.id), pieceOf(joining.to.id)];
  const top = moverOf(join, to);
  const rail = top === join ? to : join;
  const areaOf = ({ join, to }: Joining): Box => common(bench.piece(join.id).body, bench.piece(to.id).body);
  const still = stillOf(
    draft,
    top,
    touch.axis,
    { own: all.map(areaOf), fast: besidesOf(joining, top.id).map(areaOf) },
    context,
  );
  if (!still) return null;
  const sign = (top === to) === touch.sign > 0 ? 1 : -1;
  const joint: RailAndTop = { draft, rail, top, axis: touch.axis, sign, area: areaOf(joining), still };
  const plan = keeperPlan(draft.with.value === "clips" ? "clip" : "button", joint, context);
  if (!plan) return null;
  const box = grooveBox(joint, plan);
  const into = { axis: faceAxis(plan.face), sign: isHigh(plan.face) ? (-1 as const) : (1 as const) };
  const cut = (kind: "groove" | "mortise", room: Box): void =>
    bench.cut(rail.id, { kind: "box", box: room }, boxFeature(kind, joining.id, room, into, plan.run));
  if (draft.with.value !== "buttons in mortises") cut("groove", box);
  else {
    const places = keeperPlaces({ ...joint, hold: top }, { by: ZERO, turned: false }, context);
    if (!places) return null;
    const reach = half(mortiseLength(joint, plan, context));
    for (const place of places.points) {
      const [low, high] = [subtract(place[plan.run], reach), add(place[plan.run], reach)];
      const within = !less(low, rail.body.low[plan.run]) && !less(rail.body.high[plan.run], high);
      if (within) cut("mortise", { low: withAxis(box.low, plan.run, low), high: withAxis(box.high, plan.run, high) });
    }
  }
  return { joining, insertion: null, gap: ZERO };
}
