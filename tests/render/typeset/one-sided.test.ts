import { expect, test } from "vitest";
import { onPage } from "../../../src/render/typeset/bands.ts";
import { GAP, unit } from "./units.ts";

test("units that stand under each other with nothing beside them are set side by side", () => {
  // The third is too high for what is left of the page beside them.
  const units = [unit("A", 100, 8), unit("B", 80, 8), unit("C", 700, 8)];
  const bands = onPage({ gap: GAP, between: GAP, units }, 0, 400, true);
  const spots = bands.flatMap((band) => band.spots);
  expect(new Set(spots.map(({ column }) => column))).toEqual(new Set([0, 1]));
  expect(bands.at(-1)?.next).toBe(2);
});
