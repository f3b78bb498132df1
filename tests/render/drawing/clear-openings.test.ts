import { expect, test } from "vitest";
import { chosen } from "../../../src/render/drawing/dimension/chain.ts";
import { inches, subtract, toInches } from "../../../src/units/index.ts";

/** Faces in quarters of an inch from the left, two and two of one part, in 1:10: a thickness of 3/4 is 5.4 points there. */
const RULES = { scale: 7.2 / 406_400, gap: 8.5, pitch: 24, face: "low" } as const;

/** What a chain over `wide` tells of parts from one face to the other, those that the view hides left out; in inches. */
function told(parts: readonly (readonly [number, number])[], wide: number, hidden: readonly number[] = []) {
  const faces = parts.flatMap(([one, other]) => [
    { face: one, twin: other },
    { face: other, twin: one },
  ]);
  const within = faces.filter(({ face }) => face > 0 && face < wide && !hidden.includes(face));
  const stations = within.map(({ face, twin }) => ({
    ...{ at: inches(face, 4), twins: [inches(twin, 4)], weight: 0.5, low: 0, high: 1, gap: false },
  }));
  const stops = chosen(stations, inches(0), inches(wide, 4), RULES).map(({ at }) => at);
  const all = [inches(0), ...stops, inches(wide, 4)];
  return all.slice(1).map((at, i) => toInches(subtract(at, all[i] ?? at)));
}

test("two dividers between two sides: three clear openings of 11 and 11 1/2, and each thickness of 3/4", () => {
  // 3/4 + 11 + 3/4 + 11 1/2 + 3/4 + 11 + 3/4 = 36 1/2.
  const parts = [
    [0, 3],
    [47, 50],
    [96, 99],
    [143, 146],
  ] as const;
  expect(told(parts, 146)).toEqual([0.75, 11, 0.75, 11.5, 0.75, 11, 0.75]);
});

test("a frame under a top that stands over it is measured over all, as it is put under it", () => {
  // A top of 40 stands 2 over two legs of 3/4: 2, 36, 2.
  expect(
    told(
      [
        [8, 11],
        [149, 152],
      ],
      160,
    ),
  ).toEqual([2, 36, 2]);
});

test("one divider is told by the face on which things stand", () => {
  const parts = [
    [0, 3],
    [60, 63],
    [143, 146],
  ] as const;
  expect(told(parts, 146)).toEqual([0.75, 14.25, 20.75, 0.75]);
});
