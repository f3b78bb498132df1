/** Layouts, their proof, and purchases. */
import { about, count, fields, flag, list, oneOf, orNull, point2, type Schema, size, text, texts } from "./words.ts";

const rectangle = { x: size, y: size, width: size, length: size };

export const layout: Schema = fields({
  stock: text,
  kind: oneOf("sheet", "board"),
  source: oneOf("buy", "on hand"),
  piece: about("The name of a piece on hand; null where it is bought.", orNull(text)),
  price: about("Of this sheet or board; null where it is not known.", orNull(size)),
  thickness: size,
  width: size,
  length: about("The grain runs along it.", size),
  kerf: size,
  squaring: about("Taken off one long and one short edge before anything else.", size),
  placements: list(fields({ blank: text, mark: text, ...rectangle, turned: flag })),
  cuts: list(
    fields({
      number: count,
      kind: oneOf("rip", "crosscut"),
      from: about("The side of the kerf nearer the origin; the kerf lies beyond it.", point2),
      to: point2,
      fence: size,
    }),
  ),
  offcuts: list(fields(rectangle)),
});

export const proof: Schema = fields({
  stocks: texts,
  count,
  countBound: about("Fewer will not do.", count),
  cost: orNull(size),
  costBound: orNull(size),
  optimal: flag,
  method: text,
  assumes: text,
});

export const purchase: Schema = fields({
  section: oneOf("sheets", "lumber", "panes", "hardware", "fasteners", "supplies"),
  item: text,
  quantity: size,
  unit: text,
  price: orNull(size),
  onHand: about(
    "Used up of what there is in the workshop, in pieces; of what is in a box or roll, in what that counts.",
    size,
  ),
  waste: size,
  content: about(
    "What is in one box or roll; null where it is sold singly.",
    orNull(fields({ count: size, of: text })),
  ),
  note: text,
});
