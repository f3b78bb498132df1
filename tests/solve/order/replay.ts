/**
 * Builds a plan up again and says what cannot be done. Shares no judgement with the program: parts are boxes here, travel along an
 * axis is a longer box, and the room of a tool is a cloud of points.
 */
import type { Assembly, Drive, Plan, Union } from "../../../src/solve/build/order/index.ts";
import type { Design, Joint, Part } from "../../../src/solve/design.ts";
import { UNITS_PER_MM } from "../../../src/units/index.ts";
import { pointsOf } from "../reach/points.ts";

type Box = { readonly low: readonly number[]; readonly high: readonly number[] };

/** mm. Only for parts whose pieces are boxes. */
export const boxesOf = (part: Part): readonly Box[] =>
  part.solid.pieces.map(({ low, high }) => ({
    low: low.map((x) => x / UNITS_PER_MM),
    high: high.map((x) => x / UNITS_PER_MM),
  }));

const FAR = 1e5;
const overlap = (a: Box, b: Box): boolean =>
  [0, 1, 2].every((i) => Math.min(a.high[i] ?? 0, b.high[i] ?? 0) - Math.max(a.low[i] ?? 0, b.low[i] ?? 0) > 0.01);

/** The box and all the places that it comes from when it arrives along an axis. */
const arriving = ({ low, high }: Box, along: readonly number[]): Box => ({
  low: low.map((x, i) => x - ((along[i] ?? 0) > 0.5 ? FAR : 0)),
  high: high.map((x, i) => x + ((along[i] ?? 0) < -0.5 ? FAR : 0)),
});

/** Whether a set of parts hangs together by joints that have all their parts in it. */
export function hangs(ids: readonly string[], joints: readonly Joint[]): boolean {
  const inside = joints.filter(({ parts }) => parts.every((id) => ids.includes(id)));
  const reached = new Set(ids.slice(0, 1));
  for (const id of reached)
    for (const { parts } of inside) if (parts.includes(id)) for (const other of parts) reached.add(other);
  return reached.size === ids.length;
}

/** Sentences; none for a sound plan. */
export function faults(design: Design, plan: Plan): readonly string[] {
  const found: string[] = [];
  const part = (id: string) => design.parts.find((p) => p.id === id) as Part;
  const driven: string[] = [];

  const drive = ({ fastener, tool, axis }: Drive, body: readonly string[]): void => {
    driven.push(fastener.id);
    const joins = [...fastener.through, fastener.into];
    if (!joins.every((id) => body.includes(id))) found.push(`${fastener.id} is driven before its parts are there`);
    const others = body.filter((id) => !joins.includes(id)).flatMap((id) => boxesOf(part(id)));
    for (const p of pointsOf(fastener, tool, axis ?? fastener.direction))
      if (others.some(({ low, high }) => p.every((x, i) => x > (low[i] ?? 0) + 0.1 && x < (high[i] ?? 0) - 0.1)))
        return void found.push(`the ${tool} tool has no room behind ${fastener.id}`);
  };

  const union = ({ staying, moving, along, parts, work }: Union): void => {
    const both = [...staying.parts, ...moving.parts];
    if (both.toSorted().join() !== parts.toSorted().join()) found.push(`${parts} is not the sum of its halves`);
    if (!hangs(staying.parts, design.joints) || !hangs(moving.parts, design.joints))
      found.push(`half of ${parts} is loose`);
    for (const a of moving.parts)
      for (const b of staying.parts)
        if (boxesOf(part(a)).some((p) => boxesOf(part(b)).some((q) => overlap(arriving(p, along), q))))
          found.push(`${a} passes through ${b}`);
    const closing = design.joints.filter(
      ({ parts: ends }) =>
        ends.some((id) => moving.parts.includes(id)) && ends.some((id) => staying.parts.includes(id)),
    );
    if (closing.map(({ id }) => id).join() !== work.map(({ joint }) => joint.id).join())
      found.push(`${parts} closes ${work.map(({ joint }) => joint.id)}`);
    for (const { drives } of work) for (const one of drives) drive(one, parts);
  };

  const visit = (assembly: Assembly): void => {
    if (assembly.kind === "part") return;
    visit(assembly.staying);
    visit(assembly.moving);
    union(assembly);
  };
  visit(plan.root);
  if (
    plan.root.parts.toSorted().join() !==
    design.parts
      .map(({ id }) => id)
      .toSorted()
      .join()
  )
    found.push("parts are missing");
  const wanted = plan.fasteners.filter(({ travelsWith }) => travelsWith === null).map(({ id }) => id);
  if (driven.toSorted().join() !== wanted.toSorted().join()) found.push(`driven are ${driven}, wanted ${wanted}`);
  for (const { id, arrangements } of design.joints) {
    const own = plan.chosen.get(id);
    if (arrangements.length > 0 ? !own || !arrangements.includes(own) : own)
      found.push(`${id} has no arrangement of its own`);
  }
  return found;
}

/** "(a < b)": b goes to a. */
export const spelled = (assembly: Assembly): string =>
  assembly.kind === "part" ? assembly.parts[0] : `(${spelled(assembly.staying)} < ${spelled(assembly.moving)})`;
