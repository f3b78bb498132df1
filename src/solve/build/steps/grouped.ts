/** Which moves of a body are told, and done, in one step. */
import { LOOSE } from "../order/links.ts";
import { inOneGo } from "./in-one-go.ts";
import { type Grouping, isGlazing, isGlued, isMitre, isPanel, type Move, moveKey, type Unit, waits } from "./moves.ts";
import { bodyKind } from "./words/bodies.ts";

/** Whether two moves may be described together: the same work, done in the same way from the same side. */
function alike(work: Grouping, a: Move, b: Move): boolean {
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
  if (glued) return a.starts || sameWay(a, b);
  if (isFront(a) && isFront(b)) return sameWay(a, b);
  return matesOf(a).join() === matesOf(b).join() && (same || nearlySame(work, a, b));
}

/** Bodies of one kind that run, hang or lie in the same parts go in one after another, from one side: five drawers. */
const inARow = (work: Grouping, a: Move, b: Move): boolean =>
  bodyKind(a.arriving) !== null &&
  bodyKind(a.arriving) === bodyKind(b.arriving) &&
  sameWay(a, b) &&
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

const isMitred = ({ work }: Move): boolean => work.every(({ joint }) => isMitre(joint) && joint.glue);

/** Fronts of drawers, each on its own box. */
const isFront = ({ work }: Move): boolean => work.every(({ joint }) => joint.setWith !== undefined);

const sameWay = (a: Move, b: Move): boolean => a.along.every((c, i) => Math.abs(c - (b.along[i] as number)) < 1e-9);

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
  return inOneGo(work, groups);
}
