import type { Length } from "../../../../units/length.ts";
import { equal, subtract, toNumber } from "../../../../units/rational.ts";
import { type AxisIndex, extent, faceOf, INDICES, middle } from "../../../design/space.ts";
import type { Joint, Part } from "../../../design.ts";
import { called, series, type Work } from "../draft.ts";
import type { Move } from "../moves.ts";

/** Methods that put a part in its place by themselves. */
const LOCATED: readonly Joint["method"][] = ["mortise and tenon", "half lap", "dado", "rabbet", "groove", "dowels"];

/** How the arriving part lies on the first part that it is joined to, where nothing else tells; null when something does. */
export function placeText(work: Work, move: Move): string | null {
  const joints = move.work.map(({ joint }) => joint);
  const joint = joints[0];
  if (!joint || joints.some(({ method }) => LOCATED.includes(method))) return null;
  const [own, mate] =
    joint.parts[0] === move.arriving.find((id) => joint.parts.includes(id))
      ? joint.parts
      : [joint.parts[1], joint.parts[0]];
  const [part, base] = [work.part(own), work.part(mate)];
  const normal = joint.contact[0]?.normal;
  if (!normal) return null;
  const axes = INDICES.filter((i) => Math.abs(normal[i]) < 0.5);
  const words = axes.flatMap((axis) => along(work, part, base, axis) ?? []);
  return words.length === 0 ? null : `Place the ${called(work, own)} ${series(words)} of the ${called(work, mate)}.`;
}

/** "flush with the front", "3 in past the left", "1 in back from the front" */
function along(work: Work, part: Part, base: Part, axis: AxisIndex): string | null {
  const gaps = (["low", "high"] as const).map((side) => ({
    face: faceOf(axis, side === "high"),
    // Positive: inside the other part's face.
    inside:
      side === "low"
        ? subtract(part.body.low[axis], base.body.low[axis])
        : subtract(base.body.high[axis], part.body.high[axis]),
  }));
  const [low, high] = gaps as [(typeof gaps)[number], (typeof gaps)[number]];
  if (low.inside.n === 0n && high.inside.n === 0n) return `flush with the ${low.face} and the ${high.face}`;
  for (const { face, inside } of gaps) if (inside.n === 0n) return `flush with the ${face}`;
  if (equal(middle(part.body, axis), middle(base.body, axis))) return null;
  const near = Math.abs(toNumber(low.inside)) <= Math.abs(toNumber(high.inside)) ? low : high;
  const { n, d } = near.inside;
  return n > 0n
    ? `${work.print(near.inside)} in from the ${near.face}`
    : `standing ${work.print({ n: -n, d })} past the ${near.face}`;
}

/** The even gap in a row of alike parts; null when there is none. */
export function gapText(work: Work, moves: readonly Move[]): string | null {
  const ids = moves.flatMap((move) => move.arriving);
  if (ids.length < 2 || new Set(ids.map((id) => work.line(id).mark)).size > 1) return null;
  const bodies = ids.map((id) => work.part(id).body);
  for (const axis of INDICES) {
    const row = bodies.toSorted((a, b) => toNumber(subtract(a.low[axis], b.low[axis])));
    const gaps = row.slice(1).map((box, i) => subtract(box.low[axis], (row[i] as (typeof row)[number]).high[axis]));
    const first = gaps[0] as Length;
    if (first.n > 0n && gaps.every((gap) => equal(gap, first)) && sameElsewhere(row, axis))
      return `Leave ${work.print(first)} between one and the next: a spacer of that thickness helps.`;
  }
  return null;
}

const sameElsewhere = (row: readonly Part["body"][], axis: AxisIndex): boolean => {
  const first = row[0] as Part["body"];
  return row.every((box) =>
    INDICES.every((i) => i === axis || (equal(box.low[i], first.low[i]) && equal(extent(box, i), extent(first, i)))),
  );
};
