import type { BuiltMotion } from "../../build.ts";
import type { Design, Hardware, Joint } from "../../design.ts";
import type { Plan } from "../order/index.ts";
import { fastIds } from "../order/links.ts";
import { bodiesOf } from "./bodies.ts";
import { freed } from "./freed.ts";

const MOVES: readonly Joint["kind"][] = ["hinged", "running"];

/** What opens: each body that hangs or runs on the rest, with its hardware. Both slides of a drawer, and all hinges of a door, are one motion. */
export function motionsOf(design: Design, { chosen, hardware, fasteners }: Plan): readonly BuiltMotion[] {
  const { parts, joints } = design;
  const bodies = fastIds(design);
  const motions = bodies.flatMap((body): readonly BuiltMotion[] => {
    const own = joints.filter(({ kind, parts: [joined] }) => MOVES.includes(kind) && body.includes(joined));
    const moving = own.flatMap(({ id }) => chosen.get(id)?.motion ?? []);
    const [first] = moving;
    if (!first) return [];
    // What lies in a drawer and was not fixed to it goes with it.
    const moves = [...body, ...carried(hardware, body)];
    return [
      {
        ...{
          name: nameOf(body, own[0]?.parts[0] ?? "", design),
          kind: first.kind,
          joints: own.map(({ id }) => id),
          moves,
        },
        ...{ range: first.range, poses: first.poses, needs: [] },
      },
    ];
  });
  if (motions.length === 0) return motions;
  return freed(motions, bodiesOf(parts, hardware, fasteners));
}

const carried = (hardware: readonly Hardware[], body: readonly string[]): readonly string[] =>
  hardware.flatMap(({ id, carriedBy }) => (body.includes(carriedBy) ? [id] : []));

/** The innermost group that holds the body and nothing else, or the part that hangs or runs. */
function nameOf(body: readonly string[], moved: string, { groups, parts }: Design): string {
  const own = groups.filter((group) => {
    const inside = parts.filter(({ id }) => id.startsWith(`${group}.`));
    return inside.length === body.length && inside.every(({ id }) => body.includes(id));
  });
  return own.reduce((best, group) => (group.length > best.length ? group : best), own[0] ?? moved);
}
