import type { Length } from "../../../../units/length.ts";
import { subtract, toNumber } from "../../../../units/rational.ts";
import type { CutLine } from "../../../build.ts";
import { type AxisIndex, faceOf, INDICES, indexOf } from "../../../design/space.ts";
import type { Feature, Hole, Part } from "../../../design.ts";
import { called, numberWord, plural, type Work } from "../draft.ts";

/** What to cut from one stock. */
export function cuttingText(work: Work, lines: readonly CutLine[]): readonly string[] {
  const cuts = lines.map((line) => {
    const first = line.parts[0] as string;
    const what = line.parts.length === 1 ? called(work, first) : plural(work, first);
    return `${line.parts.length} ${what}: ${work.print(line.width)} wide, ${work.print(line.length)} long.`;
  });
  return [...cuts, "Write its mark on each part as soon as it is cut. Cut parts of one length against one stop."];
}

type BoxFeature = Extract<Feature, { readonly size: unknown }>;

/** How the cuts of one kind are made in a part: one sentence for each size, with its places. */
export function featureText(work: Work, part: Part, kind: Feature["kind"]): readonly string[] {
  const all = part.features.filter((feature) => feature.kind === kind);
  if (kind === "taper" || kind === "chamfer" || kind === "bevel") return [slopeText(work, part, all)];
  const boxes = all.filter((feature): feature is BoxFeature => "size" in feature);
  const groups = new Map<string, BoxFeature[]>();
  for (const box of boxes) {
    const key = sizeText(work, box);
    groups.set(key, [...(groups.get(key) ?? []), box]);
  }
  return [...groups].map(([size, list]) => {
    const places = list.map((box) => placeText(work, part, box));
    const what =
      list.length === 1 ? `a ${kind}` : `${numberWord(list.length)} ${kind === "half lap" ? "half laps" : `${kind}s`}`;
    if (kind === "tenon")
      return `Cut ${what} ${size}; fit each to its mortise so that it slides in with the push of a hand.`;
    return `Cut ${what} ${size}: ${[...new Set(places)].join("; ")}.`;
  });
}

const sizeText = ({ print }: Work, { kind, size }: BoxFeature): string => {
  const [along, across, depth] = size;
  if (kind === "tenon") return `${print(across)} thick, ${print(along)} wide, ${print(depth)} long`;
  return `${print(along)} long, ${print(across)} wide and ${print(depth)} deep`;
};

/** "in the back face, 3 in from the top": measured from the nearer end of the part to the nearer side of the cut. */
function placeText(work: Work, part: Part, feature: BoxFeature): string {
  const into = INDICES.find((i) => feature.into[i] !== 0) as AxisIndex;
  const face = faceOf(into, (feature.into[into] as number) < 0);
  const span = (axis: AxisIndex): { low: Length; high: Length } => {
    const k = [feature.along, feature.across, feature.into].findIndex((d) => d[axis] !== 0) as 0 | 1 | 2;
    const from = feature.origin[axis];
    const size = feature.size[k];
    const way = ([feature.along, feature.across, feature.into] as const)[k][axis] as number;
    const to = way > 0 ? subtract(from, { n: -size.n, d: size.d }) : subtract(from, size);
    return way > 0 ? { low: from, high: to } : { low: to, high: from };
  };
  const where = INDICES.filter((axis) => axis !== into).flatMap((axis) => {
    const { low, high } = span(axis);
    const [below, above] = [subtract(low, part.blank.low[axis]), subtract(part.blank.high[axis], high)];
    if (below.n <= 0n && above.n <= 0n) return [];
    const lowFirst = toNumber(below) <= toNumber(above);
    const near = lowFirst ? below : above;
    const side = faceOf(axis, !lowFirst);
    return near.n <= 0n
      ? [`flush with the ${side} ${sideWord(part, axis)}`]
      : [`${work.print(near)} from the ${side} ${sideWord(part, axis)}`];
  });
  return [`in the ${face} face`, ...where].join(", ");
}

const sideWord = (part: Part, axis: AxisIndex): string =>
  indexOf(part.axes.length) === axis ? "end" : indexOf(part.axes.thickness) === axis ? "face" : "edge";

function slopeText(work: Work, part: Part, list: readonly Feature[]): string {
  const faces = list.flatMap((feature) => {
    if (!("normal" in feature)) return [];
    const steep = INDICES.toSorted(
      (a, b) => Math.abs(feature.normal[b] as number) - Math.abs(feature.normal[a] as number),
    )[0] as AxisIndex;
    return [faceOf(steep, (feature.normal[steep] as number) > 0)];
  });
  const kind = list[0]?.kind ?? "taper";
  const word = kind === "taper" ? "Taper" : kind === "chamfer" ? "Chamfer" : "Bevel";
  return `${word} the ${called(work, part.id).replace(/ \(.*/, "")} on ${[...new Set(faces)].map((f) => `its ${f}`).join(", ")}, as drawn. Do this last, when all joints are cut while the stock is square.`;
}

/** Holes by what they are for and how deep, with their places in the drawing. */
export function boringText(work: Work, holes: readonly Hole[]): readonly string[] {
  const groups = new Map<string, Hole[]>();
  for (const hole of holes) {
    const key = `${hole.kind} ${hole.stages.map((s) => `${work.print(s.diameter)}|${work.print(s.depth)}`).join()}`;
    groups.set(key, [...(groups.get(key) ?? []), hole]);
  }
  return [...groups.values()].map((list) => {
    const hole = list[0] as Hole;
    const n = list.length === 1 ? "a" : numberWord(list.length);
    const word = list.length === 1 ? "hole" : "holes";
    const last = hole.stages.at(-1) as Hole["stages"][number];
    const first = hole.stages[0] as Hole["stages"][number];
    if (hole.kind === "pocket")
      return `Bore ${n} pocket ${word}, ${work.print(first.diameter)} for the head, at 15° to the face.`;
    const depth = hole.through ? "right through" : `${work.print(last.depth)} deep`;
    const wide =
      hole.stages.length > 1
        ? ` Widen the mouth to ${work.print(first.diameter)}, ${work.print(first.depth)} deep, for the head.`
        : "";
    return `Bore ${n} ${hole.kind === "oversized" ? "oversized " : ""}${word} ${work.print(last.diameter)}, ${depth}.${wide}`;
  });
}
