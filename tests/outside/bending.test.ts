import { describe, expect, test } from "vitest";
import { cubeRoot, evenSag, middleSag, rigidity, secondMoment } from "../../src/solve/build/checks/wood/beam.ts";
import { GPA_PER_MILLION_PSI, panelStiffness, stiffnessOf } from "../../src/solve/design/stock/behaviour.ts";
import { PANELS, type PanelKind } from "../../src/solve/design/stock/panels.ts";
import { findSpecies } from "../../src/solve/design/stock/species.ts";

/** The longest span in inches at which a board a foot deep sags a 144th of it; psi, inches, pounds. The beam knows no units. */
function longestSpan(modulus: number, thick: number, poundsPerSquareFoot: number): number {
  let [good, bad] = [1, 200];
  for (let i = 0; i < 60; i += 1) {
    const span = (good + bad) / 2;
    const load = (poundsPerSquareFoot / 144) * 12 * span;
    if (evenSag(load, span, modulus * secondMoment(12, thick)) <= span / 144) good = span;
    else bad = span;
  }
  return good;
}

/** Architectural Woodwork Standards, 1st edition 2009, pages 253 and 279: longest spans of shelves, inches, at 40 and 50 lb/ft². */
describe.each([
  ["Douglas-fir plywood", 950_000, 3 / 4, 40, 37],
  ["Douglas-fir plywood", 950_000, 1, 53, 49],
  ["plywood with hardwood faces", 1_800_000, 3 / 4, 49, 46],
  ["plywood with hardwood faces", 1_800_000, 1, 66, 61],
  ["red oak", 1_820_000, 3 / 4, 49, 46],
  ["red oak", 1_820_000, 1, 66, 61],
] as const)("%s, %i psi, %f in thick", (_, modulus, thick, at40, at50) => {
  // The table rounds down, and 45.98 to 46.
  const printed = (span: number): number => Math.floor(span + 0.05);
  test("at 40 lb/ft²", () => expect(printed(longestSpan(modulus, thick, 40))).toBe(at40));
  test("at 50 lb/ft²", () => expect(printed(longestSpan(modulus, thick, 50))).toBe(at50));
});

/** European MDF association, section 11: d = 9.81 · 5 W L³ / (32 E b t³), E 2500, 300 mm deep, 18 mm thick, 20 kg. */
test.each([
  [600, 1.51],
  [800, 3.59],
  [1000, 7.01],
])("MDF, %i mm: %f mm", (span, sag) => {
  expect(evenSag(20 * 9.81, span, 2500 * secondMoment(300, 18))).toBeCloseTo(sag, 2);
});

/** By hand: 3/4 × 11 1/4 × 36 in under 25 lb for each foot, psi. */
test.each([
  [1_820_000, 0.0633],
  [1_240_000, 0.0929],
  [520_000, 0.2215],
  [400_000, 0.288],
])("a shelf of 36 in with %i psi sags %f in", (modulus, sag) => {
  expect(evenSag(75, 36, modulus * secondMoment(11.25, 0.75))).toBeCloseTo(sag, 4);
});

test("two long aprons of white oak under three people of 200 lb: 0.038 in", () => {
  // By hand: I = 2 × 1 × 3.5³ / 12 = 7.15; 5 × 600 × 39.5³ / (384 × 1.78·10⁶ × 7.15).
  expect(evenSag(600, 39.5, 1.78e6 * 2 * secondMoment(1, 3.5))).toBeCloseTo(0.038, 3);
});

test("a load in the middle sags P L³ / 48 E I, any handbook; strips add up", () => {
  const near = middleSag([{ from: 499.999, to: 500.001, force: 100 }], 1000, 1e9);
  expect(near).toBeCloseTo((100 * 1000 ** 3) / (48 * 1e9), 4);
  const halves = [
    { from: 0, to: 300, force: 30 },
    { from: 300, to: 1000, force: 70 },
  ];
  expect(middleSag(halves, 1000, 1e9)).toBeCloseTo(evenSag(100, 1000, 1e9), 10);
  expect(middleSag([{ from: -500, to: 0, force: 100 }], 1000, 1e9)).toBe(0);
});

test("a strip along the edge: two rectangles about their common middle, by hand", () => {
  // 10 × 1 and 1 × 3, tops flush: areas 10 and 3, y = (10 × 0.5 + 3 × 1.5) / 13; I = Σ (b h³ / 12 + A d²)
  const y = 9.5 / 13;
  const byHand = 10 / 12 + 10 * (0.5 - y) ** 2 + 27 / 12 + 3 * (1.5 - y) ** 2;
  const board = { broad: 10, low: -1, high: 0, modulus: 1 };
  expect(rigidity([board, { broad: 1, low: -3, high: 0, modulus: 1 }])).toBeCloseTo(byHand, 12);
  // The same strip of wood that is twice as stiff counts as one twice as broad: the transformed section, any handbook.
  const doubled = rigidity([board, { broad: 2, low: -3, high: 0, modulus: 1 }]);
  expect(rigidity([board, { broad: 1, low: -3, high: 0, modulus: 2 }])).toBeCloseTo(doubled, 12);
  expect(rigidity([board])).toBeCloseTo(secondMoment(10, 1), 12);
});

test.each([1e-9, 0.001, 0.5, 1, 2, 27, 1e9])("the cube root of %f", (value) => {
  expect(cubeRoot(value) ** 3 / value).toBeCloseTo(1, 12);
});

/** Million psi, along the grain. Wood Handbook FPL-GTR-190, Table 5-3b, as read or from a reproduction; red oak: AWS 2009. */
test.each([
  ["red oak", 1.82],
  ["white oak", 1.78],
  ["hard maple", 1.83],
  ["cherry", 1.49],
  ["walnut", 1.68],
  ["ponderosa pine", 1.29],
  ["shortleaf pine", 1.75],
  ["slash pine", 1.98],
  ["red pine", 1.63],
  ["western white pine", 1.46],
  ["Douglas-fir", 1.95],
])("%s: %f", (name, million) => {
  const species = findSpecies(name) ?? null;
  expect(stiffnessOf(species, species?.softwood ?? false).along / GPA_PER_MILLION_PSI).toBeCloseTo(million, 10);
});

/** GPa along and across: OSB from Wood Handbook FPL-GTR-190, Table 12-3; MDF as above; plywood J. Korean Wood Sci. Tech. 53(4), Table 3. */
test.each<[PanelKind, "along" | "across", number, number]>([
  ["OSB", "along", 4.41, 6.31],
  ["OSB", "across", 1.92, 3.17],
  ["MDF", "along", 2.5, 2.5],
  ["MDF", "across", 2.5, 2.5],
  ["plywood", "along", 6.86, 8.98],
])("%s, %s", (kind, way, low, high) => {
  const panel = PANELS.get(kind);
  const modulus = panel === undefined ? 0 : panelStiffness(panel)[way];
  expect(modulus).toBeGreaterThanOrEqual(low);
  expect(modulus).toBeLessThanOrEqual(high);
});
