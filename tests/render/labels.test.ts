import { describe, expect, test } from "vitest";
import { labels } from "../../src/render/labels.ts";
import { boxOf, overlaps, textsOf } from "./boxes.ts";
import { bench, manyParts } from "./fixture/bench.ts";

const draw = (build: ReturnType<typeof bench>, paper: "letter" | "a4") =>
  labels(build, { paper, date: "2025-03-01", version: "0.0.0" });

// The usual sheets, from memory: Letter has 3 × 10 labels 2 5/8 × 1 in, 3/16 in from the left and 1/2 in from the top, 2 3/4 in
// from one to the next; A4 has 3 × 8 labels 70 × 37 mm, the first row half a millimetre from the top.
const mm = (x: number): number => (x / 25.4) * 72;
const grids = [
  ["letter", 3, 10, [13.5, 36], [189, 72], [198, 72]],
  ["a4", 3, 8, [0, mm(0.5)], [mm(70), mm(37)], [mm(70), mm(37)]],
] as const;

describe.each(grids)("labels on %s", (paper, columns, rows, at, size, pitch) => {
  test("one for each part, each inside its label, none on another", () => {
    const build = manyParts(70);
    const { pages } = draw(build, paper);
    expect(pages).toHaveLength(Math.ceil(build.parts.length / (columns * rows)));
    expect(pages.flatMap(({ of }) => of)).toEqual(build.parts.map(({ mark }) => mark));
    expect(pages.flatMap(overlaps)).toEqual([]);
    for (const { items } of pages)
      items.forEach((item, i) => {
        const [left, top] = [at[0] + (i % columns) * pitch[0], at[1] + Math.floor(i / columns) * pitch[1]];
        for (const text of textsOf([item])) {
          const box = boxOf(text);
          expect(box.left).toBeGreaterThan(left + 18);
          expect(box.right).toBeLessThan(left + size[0] - 4);
          expect(box.top).toBeGreaterThan(top + 4);
          expect(box.bottom).toBeLessThan(top + size[1] - 4);
        }
      });
  });

  test("mark, name, which of how many, and size", () => {
    const build = bench();
    const [first] = draw(build, paper).pages[0]?.items ?? [];
    const words = textsOf(first ? [first] : []).map(({ text }) => text);
    const [part] = build.parts;
    const line = build.cutList.find(({ mark }) => mark === part?.mark);
    expect(words[0]).toBe(part?.mark);
    expect(words[1]).toContain(part?.name.slice(0, 8));
    if (line && line.parts.length > 1) expect(words[1]).toContain(`(1 of ${line.parts.length})`);
    expect(words[2]?.replace(/\s/g, " ")).toBe("1 1⁄2 × 3 1⁄2 × 42 in");
  });
});
