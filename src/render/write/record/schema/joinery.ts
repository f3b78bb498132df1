/** Joints, fasteners, holes, hardware and motions. */
import { piece } from "./wood.ts";
import {
  about,
  byName,
  count,
  either,
  fields,
  flag,
  list,
  number,
  oneOf,
  orNull,
  point,
  type Schema,
  size,
  text,
  texts,
  unitVector,
} from "./words.ts";

export const joint: Schema = fields({
  id: text,
  parts: { ...texts, minItems: 2, maxItems: 2 },
  kind: oneOf("fixed", "floating", "sliding", "hinged", "running", "resting"),
  method: text,
  glue: flag,
  gap: about("What stays open between the parts, by intention or by rounding.", size),
  still: about(
    "Where a joint lets a part move: the part, the direction across its grain, a point of the line on which it does not move.",
    orNull(
      fields({
        part: text,
        across: unitVector,
        at: point,
        side: oneOf("middle", "left", "right", "front", "back", "bottom", "top"),
      }),
    ),
  ),
  contact: about(
    "For each plane in which the parts touch; the normal points out of the first part.",
    list(fields({ centre: point, normal: unitVector, area: size })),
  ),
  fasteners: texts,
});

export const fastener: Schema = fields({
  id: text,
  kind: text,
  item: about("As on the shopping list.", text),
  length: size,
  rod: about("Diameter of the shank.", size),
  head: fields({
    at: about("Where the length is measured from; the point is at + length × direction.", point),
    diameter: size,
    height: size,
    seat: oneOf("proud", "flush", "sunk", "pocket", "plugged"),
  }),
  direction: about("From head to point.", unitVector),
  through: texts,
  into: orNull(text),
  travelsWith: about("The part that it sits in while parts travel; null for what is driven in place.", orNull(text)),
  with: about("Bought or made with each one: its washers, nut, plug or button, as on the shopping list.", texts),
  nut: about(
    "Of a bolt: where its nut comes to lie, or the mouth of the bore of its cross dowel, and the way that it goes there.",
    orNull(fields({ at: point, direction: unitVector, diameter: size, height: size })),
  ),
  slack: about(
    "How far either way the part that it holds can move here along x, y and z; null where it is held fast.",
    orNull({ ...list(size), minItems: 3, maxItems: 3 }),
  ),
  solids: about(
    "Its wood, where it is not round: splines, keys, loose tenons and biscuits. Else empty: a rod of its length.",
    list(piece),
  ),
});

export const hole: Schema = fields({
  part: text,
  kind: oneOf(
    ...["pocket", "pilot", "clearance", "oversized", "slot", "pin", "cup", "knob", "dowel", "bolt", "nut", "recess"],
    "cable",
  ),
  at: about("Where the axis leaves the face.", point),
  direction: about("Into the wood.", unitVector),
  stages: about("Widest first, each measured from the same mouth.", list(fields({ diameter: size, depth: size }))),
  through: flag,
  slot: about(
    "The last stage is drawn out to this length from end to end; `at` is its middle.",
    orNull(fields({ along: unitVector, length: size })),
  ),
  for: about("A fastener or a piece of hardware; null for a hole of the part's own.", orNull(text)),
  keep: about("Wood left beside it and under it.", fields({ edge: size, end: size, under: size })),
  plugged: flag,
  atBench: about("Bored before assembly; otherwise drilled in place through its mate.", flag),
});

export const drill: Schema = fields({
  bit: oneOf("drill", "Forstner bit", "pocket bit", "countersink"),
  diameter: size,
  holes: about("Places in `holes`.", list(count)),
  what: text,
  depth: about("Where the stop is set, or what ends the hole.", either(size, oneOf("through", "flush", "by the jig"))),
  jig: about("Id of the jig that guides the bit; its thickness is in `depth`, unless that is null.", orNull(text)),
  slot: orNull(size),
  backing: orNull(oneOf("scrap", "the wall")),
  into: about(
    "`parts` of that mark; the side as the piece stands.",
    list(fields({ mark: text, parts: count, side: text })),
  ),
  when: oneOf("before assembly", "on the bench", "in place"),
  steps: list(count),
});

export const hardware: Schema = fields({
  id: text,
  item: text,
  kind: text,
  carriedBy: text,
  at: point,
  solids: list(piece),
  decides: about("Its measures, in mm; masses, counts and degrees as they are.", byName(number)),
  price: orNull(size),
  halfOf: about("Of the other half of a hinge or slide: the one that is bought.", orNull(text)),
});

export const motion: Schema = fields({
  name: text,
  kind: oneOf("swing", "slide", "lift"),
  parts: texts,
  range: number,
  poses: list(
    fields({
      at: number,
      rotate: fields({ about: { ...list(point), minItems: 2, maxItems: 2 }, degrees: number }),
      shift: point,
    }),
  ),
  needs: list(fields({ motion: text, open: number })),
});

export const jig: Schema = fields({
  id: text,
  for: about("What it sets out.", text),
  count: about("How many are made.", count),
  width: size,
  length: size,
  from: about("The stock of the offcut that it is cut from; null: any scrap.", orNull(text)),
  thickness: about("Of that stock; null: of scrap.", orNull(size)),
  holes: list(fields({ x: size, y: size, diameter: size })),
});
export const pattern: Schema = fields({
  id: text,
  for: about("What is traced or pricked through.", text),
  marks: about("Of the parts that it is laid on.", texts),
  width: size,
  height: size,
  full: about("It is drawn in its true size.", flag),
});
