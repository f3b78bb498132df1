import { isCutLater } from "../../design/making/plain.ts";
import type { Direction } from "../../design.ts";
import { hangsOn, LOOSE } from "../order/links.ts";
import type { Assembly, JointWork, Plan, Union } from "../order/plan.ts";
import type { Work } from "./draft.ts";
import { type Entering, enteringOf } from "./openings.ts";
import { ownKey } from "./wishes/own-key.ts";
import { bodyKind } from "./words/bodies.ts";

/** One body arriving at another: a union of the plan, in the order of work. */
export interface Move {
  readonly union: Union;
  /** The body that stays, and what comes to it. */
  readonly present: readonly string[];
  readonly arriving: readonly string[];
  /** The first part of a body is laid down in the move that gives it its second. */
  readonly starts: boolean;
  /** `arriving` was put together before. */
  readonly arrivesBuilt: boolean;
  readonly along: Direction;
  readonly work: readonly JointWork[];
}

/** What has to be known for that. */
export type Grouping = Pick<Work, "design" | "motions" | "part" | "line">;

/** A body and the moves that make it, the bodies that it is made of first. */
export interface Unit {
  readonly name: string;
  /** A group of the source: it has a name that means something. */
  readonly named: boolean;
  readonly parts: readonly string[];
  readonly moves: readonly Move[];
}

/** The plan's tree as units in the order of work: a body that arrives as a whole is a unit of its own. */
export function unitsOf(plan: Plan): readonly Unit[] {
  const units: Unit[] = [];
  const visit = (assembly: Assembly, name: string): void => {
    if (assembly.kind === "part") return;
    // The chain of unions that grow one body, innermost first.
    const chain: Union[] = [];
    let body: Assembly = assembly;
    while (body.kind === "union" && (body === assembly || body.group === null)) {
      chain.unshift(body);
      body = body.staying;
    }
    visit(body, nameOf(body));
    const moves = chain.map((union): Move => {
      visit(union.moving, nameOf(union.moving));
      return moveOf(union);
    });
    units.push({ name, named: assembly.group === name, parts: assembly.parts, moves });
  };
  const { root } = plan;
  if (root.kind === "union" && hangs(root)) {
    // What is hung on the wall is the piece.
    visit(root.moving, "piece");
    return [...units, { name: ON_THE_WALL, named: false, parts: root.parts, moves: [moveOf(root)] }];
  }
  visit(root, "piece");
  return units;
}

const moveOf = (union: Union): Move => ({
  union,
  present: union.staying.parts,
  arriving: union.moving.parts,
  starts: union.staying.kind === "part",
  arrivesBuilt: union.moving.kind === "union",
  along: union.along,
  work: union.work,
});

/** Driven by blows. */
export const isStruck = ({ tool }: JointWork["drives"][number]): boolean => tool === "hammer" || tool === "stapler";

/** Ids of all that is together after some moves. */
export const togetherAfter = (moves: readonly Move[]): readonly string[] => {
  const last = moves.at(-1);
  return last ? [...last.present, ...last.arriving] : [];
};

/** Whether it is hung on a cleat on the wall in this move. */
export const hangs = ({ work }: Pick<Union, "work">): boolean => work.some(({ joint }) => hangsOn(joint));
export const ON_THE_WALL = "on the wall";

const nameOf = (assembly: Assembly): string =>
  assembly.kind === "union" && assembly.group !== null ? assembly.group : (assembly.parts[0] as string);

/** By the wishes for steps of their own that a move falls under: with what it brings, and what is laid down for it. */
export const moveKey = (work: Grouping, { starts, present, arriving }: Move): string =>
  ownKey(work, { verb: "join" }, starts ? [...present, ...arriving] : arriving);

/** Whether two moves may be described together: the same work, done in the same way from the same side. */
export function alike(work: Grouping, a: Move, b: Move): boolean {
  if (moveKey(work, a) !== moveKey(work, b)) return false;
  if (a.arrivesBuilt && b.arrivesBuilt) return inARow(work, a, b);
  if (a.arrivesBuilt || b.arrivesBuilt) return false;
  if (isGlazing(a) && isGlazing(b)) return sameWay(a, b);
  // What is cut to the piece waits until the others stand.
  if (waits(work, a) !== waits(work, b)) return false;
  // A loose panel goes into its frame while that is glued up, not into one that has set.
  if (isPanel(a) || isPanel(b)) return true;
  if (methodsOf(a) !== methodsOf(b)) return false;
  const same = a.arriving.every((id) => work.line(id).mark === work.line(b.arriving[0] as string).mark);
  const glued = isGlued(a);
  // The last mitre of a frame takes what the others leave: all of them close at once.
  if (isMitred(a) && isMitred(b)) return true;
  // One after another in a glue-up, or the same part again: a row of slats.
  if (glued) return a.starts || sameWay(a, b) || closesBoth(a, b);
  if (isFront(a) && isFront(b)) return sameWay(a, b);
  return matesOf(a).join() === matesOf(b).join() && (same || nearlySame(work, a, b));
}

