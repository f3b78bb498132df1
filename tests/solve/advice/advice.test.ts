import { expect, test } from "vitest";
import { chestExample } from "../../../src/findings/chest-example.ts";
import { drawerExample } from "../../../src/findings/drawer-example.ts";
import { stepExample } from "../../../src/findings/example.ts";
import { said, solveText, textOf } from "../../examples/compiled.ts";

// What is advised is common practice, no source.
function adviceOn(text: string) {
  const { build, findings } = solveText(text);
  if (!build?.advice) throw new Error(said(findings).join("\n"));
  return build.advice;
}
const heads = (all: readonly { readonly head: string }[]): readonly string[] => all.map(({ head }) => head);
const textBy = (all: readonly { readonly head: string; readonly text: string }[], head: string): string =>
  all.find((each) => each.head === head)?.text.replaceAll(/[\s\u202f]+/gu, " ") ?? "";

test("a bench is warned of what cuts, and not of lids, walls or finish", () => {
  const { cautions, cures } = adviceOn(textOf("boot-bench").replace(/^finish:.*\n(?:[ \t]+.*\n)*/mu, ""));
  expect(heads(cautions)).toEqual(expect.arrayContaining(["Eyes and ears.", "Lungs.", "Blades.", "Where you live."]));
  for (const head of ["Lids.", "Fixing to a wall.", "Tipping over.", "Finish.", "Rags.", "Lifting."])
    expect(heads(cautions)).not.toContain(head);
  expect(heads(cures)).toContain("It rocks.");
  expect(heads(cures).filter((head) => /door|drawer|lid|tenon|shelf/iu.test(head))).toEqual([]);
});

test("a chest is warned of its lid, a case with a drawer of tipping over", () => {
  expect(heads(adviceOn(chestExample()).cautions)).toContain("Lids.");
  const drawer = adviceOn(drawerExample());
  expect(textBy(drawer.cautions, "Tipping over.")).toContain("one drawer at a time");
  expect(heads(drawer.cautions)).not.toContain("Lids.");
  expect(heads(drawer.cures)).toContain("A drawer binds or hangs loose on its slides.");
  expect(heads(drawer.cures)).not.toContain("A wooden drawer sticks.");
});

test("doors have their own cures, and are taken out for the move", () => {
  const { room, cures } = adviceOn(textOf("spice-cabinet"));
  expect(heads(cures)).toContain("A door stands crooked or rubs (cup hinges).");
  expect(textBy(room, "On the way.")).toMatch(/^Without its doors the largest piece/u);
  // Outside 560 × 680; deep are the 160 without the doors, 19, and what they stand off for bumpers, 2.
  expect(textBy(room, "On the way.")).toContain("560 mm × 139 mm × 680 mm");
});

test("a top of plywood is not said to move, one of solid wood is", () => {
  const room = (name: string): string => JSON.stringify(adviceOn(textOf(name)).room);
  expect(room("workbench-cart")).not.toContain("still slides");
  expect(room("loan-desk")).toContain("still slides");
});

test("what it carries is what the plan says", () => {
  // 3 people of 200 lb: the plan's `used for`.
  const { room } = adviceOn(textOf("dining-bench"));
  expect(textBy(room, "What it carries.")).toContain("3 people of 200 lb");
  expect(heads(adviceOn(textOf("boot-bench")).room)).not.toContain("What it carries.");
});

test("rags only where a finish may heat them", () => {
  const withFinish = (product: string) => heads(adviceOn(`${stepExample()}\nfinish: { with: ${product} }\n`).cautions);
  expect(withFinish("linseed oil")).toContain("Rags.");
  expect(withFinish("spar varnish")).toContain("Rags.");
  for (const product of ["water-based varnish", "shellac", "milk paint", "beeswax"])
    expect(withFinish(product), product).not.toContain("Rags.");
  expect(withFinish("shellac")).toContain("Finish.");
});

test("parts under 12 in are named, and only those", () => {
  const { build } = solveText(drawerExample());
  const short = (build?.cutList ?? []).filter(({ length }) => Number(length.n) / Number(length.d) < 12 * 406_400);
  const told = textBy(build?.advice?.cautions ?? [], "Short parts.");
  expect(short.length).toBeGreaterThan(0);
  for (const { mark } of build?.cutList ?? [])
    expect(new RegExp(`\\b${mark}\\b`, "u").test(told.split(" shorter")[0] ?? ""), mark).toBe(
      short.some((each) => each.mark === mark),
    );
});

test("what hangs on a wall has no feet to level: its screws and the studs are told of", () => {
  const { build } = solveText(textOf("old-plans/wall-shelf"));
  const { room, cures } = build?.advice ?? { room: [], cures: [] };
  expect(room.find(({ head }) => head === "At the wall.")?.text).toMatch(/^Both screws go into studs/u);
  expect([...room, ...cures].filter(({ text }) => /\b(?:feet|foot|rocks?)\b/u.test(text))).toEqual([]);
});

test("a back is loosened only where one is nailed on, and only what is shallow is hung on a wall", () => {
  const square = (name: string) => textBy(adviceOn(textOf(name)).cures, "The case is out of square.");
  expect(square("overalls-chest")).toContain("loosen it");
  // Its back is a wall with finger joints.
  expect(square("rope-chest")).toContain("Once it is hard it stays as it is");
  // Its back stands in grooves on four sides, and what is screwed on behind it is a strip.
  expect(square("spice-cabinet")).toContain("Once it is hard it stays as it is");
  const room = JSON.stringify(adviceOn(textOf("rope-chest")).room);
  expect(room.includes("Whoever hangs it up")).toBe(false);
});
