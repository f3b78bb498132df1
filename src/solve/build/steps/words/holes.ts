import { half } from "../../../../units/rational.ts";
import { type AxisIndex, faceOf, INDICES, indexOf } from "../../../design/space.ts";
import type { Hole, Part } from "../../../design.ts";
import { numberWord, series, type Work } from "../draft.ts";
import { fromNearer, sideWord } from "./measured.ts";

/** Holes by what they are for and how deep, with the place of each centre. */
export function boringText(work: Work, part: Part, holes: readonly Hole[]): readonly string[] {
  const groups = new Map<string, Hole[]>();
  for (const hole of holes) {
    const key = `${hole.kind} ${hole.slot ? "slot " : ""}${entry(hole)} ${hole.stages.map((s) => `${work.print(s.diameter)}|${work.print(s.depth)}`).join()}`;
    groups.set(key, [...(groups.get(key) ?? []), hole]);
  }
  return [...groups.values()].flatMap((list) => [whatText(work, part, list), ...placeTexts(work, part, list)]);
}

/** The face that a hole is bored into. */
const entry = ({ direction }: Hole): string => faceOf(axisOf(direction), direction[axisOf(direction)] < 0);

const axisOf = (direction: Hole["direction"]): AxisIndex =>
  INDICES.reduce<AxisIndex>((best, i) => (Math.abs(direction[i]) > Math.abs(direction[best]) ? i : best), 0);

function whatText({ print }: Work, part: Part, list: readonly Hole[]): string {
  const hole = list[0] as Hole;
  const [n, word] = list.length === 1 ? ["a", "hole"] : [numberWord(list.length), "holes"];
  const [first, last] = [hole.stages[0] as Hole["stages"][number], hole.stages.at(-1) as Hole["stages"][number]];
  const face =
    hole.kind === "pocket" ? pocketFace(part, hole) : `${entry(hole)} ${sideWord(part, axisOf(hole.direction))}`;
  if (hole.kind === "pocket")
    return `Bore ${n} pocket ${word} into the ${face}, ${print(first.diameter)} for the head, 15° to the face.`;
  const kind = hole.kind === "oversized" ? "oversized " : hole.kind === "dowel" ? "dowel " : "";
  const depth = hole.through ? "right through" : `${print(last.depth)} deep`;
  const bore = `Bore ${n} ${print(last.diameter)} ${kind}${word} into the ${face}, ${depth}`;
  const slot =
    hole.slot &&
    `, and lengthen ${list.length === 1 ? "it" : "each"} by ${print(half(hole.slot.length))} to both sides ${faceWord(hole.slot.along)}, so that the wood can move`;
  if (hole.stages.length === 1) return `${bore}${slot ?? ""}.`;
  return hole.kind === "clearance" && first.depth.n * last.depth.d * 4n < last.depth.n * first.depth.d
    ? `${bore}, and countersink for the heads.`
    : `${bore}; first bore ${print(first.diameter)} wide and ${print(first.depth)} deep for the heads.`;
}

/** The direction in which a hole is long. */
const faceWord = (along: Hole["direction"]): string =>
  `towards the ${faceOf(axisOf(along), false)} and the ${faceOf(axisOf(along), true)}`;

/** A pocket leans along the length: its face is the broad one that it starts in. */
const pocketFace = (part: Part, { direction }: Hole): string => {
  const thin = indexOf(part.axes.thickness);
  return `${faceOf(thin, direction[thin] < 0)} face`;
};

/** Centres in rows: those that share their distance along the part are told together. */
function placeTexts(work: Work, part: Part, list: readonly Hole[]): readonly string[] {
  const into = axisOf((list[0] as Hole).direction);
  const long = indexOf(part.axes.length) === into ? indexOf(part.axes.width) : indexOf(part.axes.length);
  const other = INDICES.find((i) => i !== into && i !== long) as AxisIndex;
  const at = (hole: Hole, axis: AxisIndex): string =>
    fromNearer(work, part, axis, hole.at[axis], hole.at[axis]) ?? "in the middle";
  const rows = new Map<string, string[]>();
  for (const hole of list) {
    const key = at(hole, long);
    rows.set(key, [...(rows.get(key) ?? []), at(hole, other)]);
  }
  return [...rows].map(([along, across]) => `– ${along}: ${series(across)}.`);
}
