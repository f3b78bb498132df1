import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith } from "./examples.ts";

// It laps the frame on all sides: with the drawer shut no clamp goes round it, and a clamp at its edge keeps the drawer from shutting.
test("a front that laps its frame is held by tape while the drawer is shut, and clamped only when it is out again", () => {
  const build = built("index-cabinet");
  const text = stepWith(build, /^Screw on three false fronts/u).text.map(plain);
  const order = [
    /Put two strips of double-sided tape/u,
    /clamps off, push the drawer in, and look/u,
    /pull by that screw/u,
  ];
  const places = [...order, /clamp front and box together; then bore/u].map((said) => text.join("\n").search(said));
  expect(places.every((place) => place >= 0)).toBe(true);
  expect(places).toEqual(places.toSorted((a, b) => a - b));
  expect(text.join()).not.toMatch(/no room for fingers|nothing else opens/u);
  expect(build.purchases.map(({ item }) => plain(item))).toContain("double-sided tape, thin, no foam");
});
