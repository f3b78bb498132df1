import fc from "fast-check";
import { expect, test } from "vitest";
import { type Json, printJson } from "../../../src/render/write/record/json.ts";

test("short things stand on one line, long ones one below the other", () => {
  expect(printJson({ a: [1, 2.5], b: null, c: 31_750_000n })).toBe('{ "a": [1, 2.5], "b": null, "c": 31.75 }\n');
  const long = printJson({ points: Array.from({ length: 20 }, (_, i) => [i, i, i]) });
  expect(long.split("\n")).toHaveLength(20 + 5);
  expect(printJson({})).toBe("{}\n");
  expect(printJson([])).toBe("[]\n");
});

test("a name from the plan is a key like any other", () => {
  const text = printJson(
    new Map<string, Json>([
      ["__proto__", 1],
      ["toString", "x"],
    ]),
  );
  expect(text).toBe('{ "__proto__": 1, "toString": "x" }\n');
});

test("every value comes back from its text", () => {
  const options = { depthSize: "medium", stringUnit: "binary" } as const;
  const { value } = fc.letrec<{ value: Json }>((tie) => ({
    value: fc.oneof(
      options,
      fc.constant(null),
      fc.boolean(),
      fc.string({ unit: "binary" }),
      fc.integer(),
      fc.array(tie("value"), { maxLength: 30 }),
      fc.dictionary(
        fc.string().filter((key) => key !== "__proto__"),
        tie("value"),
      ),
    ),
  }));
  fc.assert(
    fc.property(value, (json) => {
      expect(JSON.parse(printJson(json))).toEqual(JSON.parse(JSON.stringify(json)));
    }),
    { seed: 6 },
  );
});
