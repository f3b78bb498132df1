/** What doors, drawers and loose shelves that wait are measured between, found anew from the record. */
import { bounds, type Model } from "./model.ts";
import type { Replay } from "./moments.ts";
import type { Part } from "./record.ts";
import type { V3 } from "./vector.ts";

const AXES = [0, 1, 2] as const;
type Axis = (typeof AXES)[number];
const LEAST = 0.01;

type Box = readonly [V3, V3];
const boxOf = (model: Model, ids: readonly string[]): Box => bounds(ids.flatMap((id) => model.solid(id)));
const extent = ([low, high]: Box, axis: Axis): number => high[axis] - low[axis];
const beside = (a: Box, b: Box, axis: Axis): boolean =>
  AXES.every((i) => i === axis || (a[0][i] < b[1][i] - LEAST && b[0][i] < a[1][i] - LEAST));

interface Entering {
  readonly ids: readonly string[];
  readonly axes: readonly Axis[];
}

const waits = ({ cut }: Part): boolean => cut === "opening";
/** Square to the room: what leans is not measured from. */
const isSquare = ({ axes }: Part): boolean =>
  Object.values(axes).every((axis) => axis.some((c) => Math.abs(c) > 1 - 1e-9));

function entering(model: Model): readonly Entering[] {
  const { record, parts } = model;
  const wait = (ids: readonly string[]): boolean => ids.some((id) => parts.has(id) && waits(parts.get(id) as Part));
  const moving = record.motions
    .map((motion) => ({ ...motion, ids: motion.parts.filter((id) => parts.has(id)) }))
    .filter(({ ids }) => wait(ids))
    .map(({ ids, kind, poses }): Entering => {
      const box = boxOf(model, ids);
      const thin = AXES.reduce((best, axis) => (extent(box, axis) < extent(box, best) - LEAST ? axis : best));
      const shift = poses.at(-1)?.shift ?? [0, 1, 0];
      if (kind === "slide") return { ids, axes: [Math.abs(shift[0]) > Math.abs(shift[1]) ? 1 : 0] };
      return { ids, axes: AXES.filter((axis) => axis !== thin) };
    });
  const resting = record.joints
    .filter(({ method, parts: [id] }) => method === "shelf pins" && wait([id]))
    .map(({ parts: [id] }) => id)
    .filter((id, i, all) => all.indexOf(id) === i && !moving.some(({ ids }) => ids.includes(id)))
    .map((id): Entering => {
      const along = (parts.get(id) as Part).axes.length.findIndex((c) => Math.abs(c) > 0.5);
      return { ids: [id], axes: [along as Axis] };
    });
  return [...moving, ...resting];
}

/** The parts that bound what a part is cut to; null where it does not go into an opening of which both sides stand. */
export function boundsOfOpening(model: Model, part: Part, { moments }: Replay): readonly string[] | null {
  const all = entering(model);
  const own = waits(part) ? all.find(({ ids }) => ids.includes(part.id)) : undefined;
  if (!own) return null;
  const loose = new Set([...all.flatMap(({ ids }) => ids), ...model.record.motions.flatMap((motion) => motion.parts)]);
  const adds = moments.flatMap(({ step, action }) => (action.do === "add" ? [{ step, ...action }] : []));
  const stepOf = (id: string): number => adds.find(({ parts }) => parts.includes(id))?.step.number ?? 0;
  const named = new Map<number, string[]>();
  for (const { step, parts, to } of adds) named.set(step.number, [...(named.get(step.number) ?? []), ...parts, ...to]);
  const goesIn =
    [...named].find(([, ids]) => ids.some((id) => own.ids.includes(id)) && ids.some((id) => !loose.has(id)))?.[0] ??
    Number.POSITIVE_INFINITY;
  const isOnIt = (id: string): boolean => stepOf(id) > goesIn;
  const group = own.ids.filter((id) => {
    const other = model.parts.get(id) as Part;
    return (waits(other) || other.cut === "piece") && isOnIt(id) === isOnIt(part.id);
  });
  const box = boxOf(model, group);
  const others = model.record.parts
    .filter((other) => !loose.has(other.id) && isSquare(other))
    .flatMap(({ id }) => model.solid(id).map((piece) => ({ id, box: bounds([piece]) })));
  // The front of a drawer is fitted in its height too.
  const slides = model.record.motions.some(({ kind, parts }) => kind === "slide" && parts.includes(part.id));
  const axes: readonly Axis[] = slides && isOnIt(part.id) ? [...own.axes, 2] : own.axes;
  const isResting = !model.record.motions.some(({ parts }) => parts.includes(part.id));
  const isFlat = !isResting && (!slides || isOnIt(part.id));
  return axes.flatMap((axis) => {
    const around = others.filter((other) => beside(box, other.box, axis));
    const sides = [false, true].map((isHigh) => {
      const off = (other: Beside): number =>
        isHigh ? other.box[0][axis] - box[1][axis] : box[0][axis] - other.box[1][axis];
      const here = around.filter((other) => off(other) >= -LEAST);
      const plane = isFlat ? overMost(here, off, box, axis) : Math.min(...here.map(off));
      // To the unit of the record's solids.
      return here.filter((other) => Math.abs(off(other) - plane) <= 1e-4).map(({ id }) => id);
    });
    return sides.every(({ length }) => length > 0) ? sides.flat() : [];
  });
}

interface Beside {
  readonly id: string;
  readonly box: Box;
}

/** A door or a front is measured against what is as near as this over three quarters of its longer way: looked at in many places. */
function overMost(here: readonly Beside[], off: (other: Beside) => number, box: Box, axis: Axis): number {
  const [along] = AXES.filter((i) => i !== axis).sort((i, j) => extent(box, j) - extent(box, i)) as [Axis, Axis];
  const places = Array.from({ length: 400 }, (_, k) => box[0][along] + ((k + 0.5) / 400) * extent(box, along));
  const nearest = places.map((at) =>
    Math.min(...here.filter((other) => other.box[0][along] <= at && at <= other.box[1][along]).map(off)),
  );
  return nearest.sort((a, b) => a - b)[299] ?? Number.POSITIVE_INFINITY;
}