/** Bodies of one kind that run, hang or lie in the same parts go in one after another: five drawers. */
const inARow = (work: Grouping, a: Move, b: Move): boolean =>
  bodyKind(a.arriving) !== null &&
  bodyKind(a.arriving) === bodyKind(b.arriving) &&
  [...a.work, ...b.work].every(({ joint }) => LOOSE.includes(joint.kind)) &&
  methodsOf(a) === methodsOf(b) &&
  marksOf(work, matesOf(a)) === marksOf(work, matesOf(b));

const marksOf = (work: Grouping, ids: readonly string[]): string =>
  [...new Set(ids.map((id) => work.line(id).mark))].sort().join();

const methodsOf = (move: Move): string =>
  [...new Set(move.work.map(({ joint }) => `${joint.method} ${joint.glue}`))]
    .filter((method) => method !== "groove false")
    .sort()
    .join();

const isMitred = ({ work }: Move): boolean => work.every(({ joint }) => joint.method === "mitre" && joint.glue);

/** Fronts of drawers, each on its own box. */
const isFront = ({ work }: Move): boolean => work.every(({ joint }) => joint.setWith !== undefined);

/** Whether what arrives is measured where it goes. A door or a drawer is measured for as a whole, before anything of it is put together. */
function waits(work: Grouping, { present, arriving }: Move): boolean {
  const ids = [...present, ...arriving];
  const isPartOf = ({ moves }: Entering): boolean => ids.every((id) => moves.includes(id));
  return arriving.some((id) => isCutLater(work.part(id))) && !enteringOf(work).some(isPartOf);
}

const isGlued = ({ work }: Move): boolean => work.some(({ joint }) => joint.glue);

export const isPanel = ({ work }: Move): boolean => work.every(({ joint }) => joint.method === "groove" && !joint.glue);

/** A pane, which nothing holds until its beads are on, and the beads, each on its side of the frame. */
export const isGlazing = ({ work }: Pick<Move, "work">): boolean => work.some(({ joint }) => joint.method === "glazed");

const sameWay = (a: Move, b: Move): boolean => a.along.every((c, i) => Math.abs(c - (b.along[i] as number)) < 1e-9);

/** The two ends of the same few parts are closed at once, from either side: clamps across both press on no bare tenon. */
const closesBoth = (a: Move, b: Move): boolean =>
  a.work.length + b.work.length <= MOST &&
  a.along.every((c, i) => Math.abs(c + (b.along[i] as number)) < 1e-9) &&
  matesOf(a).join() === matesOf(b).join();

/** Parts of other marks that go on in the same way: a longer slat between two short ones. */
const nearlySame = (work: Grouping, a: Move, b: Move): boolean =>
  sameWay(a, b) && work.part(a.arriving[0] as string).stock === work.part(b.arriving[0] as string).stock;

/** What the arriving part is joined to. */
const matesOf = ({ work, arriving }: Move): readonly string[] =>
  [...new Set(work.flatMap(({ joint }) => joint.parts.filter((id) => !arriving.includes(id))))].sort();

/** No step describes more parts than a reader keeps in mind. */
const MOST = 4;

/** The moves of a unit in groups, each of which becomes a step. */
export function grouped(work: Grouping, { named, moves }: Unit): readonly (readonly Move[])[] {
  // A frame that has a name of its own is glued up in one go, while the glue is open.
  const oneGlueUp =
    moves.length <= MOST &&
    new Set(moves.map((move) => moveKey(work, move))).size === 1 &&
    !moves.some((move) => waits(work, move)) &&
    moves.every((move) => isPanel(move) || (isGlued(move) && !move.arrivesBuilt));
  if (named && oneGlueUp) return [moves];
  const groups: Move[][] = [];
  for (const move of moves) {
    const open = groups.at(-1);
    const last = open?.at(-1);
    const repeats = open?.every(
      (m) =>
        move.arrivesBuilt ||
        isFront(move) ||
        isGlazing(move) ||
        work.line(m.arriving[0] as string).mark === work.line(move.arriving[0] as string).mark,
    );
    if (open && last && alike(work, last, move) && (open.length < MOST || repeats)) open.push(move);
    else groups.push([move]);
  }
  // One left over makes no step of its own.
  const [full = [], [left, ...more] = []] = groups.slice(-2);
  if (left && more.length === 0 && full.length === MOST && alike(work, full.at(-1) as Move, left)) {
    full.push(left);
    groups.pop();
  }
  return groups;
}
