/** What the steps of joining are called, and the bodies in them. */
import type { Joint } from "../../design.ts";
import { panesOf } from "../order/glazing.ts";
import type { Copies } from "./copies.ts";
import { called, listed, numberWord, pluralOf, stepToken, type Work } from "./draft.ts";
import { hangs, isGlazing, type Move, type Unit } from "./moves.ts";
import { bodyKind, bodyWords, mainOf, movingWords, theBody } from "./words/bodies.ts";
import { kindName } from "./words/moving.ts";

export function titleOf(work: Work, copies: Copies, moves: readonly Move[], units: readonly Unit[]): string {
  const first = moves[0] as Move;
  const joints = moves.flatMap((move) => move.work.map(({ joint }) => joint));
  const arriving = moves.flatMap((move) => move.arriving);
  if (moves.some(hangs)) return "Hang the piece on the wall";
  const verb = verbFor(joints);
  if (first.starts && copies.unit.named && !hasTwin(work, [...first.present, ...arriving], units)) {
    const n = copies.all.length;
    return n > 1 ? `Build the ${numberWord(n)} ${manyOf(copies.unit, n)}` : `Build ${theBody(named(copies.unit))}`;
  }
  if (first.starts && first.arrivesBuilt && moves.length === 1)
    return `${verb} ${listed(work, first.present)} and ${theBody(builtName(work, first, units))}`;
  if (first.starts) return `${verb} ${listed(work, [...first.present, ...arriving])}`;
  if (first.arrivesBuilt) return `${bodyVerb(joints)} ${theBody(builtNames(work, moves, units))}`;
  // The beads come with it.
  if (moves.every(isGlazing)) {
    const panes = panesOf(work.design);
    return `Put in ${listed(
      work,
      arriving.filter((id) => panes.has(id)),
    )}`;
  }
  return `${verb === "Glue up" ? "Glue in" : verb === "Join" ? bodyVerb(joints) : `${verb} on`} ${listed(work, arriving)}`;
}

/** What begins a named body is no more than another body that comes to it: both go by their parts. */
function hasTwin(work: Work, ids: readonly string[], units: readonly Unit[]): boolean {
  const marks = (parts: readonly string[]): string =>
    parts
      .map((id) => work.line(id).mark)
      .toSorted()
      .join();
  return units.some(({ named: own, parts }) => !own && marks(parts) === marks(ids));
}

/** Bodies that were built before; those of one kind are counted: "five drawers". */
export function builtNames(work: Work, moves: readonly Move[], units: readonly Unit[]): string {
  const [first] = moves as readonly [Move];
  const kind = bodyKind(first.arriving);
  return moves.length > 1 && first.arrivesBuilt && kind !== null
    ? `${numberWord(moves.length)} ${pluralOf(kind)}`
    : builtName(work, first, units);
}

/** A body that was built before: by its name, by the part that is most of it, or as the frame of an earlier step. */
function builtName(work: Work, move: Move, units: readonly Unit[]): string {
  const unit = units.find(({ parts }) => parts.join() === move.arriving.join());
  if (!unit) throw new Error("a body arrives that was never built");
  if (hangs(move)) return "piece";
  if (unit.named) return named(unit);
  const hung = movingWords(
    move.arriving,
    move.work.map(({ joint }) => joint),
  );
  if (hung !== null) return hung;
  const moved = kindName(work, move.arriving);
  if (moved !== null) return `${moved} from ${stepToken(unit.name)}`;
  const [main] = unit.parts.toSorted((a, b) => work.mass(b) - work.mass(a));
  const whole = unit.parts.reduce((so, id) => so + work.mass(id), 0);
  return main && work.mass(main) > MOST_OF_IT * whole
    ? `${called(work, main)} from ${stepToken(unit.name)}`
    : `${units.some((other) => other.named && named(other) === "frame") ? "assembly" : "frame"} from ${stepToken(unit.name)}`;
}

/** Share of the mass. */
const MOST_OF_IT = 0.75;

/** What was built before and stands there, where it has a name of its own: its parts are one by now. */
export function standingName({ present }: Move, units: readonly Unit[]): string | null {
  const unit = units.find(({ named: own, parts }) => own && parts.length > 1 && parts.join() === present.join());
  return unit ? theBody(named(unit)) : null;
}

/** What is done with a body that was built before. */
function bodyVerb(joints: readonly Joint[]): string {
  const kinds = new Set(joints.map(({ kind }) => kind));
  return kinds.has("hinged") ? "Hang" : kinds.has("running") ? "Put in" : "Add";
}

const verbFor = (joints: readonly Joint[]): string => {
  if (joints.some((joint) => joint.glue)) return "Glue up";
  const methods = new Set(joints.map((joint) => joint.method));
  return VERBS.find(([, own]) => own.some((method) => methods.has(method)))?.[0] ?? "Join";
};
const VERBS: readonly (readonly [string, readonly Joint["method"][]])[] = [
  ["Nail", ["nails", "brads"]],
  ["Staple", ["staples"]],
  ["Bolt", ["bolts", "bolts and cross dowels"]],
  ["Screw", ["screws", "pocket screws", "cleats", "lag screws", "slotted screws", "oversized holes with washers"]],
];

const named = (unit: Unit): string => bodyWords(unit.parts) ?? unitName(unit.name, 1);

const manyOf = ({ name, parts }: Unit, n: number): string => {
  const kind = mainOf(parts) === null ? null : bodyKind(parts);
  return kind === null ? unitName(name, n) : pluralOf(kind);
};

/** "left end", or "ends" for two of them. */
function unitName(id: string, n: number): string {
  const name = (id.split(".").at(-1) as string).replace(/-/g, " ");
  if (n === 1) return /^\d+$/.test(name) ? "unit" : name;
  // "left end" and "right end" are ends; "column drawer 1" and "column drawer 2" are column drawers.
  const plain = name.replace(/ ?\d+$/, "");
  const words = (plain || (id.split(".").at(-2) ?? "unit")).replace(/-/g, " ").split(" ");
  return plain === name ? pluralOf(words.at(-1) as string) : pluralOf(words.join(" "));
}
