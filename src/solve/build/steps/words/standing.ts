/** How parts stand to each other whose joint does not show it: a thin one between thick ones lies flush on one side, or set back. */
import { add, compare, equal, half } from "../../../../units/rational.ts";
import { type AxisIndex, enclosing, extent, faceOf, INDICES, indexOf, middle } from "../../../design/space.ts";
import type { Joint, Part } from "../../../design.ts";
import { called, listed, type Work } from "../draft.ts";
import { along } from "./along.ts";

/** Those that a mortise holds by all four sides, but for one that is longer than its tenon. */
const TENONS = ["mortise and tenon", "through tenon", "haunched tenon", "drawbored tenon"] as const;
const TENONED: ReadonlySet<Joint["method"]> = new Set<Joint["method"]>(TENONS);

/** Pegs and tenons hold a part in its place, and hide where that is. */
const HIDDEN: ReadonlySet<Joint["method"]> = new Set<Joint["method"]>([
  ...(["dowels", "biscuits", "spline", "loose tenon"] as const),
  ...TENONS,
]);

/** Whether a tenon can be shifted in its mortise, along the width of its part. */
function hasPlay({ method, contact }: Joint, part: Part): boolean {
  const axis = indexOf(part.axes.width);
  return TENONED.has(method) && [1, -1].some((way) => !contact.some(({ normal }) => normal[axis] * way > 0.5));
}

/** The one direction in which no face of a joint stops what is let in, so that it can be shifted along its dado; null where it is stopped, or lies free in two. */
function openAlong({ contact }: Joint): AxisIndex | null {
  const open = INDICES.filter((i) => contact.every(({ normal }) => Math.abs(normal[i]) < 0.5));
  return open.length === 1 ? (open[0] ?? null) : null;
}

/** A sentence for each kind of part, with all that it stands to alike. */
export function standTexts(work: Work, joints: readonly Joint[]): readonly string[] {
  const told = new Map<string, { readonly id: string; readonly words: string; readonly mates: string[] }>();
  const tell = (id: string, mate: string, words: string): void => {
    const key = `${work.line(id).mark} ${words}`;
    told.set(key, { id, words, mates: [...new Set([...(told.get(key)?.mates ?? []), mate])] });
  };
  for (const joint of joints) {
    const { method, parts, contact } = joint;
    const [id, mate] = parts;
    const [part, base] = [work.part(id), work.part(mate)];
    if (!part.turned && !base.turned && hasPlay(joint, part))
      tell(id, mate, along(work, part.body, base.body, indexOf(part.axes.width)));
    const run = method === "dado" && !part.turned && !base.turned ? openAlong(joint) : null;
    if (run !== null && !equal(extent(part.body, run), extent(base.body, run)))
      tell(id, mate, along(work, part.body, base.body, run));
    const axis = indexOf(part.axes.thickness);
    const across = contact.every(({ normal }) => Math.abs(normal[axis]) < 0.5);
    if (!HIDDEN.has(method) || part.turned || base.turned || !across) continue;
    if (equal(extent(part.body, axis), extent(base.body, axis))) continue;
    const words = `${along(work, part.body, base.body, axis)}${inside(work, part, base, axis)}`;
    tell(id, mate, words);
  }
  return [...told.values()].map(
    ({ id, words, mates }) => `The ${called(work, id)} lies ${words} of ${listed(work, mates)}.`,
  );
}

/** ", the inside,": where a side of the piece that is meant looks inwards, or outwards. */
function inside({ design }: Work, part: Part, base: Part, axis: AxisIndex): string {
  if (axis !== 0) return "";
  const whole = design.parts.map(({ body }) => body).reduce(enclosing);
  const [own, all] = [middle(base.body, axis), middle(whole, axis)];
  const way = compare(own, all);
  if (way === 0 || inMiddle(base, whole, axis)) return "";
  const [low, high] = [
    equal(part.body.low[axis], base.body.low[axis]),
    equal(part.body.high[axis], base.body.high[axis]),
  ];
  if (low === high) return "";
  return faceOf(axis, high) === (way < 0 ? "right" : "left") ? ", the inside," : ", the outside,";
}

/** In the middle half of the piece no side is the inside. */
const inMiddle = (base: Part, whole: Part["body"], axis: AxisIndex): boolean => {
  const wide = half(extent(whole, axis));
  return (
    compare(add(whole.low[axis], half(wide)), middle(base.body, axis)) < 0 &&
    compare(middle(base.body, axis), add(whole.low[axis], add(wide, half(wide)))) < 0
  );
};
