import { expect, test } from "vitest";
import type { Size } from "../../../src/render/pages/pictures.ts";
import { makePlan } from "../../../src/render/pages/plan.ts";
import { takenApart } from "../../../src/render/pages/taken-apart.ts";
import { bounds, leaves } from "../../../src/render/shapes.ts";
import { A4, content } from "../../../src/render/style.ts";
import { built } from "../../examples/compiled.ts";

test("what is taken apart fills the height of its room or its width, and leaves neither", () => {
  const plan = makePlan(built("spice-cabinet"), content(A4));
  const drawnIn = (size: Size) => {
    const { height, paint } = takenApart(plan, size);
    const [left, top, right, bottom] = bounds(leaves(paint(0, 0)));
    expect(height).toBeLessThanOrEqual(size.height);
    return { wide: right - left, high: bottom - top };
  };
  const { width } = plan.frame;
  const whole = drawnIn({ width, height: 600 });
  expect(Math.max(whole.wide / width, whole.high / 600)).toBeGreaterThan(0.9);
  const wide = drawnIn({ width: 300, height: 600 });
  expect(Math.max(wide.wide / 300, wide.high / 600)).toBeGreaterThan(0.8);
}, 180_000);
