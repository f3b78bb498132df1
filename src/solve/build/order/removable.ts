/** What comes off the finished piece again: doors, drawers and loose shelves, and panels that are screwed on free to move, for finishing. */

import { dot } from "../../../geometry/vec.ts";
import type { Method } from "../../../parse/draft.ts";
import { makingOf } from "../../design/making/plain.ts";
import type { Design, Direction, Part } from "../../design.ts";
import { type Reach, toolsFor } from "../reach/reach.ts";
import type { Blocking } from "./blocking.ts";
import { comesOff, components, fastBodies, LOOSE, linksOf } from "./links.ts";
import { reversed } from "./pegs.ts";
import type { Assembly, Drive, Removable, Union } from "./plan.ts";
import type { Piece } from "./splits.ts";

/** In the order in which they come off: what went on last first, others when they are free. What nothing frees stays on. */
export function removables(
  design: Design,
  root: Assembly,
  blocking: Blocking,
  tiltWithout: (pulled: ReadonlySet<string>) => Piece["tilt"],
  judge: Pick<Reach, "toolFor">,
): readonly Removable[] {
  const tilt = tiltWithout(new Set());
  const pinned = new Set(design.joints.flatMap(({ id, method }) => (method === "shelf pins" ? [id] : [])));
  const unions = unionsOf(root);
  let staying = design.parts.map((_, i) => i);
  let waiting = looseBodies(design, unions).toReversed();
  const off: Removable[] = [];
  // The pins of what is off already are not put in again before it is.
  let pulled: ReadonlySet<string> = new Set();
  for (let free = true; free; ) {
    free = false;
    for (const body of waiting) {
      const rest = staying.filter((i) => !body.places.includes(i));
      const straight = wayIn(body, rest, blocking) ?? (pulled.size === 0 ? tilted(body, rest, tilt) : null);
      const own = new Set([...pulled, ...body.joints]);
      const held =
        straight ?? (body.joints.every((id) => pinned.has(id)) ? tilted(body, rest, tiltWithout(own)) : null);
      const drives =
        held &&
        drivenAgain(
          body,
          staying.flatMap((i) => design.parts[i] ?? []),
          judge,
        );
      if (!held || !drives) continue;
      if (!straight) pulled = own;
      const way = straight ? held : { ...held, pulled: body.joints };
      off.push({ ...way, parts: body.parts, to: body.to, joints: body.joints, drives });
      waiting = waiting.filter((other) => other !== body);
      [staying, free] = [rest, true];
    }
  }
  return off;
}

/** How its fasteners are taken out and driven among all that is there by then; null where no tool gets at one. */
function drivenAgain(
  { drives }: Pick<Body, "drives">,
  there: readonly Part[],
  { toolFor }: Pick<Reach, "toolFor">,
): readonly Drive[] | null {
  const again = drives.map((drive): Drive | null => {
    const reached = toolsFor(drive.fastener.kind).length > 0 ? toolFor(drive.fastener, there) : drive;
    return reached && { ...drive, ...reached };
  });
  return again.every((each) => each !== null) ? again : null;
}

interface Body extends Removable {
  readonly places: readonly number[];
  /** Nothing but its weight holds it. */
  readonly loose: boolean;
}

const unionsOf = (root: Assembly): readonly Union[] =>
  root.kind === "part" ? [] : [...unionsOf(root.staying), ...unionsOf(root.moving), root];

