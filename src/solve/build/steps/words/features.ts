import { inches, type Length, millimetres } from "../../../../units/length.ts";
import { absolute, divide, equal, less, multiply, rational, subtract, toNumber } from "../../../../units/rational.ts";
import { roundTo } from "../../../../units/round.ts";
import { isInPlace } from "../../../design/shapes/in-place.ts";
import { standsOut } from "../../../design/shapes/kinds.ts";
import { inRuns } from "../../../design/shapes/runs.ts";
import { type AxisIndex, extent, faceOf, INDICES, indexOf } from "../../../design/space.ts";
import type { Direction, Feature, Part } from "../../../design.ts";
import { isOfTenon } from "../cuts.ts";
import { numberWord, series, type Work } from "../draft.ts";
import { isSawnToFit } from "../sawn-to-fit.ts";
import { type Sentence, sentence } from "../sentence.ts";
import { angledEndTexts } from "./angled-ends.ts";
import { type BoxFeature, type PlaneFeature, spanOf } from "./boxes.ts";
import { curveTexts, isCurved } from "./curves.ts";
import { nameOf } from "./cut-names.ts";
import { type Arris, squareAtSeats } from "./leaf-seats.ts";
import { squareWhereMet } from "./met-edges.ts";
import { mitreTexts } from "./mitres.ts";
import { purposeTexts } from "./purpose.ts";
import { placesOf } from "./rows-of-cuts.ts";
import { endsAslant, runThrough } from "./run-through.ts";
import { slotTexts } from "./slots.ts";
import { endsOnce, stoppedTexts } from "./stopped.ts";
import { throughText, throughTexts, wedgeTexts } from "./wedges.ts";
import { whatIsLeft } from "./what-is-left.ts";

/** How the cuts of one kind are made in a part at the bench: a sentence for each size, with every place. */
export function featureText(work: Work, part: Part, kind: Feature["kind"]): readonly Sentence[] {
  const all = part.features.filter((feature) => feature.kind === kind && !isInPlace(feature));
  if (kind === "mitre")
    return mitreTexts(
      work,
      part,
      all.filter((each) => !isOfTenon(each, part) && !isSawnToFit(each, part)),
    );
  const planes = all.filter((feature): feature is PlaneFeature => "normal" in feature);
  if (kind === "angled end") return angledEndTexts(part, work.line(part.id).name.toLowerCase(), planes);
  if (planes.length > 0)
    return [
      ...slopeTexts(work, part, planes),
      ...squareAtSeats(work, part, planes.filter((each) => each.kind === "chamfer").map(arrisOf)),
      ...squareWhereMet(work, part, planes.filter((each) => each.kind === "chamfer").map(arrisOf)),
    ];
  const curves = all.filter(isCurved);
  if (curves.length > 0) return curveTexts(work, part, curves);
  const every = inRuns(all).filter((feature): feature is BoxFeature => "size" in feature);
  const boxes = kind === "slot" ? [] : every.map((box) => asTold(part, box));
  const groups = new Map<string, BoxFeature[]>();
  for (const box of boxes) {
    const key = sizeText(marked(work, kind), part, box);
    // What serves another purpose is told by itself.
    const group = `${nameOf(work, part, box).one}|${key}`;
    groups.set(group, [...(groups.get(group) ?? []), box]);
  }
  const texts = [...groups.values()].flatMap((list) => {
    const size = sizeText(marked(work, kind), part, list[0] as BoxFeature);
    const places = placesOf(marked(work, kind), part, list);
    const { one, many, fit } = nameOf(work, part, list[0] as BoxFeature);
    const what = list.length === 1 ? `a ${one}` : `${numberWord(list.length)} ${many}`;
    const head = `Cut ${what} ${throughText(work, part, list, size)}:`;
    const where = places.length === 1 ? [`${head} ${places[0]}.`] : [head, ...places.map((place) => `– ${place}.`)];
    return [
      ...where,
      ...purposeTexts(work, part, list),
      ...leftTexts(work, part, list),
      ...throughTexts(work, part, list),
      ...wedgeTexts(work, list),
      ...leaning(marked(work, kind), part, list),
      ...cornersOff(work, part, list),
      ...acrossTexts(work, part, list),
      ...(FITTING[kind] ?? []),
      ...fit,
      ...stoppedTexts(work, part, list),
    ];
  });
  return [...endsOnce(texts), ...slotTexts(work, part, every)];
}

const arrisOf = ({ normal }: PlaneFeature): Arris =>
  INDICES.flatMap((i) => (normal[i] === 0 ? [] : [[i, normal[i] > 0] as const]));

