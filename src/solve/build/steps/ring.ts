/** Whether parts go all round a room: a side that is open keeps nothing square, whatever is joined at its two ends. */
import { equal, toNumber } from "../../../units/rational.ts";
import { type AxisIndex, enclosing, otherAxes } from "../../design/space.ts";
import type { Joint, Part } from "../../design.ts";

/** A joint touches at some place. */
const isAt = ({ contact }: Joint, has: (centre: readonly number[]) => boolean): boolean =>
  contact.some(({ centre }) => has(centre));

/** Seen along `thin`: joints lead from quarter to quarter within each of the four halves. */
export function isRing(thin: AxisIndex, parts: readonly Part[], joints: readonly Joint[]): boolean {
  const [first, ...rest] = parts.map(({ body }) => body);
  if (!first) return false;
  const { low, high } = rest.reduce(enclosing, first);
  const [a, b] = otherAxes(thin);
  const middle = (axis: AxisIndex): number => (toNumber(low[axis]) + toNumber(high[axis])) / 2;
  return (
    [
      [a, b],
      [b, a],
    ] as const
  ).every(([across, along]) =>
    [false, true].every((isHigh) => {
      const half = joints.filter((joint) => isAt(joint, (at) => (at[across] as number) > middle(across) === isHigh));
      return leads(half, along, middle(along));
    }),
  );
}

/** Whether the joints of a half lead from one side of a middle to the other. */
function leads(half: readonly Joint[], along: AxisIndex, middle: number): boolean {
  const idsAt = (isHigh: boolean): readonly string[] =>
    half
      .filter((joint) => isAt(joint, (at) => (at[along] as number) > middle === isHigh))
      .flatMap(({ parts }) => parts);
  const [reached, ends] = [new Set(idsAt(false)), new Set(idsAt(true))];
  for (const id of reached)
    for (const { parts } of half) if (parts.includes(id)) for (const other of parts) reached.add(other);
  return [...reached].some((id) => ends.has(id));
}

/** Whether those `among` parts are what these have at all four corners, seen along `thin`. */
export function haveCorners(thin: AxisIndex, parts: readonly Part[], among: ReadonlySet<string>): boolean {
  const bounds = parts.map(({ body }) => body).reduce(enclosing);
  const [a, b] = otherAxes(thin);
  const reaches = ({ body }: Part, axis: AxisIndex, end: "low" | "high"): boolean =>
    equal(body[end][axis], bounds[end][axis]);
  const ends = ["low", "high"] as const;
  return ends.every((endA) =>
    ends.every((endB) => parts.some((part) => among.has(part.id) && reaches(part, a, endA) && reaches(part, b, endB))),
  );
}
