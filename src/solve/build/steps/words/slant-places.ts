/** Where what leans touches what it is joined to: no side of it runs along a side of that. */
import type { Length } from "../../../../units/length.ts";
import { equal, less, max, min, rational, subtract } from "../../../../units/rational.ts";
import { type AxisIndex, faceOf, INDICES, indexOf, thirdAxis } from "../../../design/space.ts";
import type { Hole, Part } from "../../../design.ts";
import type { Work } from "../draft.ts";

/** "touches it from 138 mm to 237 mm from its left end, 9 mm from its back face"; null where it has no end that lies on that side. `bored`: a hole into that side. */
export function touchWords(work: Work, leaning: Part, on: Part, bored: Hole): string | null {
  const side = INDICES.find((i) => bored.direction[i] !== 0);
  const run = indexOf(on.axes.length);
  if (side === undefined || side === run || on.turned) return null;
  const face = (bored.direction[side] > 0 ? on.body.low : on.body.high)[side];
  const corners = leaning.solid.pieces
    .flatMap(({ vertices }) => vertices.map(({ X, Y, Z, W }) => [X, Y, Z].map((top) => rational(top, W))))
    .filter((corner) => equal(corner[side] as Length, face));
  if (corners.length < 3) return null;
  const reach = (i: AxisIndex): readonly [Length, Length] => {
    const all = corners.map((corner) => corner[i] as Length);
    return [all.reduce(min), all.reduce(max)];
  };
  const along = fromNearer(on, run, reach(run));
  const beside = fromNearer(on, thirdAxis(side, run), reach(thirdAxis(side, run)));
  const [near, far] = along.by;
  const deep =
    beside.by[0].n === 0n ? `flush with its ${beside.face}` : `${work.place(beside.by[0])} from its ${beside.face}`;
  return `touches it from ${work.place(near)} to ${work.place(far)} from its ${along.face} end, ${deep}`;
}

/** Both distances from the end or face that is nearer, the smaller first. */
function fromNearer({ body }: Part, i: AxisIndex, [low, high]: readonly [Length, Length]) {
  const [below, above] = [subtract(low, body.low[i]), subtract(body.high[i], high)];
  return less(above, below)
    ? { face: faceOf(i, true), by: [above, subtract(body.high[i], low)] as const }
    : { face: faceOf(i, false), by: [below, subtract(high, body.low[i])] as const };
}
