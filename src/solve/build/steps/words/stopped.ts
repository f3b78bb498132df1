/** Cuts that end in the wood: a router leaves their ends round, and what goes in has square corners. */
import { boxPlanes, intersect, isEmpty } from "../../../../geometry/index.ts";
import { type Length, millimetres } from "../../../../units/length.ts";
import { add, divide, less, multiply, rational, subtract } from "../../../../units/rational.ts";
import { KEEPING } from "../../../design/joinery/keeper.ts";
import { featureBox, isSquare } from "../../../design/shapes/feature-box.ts";
import { type AxisIndex, axisOf, INDICES, triple } from "../../../design/space.ts";
import type { Feature, Part } from "../../../design.ts";
import type { Work } from "../draft.ts";
import { type Sentence, wordsOf } from "../sentence.ts";
import type { BoxFeature } from "./boxes.ts";

const ROUTED: readonly Feature["kind"][] = ["dado", "groove", "rabbet", "mortise"];
/** Wood that is left so far beyond an end shows that it stops there. */
const BEYOND = millimetres(1);

/** What to do with the round ends of some cuts of one size; nothing where all run out, or where what is held there does not fill them. */
export function stoppedTexts(work: Work, part: Part, list: readonly BoxFeature[]): readonly string[] {
  const own = list[0]?.for ?? null;
  const joint = work.design.joints.find(({ id }) => id === own);
  if (joint && (KEEPING.includes(joint.method) || joint.method === "loose tenon" || joint.kind === "hinged")) return [];
  if (own === null && list.every((box) => staysOpen(work, part, box))) return [];
  if (!list.some((box) => ROUTED.includes(box.kind) && (stopsAt(part, box, 0) || stopsAt(part, box, 1)))) return [];
  const or = holdsGlass(work, part) ? "" : ", or round what goes in to match";
  return [`${HEAD}${or}.`];
}

const HEAD = "Where a router cuts, square the round ends with a chisel";
const isOfEnds = (text: string): boolean => text.startsWith(HEAD);

/** Nobody rounds the corners of glass. */
const holdsGlass = ({ design }: Work, { id }: Part): boolean =>
  design.joints.some(({ method, parts }) => method === "glazed" && parts.includes(id));

/** Whether nothing goes into a cut: a hold for fingers keeps its round ends. */
function staysOpen({ design }: Work, part: Part, box: BoxFeature): boolean {
  const { low, high } = featureBox(box);
  const fills = ({ id, body }: Part): boolean =>
    id !== part.id && INDICES.every((i) => less(body.low[i], high[i]) && less(low[i], body.high[i]));
  return !part.turned && !design.parts.some(fills);
}

/** Whether there is wood at the face right beyond one end. */
function stopsAt(part: Part, box: BoxFeature, end: 0 | 1): boolean {
  if (!isSquare(box)) return false;
  const [run, wide] = [box.along, box.across, box.into].map(axisOf);
  const { low, high } = featureBox(box);
  // Of what is beside the mouth the middle tells: at its sides other cuts may begin.
  const third = divide(box.size[1], rational(3));
  const shallow = multiply(box.size[2], rational(1, 4));
  const span = (i: AxisIndex): readonly [Length, Length] => {
    const [from, to] = [low[i], high[i]];
    if (i === run) return end === 0 ? [subtract(from, BEYOND), from] : [to, add(to, BEYOND)];
    if (i === wide) return [add(from, third), subtract(to, third)];
    return box.into[i] > 0 ? [from, add(from, shallow)] : [subtract(to, shallow), to];
  };
  const [from, to] = [triple((i) => span(i)[0]), triple((i) => span(i)[1])];
  return !isEmpty(intersect(part.solid, boxPlanes(from, to)));
}

/** What holds of several cuts is told once, after the last of them. */
export const endsOnce = (texts: readonly Sentence[]): readonly Sentence[] =>
  texts.filter((text, i) => !isOfEnds(wordsOf(text)) || texts.lastIndexOf(text) === i);