/** A tongue on the end of a wide board: how it is cut across the grain. */
function acrossTexts({ print }: Work, part: Part, list: readonly BoxFeature[]): readonly string[] {
  const first = list.find(({ kind, into }) => kind === "tongue" && into[indexOf(part.axes.length)] !== 0);
  if (!first) return [];
  const beside = less(first.size[0], part.width) ? " Saw off what stands beside it, back to the shoulder, last." : "";
  return [
    `Score the shoulder right round with a knife, ${print(first.size[2])} from the end of the tongue. Take the wood off both faces as far as that, with a router or a rabbet plane along a straightedge that is clamped on at the line, a scrap clamped where the cut comes out.${beside}`,
  ];
}

/** Tenons that meet others lose a corner before they are fitted. */
const cornersOff = (work: Work, part: Part, list: readonly BoxFeature[]): readonly string[] =>
  mitreTexts(
    work,
    part,
    part.features.filter((each) => isOfTenon(each, part) && list.some((tenon) => tenon.for === each.for)),
  );

const asTold = (part: Part, box: BoxFeature): BoxFeature =>
  box.kind === "groove" ? runThrough(part, box) : box.kind === "tenon" ? whatIsLeft(part, box) : box;

/** Sockets are divided evenly: their places are told to the nearest 1/32 in or 1/2 mm, and the second part is marked from the first. */
const marked = (work: Work, kind: Feature["kind"]): Work => {
  const step = work.design.units === "inch" ? inches(1, 32) : millimetres(1, 2);
  return kind === "socket" ? { ...work, print: (length) => work.print(roundTo(length, step)) } : work;
};

/** What is fitted to something. */
export const FITTING: Readonly<Partial<Record<Feature["kind"], readonly string[]>>> = {
  tenon: ["Fit each to its mortise: it should slide in with the push of a hand."],
  tongue: ["Fit it to its groove: it should slide without force."],
  tail: ["Fit it to its housing: it should slide half way in with the push of a hand."],
  cheek: ["Fit what is left to its bridle: it should slide in with the push of a hand."],
};

/** Of a rabbet that another part stands against: what is left of the thickness decides how wide the whole comes out, whatever the sheet measures. */
function leftTexts({ design, print, stock }: Work, part: Part, list: readonly BoxFeature[]): readonly Sentence[] {
  const thin = indexOf(part.axes.thickness);
  const [first] = list;
  const glued = design.joints.some(({ id, glue, method }) => glue && method === "rabbet" && id === first?.for);
  if (!first || !glued || first.into[thin] === 0 || stock(part.stock).form !== "sheet") return [];
  const left = subtract(part.thickness, first.size[2]);
  return [
    sentence(
      `Set the depth by what is left standing, ${print(left)}, not from the face: then a sheet that is a little thicker or thinner makes nothing wider or narrower.`,
      { leaves: true },
    ),
  ];
}

/** A ratio in decimals, as slopes are told: 8, 7.5. */
const inWords = (ratio: Length): string => String(Math.round(toNumber(ratio) * 10) / 10);

/** The sides of dovetails: pins are narrow at the ends of the tails, tails at the inner face of the other part. */
function leaning({ design, print }: Work, part: Part, list: readonly BoxFeature[]): readonly string[] {
  const first = list[0];
  if (!first || !("lean" in first) || !first.lean) return [];
  const { lean, kind, for: joint } = first;
  const slope = `a slope of 1 in ${inWords(divide(first.size[2], lean))}`;
  if (kind === "tail")
    return [
      `So thick at the end; at the shoulder ${print(lean)} thinner on each side, ${slope}. Try the setting in scrap.`,
    ];
  if (kind === "dovetail housing")
    return [`So wide at the bottom; at the face ${print(lean)} narrower on each side, ${slope}.`];
  const hasTails = design.joints.some(({ id, parts }) => id === joint && parts[0] === part.id);
  return [
    hasTails
      ? `They are so long at the bottom; at the end of the board they are ${print(lean)} shorter on each sloping side.`
      : `They are so long where the tails end; at the inner face they are ${print(lean)} shorter on each side. Mark them from the tails.`,
  ];
}

