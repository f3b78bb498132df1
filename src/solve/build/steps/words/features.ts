import { absolute, divide, multiply, rational, subtract } from "../../../../units/rational.ts";
import { type AxisIndex, extent, faceOf, INDICES, indexOf } from "../../../design/space.ts";
import type { Feature, Part } from "../../../design.ts";
import { numberWord, pluralOf, series, type Work } from "../draft.ts";
import { angledEndTexts } from "./angled-ends.ts";
import { type BoxFeature, type PlaneFeature, placeText } from "./boxes.ts";
import { curveTexts, isCurved } from "./curves.ts";

/** How the cuts of one kind are made in a part: a sentence for each size, with every place. */
export function featureText(work: Work, part: Part, kind: Feature["kind"]): readonly string[] {
  const all = part.features.filter((feature) => feature.kind === kind);
  const planes = all.filter((feature): feature is PlaneFeature => "normal" in feature);
  if (kind === "angled end") return angledEndTexts(part, work.line(part.id).name.toLowerCase(), planes);
  if (planes.length > 0) return slopeTexts(work, part, planes);
  const curves = all.filter(isCurved);
  if (curves.length > 0) return curveTexts(work, part, curves);
  const boxes = all.filter((feature): feature is BoxFeature => "size" in feature);
  const groups = new Map<string, BoxFeature[]>();
  for (const box of boxes) {
    const key = sizeText(work, box);
    groups.set(key, [...(groups.get(key) ?? []), box]);
  }
  return [...groups].flatMap(([size, list]) => {
    const places = [...new Set(list.map((box) => placeText(work, part, box)))];
    const what = list.length === 1 ? `a ${kind}` : `${numberWord(list.length)} ${pluralOf(kind)}`;
    const head = `Cut ${what} ${size}:`;
    const where = places.length === 1 ? [`${head} ${places[0]}.`] : [head, ...places.map((place) => `– ${place}.`)];
    return kind === "tenon"
      ? [...where, "Fit each to its mortise: it should slide in with the push of a hand."]
      : where;
  });
}

const sizeText = ({ print }: Work, { kind, size }: BoxFeature): string => {
  const [along, across, depth] = size;
  if (kind === "tenon") return `${print(across)} thick, ${print(along)} wide and ${print(depth)} long`;
  return `${print(along)} long, ${print(across)} wide and ${print(depth)} deep`;
};

/** Tapers, chamfers and bevels: which faces, from where, to what. */
function slopeTexts(work: Work, part: Part, planes: readonly PlaneFeature[]): readonly string[] {
  const slopes = planes.map((plane) => slopeOf(part, plane));
  const groups = new Map<string, typeof slopes>();
  for (const slope of slopes) {
    const key = `${slope.end} ${work.print(slope.over)} ${work.print(slope.inset)}`;
    groups.set(key, [...(groups.get(key) ?? []), slope]);
  }
  return [...groups.values()].map((list) => {
    const { kind, end, over, inset } = list[0] as (typeof slopes)[number];
    const faces = series(list.map(({ face }) => face));
    const name = work.line(part.id).name.toLowerCase();
    if (kind !== "taper")
      return `${kind === "chamfer" ? "Chamfer" : "Bevel"} the ${name} where its ${faces} meets its ${end}: mark ${work.print(over)} in on the ${faces} and ${work.print(inset)} down on the ${end}, and plane to the lines.`;
    const axis = list[0]?.axis as AxisIndex;
    const left = subtract(
      extent(part.body, axis),
      multiply(inset, rational(list.filter((s) => s.axis === axis).length)),
    );
    return `Taper the ${name} on its ${faces}: begin ${work.print(over)} from the ${end} end, and plane down until that end measures ${work.print(left)}.`;
  });
}

/** A sloping cut, told by the face that it leaves and the end or face that it meets. */
function slopeOf(part: Part, { kind, origin, normal }: PlaneFeature) {
  const tilted = INDICES.filter((i) => normal[i] !== 0);
  const long = indexOf(part.axes.length);
  // A taper leaves a long side and meets an end; otherwise the face is the one that the plane's origin lies on.
  const end = tilted.includes(long) ? long : (tilted[1] as AxisIndex);
  const axis = (tilted.find((i) => i !== end) ?? end) as AxisIndex;
  const high = (i: AxisIndex): boolean => normal[i] > 0;
  const edge = high(end) ? part.body.high[end] : part.body.low[end];
  const over = absolute(subtract(edge, origin[end]));
  const inset = absolute(multiply(over, divide(rational(normal[end]), rational(normal[axis]))));
  return { kind, axis, face: faceOf(axis, high(axis)), end: faceOf(end, high(end)), over, inset };
}
