/** What comes off the finished piece again: doors, drawers and loose shelves, for finishing. */
import { dot } from "../../../geometry/vec.ts";
import type { Design, Direction } from "../../design.ts";
import type { Blocking } from "./blocking.ts";
import { comesOff, fastBodies } from "./links.ts";
import { reversed } from "./pegs.ts";
import type { Assembly, Removable, Union } from "./plan.ts";
import type { Piece } from "./splits.ts";

/** In the order in which they come off: what went on last first, others when they are free. What nothing frees stays on. */
export function removables(
  design: Design,
  root: Assembly,
  blocking: Blocking,
  tilt: Piece["tilt"],
): readonly Removable[] {
  const unions = unionsOf(root);
  let staying = design.parts.map((_, i) => i);
  let waiting = looseBodies(design, unions).toReversed();
  const off: Removable[] = [];
  for (let free = true; free; ) {
    free = false;
    for (const body of waiting) {
      const rest = staying.filter((i) => !body.places.includes(i));
      const way = wayIn(body, rest, blocking) ?? tilted(body, rest, tilt);
      if (!way) continue;
      off.push({ ...way, parts: body.parts, to: body.to, joints: body.joints, drives: body.drives });
      waiting = waiting.filter((other) => other !== body);
      [staying, free] = [rest, true];
    }
  }
  return off;
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
  return fastBodies(design)
    .flatMap((places): readonly { readonly body: Body; readonly step: number }[] => {
      const ids = places.flatMap((place) => parts[place]?.id ?? []);
      const own = joints.filter(
        (joint) => comesOff(joint) && ids.includes(joint.parts[0]) && !ids.includes(joint.parts[1]),
      );
      const step = unions.findLastIndex(({ work }) => work.some(({ joint }) => own.includes(joint)));
      const union = unions[step];
      if (!union) return [];
      const comes = union.moving.parts.some((id) => ids.includes(id));
      const crossing = joints.filter((joint) => joint.parts.filter((id) => ids.includes(id)).length === 1);
      const body: Body = {
        ...{ parts: ids, places, loose: crossing.every(({ kind }) => kind === "resting") },
        ...{ along: comes ? union.along : reversed(union.along) },
        to: [...new Set(own.map(({ parts: [, mate] }) => mate))],
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
