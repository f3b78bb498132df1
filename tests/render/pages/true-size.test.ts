import { expect, test } from "vitest";
import type { Cell } from "../../../src/render/pages/cells.ts";
import type { Plan } from "../../../src/render/pages/plan.ts";
import { trueSize } from "../../../src/render/pages/true-size.ts";
import { A4, content } from "../../../src/render/style.ts";
import { pen } from "../drawing/fixture.ts";

const frame = content(A4);
const rowsOf = (count: number, height: number) => {
  const cells = Array.from({ length: count }, (): Cell => ({ width: frame.width, height, paint: () => [] }));
  return trueSize({ frame, pen } as unknown as Plan, "Stops", "set one", cells).slice(-count);
};

test("a few rows in true size stand on one page, below one bar; many go on over the page", () => {
  expect(rowsOf(4, 60).map(({ keep }) => keep)).toEqual([true, true, true, false]);
  expect(rowsOf(4, 0.2 * frame.height).map(({ keep }) => keep)).toEqual([false, false, false, false]);
});
