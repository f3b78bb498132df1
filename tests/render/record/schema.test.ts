import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { writeRecord } from "../../../src/render/write/record.ts";
import { recordSchema, strictRecordSchema } from "../../../src/render/write/record-schema.ts";
import { slab } from "../../audit/sample/slab.ts";
import { stool } from "../../audit/sample/stool.ts";
import { bench } from "../fixture/bench.ts";
import { stand } from "./stand.ts";

const ajv = new Ajv2020({ strict: true, allErrors: true });
const published = ajv.compile(recordSchema);
const strict = ajv.compile(strictRecordSchema);
const meta = { sourceName: "stand.yaml", sourceSha256: "0".repeat(64) };
const record = (): Record<string, unknown> => JSON.parse(writeRecord(stand(), meta));

test.each([
  ["a stand", record],
  ["a bench", () => JSON.parse(writeRecord(bench(), { ...meta, version: "0.1.0" }))],
  ["with hardware and banding", stool],
  ["with dowels", slab],
])("a record fits both schemas: %s", (_, make) => {
  const made = make();
  expect(published(made) || published.errors).toBe(true);
  expect(strict(made) || strict.errors).toBe(true);
});

/** Every object in a value, with the way to it. */
function* objects(value: unknown, path = ""): Iterable<readonly [string, Record<string, unknown>]> {
  if (Array.isArray(value)) for (const [i, item] of value.entries()) yield* objects(item, `${path}[${i}]`);
  else if (typeof value === "object" && value !== null) {
    yield [path, value as Record<string, unknown>];
    for (const [key, item] of Object.entries(value)) yield* objects(item, `${path}.${key}`);
  }
}

/** Their keys are names in the plan, or nothing is in them yet. */
const OPEN = /\.(sizes|choices|measured|slope|when|decides)$/;

test("no field may be missing, anywhere", () => {
  const whole = record();
  let tried = 0;
  for (const [path, object] of objects(whole)) {
    if (OPEN.test(path)) continue;
    for (const [key, value] of Object.entries(object)) {
      delete object[key];
      expect(published(whole), `${path}.${key}`).toBe(false);
      object[key] = value;
      tried += 1;
    }
  }
  expect(published(whole)).toBe(true);
  expect(tried).toBeGreaterThan(300);
});

test("another field may be there, but not by the strict schema", () => {
  const whole = record();
  for (const [path, object] of objects(whole)) {
    if (OPEN.test(path)) continue;
    object.more = 1;
    expect(published(whole), path).toBe(true);
    expect(strict(whole), path).toBe(false);
    delete object.more;
  }
});

test.each<readonly [string, (record: Record<string, unknown>) => void]>([
  ["another format", (r) => Object.assign(r, { format: "other" })],
  ["a length in words", (r) => Object.assign(at(r.parts), { length: "340" })],
  ["a point in the plane", (r) => Object.assign(r.bounds as object, { max: [1, 2] })],
  ["a joint of no kind that there is", (r) => Object.assign(at(r.joints), { kind: "nailed" })],
  ["an action of no kind that there is", (r) => Object.assign(at(at(r.steps).actions), { do: "paint" })],
  ["a direction longer than one", (r) => Object.assign(at(r.fasteners), { direction: [0, -2, 0] })],
])("refused: %s", (_, spoil) => {
  const whole = record();
  spoil(whole);
  expect(published(whole)).toBe(false);
});

const at = (list: unknown): Record<string, unknown> => (list as Record<string, unknown>[])[0] ?? {};

test("the schema is data: it survives the way through text", () => {
  expect(JSON.parse(JSON.stringify(recordSchema))).toEqual(recordSchema);
});
