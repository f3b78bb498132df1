import { describe, expect, test } from "vitest";
import type { Item, Page } from "../../../src/render/document.ts";
import { alongArc } from "../../../src/render/drawing/template/arc.ts";
import { stretches } from "../../../src/render/drawing/template/tiles.ts";
import { render } from "../../../src/render/index.ts";
import { bounds, leaves } from "../../../src/render/shapes.ts";
import { MARGIN } from "../../../src/render/style.ts";
import { groupsOf } from "../../../src/render/write/gather.ts";
import { said, solvedOnce } from "../../examples/compiled.ts";
import { arched } from "../../solve/fixture/arched.ts";
import { overlaps, wordsOf } from "../boxes.ts";

/** Points of the page in an inch and in a millimetre: by definition of the point, 1/72 in, and of the inch, 25.4 mm (1959). */
const INCH = 72;
const MM = 72 / 25.4;

const short = solvedOnce(arched({ long: 28, wide: 24, rise: "2" }));
const long = solvedOnce(arched({ long: 64, wide: 60, rise: "6", board: "9" }));

function pagesOf(solved: typeof short, paper: "letter" | "a4"): readonly Page[] {
  const { build, findings } = solved();
  if (!build) throw new Error(said(findings).join("\n"));
  return render(build, { paper, date: "2025-03-01", version: "0" }).value?.pages ?? [];
}
const figures = (page: Page, alt: RegExp) =>
  groupsOf(page.items, "figure").filter((figure) => alt.test(figure.alt ?? ""));
type Path = Extract<Item, { kind: "path" }>;
const paths = (items: readonly Item[]): readonly Path[] =>
  leaves(items).filter((leaf): leaf is Path => leaf.kind === "path");
const spots = ({ steps }: Path) => steps.flatMap((step) => (step.to === "close" ? [] : [[step.x, step.y] as const]));
/** What is sawn to is the one heavy line. */
const curve = (figure: { readonly items: readonly Item[] }) =>
  paths(figure.items).flatMap((path) => (path.stroke?.width === 1 ? spots(path) : []));

describe.each(["letter", "a4"] as const)("full-size patterns on %s", (paper) => {
  const pages = pagesOf(short, paper);
  const sheets = pages.filter((page) => figures(page, /true size/).length > 0);

  test("a bar of exactly 4 inches and one of exactly 100 mm on every sheet", () => {
    expect(sheets.length).toBeGreaterThan(0);
    for (const page of sheets) {
      const [bar] = figures(page, /Two bars/);
      const cells = paths(bar?.items ?? []).map((path) => bounds([path]));
      const rows = [...new Set(cells.map(([, top]) => top))].map((top) => cells.filter((cell) => cell[1] === top));
      const lengths = rows.map((row) => Math.max(...row.map((c) => c[2])) - Math.min(...row.map((c) => c[0])));
      expect(lengths[0]).toBeCloseTo(4 * INCH, 9);
      expect(lengths[1]).toBeCloseTo(100 * MM, 9);
      expect(wordsOf(page)).toContain("100 %");
    }
  });

  test("the curve is a circle of 37 inches, 12 along and 2 up, over all its pieces", () => {
    const pieces = sheets.flatMap((page) => figures(page, /true size/).map((figure) => curve(figure)));
    expect(pieces.length).toBeGreaterThan(1);
    let along = 0;
    for (const [i, piece] of pieces.entries()) {
      const [first, last] = [piece[0], piece.at(-1)];
      if (!first || !last) throw new Error("no curve");
      // The piece before shares half an inch with this one.
      const start = i === 0 ? 0 : along - INCH / 2;
      // The middle of the circle: 12 along, 35 below the edge.
      const height = (x: number) => Math.sqrt((37 * INCH) ** 2 - (12 * INCH - x) ** 2) - 35 * INCH;
      for (const [x, y] of piece) {
        const [dx, up] = [x - first[0], first[1] - y];
        expect(Math.abs(height(start + dx) - height(start) - up)).toBeLessThan(0.05 * MM);
      }
      along = start + last[0] - first[0];
    }
    expect(along).toBeCloseTo(12 * INCH, 6);
  });

  test("crosses of one letter lie at the same height of the curve on both pieces", () => {
    const heights = sheets.flatMap((page) =>
      figures(page, /true size/).map((figure) => {
        const edge = Math.max(...paths(figure.items).flatMap((path) => spots(path).map(([, y]) => y)));
        return leaves(figure.items).flatMap((leaf) =>
          leaf.kind === "text" && leaf.text === "A" ? [Math.round((edge - leaf.y) * 100) / 100] : [],
        );
      }),
    );
    expect(heights[0]).toHaveLength(2);
    expect(heights[1]).toEqual(heights[0]);
  });

  test("all of it lies between the margins, and no word on another", () => {
    for (const page of pages.filter(({ kind }) => kind === "templates")) {
      for (const figure of groupsOf(page.items, "figure")) {
        const [left, top, right, bottom] = bounds(leaves(figure.items));
        expect(left).toBeGreaterThanOrEqual(MARGIN.left - 0.1);
        expect(right).toBeLessThanOrEqual((paper === "letter" ? 612 : 595.28) - MARGIN.right + 0.1);
        expect(top).toBeGreaterThanOrEqual(MARGIN.top - 0.1);
        expect(bottom).toBeLessThanOrEqual((paper === "letter" ? 792 : 841.89) - MARGIN.bottom + 0.1);
        expect(figure.alt).toMatch(/\w/);
      }
      expect(overlaps(page)).toEqual([]);
    }
  });
});

