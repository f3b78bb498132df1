import { equal, less, ZERO } from "../../../../units/rational.ts";
import { roundTo } from "../../../../units/round.ts";
import { type AxisIndex, axisOf, extent, faceOf, INDICES } from "../../../design/space.ts";
import type { CurvedKind, Feature, Part } from "../../../design.ts";
import { numberWord, series, type Work } from "../draft.ts";
import { placeText, spanOf } from "./boxes.ts";
import { type Arris, squareAtSeats } from "./leaf-seats.ts";
import { squareWhereMet } from "./met-edges.ts";

export type CurvedFeature = Extract<Feature, { readonly radius: unknown }>;
export const isCurved = (feature: Feature): feature is CurvedFeature => "radius" in feature;

/** How the curves of one kind are laid out and cut: those of one size together, with every place. */
export function curveTexts(work: Work, part: Part, features: readonly CurvedFeature[]): readonly string[] {
  const groups = new Map<string, CurvedFeature[]>();
  for (const feature of features) {
    const key = [...feature.size, feature.radius].map(work.print).join();
    groups.set(key, [...(groups.get(key) ?? []), feature]);
  }
  return [...groups.values()].flatMap((list) => TEXTS[(list[0] as CurvedFeature).kind](work, part, list));
}

type Text = (work: Work, part: Part, list: readonly CurvedFeature[]) => readonly string[];

const withPlaces = (work: Work, part: Part, list: readonly CurvedFeature[], head: string): readonly string[] => {
  const places = [...new Set(list.map((feature) => placeText(work, part, feature)))];
  return places.length === 1 ? [`${head}: ${places[0]}.`] : [`${head}:`, ...places.map((place) => `– ${place}.`)];
};
const counted = (list: readonly unknown[], one: string, many: string): string =>
  list.length === 1 ? one : `${numberWord(list.length)} ${many}`;
const name = (work: Work, part: Part): string => work.line(part.id).name.toLowerCase();

const arches: Text = (work, part, list) => {
  const [width, , rise] = (list[0] as CurvedFeature).size;
  const radius = roundTo((list[0] as CurvedFeature).radius, work.design.precision);
  return [
    ...withPlaces(
      work,
      part,
      list,
      `Lay out ${counted(list, "an arch", "arches")} ${work.print(width)} wide and ${work.print(rise)} high in the middle`,
    ),
    `Bend a thin strip through the two ends and the middle, or draw an arc of ${work.print(radius)} radius; saw beside the line and smooth to it.`,
  ];
};

const openings: Text = (work, part, list) => {
  const { size, radius } = list[0] as CurvedFeature;
  const corners = less(ZERO, radius) ? `, its corners rounded to ${work.print(radius)} radius` : "";
  return [
    ...withPlaces(
      work,
      part,
      list,
      `Cut ${counted(list, "an opening", "openings")} ${work.print(size[0])} × ${work.print(size[1])} right through${corners}`,
    ),
    "Bore the corners, saw from hole to hole and smooth the sides.",
  ];
};

const slots: Text = (work, part, list) => {
  const { size, into } = list[0] as CurvedFeature;
  const [long, wide, deep] = size;
  const axis = axisOf(into);
  const depth = less(deep, extent(part.body, axis)) ? `${work.print(deep)} deep` : "right through";
  return withPlaces(
    work,
    part,
    list,
    `Cut ${counted(list, "a slot", "slots")} ${work.print(long)} long over its round ends and ${work.print(wide)} wide, ${depth}`,
  );
};

/** The two faces that meet where each is: the one that it is cut into first. */
const arrises = (part: Part, list: readonly CurvedFeature[]): readonly (readonly [Arris[number], Arris[number]])[] =>
  list.map((feature) => {
    const along = INDICES.find((i) => feature.along[i] !== 0);
    const into = axisOf(feature.into);
    const other = INDICES.find((i) => i !== along && i !== into) as AxisIndex;
    const low = equal(spanOf(feature, other).low, part.body.low[other]);
    return [
      [into, (feature.into[into] as number) < 0],
      [other, !low],
    ];
  });

/** "the top meets the front and the back" */
const edgesOf = (part: Part, list: readonly CurvedFeature[]): string => {
  const pairs = arrises(part, list).map(([first, second]) => [faceOf(...first), faceOf(...second)] as const);
  const firsts = [...new Set(pairs.map(([first]) => first))];
  const seconds = (first: string) => pairs.filter(([a]) => a === first).map(([, b]) => `the ${b}`);
  return series(firsts.map((first) => `the ${first} meets ${series(seconds(first))}`));
};

const corners: Text = (work, part, list) => [
  `Round ${list.length === 1 ? "the corner" : `${numberWord(list.length)} corners`} of the ${name(work, part)} to ${work.print((list[0] as CurvedFeature).radius)} radius: where ${edgesOf(part, list)}.`,
];
const roundOvers: Text = (work, part, list) => [
  `Round over ${list.length === 1 ? "the edge" : `${numberWord(list.length)} edges`} of the ${name(work, part)} with a radius of ${work.print((list[0] as CurvedFeature).radius)}: where ${edgesOf(part, list)}.`,
  ...squareAtSeats(work, part, arrises(part, list)),
  ...squareWhereMet(work, part, arrises(part, list)),
];

const TEXTS: Readonly<Record<CurvedKind, Text>> = {
  arch: arches,
  "cut-out": openings,
  slot: slots,
  "rounded corner": corners,
  "round-over": roundOvers,
};
