/** Steps and actions. */
import {
  about,
  count,
  either,
  fields,
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

const leg = either(
  fields({ along: unitVector, distance: about("Null: from far away.", orNull(size)) }),
  fields({ about: { ...list(point), minItems: 2, maxItems: 2 }, degrees: number }),
);

const action = (name: string, properties: { readonly [name: string]: Schema }): Schema =>
  fields({ do: { const: name }, ...properties });

const actions = either(
  action("make", { blanks: texts }),
  action("machine", {
    part: text,
    features: about("Indices into the part's features.", list(count)),
    holes: about("Indices into the record's holes.", list(count)),
  }),
  action("band", { part: text, edges: texts }),
  action("add", {
    parts: about("One new part, or every part of a unit built before.", texts),
    to: about("Any part of the body that stays; empty starts a body.", texts),
    how: oneOf("straight", "tilted", "flexed"),
    legs: about("In order of travel.", list(leg)),
  }),
  action("glue", { joints: texts, openMinutes: size }),
  action("clamp", { joints: texts }),
  action("release", { joints: texts }),
  action("drive", {
    fasteners: texts,
    tool: oneOf("straight", "long", "angle", "stubby", "hammer", "stapler", "hand", "wrench"),
    axis: about("The driver's axis where it leans from the screw's.", orNull(unitVector)),
  }),
  action("fit", { hardware: texts, to: texts }),
  action("remove", { parts: texts, from: texts, legs: list(leg), undrives: texts }),
  action("pull", { fasteners: about("Shelf pins that are out until they are pushed in.", texts) }),
  action("push", { fasteners: texts }),
  action("finish", { parts: texts, coat: count }),
  action("measure", { what: text, value: number, within: size }),
);

const minute = about("Minutes from the start; null where no timetable was made.", orNull(size));

export const step: Schema = fields({
  number: count,
  title: text,
  kind: oneOf("buy", "mill", "make", "glue-up", "drill", "join", "fit", "take-off", "finish", "check"),
  unit: text,
  up: about("Which way of the finished piece points to the ceiling.", unitVector),
  after: list(count),
  afterWait: list(count),
  start: minute,
  end: minute,
  bench: size,
  waits: list(fields({ for: text, minutes: size })),
  clamps: list(fields({ count, opening: size })),
  jigs: texts,
  hands: count,
  text: texts,
  cautions: texts,
  reminders: texts,
  actions: list(actions),
});