test("what is too large to trace is told by points, and nothing in its true size", () => {
  const pages = pagesOf(long, "letter");
  const [drawing] = pages.flatMap((page) => figures(page, /by points/));
  expect(drawing?.alt?.replaceAll(/[\s\u202f\u2009]+/gu, " ")).toContain("17 along, 4 9⁄16 up");
  expect(pages.flatMap((page) => figures(page, /true size/))).toEqual([]);
  expect(pages.flatMap(overlaps)).toEqual([]);
});

test("chords keep within 0.02 mm of their arc", () => {
  const points = alongArc([0, 100], [100, 0], [0, 0]);
  expect(points.length).toBeGreaterThan(4);
  points.slice(1).forEach(([x, y], i) => {
    const [px, py] = points[i] ?? [0, 0];
    expect(Math.hypot(x, y)).toBeCloseTo(100, 9);
    expect(100 - Math.hypot((x + px) / 2, (y + py) / 2)).toBeLessThanOrEqual(0.02 * MM);
  });
});

test("tiles cover all of a pattern and share half an inch", () => {
  const tiles = stretches(1000, 400);
  expect([tiles[0]?.[0], tiles.at(-1)?.[1]]).toEqual([0, 1000]);
  tiles.slice(1).forEach(([from], i) => {
    expect((tiles[i]?.[1] ?? 0) - from).toBeCloseTo(INCH / 2, 9);
  });
});

test("how far the end of the part is, is told on the first piece of a pattern only, where the arch begins", () => {
  // Its ends are 4 in from the arch: farther than is drawn.
  const far = solvedOnce(arched({ long: 36, wide: 28, rise: "2" }));
  const texts = pagesOf(far, "letter").flatMap((page) =>
    figures(page, /true size/).map((figure) =>
      leaves(figure.items).flatMap((leaf) =>
        leaf.kind === "text" && /bottom edge/u.test(leaf.text) ? [leaf.text] : [],
      ),
    ),
  );
  expect(texts.length).toBeGreaterThan(1);
  expect(texts[0]?.join()).toMatch(/from the arch to the end/u);
  for (const [i, own] of texts.entries()) if (i > 0) for (const text of own) expect(text).not.toMatch(/from the arch/u);
});
