/** Orders of work against those that books print. */
import { expect, test } from "vitest";
import { type Assembly, orderOfWork } from "../../../src/solve/build/order/index.ts";
import type { Design } from "../../../src/solve/design.ts";
import { exampleText, soundDesign } from "../design/plan.ts";
import { faults, spelled } from "./replay.ts";

function rootOf(design: Design): Assembly {
  const { value, findings } = orderOfWork(design);
  if (!value) throw new Error(findings.map(({ message }) => message).join("\n"));
  return value.root;
}
const arrivals = (assembly: Assembly): readonly string[] =>
  assembly.kind === "part" ? assembly.parts : [...arrivals(assembly.staying), spelled(assembly.moving)];

// H. H. Windsor, "Mission Furniture: How to Make It", part I, Chicago 1909, pages 109 to 111: the two sides with two rails each are
// glued first; when they are set the other two rails; then the shelf, screwed through the lower rails; then the slats over the heads
// of its screws; at last the top, screwed from below.
test("a plant stand goes together as the book of 1909 has it", () => {
  expect(arrivals(rootOf(soundDesign(exampleText("old-plans/plant-stand"))))).toEqual([
    "left-front-post",
    "left-rail",
    "left-lower-rail",
    "left-back-post",
    "front-rail",
    "back-rail",
    "(((right-front-post < right-rail) < right-lower-rail) < right-back-post)",
    "shelf",
    "left-slat.1",
    "left-slat.2",
    "left-middle-slat",
    "right-slat.1",
    "right-slat.2",
    "right-middle-slat",
    "top-panel",
  ]);
});

test("a bench is two ends, a stretcher between them and a seat on top", () => {
  const design = soundDesign(exampleText("boot-bench"));
  const { value } = orderOfWork(design);
  expect(value && faults(design, value)).toEqual([]);
  const [, , , ...later] = arrivals(rootOf(design));
  expect(later.slice(-6)).toEqual([
    "stretcher",
    spelled(unit(rootOf(design), "right-end")),
    "seat-slat.1",
    "seat-slat.2",
    "seat-slat.3",
    "seat-slat.4",
  ]);
});

test("panels in grooves go in before the frame round them is closed", () => {
  const design = soundDesign(exampleText("old-plans/medicine-cabinet"));
  const { value } = orderOfWork(design);
  // The replay looks at boxes, and those round mitred ends overlap: the door is left to the auditor.
  const found = value && faults(design, value).filter((fault) => !/^door\.\S+ passes through door\./u.test(fault));
  expect(found).toEqual([]);
  const end = spelled(unit(rootOf(design), "left-end")).replaceAll("left-end.", "");
  expect(end).toBe("((((front-post < lower-rail) < upper-rail) < panel) < back-post)");
});

function unit(assembly: Assembly, group: string): Assembly {
  const found = (inner: Assembly): Assembly | null =>
    inner.kind === "part" ? null : inner.group === group ? inner : (found(inner.staying) ?? found(inner.moving));
  const one = found(assembly);
  if (!one) throw new Error(`no unit ${group}`);
  return one;
}
