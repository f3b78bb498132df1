import { solidOf, subtractBox } from "../../../geometry/index.ts";
import { type Length, millimetres } from "../../../units/length.ts";
import { add, half, max, min, negate, subtract } from "../../../units/rational.ts";
import type { Arrangement, Box, Hardware, Hole, Item } from "../../design.ts";
import { measureOf, numberOf } from "../hardware/items.ts";
import { boxSolid } from "../hardware/solids.ts";
import { type CupPlace, cupHingeOf, cupPlace, suited } from "../hinges/cup-place.ts";
import { boxOf, endOf, type Lie, lieOf, onward, turned } from "../hinges/lie.ts";
import { bore, plateScrews, screwsOf } from "../hinges/screws.ts";
import { spotsOf } from "../hinges/spots.ts";
import { swing } from "../hinges/swing.ts";
import { extent, triple } from "../space.ts";
import type { Maker } from "./site.ts";

/** The cup's own screws: 45 mm apart, 9.5 mm further in than its middle. Three hinge makers' pages. */
const EARS = { apart: millimetres(45), further: millimetres(19, 2) } as const;
/** The screws of the plate stand 32 mm apart, as the holes of the 32 mm system do. */
const PLATE = { apart: millimetres(32), reach: millimetres(9), more: millimetres(8) } as const;
/** How thick its flange lies on the door, how wide its arm is. Common practice, no source. */
const FLANGE = millimetres(3, 2);
const ARM = millimetres(8);
/** What stays open beside the flange, if the door covers more than the cup lies in. */
const CLEAR = millimetres(1);

/**
 * Cup hinges: a cup in the back of the door, a plate on what it hangs on. The door does not turn about a line that stands still: it turns about the front
 * corner of its hinged edge while that moves outwards and aside, by as much as the hinge says. A model of this program's own: so a door of any overlay stays
 * on its own side of its neighbour, and at 90° stands into the opening by its thickness less its overlay, as makers' tables have it.
 */
export const cupHinges: Maker = ({ joint, draft, head: door, hold }, shift, context) => {
  const lie = lieOf(draft, door, hold, context.reaches);
  const found = lie && cupHingeOf(draft, lie, hold, context.items);
  if (!found || !lie || shift.turned) return [];
  const item = suited(found, lie, context.printItem);
  const spots = spotsOf(draft, door.id, lie, context, shift.by);
  const place = cupPlace(draft, item, lie, context.measure);
  if (!spots || spots.length === 0 || !place) return [];
  const { opens, edge, along } = lie;
  const inwards = turned(edge);
  const at = (across: Length, deep: Length, up: Length) =>
    triple((i) => (i === along ? up : i === edge.axis ? across : deep));
  const plates = plateScrews(item, extent(hold.body, edge.axis), context);
  const hardware: Hardware[] = [];
  const holes: Hole[] = [];
  for (const [i, spot] of spots.entries()) {
    const id = `${joint}.h${i + 1}`;
    const cup = at(place.cup, place.back, spot);
    const more = { with: [...screwsOf(item, 2, context), ...plates] };
    hardware.push(
      { id, item, joint, carriedBy: hold.id, at: cup, solid: armOf(item, lie, place, spot), ...more },
      { id: `${id}.cup`, item, joint, carriedBy: door.id, at: cup, solid: flange(item, lie, place, spot), halfOf: id },
    );
    const into = { part: door, way: opens, for: `${id}.cup` };
    const [wide, deep] = [measureOf(item, "cup"), measureOf(item, "cup deep")];
    holes.push(bore({ ...into, at: cup, diameter: wide, deep, kind: "cup" }));
    const screws = onward(place.cup, inwards, EARS.further);
    for (const by of [negate(half(EARS.apart)), half(EARS.apart)])
      holes.push(
        bore({
          ...into,
          at: at(screws, place.back, add(spot, by)),
          diameter: measureOf(item, "pilot"),
          deep: measureOf(item, "screw"),
        }),
      );
    for (const by of [negate(half(PLATE.apart)), half(PLATE.apart)])
      holes.push(
        bore({
          ...{ part: hold, way: edge, for: id, at: at(place.inner, place.plate, add(spot, by)) },
          diameter: measureOf(item, "plate hole"),
          deep: measureOf(item, "plate hole deep"),
        }),
      );
  }
  const pin = at(endOf(lie.door, edge), endOf(lie.door, opens), lie.door.low[along]);
  const moves = [
    { way: opens, by: measureOf(item, "moves out") },
    { way: inwards, by: measureOf(item, "moves aside") },
  ];
  return [
    { fasteners: [], holes, hardware, motion: swing(lie, pin, numberOf(item, "opens"), moves) },
  ] satisfies Arrangement[];
};

/** Plate, and arm from behind the flange to a little beyond the line of the plate. */
function armOf(item: Item, { edge, opens, along, hold }: Lie, place: CupPlace, spot: Length) {
  const [inwards, behind] = [turned(edge), turned(opens)];
  const high = measureOf(item, "plate high");
  const across = [place.inner, onward(place.inner, inwards, high)] as const;
  const box = (deep: readonly [Length, Length], up: Length): Box =>
    boxOf(
      new Map([
        [edge.axis, across],
        [opens.axis, deep],
        [along, [subtract(spot, up), add(spot, up)]],
      ]),
    );
  const reach = (by: Length) => onward(place.plate, behind, by);
  // On the narrow edge of a frame the plate ends where the frame does.
  const end = (opens.sign > 0 ? max : min)(reach(PLATE.reach), endOf(hold, behind));
  const start = (opens.sign > 0 ? min : max)(reach(negate(PLATE.reach)), onward(place.back, behind, FLANGE));
  const plate = box([start, end], add(half(PLATE.apart), PLATE.more));
  const arm = box([onward(place.back, behind, FLANGE), end], ARM);
  return solidOf([...subtractBox(boxSolid(plate), arm.low, arm.high).pieces, ...boxSolid(arm).pieces]);
}

/** The flange of the cup, which lies on the door inside of what it hangs on. */
function flange(item: Item, { edge, opens, along }: Lie, place: CupPlace, spot: Length) {
  const [inwards, behind] = [turned(edge), turned(opens)];
  const inside = onward(place.inner, inwards, CLEAR);
  const from = (edge.sign > 0 ? min : max)(inside, place.cup);
  const to = onward(place.cup, inwards, half(measureOf(item, "cup")));
  const up = half(add(EARS.apart, millimetres(8)));
  return boxSolid(
    boxOf(
      new Map([
        [edge.axis, [from, to]],
        [opens.axis, [place.back, onward(place.back, behind, FLANGE)]],
        [along, [subtract(spot, up), add(spot, up)]],
      ]),
    ),
  );
}
