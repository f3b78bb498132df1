/** What could come the wrong way round in a step, and all its joints would close. */

import { once } from "../../../../geometry/index.ts";
import type { Movement } from "../../../../geometry/transform.ts";
import { makingOf } from "../../../design/making/plain.ts";
import { indexOf, unit } from "../../../design/space.ts";
import type { Joint, Part } from "../../../design.ts";
import type { Work } from "../draft.ts";
import type { Move } from "../moves.ts";
import { asWritten } from "../words/marked-places.ts";
import { closes } from "./closes.ts";
import { movedTrait, outlineOf, sameTraits, staysSame, type Trait, traitsOf } from "./traits.ts";
import { type Body, backOf, bodyOf, keeps, turnsOf } from "./turns.ts";

export interface Rigid extends Body {
  /** The turns that are wrong, and look right. */
  readonly wrong: readonly Movement[];
}

/** Hung, run in, set into a rabbet for glass: what these are told by shows which way. */
const isOther = ({ kind, method }: Joint): boolean =>
  kind === "hinged" || kind === "running" || method === "glazed" || method === "hangs on";

/** What is there when a step begins, and each body that comes. */
export function rigidIn(work: Work, moves: readonly Move[]): readonly Rigid[] {
  const [first] = moves;
  if (!first) return [];
  const joints = moves.flatMap((move) => move.work.map(({ joint }) => joint));
  const bodies = [first.present, ...moves.map(({ arriving }) => arriving)].map((ids) => ids.map(work.part));
  const all = bodies.flat();
  const fresh = [...(first.starts ? first.present : []), ...moves.flatMap(({ arriving }) => arriving)];
  const written = new Set(first.arrivesBuilt ? [] : asWritten(work, fresh, joints));
  return bodies.map((parts) => {
    const body = bodyOf(parts as [Part, ...Part[]]);
    const ids = new Set(parts.map(({ id }) => id));
    const own = joints.filter(({ parts: [a, b] }) => ids.has(a) !== ids.has(b));
    if (parts.some(({ turned }) => turned) || own.some(isOther)) return { ...body, wrong: [] };
    const others = all.filter(({ id }) => !ids.has(id));
    const wrong = turnsOf(body).filter(
      (turn) =>
        !parts.some((part) => written.has(part.id) && !keeps([turn], unit(indexOf(part.axes.length), 1))) &&
        looksSame(work, parts, turn) &&
        !isItself(work, parts, turn) &&
        !others.every((part) => isOfPiece(work, part, [backOf(turn, body)])) &&
        closes(work, body, turn, others, joints),
    );
    return { ...body, wrong };
  });
}

const outlined = (part: Part, mark: string, eased: boolean): readonly Trait[] =>
  outlineOf(part, eased).map((each) => ({ ...each, label: `${each.label} ${mark}` }));

/**
 * Whether the outlines of parts are the same after a turn; those of several by the marks that are written on them, and by their chamfers, which were told
 * when they came together.
 */
function looksSame(work: Work, parts: readonly Part[], turn: Movement): boolean {
  const all = parts.flatMap((part) => outlined(part, work.line(part.id).mark, parts.length > 1));
  return staysSame(all, turn);
}

const traitsIn = once((work: Work) => once((part: Part) => traitsOf(part, work.plan.holes)));

function isItself(work: Work, parts: readonly Part[], turn: Movement): boolean {
  const all = parts.flatMap((part) => traitsIn(work)(part));
  return staysSame(all, turn);
}

/** Whether a part, after some turns, is where one of the same mark belongs: itself, where each was cut on what it comes to. */
export function isOfPiece(work: Work, part: Part, turns: readonly Movement[]): boolean {
  const own = traitsIn(work)(part).map((each) => turns.reduce(movedTrait, each));
  const alike = makingOf(part).between?.some(({ flush }) => flush) ? [part.id] : work.line(part.id).parts;
  return alike.some((id) => sameTraits(own, traitsIn(work)(work.part(id))));
}
