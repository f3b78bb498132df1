import { solidOf } from "../../../geometry/index.ts";
import type { Units } from "../../../parse/draft.ts";
import { inches, type Length } from "../../../units/length.ts";
import { add, compare, divide, floor, half, max, min, multiply, rational, subtract } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Arrangement, Hardware, Hole, Item } from "../../design.ts";
import { ON_A_RULE } from "../boring/marks.ts";
import { measureOf, numberOf } from "../hardware/items.ts";
import { boxSolid, drum } from "../hardware/solids.ts";
import { fitOf, leafBox, leafHinge, letIn, pinOf, type Side, stretches, wayTo } from "../hinges/leaves.ts";
import { endOf, type Lie, lieOf, onward, turned, type Way } from "../hinges/lie.ts";
import { bore, screwsOf } from "../hinges/screws.ts";
import { spotsOf } from "../hinges/spots.ts";
import { swing } from "../hinges/swing.ts";
import { type AxisIndex, triple } from "../space.ts";
import type { Maker, Member } from "./site.ts";

/** The barrel is drawn as an eight-sided prism inside it, since wood turns right past it: cosine of an eighth of a half turn, a little less. */
const INSIDE = rational(923, 1000);

/** Butt hinges, or one continuous hinge. What is mortised stays where its mortises are; others can be moved a little along the edge. */
export const leafHinges: Maker = ({ joint, draft, head: door, hold }, shift, context) => {
  const item = leafHinge(draft, context.items);
  const lie = item && lieOf(draft, door, hold, context.reaches);
  if (!item || !lie || shift.turned) return [];
  const moves = item.kind === "butt hinge" && letIn(item, lie).n === 0n;
  if (shift.by.n !== 0n && !moves) return [];
  const spots = spotsOf(draft, door.id, lie, context, shift.by);
  if (!spots || spots.length === 0) return [];
  const hardware: Hardware[] = [];
  const holes: Hole[] = [];
  for (const [i, ends] of stretches(item, lie, spots).entries()) {
    const id = `${joint}.h${i + 1}`;
    const screws = screwPlaces(item, ends, context.units);
    const leaf = (side: Side) => boxSolid(leafBox(item, lie, side, ends));
    const at = pinOf(item, lie, half(add(ends[0], ends[1])));
    const barrel = drum(
      pinOf(item, lie, ends[0]),
      lie.along,
      subtract(ends[1], ends[0]),
      multiply(half(measureOf(item, "barrel")), INSIDE),
    );
    hardware.push(
      {
        ...{ id, item, joint, carriedBy: hold.id, at, with: screwsOf(item, 2 * screws.length, context) },
        solid: solidOf([...leaf("hold").pieces, ...barrel.pieces]),
      },
      { id: `${id}.leaf`, item, joint, carriedBy: door.id, at, solid: leaf("door"), halfOf: id },
    );
    for (const place of screws) {
      holes.push(pilot(item, lie, "hold", hold, place, id), pilot(item, lie, "door", door, place, `${id}.leaf`));
    }
  }
  const pin = pinOf(item, lie, lie.door.low[lie.along]);
  return [{ fasteners: [], holes, hardware, motion: swing(lie, pin, numberOf(item, "opens")) }] satisfies Arrangement[];
};

/**
 * Along the pin. Two in a hinge under 2 in (50 mm), else three, by spaces that a rule has marks for, so that they are told alike everywhere; of a
 * continuous hinge as far apart as it says. Common practice, no source.
 */
function screwPlaces(item: Item, [from, to]: readonly [Length, Length], units: Units): readonly Length[] {
  const long = subtract(to, from);
  if (item.kind === "continuous hinge") {
    const count = Math.max(2, Number(floor(divide(long, measureOf(item, "screws apart")))));
    return Array.from({ length: count }, (_, i) => add(from, multiply(long, rational(2 * i + 1, 2 * count))));
  }
  const count = compare(long, inches(19, 10)) < 0 ? 2 : 3;
  const space = roundTo(divide(long, rational(count)), ON_A_RULE[units]);
  const middle = half(add(from, to));
  return Array.from({ length: count }, (_, i) => add(middle, multiply(space, rational(2 * i + 1 - count, 2))));
}

function pilot(item: Item, lie: Lie, side: Side, part: Member, place: Length, id: string): Hole {
  const { out, along } = lie;
  const face = fitOf(item) === "on the face";
  const leaf = leafBox(item, lie, side, [place, place]);
  // Of a leaf that lies on a slab and its strips only what lies on the slab is screwed.
  // Both leaves have their holes as far from the pin, so of a door that is set back what lies on both is screwed.
  const wood = lie.inset ? [leaf, part.body, lie.door] : [leaf, part.body];
  const onPart = (i: AxisIndex) =>
    half(add(wood.map(({ low }) => low[i]).reduce(max), wood.map(({ high }) => high[i]).reduce(min)));
  // A screw goes through the middle of its leaf, into the wood under it.
  const way: Way = face ? turned(out) : wayTo(lie, side);
  const at = triple((i) =>
    i === way.axis
      ? face
        ? endOf(part.body, out)
        : onward(endOf(part.body, turned(way)), way, letIn(item, lie))
      : i === along
        ? place
        : i === out.axis
          ? onPart(i)
          : half(add(leaf.low[i], leaf.high[i])),
  );
  const deep = subtract(measureOf(item, "screw"), half(measureOf(item, "closed")));
  return bore({ part, at, way, diameter: measureOf(item, "pilot"), deep, for: id });
}
