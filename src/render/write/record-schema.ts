/**
 * The JSON Schema (draft 2020-12) of the build record. Fields may be added in a later version, those named here stay;
 * so the published schema leaves room for others, and the strict one, for tests, does not.
 */
import { layout, proof, purchase } from "./record/schema/cutting.ts";
import { drill, fastener, hardware, hole, jig, joint, motion, pattern } from "./record/schema/joinery.ts";
import { blank, cutLine, part } from "./record/schema/wood.ts";
import {
  about,
  byName,
  closed,
  count,
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
} from "./record/schema/words.ts";
import { step } from "./record/schema/work.ts";

export const recordSchema: Schema = {
  $schema: "https://json-schema.org/draft/2020-12/schema",
  title: "Boardwright build record",
  description:
    "Lengths are millimetres, angles degrees, masses kilograms, times minutes. x runs across, y deep, z up; the origin is the front left bottom corner of the bounding box of the parts.",
  ...fields({
    format: { const: "boardwright-record" },
    version: { const: 1 },
    compiler: about("Version of the compiler.", orNull(text)),
    tolerance: { const: 0.01 },
    title: text,
    units: oneOf("inch", "mm"),
    precision: size,
    source: fields({
      file: about("Its name only.", text),
      sha256: text,
      sizes: byName(number),
      choices: byName(text),
      measured: byName(number),
      workshop: orNull(fields({ file: about("Its name only.", text), sha256: text })),
    }),
    bounds: fields({ min: point, max: point }),
    mass: size,
    centreOfMass: point,
    parts: list(part),
    blanks: list(blank),
    cutList: list(cutLine),
    joints: list(joint),
    fasteners: list(fastener),
    holes: list(hole),
    drilling: about("The drilling table: holes, or stages of them, that one bit bores at one setting.", list(drill)),
    hardware: list(hardware),
    motions: list(motion),
    jigs: about("Templates, strips and spacers, with their holes from one corner.", list(jig)),
    patterns: about(
      "Curves and the holes of hardware that are traced or pricked through from the plan.",
      list(pattern),
    ),
    layouts: list(layout),
    layoutProof: list(proof),
    purchases: list(purchase),
    steps: list(step),
    timeline: fields({
      ...{ bench: size, elapsed: size, lowerBound: size },
      hoursADay: about("Of work, in the days below.", size),
      days: about(
        "Days of work, and those in which all only dries: the first and the last step of each, steps that have their next coat, and what dries when it is over.",
        list(fields({ first: count, last: count, steps: list(count), again: list(count), bench: size, dries: texts })),
      ),
    }),
    tools: list(fields({ tool: text, why: text, instead: text })),
    finishing: list(fields({ surface: text, area: about("mm².", size), coats: count, product: text })),
    checks: list(
      fields({
        rule: text,
        subject: text,
        verdict: oneOf("holds", "warns", "fails", "accepted"),
        value: number,
        limit: number,
        unit: text,
        basis: text,
        because: about("The maker's reason; null where nothing was accepted.", orNull(text)),
        holdsFrom: orNull(number),
      }),
    ),
    findings: list(
      fields({
        rule: text,
        severity: oneOf("error", "warning", "advice"),
        message: text,
        help: text,
        line: count,
        column: count,
        when: byName(text),
      }),
    ),
    pages: about("Filled only when pages were made.", list(fields({ number: count, kind: text, of: texts }))),
  }),
};

export const strictRecordSchema: Schema = closed(recordSchema);
