import type { BoardSize, PartDraft } from "../../../parse/draft.ts";
import { type AxisIndex, faceAxis, INDICES, indexOf } from "../space.ts";
import { rolesOf, type Statement, type Statements } from "./statement.ts";

/** Which direction of the piece each direction of the board runs in. */
export interface Frame {
  readonly thickness: AxisIndex;
  readonly width: AxisIndex;
  readonly length: AxisIndex;
}

/** A frame that fits, with all that is then known in each direction. */
export interface Stance {
  readonly frame: Frame;
  readonly statements: Statements;
}

export type Attitude =
  /** More than one stance: they differ only in which way the length runs, which the extents will tell. */
  | { readonly kind: "known"; readonly stances: readonly [Stance, ...Stance[]] }
  | { readonly kind: "too little"; readonly stance: Stance }
  | { readonly kind: "open"; readonly stances: readonly Stance[] }
  /** What `as`, `facing` and `grain` say cannot be true together. */
  | { readonly kind: "impossible" };

const FRAMES: readonly Frame[] = INDICES.flatMap((thickness) =>
  INDICES.filter((width) => width !== thickness).map((width) => ({
    thickness,
    width,
    length: (3 - thickness - width) as AxisIndex,
  })),
);

/** What the words `as`, `facing` and `grain` leave over. */
const allowed = (part: PartDraft): readonly Frame[] =>
  FRAMES.filter((frame) => {
    const attitude = part.attitude?.value;
    if (attitude === "lying flat" && frame.thickness !== 2) return false;
    if (attitude === "on edge" && frame.width !== 2) return false;
    if (attitude === "upright" && frame.length !== 2) return false;
    if (part.facing && frame.thickness !== faceAxis(part.facing.value)) return false;
    return !part.grain || frame.length === indexOf(part.grain.value);
  });

export type BoardStatements = ReadonlyMap<BoardSize, Statement>;

/**
 * The attitude of a part: the frame in which each direction has the two statements that it needs, found by counting them, not by
 * measuring. `board` says what stock and keys fix of thickness, width and length; `square` that thickness and width are the same
 * stock size, so that turning the part about its length changes nothing; `open` counts statements that will take any direction
 * that lacks one.
 */
export function attitudeOf(
  part: PartDraft,
  placed: Statements,
  board: BoardStatements,
  square: boolean,
  open: number,
): Attitude {
  const stances = allowed(part).map((frame) => ({ frame, statements: withBoard(placed, board, frame) }));
  if (stances.length === 0) return { kind: "impossible" };
  const rated = stances.map((stance) => ({ stance, ...rate(stance, open) }));
  const fitting = rated.filter((r) => r.missing === 0);
  if (fitting.length === 0) {
    const best = rated.reduce((a, b) => (b.missing < a.missing ? b : a));
    return { kind: "too little", stance: best.stance };
  }
  const least = Math.min(...fitting.map((r) => r.surplus));
  const best = fitting.filter((r) => r.surplus === least).map((r) => r.stance);
  const [first, ...others] = best as [Stance, ...Stance[]];
  if (others.length === 0) return { kind: "known", stances: [first] };
  if (square && others.every((s) => s.frame.length === first.frame.length)) return { kind: "known", stances: [first] };
  const sameThickness = others.every((s) => s.frame.thickness === first.frame.thickness);
  const free = !board.has("width") && !board.has("length");
  return sameThickness && free ? { kind: "known", stances: [first, ...others] } : { kind: "open", stances: best };
}

const withBoard = (placed: Statements, board: BoardStatements, frame: Frame): Statements => {
  const at = (axis: AxisIndex): readonly Statement[] =>
    placed[axis].concat([...board].flatMap(([size, statement]) => (frame[size] === axis ? [statement] : [])));
  return [at(0), at(1), at(2)];
};

function rate({ statements }: Stance, open: number): { missing: number; surplus: number } {
  const roles = INDICES.map((axis) => rolesOf(statements[axis]).size);
  const lacking = roles.reduce((sum, n) => sum + Math.max(0, 2 - n), 0);
  // An open `centred on` can only help a direction that already knows how big the part is there.
  const helped = INDICES.filter((axis) => roles[axis] === 1 && rolesOf(statements[axis]).has("extent")).length;
  const missing = lacking - (open > 0 ? helped : 0);
  return { missing: Math.max(0, missing), surplus: roles.reduce((sum, n) => sum + Math.max(0, n - 2), 0) };
}