/** In the order in which they went on; `along` is how they did. */
function looseBodies(design: Design, unions: readonly Union[]): readonly Body[] {
  const { parts, joints } = design;
  const panels = panelsThatComeOff(design);
  return bodiesOf(design)
    .flatMap((places): readonly { readonly body: Body; readonly step: number }[] => {
      const ids = places.flatMap((place) => parts[place]?.id ?? []);
      const own = joints.filter(
        (joint) =>
          (comesOff(joint) && ids.includes(joint.parts[0]) && !ids.includes(joint.parts[1])) ||
          (panels.has(ids[0] ?? "") && joint.parts.filter((id) => ids.includes(id)).length === 1),
      );
      const step = unions.findLastIndex(({ work }) => work.some(({ joint }) => own.includes(joint)));
      const union = unions[step];
      if (!union) return [];
      const comes = union.moving.parts.some((id) => ids.includes(id));
      const crossing = joints.filter((joint) => joint.parts.filter((id) => ids.includes(id)).length === 1);
      const body: Body = {
        ...{ parts: ids, places, loose: crossing.every(({ kind }) => kind === "resting") },
        ...{ along: comes ? union.along : reversed(union.along) },
        to: [...new Set(own.map(({ parts: [one, mate] }) => (ids.includes(mate) ? one : mate)))],
        joints: crossing.map(({ id }) => id),
        drives: unions.flatMap(({ work }) =>
          work.flatMap((each) => (crossing.includes(each.joint) ? each.drives : [])),
        ),
      };
      return [{ body, step }];
    })
    .toSorted((a, b) => a.step - b.step)
    .map(({ body }) => body);
}

/** What holds fast together; a panel that comes off by itself is a body of its own, with what is fixed to it. */
function bodiesOf(design: Design): readonly (readonly number[])[] {
  const panels = panelsThatComeOff(design);
  const apart = (place: number): boolean => panels.has(design.parts[place]?.id ?? "");
  return fastBodies(design).flatMap((body) => [
    body.filter((place) => !apart(place)),
    ...panelBodies(design).filter((places) => places.every((place) => body.includes(place) && apart(place))),
  ]);
}

/** What lets a top slide on what it is fastened to: it comes off without harm. */
const FREES: ReadonlySet<Method> = new Set<Method>([
  ...(["slotted screws", "oversized holes with washers", "clips", "figure-eight fasteners"] as const),
  ...(["buttons in a groove", "buttons in mortises"] as const),
]);

/** Bodies that hold together without those. */
const panelBodies = ({ parts, joints }: Pick<Design, "parts" | "joints">): readonly (readonly number[])[] =>
  components(
    parts.map((_, i) => i),
    linksOf({ parts, joints: joints.filter(({ kind, method }) => !LOOSE.includes(kind) && !FREES.has(method)) }),
  );

/**
 * Glued-up panels that slide on what they are fastened to, and what is fixed to them: they want as many coats on the face that lies against the rest. Not
 * those that are finished before they go on.
 */
export function panelsThatComeOff({
  parts,
  joints,
  finishes = [],
}: Pick<Design, "parts" | "joints" | "finishes">): ReadonlySet<string> {
  const before = new Set(finishes.flatMap(({ alike = [] }) => alike));
  const bodies = panelBodies({ parts, joints }).map((places) => places.flatMap((place) => parts[place] ?? []));
  return new Set(
    bodies.flatMap((body) => {
      const ids = new Set(body.map(({ id }) => id));
      const crossing = joints.filter((joint) => joint.parts.filter((id) => ids.has(id)).length === 1);
      const slides = crossing.length > 0 && crossing.every(({ method, glue }) => FREES.has(method) && !glue);
      // What it lies on is not a panel; several with what is between them are a carcase.
      const panel = body.filter((part) => makingOf(part).boards > 1).length === 1 && 2 * body.length < parts.length;
      return slides && panel && !body.some(({ id }) => before.has(id)) ? [...ids] : [];
    }),
  );
}

/** The way that it came, or else any. */
function wayIn({ places, along }: Body, rest: readonly number[], blocking: Blocking): Way | null {
  const free = blocking.directions.flatMap((way, d) =>
    places.every((a) => rest.every((b) => !blocking.blocked(a, b, d))) ? [reversed(way)] : [],
  );
  const nearness = (way: Direction): number => dot(way, along);
  const nearest = free.toSorted((a, b) => nearness(b) - nearness(a))[0];
  return nearest ? { along: nearest } : null;
}

type Way = Pick<Removable, "along" | "legs">;

/** Only what lies loose is tilted: what hangs or runs is fixed to its hardware. */
function tilted({ places, loose }: Body, rest: readonly number[], tilt: Piece["tilt"]): Way | null {
  const legs = loose ? tilt(places, rest) : null;
  const [first] = legs ?? [];
  return legs && first && "along" in first ? { along: first.along, legs } : null;
}
