import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { editDistance, nearest, nearestPath, orList } from "../../src/findings/suggest.ts";

const WORDS = ["width", "height", "thickness", "material", "part", "notes", "units", "made of", "grain", "left", "on"];

describe("the nearest known path", () => {
  const known = ["frame.aprons.front-apron", "frame.front-left-leg", "case.front-apron.band", "front-apron"];
  test.each([
    ["frame.front-apron", ["frame.aprons.front-apron"]],
    ["frame.aprons.front-apron.band", []],
    ["frame.front-left-lag", ["frame.front-left-leg"]],
    ["aprons.frame.front-apron", []],
  ])("%s: %j", (path, expected) => {
    expect(nearestPath(path, known)).toEqual(expected);
  });
});

describe("the nearest known word", () => {
  test.each([
    ["wdith", ["width"]],
    ["WIDTH", ["width"]],
    ["heigth", ["height"]],
    ["thicknes", ["thickness"]],
    ["thickneess", ["thickness"]],
    ["matrial", ["material"]],
    ["prat", ["part"]],
    ["note", ["notes"]],
    ["unit", ["units"]],
    ["grian", ["grain"]],
    ["madeof", ["made of"]],
    ["made-off", ["made of"]],
    ["foo", []],
    ["qty", []],
    ["lenght", []],
    ["az", []],
    ["x", []],
    ["", []],
    ["x".repeat(5000), []],
  ])("%s: %j", (word, expected) => {
    expect(nearest(word, WORDS)).toEqual(expected);
  });

  test("three at most, in the order they are known, and only the nearest", () => {
    expect(nearest("cart", ["dart", "part", "mart", "tart", "carton"])).toEqual(["dart", "part", "mart"]);
  });
});

test("the distance is what a search over all edits finds", () => {
  // Brute force: everything that one edit makes of a, then two.
  const letters = ["a", "b", "c"];
  const edits = (word: string): string[] => {
    const found: string[] = [];
    for (let i = 0; i <= word.length; i += 1) {
      for (const letter of letters) found.push(word.slice(0, i) + letter + word.slice(i));
      if (i === word.length) continue;
      found.push(word.slice(0, i) + word.slice(i + 1));
      for (const letter of letters) found.push(word.slice(0, i) + letter + word.slice(i + 1));
      if (i + 1 < word.length) found.push(word.slice(0, i) + word.charAt(i + 1) + word.charAt(i) + word.slice(i + 2));
    }
    return found;
  };
  const word = fc.string({ unit: fc.constantFrom(...letters), maxLength: 5 });
  fc.assert(
    fc.property(word, word, (a, b) => {
      const one = new Set(edits(a));
      const expected = a === b ? 0 : one.has(b) ? 1 : undefined;
      const distance = editDistance(a, b);
      if (expected !== undefined) expect(distance).toBe(expected);
      else expect(distance).toBeGreaterThanOrEqual(2);
      expect(distance).toBe(editDistance(b, a));
    }),
  );
  expect(editDistance("kitten", "sitting")).toBe(3);
});

test("words are listed as people list them", () => {
  expect(orList([])).toBeUndefined();
  expect(orList(["a"])).toBe("`a`");
  expect(orList(["a", "b"])).toBe("`a` or `b`");
  expect(orList(["a", "b", "c"])).toBe("`a`, `b` or `c`");
});
