/** Mortises that go right through, and the wedges that are driven into the tenons there. */
import { inches, type Length, millimetres } from "../../../../units/length.ts";
import { add, equal, multiply, rational } from "../../../../units/rational.ts";
import { roundTo } from "../../../../units/round.ts";
import { type AxisIndex, axisOf, extent, faceOf } from "../../../design/space.ts";
import type { Part } from "../../../design.ts";
import type { Work } from "../draft.ts";
import type { BoxFeature } from "./boxes.ts";
import { sideWord } from "./measured.ts";

/** By how much a mortise is longer at each end where its wedges come, how thick a wedge is, and by how much it is longer than its kerf. Common practice, no source. */
const WEDGE = {
  inch: { flare: inches(1, 16), thick: inches(1, 8), longer: inches(1, 4) },
  mm: { flare: millimetres(3, 2), thick: millimetres(3), longer: millimetres(6) },
} as const;

const axisInto = ({ into }: BoxFeature): AxisIndex => axisOf(into);
const isWedged = ({ design }: Work, box: BoxFeature): boolean =>
  design.joints.some(({ id, wedged }) => wedged && id === box.for);
const isThrough = (part: Part, box: BoxFeature): boolean =>
  box.kind === "mortise" && equal(box.size[2], extent(part.whole ?? part.body, axisInto(box)));

/** "3 in long and 3/8 in wide, right through" for "3 in long, 3/8 in wide and 1 in deep", where all of a list go through. */
export function throughText({ print }: Work, part: Part, list: readonly BoxFeature[], size: string): string {
  const [first] = list;
  if (!first || !list.every((box) => isThrough(part, box))) return size;
  return `${print(first.size[0])} long and ${print(first.size[1])} wide, right through`;
}

/** How a mortise is cut that is seen on both faces, and widened for wedges. */
export function throughTexts(work: Work, part: Part, list: readonly BoxFeature[]): readonly string[] {
  const through = list.filter((box) => isThrough(part, box));
  const [first] = through;
  if (!first) return [];
  const wedged = through.filter((box) => isWedged(work, box));
  const [one] = wedged;
  const far = ({ into }: BoxFeature, axis: AxisIndex): string =>
    `${faceOf(axis, into[axis] > 0)} ${sideWord(part, axis)}`;
  // What goes through from edge to edge is set out on those.
  const [side, other] = sideWord(part, axisInto(first)) === "edge" ? ["edge", "face"] : ["face", "edge"];
  return [
    `Mark ${through.length === 1 ? "it" : "each"} on both ${side}s from the same ${other} and end, and cut from both to the middle: so neither ${side} splinters.`,
    ...(one
      ? [
          `On the ${far(one, axisInto(one))} make ${wedged.length === 1 ? "it" : "each"} ${work.print(WEDGE[work.design.units].flare)} longer at both ends, sloping to nothing at the other face: there the wedges spread the tenon.`,
        ]
      : []),
  ];
}

/** What wedges are driven into, and the wedges. */
export function wedgeTexts(work: Work, list: readonly BoxFeature[]): readonly string[] {
  const { design, print } = work;
  const first = list.find((box) => box.kind === "tenon" && isWedged(work, box));
  if (!first) return [];
  const [wide, thick, long] = first.size;
  const share = (length: Length, n: number, d: number) => roundTo(multiply(length, rational(n, d)), design.precision);
  const deep = share(long, 2, 3);
  const { thick: end, longer } = WEDGE[design.units];
  return [
    `Saw two kerfs for wedges into the end of each, ${print(share(wide, 1, 4))} from its edges and ${print(deep)} deep.`,
    `Saw two wedges for each from an offcut of this wood or a harder one, the grain along them: ${print(thick)} wide, ${print(add(deep, longer))} long, and from ${print(end)} thick to an edge.`,
  ];
}
