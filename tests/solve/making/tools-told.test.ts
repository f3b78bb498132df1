/** What tools and supplies are called, and what is said of sawing short and rough pieces. Common practice, no source. */
import { expect, test } from "vitest";
import { drawerExample } from "../../../src/findings/drawer-example.ts";
import { built as example, solveText, textOf } from "../../examples/compiled.ts";
import { bench, built, plain, stepWith } from "./plans.ts";

const { build: chest } = solveText(textOf("overalls-chest"));
const tools = (chest?.tools ?? []).map(({ tool, why }) => plain(`${tool}: ${why}`));
const said = (chest?.steps ?? []).flatMap(({ text }) => text.map(plain)).join("\n");

test("a tool is listed once, with all that it is for; shims by their thickness", () => {
  expect(tools.filter((each) => /^Hand plane/u.test(each))).toEqual([
    "Hand plane: to taper; to fit, and to take off what rubs",
  ]);
  // Gaps of 3/32 in, and 1/8 in under the lowest front.
  expect(tools).toContain("Shims or cards 3/32 in and 1/8 in thick: to keep gaps even");
});

test("where holes are bored there is a drill, once, and no tool that another one includes", () => {
  for (const name of ["old-plans/medicine-cabinet", "old-plans/cedar-chest", "boot-bench", "key-cabinet"]) {
    const { tools: all } = example(name);
    expect(all.filter(({ tool }) => /^Drill(?: and driver|$)/u.test(tool)).length, name).toBe(1);
    expect(all.filter(({ tool }) => /^Hammer(?! drill)/u.test(tool)).length, name).toBeLessThanOrEqual(1);
  }
});

test("what is used up is bought, and no tool", () => {
  const bought = (chest?.purchases ?? []).map(({ item, quantity, unit }) => `${quantity} ${unit} ${plain(item)}`);
  expect(bought).toContain("1 roll double-sided tape, thin, no foam");
  // Two fences of one jig, two screws in each.
  expect(bought).toContain("4 piece wood screw for the fences of jigs, thin, 1 1/4 in long");
  expect(tools.join("\n")).not.toMatch(/tape round fronts|Double-sided|spare wood screws/iu);
});

test("sentences are whole", () => {
  expect(said).toContain("Put each screw in the middle of its slot, so that the wood can move both ways.");
  expect(said).toContain("that the bottom panel (D) and the two top rails (L) stand square");
  expect(said).not.toContain("two offcuts");
  const notes = (chest?.purchases ?? []).map(({ note = "" }) => note);
  expect(notes.filter((note) => /of the layouts?, (?:its width|their widths) an assumption/u.test(note))).toHaveLength(
    3,
  );
});

test("rough boards are cut across first, by layouts that are named", () => {
  const posts = stepWith(chest ?? built(bench()), "Saw the rough pieces from white oak, 8/4");
  expect(posts.text.join(" ")).toContain("make it first, whatever its number");
  expect(posts.text.join(" ")).toContain("Saw by the layouts of white oak, 8/4");
  expect(stepWith(chest ?? built(bench()), "Cut the parts from 3/4 birch plywood").text.join(" ")).toContain(
    "3/4 birch plywood, sheet by sheet",
  );
});

// Aprons 10 in long between legs, sawn 11 in rough.
test("short pieces stay in a longer one until they are planed, in every step that has them in hand", () => {
  const build = built(bench());
  const mark = build.cutList.find(({ parts }) => parts.includes("left-apron"))?.mark ?? "?";
  const [sawn, sized] = ["Saw the rough pieces from white oak, 5/4", "Bring the parts from white oak, 5/4"].map(
    (title) => stepWith(build, title),
  );
  expect(sawn?.text.join(" ")).toContain(
    `${mark} is shorter than 12 in: the layouts have it in a piece as long as that at least, in line`,
  );
  expect(sized?.cautions.join(" ") + stepWith(build, "Plane the rough pieces").cautions.join(" ")).toContain(
    "planed and ripped in the longer pieces that they are sawn in",
  );
  const told = build.advice?.cautions.find(({ head }) => head === "Short parts.")?.text ?? "";
  expect(told).toContain("stays in a longer piece until then");
  // What is never planed is not said to be.
  const ply = solveText(drawerExample()).build?.advice?.cautions.find(({ head }) => head === "Short parts.")?.text;
  expect(ply).toMatch(/at the saw/iu);
});

test("cures name what is in the piece", () => {
  const heads = (chest?.advice?.cures ?? []).map(({ head }) => head);
  // Grooves and rabbets, no dado.
  expect(heads).toContain("A panel does not go into its groove.");
  expect(heads.join(" ")).not.toContain("dado");
});

test("hammers, wrenches, rags and bits are listed for what they do in this piece", () => {
  const needs = (name: string): string =>
    built(textOf(name))
      .tools.map(({ tool, why }) => `${plain(tool)}: ${why}`)
      .join("; ");
  expect(needs("old-plans/cedar-chest")).toContain("Hammer and nail set: to drive nails;");
  expect(needs("workbench-cart")).toMatch(/Two wrenches or a ratchet: to turn bolts(?:;|$)/u);
  // This plan says nothing of finish: what squeezes out is wiped off.
  expect(needs("old-plans/piano-bench")).toContain("Damp rag: to wipe off glue");
  expect(needs("old-plans/piano-bench")).not.toContain("put finish on");
  // No router bit is 11/64 in wide.
  expect(needs("old-plans/china-closet")).not.toMatch(/Router with a bit of 11\/64/u);
});
