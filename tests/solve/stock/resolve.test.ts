import { expect, test } from "vitest";
import { inches } from "../../../src/units/index.ts";
import { AT, inch, mm, resolve, size } from "./draft.ts";

const FEET = [8, 10, 12, 16].map((feet) => inches(12 * feet));

test("2x4: everything from the catalogue", () => {
  const { stock, findings } = resolve({ soldAs: "2x4", wood: "spruce" });
  expect(findings).toEqual([]);
  expect(stock).toMatchObject({
    form: "board",
    label: "2×4 spruce",
    species: "spruce",
    softwood: true,
    thickness: inch("1 1/2"),
    width: inch("3 1/2"),
    soldWidth: inch("3 1/2"),
    soldLengths: FEET,
    assumed: false,
    roughThickness: null,
    // 1000 × 0.36 × 1.12
    density: 403.2,
  });
});

test("hardwood with widths: as wide as the widest, 8 ft long, assumed", () => {
  const { stock, findings } = resolve({
    soldAs: "4/4",
    wood: "white oak",
    planedTo: size("3/4"),
    widths: { low: size("5"), high: size("8"), at: AT },
  });
  expect(findings).toEqual([]);
  expect(stock).toMatchObject({
    label: "white oak, 4/4 planed to 3/4",
    softwood: false,
    thickness: inch("3/4"),
    width: null,
    soldWidth: inch("8"),
    soldLengths: [inch("96")],
    assumed: true,
    roughThickness: inch("1"),
  });
});

test("square stock planed from thicker boards has a width, its boards have another", () => {
  const { stock } = resolve({ soldAs: "8/4 cherry", planedTo: size("1 1/2"), planedWide: size("1 1/2") });
  expect(stock).toMatchObject({
    label: "8/4 cherry, planed to 1 1/2 × 1 1/2",
    species: "cherry",
    thickness: inch("1 1/2"),
    width: inch("1 1/2"),
    soldWidth: inch("6"),
    assumed: true,
  });
});

test("what is planed goes before what is measured, that before the catalogue, and the name is never used", () => {
  const measures = { at: AT, thick: size("13/16") };
  expect(resolve({ soldAs: "4/4 cherry", planedTo: size("5/8"), measures }).stock?.thickness).toEqual(inch("5/8"));
  expect(resolve({ soldAs: "4/4 cherry", measures }).stock?.thickness).toEqual(inch("13/16"));
  expect(resolve({ soldAs: "4/4 cherry" }).stock?.thickness).toEqual(inch("3/4"));
  expect(resolve({ soldAs: "3/4 birch plywood" }).stock?.thickness).toEqual(inch("23/32"));
  expect(resolve({ soldAs: "12/16 birch plywood" }).stock?.thickness).toEqual(inch("23/32"));
  expect(resolve({ soldAs: "11/16 birch plywood" })).toMatchObject({
    stock: undefined,
    rules: ["unknown-stock-words"],
  });
});

test("sheets", () => {
  expect(resolve({ soldAs: "3/4 birch plywood" }).stock).toMatchObject({
    form: "sheet",
    label: "3/4 birch plywood",
    species: "birch",
    width: null,
    soldWidth: inch("48"),
    soldLengths: [inch("96")],
    assumed: false,
    density: 500,
  });
  expect(resolve({ soldAs: "12 mm birch plywood" }, "mm").stock).toMatchObject({ soldWidth: mm(1220), density: 680 });
  expect(resolve({ soldAs: "18 mm baltic birch" }, "mm").stock).toMatchObject({ soldLengths: [mm(1525)] });
  expect(resolve({ soldAs: "18 mm MDF" }, "mm").stock).toMatchObject({ grainless: true, species: null });
  expect(resolve({ soldAs: "3/4 birch plywood" }).stock).not.toHaveProperty("grainless");
  const sheet = { wide: size("60"), long: size("120"), at: AT };
  expect(resolve({ soldAs: "3/4 oak plywood", sheet }).stock).toMatchObject({ soldWidth: inch("60") });
});