const sizeText = ({ print }: Work, part: Part, feature: BoxFeature): string => {
  const [along, across, depth] = feature.size;
  // One is thought of as long along the board: where it is not, the direction is told.
  const axis = INDICES.find((i) => feature.along[i] !== 0);
  if (feature.kind === "mortise" && axis !== undefined && axis !== indexOf(part.axes.length))
    return `${print(along)} long from ${faceOf(axis, false)} to ${faceOf(axis, true)}, ${print(across)} wide and ${print(depth)} deep`;
  if (feature.kind === "notch") {
    const reach = (name: keyof Part["axes"]): Length => {
      const { low, high } = spanOf(feature, indexOf(part.axes[name]));
      return subtract(high, low);
    };
    // What goes through the board is sawn to its two measures on the face.
    if (equal(reach("thickness"), part.thickness))
      return `${print(reach("length"))} along the length and ${print(reach("width"))} across it, right through the thickness`;
  }
  if (standsOut(feature)) return `${print(across)} thick, ${print(along)} wide and ${print(depth)} long`;
  if (endsAslant(part, feature)) return `from end to end, ${print(across)} wide and ${print(depth)} deep`;
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
    const { kind, end, over, inset, far } = list[0] as (typeof slopes)[number];
    const faces = series(list.map(({ face }) => face));
    const name = work.line(part.id).name.toLowerCase();
    const verb = kind === "chamfer" ? "Chamfer" : "Bevel";
    // Nothing of the edge is left to mark a line on: the slope ends at its other arris.
    if (kind !== "taper" && far !== null)
      return `${verb} the ${name} along its whole ${end}: mark a line on the ${faces}, ${work.print(over)} from the ${end}, and saw or plane from this line to the edge where the ${far} meets the ${end}.`;
    if (kind !== "taper")
      return `${verb} the ${name} where its ${faces} ${list.length === 1 ? "meets" : "meet"} its ${end}: draw lines ${work.print(over)} from the ${end} on the ${faces}, and ${work.print(inset)} from ${list.length === 1 ? "that face" : "these"} on the ${end}, and plane to the lines.`;
    const axis = list[0]?.axis as AxisIndex;
    const left = subtract(
      extent(part.whole ?? part.body, axis),
      multiply(inset, rational(list.filter((s) => s.axis === axis).length)),
    );
    return `Taper the ${name} on its ${faces}${boredFaces(
      work,
      part,
      list.map(({ face }) => face),
    )}: begin ${work.print(over)} from the ${end} end, and plane down until that end measures ${work.print(left)}.`;
  });
}

/** Where a part is alike with others that stand turned, the faces are found by their holes. */
function boredFaces(work: Work, part: Part, faces: readonly string[]): string {
  const bored = new Set(
    work.plan.holes.flatMap((hole) =>
      hole.part === part.id && hole.kind === "dowel" ? INDICES.flatMap((i) => mouthFace(hole.direction, i)) : [],
    ),
  );
  const same = bored.size === faces.length && faces.every((face) => bored.has(face));
  return same && faces.length > 1
    ? `, the ${faces.length === 2 ? "two" : numberWord(faces.length)} with the dowel holes`
    : "";
}

const mouthFace = (direction: Direction, i: AxisIndex): readonly string[] =>
  Math.abs(direction[i]) > 0.99 ? [faceOf(i, direction[i] < 0)] : [];

/** A sloping cut, told by the face that it leaves and the end or face that it meets. */
export function slopeOf(part: Part, { kind, origin, normal }: PlaneFeature) {
  const tilted = INDICES.filter((i) => normal[i] !== 0);
  const long = indexOf(part.axes.length);
  // A taper leaves a long side and meets an end; otherwise the face is the one that the plane's origin lies on.
  const end = tilted.includes(long) ? long : (tilted[1] as AxisIndex);
  const axis = (tilted.find((i) => i !== end) ?? end) as AxisIndex;
  const high = (i: AxisIndex): boolean => normal[i] > 0;
  const whole = part.whole ?? part.body;
  const edge = high(end) ? whole.high[end] : whole.low[end];
  // Where the plane leaves the face, and where it meets the end: its origin may lie anywhere on it.
  const face = high(axis) ? whole.high[axis] : whole.low[axis];
  const rise = divide(multiply(subtract(face, origin[axis]), rational(normal[axis])), rational(normal[end]));
  const over = absolute(subtract(edge, subtract(origin[end], rise)));
  const inset = absolute(multiply(over, divide(rational(normal[end]), rational(normal[axis]))));
  // The other face, where the slope goes on to it.
  const far = less(inset, extent(whole, axis)) ? null : faceOf(axis, !high(axis));
  return { kind, axis, face: faceOf(axis, high(axis)), end: faceOf(end, high(end)), over, inset, far };
}
