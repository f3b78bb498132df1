/** Checks, cautions and cures speak of what the piece has, and with one voice. */
import { expect, test } from "vitest";
import { TOLD } from "../../../src/solve/build/checks/told.ts";
import { built } from "../../examples/compiled.ts";

const rules = (name: string): ReadonlySet<string> => new Set(built(name).checks.map(({ rule }) => rule));
const plain = (text: string): string => text.replaceAll(/[\s\u202f]+/gu, " ");
function advice(name: string, list: "cautions" | "cures" | "room", head: string): string {
  return plain(built(name).advice?.[list].find((each) => each.head === head)?.text ?? "");
}

test("legs are looked at where there are legs: not the stiles and walls of a case", () => {
  expect(rules("boot-bench")).toContain("leg-not-braced");
  for (const name of ["key-cabinet", "old-plans/cedar-chest"])
    expect(rules(name), name).not.toContain("leg-not-braced");
});

test("feet are sawn where there are feet; a base is planed", () => {
  expect(advice("boot-bench", "cures", "It rocks.")).toContain("draw round every foot");
  const chest = advice("old-plans/cedar-chest", "cures", "It rocks.");
  expect(chest).toContain("all along the bottom");
  expect(chest).not.toMatch(/\bf(?:oo|ee)t\b/u);
});

test("a chest that shuts tight is not told to keep its openings clear", () => {
  const tight = advice("old-plans/cedar-chest", "cautions", "Lids.");
  expect(tight).toContain("It shuts tight");
  expect(tight).not.toContain("lets air in");
  expect(advice("rope-chest", "cautions", "Lids.")).toContain("never close what lets air in");
});

test("what could tip over is tied to the wall in every place that speaks of it", () => {
  expect(advice("old-plans/china-closet", "cautions", "Tipping over.")).toContain("Tie it to the wall");
  const room = advice("old-plans/china-closet", "room", "At the wall.");
  expect(room).toContain("strap");
  expect(room).not.toContain("no fixing");
});

test("what is drawn for a solid wall says so, and speaks of studs only as another wall", () => {
  expect(advice("key-cabinet", "room", "At the wall.")).toMatch(/^Both screws go into plugs in solid masonry/u);
  expect(TOLD.get("wall-screw-too-short")).not.toContain("stud");
  const step = built("key-cabinet").steps.find(({ title }) => /to the wall$/u.test(title));
  expect(step?.text.join(" ")).toContain("set for a wall of solid masonry");
  // The cleat is 15 1/16 in long: screws half an inch from its ends cannot stand 16 in apart.
  expect(step?.text.join(" ")).toContain("at most one lies behind so short a piece, and “At the wall”");
  expect(step?.text.join(" ")).not.toContain("bends the wood");
  expect(advice("key-cabinet", "room", "At the wall.")).toContain(
    "one screw goes into the middle of the stud, and where the other meets none, it goes into a hollow-wall anchor",
  );
  expect(advice("key-cabinet", "room", "At the wall.")).not.toContain("two studs are needed");
});

test("what stands clear of the wall is packed behind its screws, and they are that much longer", () => {
  const hung = built("old-plans/medicine-cabinet");
  const step = hung.steps.find(({ title }) => /to the wall$/u.test(title));
  // Posts 1 1/2 in thick with rails of 3/4 in midway: 3/8 in are open behind the rail.
  expect(plain(step?.text.join(" ") ?? "")).toMatch(/rail \([A-Z]\) stands 3.8 in clear of the wall: .* packing/u);
  // 3 1/2 in less 3/4 of wood, 3/8 of air and 1/2 of plaster.
  expect(hung.checks.find(({ rule }) => rule === "wall-screw-too-short")?.value).toBeCloseTo(1.875 * 25.4, 6);
});

test("hinges whose leaves fold into the gap are not let in deeper when a door rubs", () => {
  const cure = (name: string) => advice(name, "cures", "A door rubs or springs open (butt hinges).");
  expect(cure("key-cabinet")).toContain("card behind the lower leaf; below, behind the upper one");
  expect(cure("old-plans/medicine-cabinet")).toContain("let in the upper one a shaving deeper");
});

test("one strap is told of as one, in paragraphs that are read one by one", () => {
  const step = built("manuals-bookcase").steps.find(({ title }) => /wall strap/u.test(title));
  const text = step?.text ?? [];
  expect(text.join(" ")).toContain("into the middle of the stud");
  expect(text.join(" ")).not.toMatch(/each stud|each strap|the straps/u);
  expect(Math.max(...text.map((each) => each.length))).toBeLessThan(520);
});

// The pin of the hinge lies 1/8 in behind the back, level with its top edge; the lid and its gap reach 1 in above that: upright, its corner stands 1/8 + 1 in behind.
test("a chest is told how far its lid swings behind it", () => {
  const [told] = (built("rope-chest").advice?.room ?? []).filter(({ head }) => head === "Behind it.");
  expect(plain(told?.text ?? "").replaceAll("⁄", "/")).toBe(
    "Keep its back 1 1/2 in from the wall at least: its lid swings 1 1/8 in behind it when it is opened.",
  );
  expect((built("boot-bench").advice?.room ?? []).map(({ head }) => head)).not.toContain("Behind it.");
});
