import { expect, test } from "vitest";
import { PANELS, panelSize } from "../../../src/solve/design/stock/panels.ts";
import { SHEET_SIZES, sheetCalled } from "../../../src/solve/design/stock/sheets.ts";
import { density, findSpecies, SPECIES, speciesNames } from "../../../src/solve/design/stock/species.ts";
import { rational } from "../../../src/units/index.ts";
import { mm } from "./draft.ts";

test("no name stands for two woods", () => {
  const written = SPECIES.flatMap(({ name, synonyms }) => [name, ...synonyms]);
  expect(speciesNames).toHaveLength(written.length);
  for (const name of written) expect(findSpecies(name.toUpperCase().replaceAll(" ", "-"))).toBeDefined();
});

test("figures are of the right size, and every one has a source", () => {
  for (const wood of SPECIES) {
    const figures = [
      wood.radial,
      wood.tangential,
      wood.shrinkageRadial,
      wood.shrinkageTangential,
      wood.specificGravity,
      wood.modulus,
    ];
    const ranges = [
      [0.0005, 0.003],
      [0.0015, 0.005],
      [2, 8],
      [4, 12],
      [0.3, 0.8],
      [1, 2.5],
    ];
    figures.forEach((figure, i) => {
      if (figure === null) return;
      expect(figure.source, wood.name).not.toBe("");
      expect(figure.value, wood.name).toBeGreaterThan(ranges[i]?.[0] ?? 0);
      expect(figure.value, wood.name).toBeLessThan(ranges[i]?.[1] ?? 0);
    });
    if (wood.radial && wood.tangential) expect(wood.radial.value, wood.name).toBeLessThan(wood.tangential.value);
  }
});

// 1000 × 0.68 × 1.12, with the specific gravity of FPL-GTR-190 chapter 5 (from memory): 47.5 lb/ft³.
test("weight at 12 % moisture", () => {
  expect(density(findSpecies("white oak") ?? null, false)).toBe(761.6);
  expect(density(null, true)).toBe(450);
});

test("metric panels of the trade are there", () => {
  for (const size of [3, 4, 6, 6.5, 9, 12, 15, 18, 21, 24])
    expect(panelSize("plywood", mm(size))?.measures).toEqual(mm(size));
  for (const kind of PANELS.keys()) expect(panelSize(kind, mm(18)), kind).toBeDefined();
  expect(panelSize("plywood", mm(17))).toBe(undefined);
});

test("each sheet has one name and one name only", () => {
  for (const { wide, long } of SHEET_SIZES.mm)
    expect(sheetCalled(rational(wide.n, 16_000), rational(long.n, 16_000))).toEqual({ wide, long });
  expect(sheetCalled(rational(5), rational(9))).toBe(undefined);
});
