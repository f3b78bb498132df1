/** Parts, blanks and cut list. */
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

export const piece = about(
  "A convex piece. The pieces of a part fill it without overlapping; the seams between them mean nothing.",
  fields({
    points: list(point),
    faces: about("Indices into points, counter-clockwise from outside.", list(list(count))),
  }),
);

const placed = {
  origin: about("A corner on the face.", point),
  along: unitVector,
  across: unitVector,
  into: about("The way of the third size.", unitVector),
  size: about("Along, across, and deep into the wood.", { ...point, items: size }),
  lean: about(
    "Narrower by so much on each side where it is narrow: the socket of a dovetail; the tail of a sliding dovetail at its shoulder, its housing at the mouth.",
    size,
  ),
  inPlace: about("Cut when the joint is together: the slot of a key.", flag),
};
const box = fields({
  kind: about(
    "Tenons, tongues, haunches and the tails of sliding dovetails stand out. A socket is the box around what is cut out between fingers or tails.",
    oneOf(
      ...["dado", "groove", "rabbet", "notch", "mortise", "half lap", "cheek", "bridle", "socket", "slot"],
      ...["dovetail housing", "tenon", "tongue", "haunch", "tail"],
    ),
  ),
  for: about("The joint that needs it; null for a shape of the part.", orNull(text)),
  ...placed,
});
const curve = fields({
  kind: oneOf("arch", "round-over", "rounded corner", "cut-out", "slot"),
  for: { type: "null" },
  ...placed,
  radius: about(
    "Of the true curve in that box; the solids have flats within 0.05 mm of it, and never less wood. Zero: square corners.",
    size,
  ),
});
const planeCut = fields({
  kind: oneOf("taper", "chamfer", "bevel", "mitre", "angled end"),
  for: about("The joint that is mitred; null for a shape of the part.", orNull(text)),
  origin: about("A point of the plane.", point),
  normal: about("Out of the wood.", unitVector),
});

const cut = about(
  "From the list, or to measure: an opening, the piece, or over size.",
  oneOf("list", "opening", "piece", "over"),
);

export const part: Schema = fields({
  id: text,
  mark: text,
  name: text,
  assembly: about("The assembly or group that it belongs to; an empty text for none.", text),
  bought: flag,
  stock: text,
  species: orNull(text),
  grain: about("Along the grain; null where it has none.", orNull(unitVector)),
  axes: about(
    "Where the three directions of the board lie in the room.",
    fields({ thickness: unitVector, width: unitVector, length: unitVector }),
  ),
  thickness: size,
  width: size,
  length: about("As printed on the cut list, tenons and tongues included.", size),
  solids: list(piece),
  features: list(either(box, curve, planeCut)),
  edgeBanding: list(fields({ edge: text, item: text, thickness: size, deducted: flag })),
  goodFace: orNull(text),
  mass: size,
  cut,
  fitsBetween: about(
    "Ids of the parts that it comes tight between, where it is cut to the piece because they stand by then.",
    list(text),
  ),
  cutAfterStep: orNull(count),
  slope: about(
    "By stock: the change of each size for each mm of its thickness.",
    byName(fields({ thickness: number, width: number, length: number })),
  ),
});

export const blank: Schema = fields({
  id: text,
  part: text,
  alsoParts: texts,
  planedWhole: orNull(
    about(
      "Its parts are too small to be planed one by one: so many of this rough size side by side and in line, parted when the piece is planed.",
      fields({ beside: count, inLine: count, width: size, length: size }),
    ),
  ),
  stock: text,
  thickness: size,
  width: size,
  length: size,
  grain: oneOf("length", "width", "free"),
  why: oneOf("as finished", "glue-up", "rough", "cut later", "largest"),
  reserved: about(
    "Sizes of its parts that are larger than drawn somewhere in the ranges of thickness: the largest as printed, and at which thicknesses, by stock.",
    list(fields({ size: oneOf("width", "length"), largest: size, at: byName(size) })),
  ),
});

export const cutLine: Schema = fields({
  mark: text,
  name: text,
  quantity: count,
  stock: text,
  thickness: size,
  width: size,
  length: size,
  shown: text,
  parts: texts,
  mirrorOf: orNull(text),
  cut,
  notes: texts,
});
