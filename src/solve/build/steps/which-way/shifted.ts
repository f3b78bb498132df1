/** The turn of a body by which its tenons meet their mortises where they lie out of its middle. */
import type { Movement } from "../../../../geometry/transform.ts";
import { add, equal, less, subtract } from "../../../../units/rational.ts";
import { featureBox, isSquare } from "../../../design/shapes/feature-box.ts";
import { standsOut } from "../../../design/shapes/kinds.ts";
import { type AxisIndex, enclosing, INDICES, indexOf, triple } from "../../../design/space.ts";
import type { Box, Joint, Part } from "../../../design.ts";
import { featureTrait, staysSame } from "./traits.ts";
import { aboutMiddle, type Body } from "./turns.ts";

/**
 * The turn with the shift that brings the tenons back to their mortises, where they lie out of the middle. In the width of a part only where all that is
 * cut for the joints are tenons, which alone give its place there: else that is measured. Where it would then stand out of what it is joined to, or in its
 * thickness be flush with it no more, that is seen; in its width only where it is told what is flush.
 */
export function shifted(
  { parts, box }: Body,
  turn: Movement,
  joints: readonly Joint[],
  mates: readonly Part[],
): readonly Movement[] {
  const ids = new Set(joints.map(({ id }) => id));
  const cut = parts.flatMap(({ body, features }) =>
    features.flatMap((each) =>
      ids.has(each.for ?? "") && "size" in each && isSquare(each)
        ? [{ box: featureBox(each), trait: featureTrait(body, each), tenon: standsOut(each) }]
        : [],
    ),
  );
  const [first, ...more] = cut.map((each) => each.box);
  const [part, ...rest] = parts;
  if (!first || !part || rest.length > 0) return [];
  const about = aboutMiddle(more.reduce(enclosing, first), turn);
  const by = triple((i) => subtract(about.shift[i], turn.shift[i]));
  const wide = indexOf(part.axes.width);
  const room = mates.map(({ body }) => body).reduce(enclosing, box);
  const there: Box = {
    low: triple((i) => add(box.low[i], by[i])),
    high: triple((i) => add(box.high[i], by[i])),
  };
  const stays = INDICES.every(
    (i) =>
      !less(there.low[i], room.low[i]) &&
      !less(room.high[i], there.high[i]) &&
      (i === wide || mates.every(({ body }) => !isFlush(box, body, i) || isFlush(there, body, i))),
  );
  const thin = indexOf(part.axes.thickness);
  const isShifted = INDICES.every(
    (i) => by[i].n === 0n || i === thin || (i === wide && cut.every(({ tenon }) => tenon)),
  );
  return by.some(({ n }) => n !== 0n) &&
    isShifted &&
    stays &&
    staysSame(
      cut.map(({ trait }) => trait),
      about,
    )
    ? [about]
    : [];
}

const isFlush = (one: Box, other: Box, axis: AxisIndex): boolean =>
  equal(one.low[axis], other.low[axis]) || equal(one.high[axis], other.high[axis]);
