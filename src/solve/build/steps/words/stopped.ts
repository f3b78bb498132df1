/** Cuts that end in the wood: a router leaves their ends round, and what goes in has square corners. */
import { boxPlanes, intersect, isEmpty } from "../../../../geometry/index.ts";
import { millimetres } from "../../../../units/length.ts";
import { add, divide, multiply, rational, subtract } from "../../../../units/rational.ts";
import { KEEPING } from "../../../design/joinery/keeper.ts";
import { featureBox } from "../../../design/shapes/feature-box.ts";
import { INDICES, triple } from "../../../design/space.ts";
import type { Feature, Part } from "../../../design.ts";
import type { Work } from "../draft.ts";
import type { BoxFeature } from "./boxes.ts";

const ROUTED: readonly Feature["kind"][] = ["dado", "groove", "rabbet"];
/** Wood that is left so far beyond an end shows that it stops there. */
const BEYOND = millimetres(1);

/** What to do with the round ends of some cuts of one size; nothing where all run out, or where what is held there does not fill them. */
export function stoppedTexts(work: Work, part: Part, list: readonly BoxFeature[]): readonly string[] {
  const own = list[0]?.for ?? null;
  const joint = work.design.joints.find(({ id }) => id === own);
  if (joint && KEEPING.includes(joint.method)) return [];
  if (!list.some((box) => ROUTED.includes(box.kind) && (stopsAt(part, box, 0) || stopsAt(part, box, 1)))) return [];
  const or = holdsGlass(work, part) ? "" : ", or round what goes in to match";
  return [`${HEAD}${or}.`];
}

const HEAD = "Where a router cuts, square the round ends with a chisel";
export const isOfEnds = (text: string): boolean => text.startsWith(HEAD);

/** Nobody rounds the corners of glass. */
const holdsGlass = ({ design }: Work, { id }: Part): boolean =>
  design.joints.some(({ method, parts }) => method === "glazed" && parts.includes(id));

/** Whether there is wood at the face right beyond one end. */
function stopsAt(part: Part, box: BoxFeature, end: 0 | 1): boolean {
  const axes = [box.along, box.across, box.into].map((way) => INDICES.find((i) => way[i] !== 0));
  const skew = [box.along, box.across, box.into].some((way) => way.filter((n) => n !== 0).length > 1);
  const [run, wide, deep] = axes;
  if (skew || run === undefined || wide === undefined || deep === undefined) return false;
  const { low, high } = featureBox(box);
  // Of what is beside the mouth the middle tells: at its sides other cuts may begin.
  const third = divide(box.size[1], rational(3));
  const shallow = multiply(box.size[2], rational(1, 4));
  const inwards = box.into[deep] > 0;
  const from = triple((i) =>
    i === run
      ? end === 0
        ? subtract(low[i], BEYOND)
        : high[i]
      : i === wide
        ? add(low[i], third)
        : inwards
          ? low[i]
          : subtract(high[i], shallow),
  );
  const to = triple((i) =>
    i === run
      ? end === 0
        ? low[i]
        : add(high[i], BEYOND)
      : i === wide
        ? subtract(high[i], third)
        : inwards
          ? add(low[i], shallow)
          : high[i],
  );
  return !isEmpty(intersect(part.solid, boxPlanes(from, to)));
}
