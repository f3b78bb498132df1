/** Boards that close a case side by side: the first of them keeps it as it finds it. */
import { equal, toNumber } from "../../../units/rational.ts";
import { type AxisIndex, enclosing, extent, INDICES, indexOf, middle } from "../../design/space.ts";
import type { Part } from "../../design.ts";
import { LOOSE } from "../order/links.ts";
import { isHeld, jointsAmong } from "./case-sides.ts";
import type { Work } from "./draft.ts";
import type { Move } from "./moves.ts";

/** A case that boards close. */
export interface Backed {
  /** Some of the boards are on it already. */
  readonly begun: boolean;
  /** Two uprights that are held together at both ends, of equal size and at equal height. */
  readonly uprights: readonly [Part, Part];
  /** Across the boards. */
  readonly thin: AxisIndex;
  /** The boards go on the side that lies high along `thin`. */
  readonly high: boolean;
}

/** So much between the uprights, feet and all, is closed by boards; fewer are rails. */
const CLOSES = 0.6;

/** Null where these moves bring no such boards. */
export function backedBy(work: Work, moves: readonly Move[]): Backed | null {
  const present = (moves[0] as Move).present;
  const joints = work.design.joints.filter(({ kind }) => !LOOSE.includes(kind));
  for (const id of moves.flatMap(({ arriving }) => arriving)) {
    const board = work.part(id);
    const thin = indexOf(board.axes.thickness);
    const plane = work.design.parts.filter((each) => inOnePlane(each, board));
    const inside = new Set(plane.map((each) => each.id));
    // What is in a frame is held by that, in its own plane.
    const behind = present.filter((other) => !inside.has(other));
    const holding = ({ id: own }: Part): readonly string[] =>
      joints
        .filter(({ parts, glue, method }) => parts.includes(own) && (method !== "groove" || glue))
        .flatMap(({ parts }) => parts.filter((other) => behind.includes(other)));
    const row = plane.filter((each) => holding(each).length > 0);
    if (row.length < 2 || !row.includes(board)) continue;
    const uprights = uprightsBehind(work, behind, new Set(row.flatMap(holding)), board);
    if (!uprights) continue;
    const whole = enclosing(uprights[0].body, uprights[1].body);
    const [a, b] = INDICES.filter((axis) => axis !== thin) as [AxisIndex, AxisIndex];
    const area = ({ body }: Pick<Part, "body">): number => toNumber(extent(body, a)) * toNumber(extent(body, b));
    if (row.reduce((so, each) => so + area(each), 0) < CLOSES * area({ body: whole })) continue;
    const begun = row.some((each) => present.includes(each.id));
    return { begun, uprights, thin, high: toNumber(middle(board.body, thin)) > toNumber(middle(whole, thin)) };
  }
  return null;
}

const inOnePlane = (one: Part, other: Part): boolean => {
  const thin = indexOf(other.axes.thickness);
  return (
    !one.turned &&
    indexOf(one.axes.thickness) === thin &&
    (["low", "high"] as const).every((end) => equal(one.body[end][thin], other.body[end][thin]))
  );
};

/** Of `holding`, which hold boards, those that stand farthest apart. */
function uprightsBehind(
  work: Work,
  ids: readonly string[],
  holding: ReadonlySet<string>,
  board: Part,
): readonly [Part, Part] | null {
  const thin = indexOf(board.axes.thickness);
  const parts = [...holding].map(work.part).filter(({ turned, axes }) => !turned && indexOf(axes.length) !== thin);
  const span = ([a, b]: readonly [Part, Part]): number => {
    const whole = enclosing(a.body, b.body);
    return INDICES.reduce<number>((so, axis) => (axis === thin ? so : so + toNumber(extent(whole, axis))), 0);
  };
  const fast = jointsAmong(work, ids);
  const pairs = parts.flatMap((a, i) =>
    parts
      .slice(i + 1)
      .flatMap((b): readonly (readonly [Part, Part])[] =>
        areUprights(a, b, thin) && isHeld(a, b, fast) ? [[a, b]] : [],
      ),
  );
  const [best] = pairs.toSorted((p, q) => span(q) - span(p));
  return best ?? null;
}

/** Side by side, seen through the boards. */
function areUprights(a: Part, b: Part, thin: AxisIndex): boolean {
  const [along, other] = [indexOf(a.axes.length), indexOf(b.axes.length)];
  return (
    along === other &&
    INDICES.every(
      (axis) =>
        (axis !== thin && axis !== along) ||
        (equal(a.body.low[axis], b.body.low[axis]) && equal(a.body.high[axis], b.body.high[axis])),
    )
  );
}
