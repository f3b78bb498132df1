import { describe, expect, test } from "vitest";
import { draftOf, parseText, planWith, rulesOf } from "./helpers.ts";

const site = (place: string) => draftOf(planWith({ top: `place: ${place}` })).site;
const carries = (load: string) => draftOf(planWith({ top: `carries: ${load}` })).carries?.value;

describe("place", () => {
  test.each([
    ["heated house", { name: "heated house" }],
    ["Dry-Desert", { name: "dry desert" }],
    ["garage", { name: "unheated porch" }],
    ["{ humidity: 30 to 60 %, temperature: 20 C }", { humidity: { low: 30, high: 60 }, celsius: 20 }],
    ["{ humidity: 30 % and 60 % }", { humidity: { low: 30, high: 60 }, celsius: 20 }],
    ["{ humidity: 30 to 60, temperature: 68 °F }", { humidity: { low: 30, high: 60 }, celsius: 20 }],
    ["{ humidity: 30 to 60, temperature: -10 C }", { celsius: -10 }],
  ])("%s", (words, meaning) => {
    expect(site(words)).toMatchObject(meaning);
  });
  test.each([
    ["attic", ["unknown-word"]],
    ["{ temperature: 20 C }", ["missing-key"]],
    ["{ humidity: 60 to 30 % }", ["wrong-value"]],
    ["{ humidity: 30 to 160 % }", ["wrong-value"]],
    ["{ humidity: 30 to 60 %, temperature: 20 }", ["wrong-value"]],
    ["{ humidity: 30 to 60 %, temperature: 200 C }", ["wrong-value"]],
  ])("%s is told", (words, rules) => {
    expect(rulesOf(planWith({ top: `place: ${words}` }))).toEqual(rules);
  });
});

describe("carries", () => {
  test.each([
    ["books", { name: "books" }],
    ["6 kg each", { kilograms: 6 }],
    // A pound is 0.45359237 kg exactly.
    ["40 lb", { kilograms: 40 * 0.45359237 }],
    ["2 1/2 kg", { kilograms: 2.5 }],
  ])("%s", (words, meaning) => {
    expect(carries(words)).toEqual(meaning);
  });
  test.each([
    ["bricks", ["unknown-word"]],
    ["40", ["wrong-value"]],
    ["0 lb", ["wrong-value"]],
    ["-3 kg", ["wrong-value"]],
    ["40 in", ["wrong-value"]],
    ["[books]", ["wrong-value"]],
  ])("%s is told", (words, rules) => {
    expect(rulesOf(planWith({ top: `carries: ${words}` }))).toEqual(rules);
  });
  test("a part says its own", () => {
    const [part] = draftOf(planWith({ piece: "a: { made of: pine, carries: 5 kg }" })).piece;
    expect(part).toMatchObject({ carries: { value: { kilograms: 5 } } });
  });
});

test("used for, tools owned, allow and moisture", () => {
  const draft = draftOf(
    planWith({
      top: [
        "used for: { seats: 3, each weighs: 100 kg, on: a }",
        "tools owned: { chisels: [1/4, 3/8], router bits: [1/2] }",
        'allow: [{ finding: shelf-sags, of: a, because: "Turned over each year." }]',
      ].join("\n"),
      stock: "pine: { sold as: 2x4, wood: pine, moisture: 19 % }",
    }),
  );
  expect(draft.usedFor).toMatchObject({ seats: { value: 3 }, eachWeighs: 100, on: { path: ["a"] } });
  expect(draft.tools?.mortiseBits).toHaveLength(2);
  expect(draft.tools?.routerBits).toHaveLength(1);
  expect(draft.allow).toMatchObject([{ finding: "shelf-sags", of: { value: "a" }, because: "Turned over each year." }]);
  expect(draft.stock.get("pine")?.moisture?.value).toBe(19);
});

test.each([
  ["allow: [{ finding: shelf-sags }]", ["missing-key"]],
  ["allow: shelf-sags", ["wrong-value"]],
  ["used for: { each weighs: 200 lb }", ["missing-key"]],
  ["used for: 3", ["wrong-value"]],
  ["tools owned: { router bits: 1/2 }", ["wrong-value"]],
  ["tools owned: { saws: [rip] }", ["not-in-this-version"]],
])("%s is told", (top, rules) => {
  expect(rulesOf(planWith({ top }))).toEqual(rules);
});

test("what is wrong is pointed at", () => {
  const text = planWith({ top: "place: { humidity: 30 to 160 % }" });
  const [finding] = parseText(text).findings;
  expect(text.slice(finding?.at.start, finding?.at.end)).toBe("30 to 160 %");
});
