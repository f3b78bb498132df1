import { expect, test } from "vitest";
import { TYPE } from "../../../src/render/style.ts";
import { list } from "../../../src/render/typeset/atom.ts";

/** Whether each line stays with the next. */
const kept = (...items: readonly string[]) => list(items, TYPE.body, 200).map(({ keep }) => keep);

test("a short first item of a list is not left alone at the foot of a page, one of three lines may be", () => {
  expect(kept("one", "two", "three", "four")).toEqual([true, false, true, false]);
  const long = "word ".repeat(15).trim();
  const [lines] = [list([long], TYPE.body, 200).length];
  expect(lines).toBeGreaterThanOrEqual(3);
  expect(kept(long, "two", "three", "four")[lines - 1]).toBe(false);
});
