import { expect, test } from "vitest";
import type { Vec } from "../../../src/geometry/types.ts";
import { acrossView } from "../../../src/render/drawing/part/side-bores.ts";
import type { Hole } from "../../../src/solve/design.ts";
import { inches } from "../../../src/units/index.ts";
import { bored } from "./fixture/making.ts";

// Heads of 82 degrees (ASME B18.6.1): a cone from 3/8 to 1/8 in across is (3/16 - 1/16) / tan 41° = 0.1438 in deep.
test("a countersink is drawn as a V of 82 degrees, and the bore goes on from its point", () => {
  const [cone, bore] = [
    { diameter: inches(3, 8), depth: inches(1, 8), cone: true as const },
    { diameter: inches(1, 8), depth: inches(3, 4) },
  ];
  const hole: Hole = { ...bored(3, 2), direction: [0, 0, -1], stages: [cone, bore] };
  const spot = ([x, , z]: Vec) => [x / 406_400, -z / 406_400] as const;
  const slants = acrossView(hole, cone, spot, 1 / 406_400);
  const angles = slants.map(([a, b]) => (Math.atan(Math.abs((a[0] - b[0]) / (a[1] - b[1]))) * 180) / Math.PI);
  expect(angles).toHaveLength(2);
  for (const angle of angles) expect(angle).toBeCloseTo(41, 1);
  const mouth = slants.flat().map(([x]) => x);
  expect(Math.max(...mouth) - Math.min(...mouth)).toBeCloseTo(3 / 8, 4);
  const own = acrossView(hole, bore, spot, 1 / 406_400).flat();
  const [top, bottom] = [Math.min(...own.map(([, y]) => y)), Math.max(...own.map(([, y]) => y))];
  expect(bottom - top).toBeCloseTo(3 / 4 - 1 / 8 / Math.tan((41 * Math.PI) / 180), 3);
});