test("words that nobody knows are welcome where the maker measures", () => {
  expect(resolve({ soldAs: "roof batten" })).toMatchObject({ stock: undefined, rules: ["unknown-stock-words"] });
  const measures = { at: AT, thick: size("1 1/4"), wide: size("2 1/4") };
  const assumed = resolve({ soldAs: "roof batten", measures });
  expect(assumed).toMatchObject({
    stock: { width: inch("2 1/4"), soldWidth: inch("2 1/4"), assumed: true },
    rules: [],
  });
  const sold = resolve({ soldAs: "roof batten", measures, soldIn: [{ long: size("120") }, { long: size("96") }] });
  expect(sold.stock).toMatchObject({ soldLengths: [inch("96"), inch("120")], assumed: false });
  const sheet = { wide: size("24"), long: size("48"), at: AT };
  expect(resolve({ soldAs: "cork", measures: { at: AT, thick: size("1/4") }, sheet }).stock?.form).toBe("sheet");
});

test.each<[string, Parameters<typeof resolve>[0], readonly string[]]>([
  ["nothing said", { wood: "cherry" }, ["measures-missing"]],
  ["a panel without its thickness", { soldAs: "birch plywood" }, ["measures-missing"]],
  ["no custom for planing", { soldAs: "1 3/8 in rough", wood: "cherry" }, ["rough-needs-planing"]],
  ["planed to more than there is", { soldAs: "4/4 cherry", planedTo: size("1 1/8") }, ["planed-thicker-than-sold"]],
  [
    "planed wider than it is",
    { soldAs: "2x4", planedTo: size("1 1/4"), planedWide: size("4") },
    ["planed-thicker-than-sold"],
  ],
  ["a slip of the pen", { soldAs: "4/4", wood: "whit oak" }, ["unknown-species"]],
  ["no such wood", { soldAs: "4/4", wood: "zebrano" }, ["unknown-species"]],
  ["nothing thick", { measures: { at: AT, thick: size("-1") } }, ["stock-size-not-positive"]],
  ["widths backwards", { soldAs: "4/4", widths: { low: size("8"), high: size("5"), at: AT } }, ["range-backwards"]],
  [
    "range off the catalogue",
    { soldAs: "2x4", between: { low: size("1 5/8"), high: size("1 3/4"), at: AT } },
    ["measures-outside-range"],
  ],
  [
    "range elsewhere",
    {
      soldAs: "2x4",
      measures: { at: AT, thick: size("1 1/2") },
      between: { low: size("1"), high: size("1 1/4"), at: AT },
    },
    ["measures-outside-range"],
  ],
])("%s", (_, said, rules) => {
  expect(resolve(said).rules).toEqual(rules);
});

test.each<[string, Parameters<typeof resolve>[0], "inch" | "mm"]>([
  ["MDF is as thick as its name", { soldAs: "3/4 MDF", measures: { at: AT, thick: size("3/4") } }, "inch"],
  ["so is metric plywood", { soldAs: "12 mm birch plywood", measures: { at: AT, thick: size("12 mm") } }, "mm"],
  ["an eighth for planing", { soldAs: "4/4 cherry", planedTo: size("7/8") }, "inch"],
  ["26 mm planed to 23", { soldAs: "26 rough", wood: "beech", planedTo: size("23 mm") }, "mm"],
  ["words round the wood", { soldAs: "4/4", wood: "reclaimed heart pine" }, "inch"],
])("no finding: %s", (_, said, units) => {
  expect(resolve(said, units).rules).toEqual([]);
});

test("the nearest name is offered and put in", () => {
  const { findings } = resolve({ soldAs: "4/4", wood: "whit oak" });
  expect(findings[0]).toMatchObject({ help: "write `white oak`", fix: { insert: "white oak" } });
  expect(resolve({ soldAs: "4/4", wood: "zebrano" }).findings[0]).not.toHaveProperty("help");
});

test("a wood that is not known weighs as usual", () => {
  expect(resolve({ soldAs: "4/4", wood: "zebrano" }).stock).toMatchObject({ species: null, density: 650 });
});
