/** What hangs or runs goes by the case, and that by its floor or wall: where the piece is by then. */

import type { Joint } from "../../../design.ts";
import { goesThrough } from "../../checks/does-not-go-through-the-door.ts";
import { sayWeight, takesTwo } from "../../cut-list/weight.ts";
import { leftTogether, liesIn } from "../../moved-as-one.ts";
import { FIRST, listed, type Work } from "../draft.ts";

const onWall = ({ plan }: Work): boolean => plan.hardware.some(({ item }) => item.kind === "wall screw");

/** Of what stays together without doors and drawers, the heaviest; and what lies in it and does not come out. */
export const carriedOf = (work: Work): readonly string[] => {
  const mass = (ids: readonly string[]): number => ids.reduce((so, id) => so + work.mass(id), 0);
  const body = leftTogether(work.design)
    .map(({ parts }) => parts.map(({ id }) => id))
    .reduce((so, one) => (mass(one) > mass(so) ? one : so), []);
  return [...body, ...liesIn(work.design, work.plan.removable)];
};

const tied = ({ plan }: Work): boolean => plan.hardware.some(({ item }) => item.kind === "wall strap");

/** What hangs or runs, or lies loose in what is tied to the wall, and came off for finishing: it goes in last. */
export const goesInLast = (work: Work): ReadonlySet<string> =>
  new Set([...offBy(work, MOVING), ...(tied(work) ? offBy(work, ["resting"]) : [])]);

/** What hangs or runs, of what came off. */
export const movesLast = (work: Work): ReadonlySet<string> => new Set(offBy(work, MOVING));

const MOVING: readonly Joint["kind"][] = ["hinged", "running"];

/** "what hangs and runs in it"; null where nothing does. A lid hangs in nothing. */
function movingIn(work: Work): string | null {
  const [hung, run] = MOVING.map((kind) => offBy(work, [kind]).length > 0);
  if (hung && run) return "what hangs and runs in it";
  return hung ? "what is on hinges" : run ? "what runs in it" : null;
}

function offBy({ design, plan }: Work, kinds: readonly Joint["kind"][]): readonly string[] {
  const own = new Set(design.joints.flatMap(({ id, kind }) => (kinds.includes(kind) ? [id] : [])));
  return plan.removable.flatMap(({ parts, joints }) => (joints.some((id) => own.has(id)) ? parts : []));
}

/** Before what hangs and runs goes in for good: of a piece that is tied to the wall, before that is done. */
export const beforeItGoesIn = (work: Work): readonly string[] => (tied(work) ? [] : inItsRoom(work));
/** The same where it does not go through the door with its top on. */
export const beforeTheTop = (work: Work, top: readonly string[]): readonly string[] =>
  tied(work) || !staysOut(work, top) ? [] : inItsRoom(work, top);
export const beforeItIsTied = (work: Work): readonly string[] => (goesInLast(work).size > 0 ? inItsRoom(work) : []);

/** Whether what is carried together goes through a doorway only without its top. */
function staysOut({ design }: Work, top: readonly string[]): boolean {
  const own = leftTogether(design).find(({ parts }) => top.every((id) => parts.some((part) => part.id === id)));
  return top.length > 0 && own !== undefined && !goesThrough(own.sizes);
}

/** Before what hangs and runs goes in for good. What is hung on a wall is set when it hangs there. */
function inItsRoom(work: Work, top: readonly string[] = []): readonly string[] {
  if (onWall(work)) return [];
  const carried = carriedOf(work).filter((id) => !top.includes(id));
  const stays = liesIn(work.design, work.plan.removable);
  const kg = carried.reduce((so, id) => so + work.mass(id), 0);
  const two = takesTwo(kg) ? ": two people carry it" : "";
  const moving = movingIn(work);
  const [what, why] = moving
    ? [moving, `a case that stands twisted takes along ${moving}`]
    : ["what lies loose in it", "a case that is loaded while it stands twisted stays so, and rocks"];
  if (work.plan.hardware.some(({ item }) => item.kind === "caster"))
    return [`${FIRST}roll the piece to where it will stand, on a floor that is level: ${why}.`];
  const empty = stays.length > 0 ? "" : " while it is empty";
  // What falls when the piece is lifted is held before that.
  const held =
    stays.length > 0
      ? `${FIRST}before the piece is lifted tape ${listed(work, stays)} to the pins: ${stays.length === 1 ? "it does not come out, and falls" : "they do not come out, and fall"} when it leans.`
      : null;
  const carry = `carry the piece to its room${empty}, without ${top.length > 0 ? `${listed(work, top)} and ` : ""}${what}: so it weighs about ${sayWeight(kg, work.design.units)}${two}. Lay a level along it and across it, and put thin pieces of wood under it where it does not touch the floor until it stands plumb and does not rock: ${why}.`;
  return [...(held ? [held] : []), `${FIRST}${carry}`];
}

/** When it hangs: a wall that is not flat changes the gaps. */
export const whenItHangs = (work: Work): readonly string[] =>
  work.plan.removable.some(({ joints }) =>
    work.plan.hardware.some(
      ({ joint, item }) => joint !== null && joints.includes(joint) && item.kind.includes("hinge"),
    ),
  )
    ? [
        "Open and shut everything now that it hangs. Where a gap has changed, the wall has twisted the piece: put packing behind it until the gap is even, and set the hinges last.",
      ]
    : [];
