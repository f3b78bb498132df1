import { describe, expect, test } from "vitest";
import type { Parted } from "../../../src/render/typeset/columns.ts";
import { FULL, named, pagesOf, unit } from "./units.ts";

/** B in two: a head of 100 and lines of 20, as many as go in. */
const parted = (i: number, most: number): Parted | null => {
  const lines = Math.min(20, Math.floor((most - 100) / 20));
  return i !== 1 || lines < 4 ? null : { pieces: [unit("B", 100, lines), unit("b", 60, 32 - lines)], instead: 1 };
};
/** Together as high as both columns, less what is lost between them. */
const LONG = unit("B", 100, 32);

const pagesIn = (columns: Parameters<typeof pagesOf>[0]): readonly string[] => pagesOf(columns, " ");

describe("a page that would stay white", () => {
  // A takes 200 of 800; B is 740 high.
  test("begins the next unit, which goes on on the page after it with a head of its own", () => {
    const units = [unit("A", 200, 0), LONG, unit("C", 300, 0), FULL, FULL];
    const [first, second] = pagesIn({ units });
    expect(first).toBe("A");
    expect(second).toMatch(/^B B0 /);
    const [begun, on, ...rest] = pagesIn({ units, parted });
    expect(begun).toMatch(/^A B B0 .*B19$/);
    expect(on).toMatch(/^b b0 .*b11 C$/);
    expect(rest.join(" ")).toBe("Z Z");
  });

  test("does not where the white space would only move to the page after it", () => {
    const units = [unit("A", 200, 0), LONG, [named("Y", 400), named("", 400)], FULL, FULL];
    expect(pagesIn({ units, parted })).toEqual(pagesIn({ units }));
  });

  test("does not where the other columns are filled, and the last page is left as it is", () => {
    const filled = [unit("A", 400, 10), LONG, FULL, FULL];
    expect(pagesIn({ units: filled, parted })).toEqual(pagesIn({ units: filled }));
    expect(pagesIn({ units: [LONG, unit("A", 100, 0)], parted: (i, most) => parted(i + 1, most) })[0]).toMatch(/^B B0/);
  });

  test("what is told of the units after it is still told of them", () => {
    const taller = (i: number) => (i === 2 ? { most: 100, by: (more: number) => unit("High", 300 + more, 0) } : null);
    const units = [unit("A", 200, 0), LONG, unit("C", 300, 0), FULL, FULL, FULL];
    expect(pagesIn({ units, parted, taller })[1]).toMatch(/^b .* High$/);
  });
});
