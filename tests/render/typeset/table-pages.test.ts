import { expect, test } from "vitest";
import { TYPE } from "../../../src/render/style.ts";
import { type Atom, block } from "../../../src/render/typeset/atom.ts";
import { flow } from "../../../src/render/typeset/flow.ts";
import { label } from "../../../src/render/typeset/lines.ts";
import type { FlowAtom } from "../../../src/render/typeset/sheet.ts";
import { table } from "../../../src/render/typeset/table.ts";
import { textsOf } from "../boxes.ts";
import { columns, frame, marks, rows, section } from "./pieces.ts";

const box = (height: number): Atom => block(height, () => []);

test("its headings are repeated where their rows go on over a page, and nowhere else", () => {
  const groups = ["oak", "pine", "ash"].map((name, g) => [
    name,
    ...rows(11).map(([m = "", ...more]) => [`${m}.${g}`, ...more]),
  ]);
  let repeated = 0;
  for (let filled = 0; filled <= 400; filled += 8) {
    const pages = flow([section("a", [box(filled), ...table({ columns, rows: groups.flat(), width: 300 })])], frame);
    for (const { items } of pages) {
      const texts = textsOf(items).map(({ text }) => text);
      const first = texts.findIndex((text) => /^M\d/.test(text));
      if (first < 0) continue;
      const name = ["oak", "pine", "ash"][Number(texts[first]?.split(".")[1])];
      // Its own heading stands above the first row of a page, as such or repeated.
      expect(texts.slice(0, first).filter((text) => text.startsWith(name ?? "-"))).toHaveLength(1);
      const again = texts.filter((text) => text.endsWith(", continued"));
      expect(again.length).toBe(texts[first]?.startsWith("M0.") ? 0 : 1);
      repeated += again.length;
    }
  }
  expect(repeated).toBeGreaterThan(10);
});

test("a high row may stand alone, so that half a page is not left for it", () => {
  // About eleven lines of 16 each: two do not go on a page of 400 with 120 above them.
  const high = ["M0", "M1"].map((mark) => [mark, "word ".repeat(80), "1"]);
  const [first] = flow([section("a", [box(120), ...table({ columns, rows: high, width: 300 })])], frame);
  expect(marks(first?.items ?? [])).toEqual(["M0"]);
});

test("what can be higher takes the white below it, and what follows moves down", () => {
  const asked: number[] = [];
  const high = (height: number): FlowAtom => ({
    ...block(height, (x, y) => [label(`high ${height}`, TYPE.body, x, y)]),
    higher: (most) => {
      asked.push(most);
      return high(Math.min(most, 160));
    },
  });
  const at = (atoms: readonly FlowAtom[]) =>
    textsOf(flow([section("a", atoms)], frame)[0]?.items ?? []).map(({ text, y }) => [text, y - frame.y]);
  const foot = (height: number) => block(height, (x, y) => [label("foot", TYPE.body, x, y)]);
  // 400 − 2 × 100 − 80 are 120, 60 for each; the second has what the first leaves.
  expect(at([high(100), high(100), foot(80)])).toEqual([
    ["high 160", 0],
    ["high 160", 160],
    ["foot", 320],
  ]);
  expect(asked).toEqual([160, 160]);
  // 40 are not seen.
  expect(at([high(100), foot(260)])).toEqual([
    ["high 100", 0],
    ["foot", 100],
  ]);
});
