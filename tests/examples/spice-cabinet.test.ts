import { describe, expect, it } from "vitest";
import { UNITS_PER_MM } from "../../src/units/length.ts";
import { toNumber } from "../../src/units/rational.ts";
import { solveText, textOf } from "./compiled.ts";

const text = textOf("spice-cabinet");
const { build } = solveText(text);
const mm = (value: Parameters<typeof toNumber>[0] | undefined): number =>
  value ? toNumber(value) / UNITS_PER_MM : Number.NaN;
const line = (part: string) => build?.cutList.find(({ parts }) => parts.includes(part));
const size = (part: string) => [mm(line(part)?.width), mm(line(part)?.length)];

/** Worked out by hand; the gaps, laps and depths are those of the plan. */
describe("sizes of the spice cabinet, in mm", () => {
  it.each([
    ["cabinet.left-side", [120, 680], "160 − 19 (door) − 2 (bumper) − 19 (frame); the whole height"],
    ["cabinet.top-panel", [120, 542], "560 − 3 − 3 − 2 × 12 + 2 × 6 in the rabbets"],
    ["face-frame.top-rail", [40, 480], "560 − 2 × 40"],
    ["doors.left-left-stile", [50, 624], "680 − 2 × 40 + 2 × 12"],
    ["doors.left-top-rail", [50, 170], "(480 + 2 × 12 − 3) / 2 = 250.5, down to 250; − 2 × 50 + 2 × 10"],
    ["doors.left-panel", [166, 542], "170 − 170 × 0.00353 × 4 − 1 = 166.6, down; 624 − 100 + 20 − 2"],
    ["cabinet.back-panel", [541, 667], "530 + 2 × 6 − 1; 656 + 2 × 6 − 1"],
    ["hanging.upper-cleat", [70, 530], "554 − 2 × 12"],
    ["hanging.wall-cleat", [70, 490], "530 − 2 × 20"],
    ["cabinet.loose-shelf-1", [86, 527], "93 − 1 − 6 (lip); 530 − 3"],
    ["cabinet.loose-shelf-1-lip", [25, 527], "25 high; 530 − 3"],
  ] as [string, number[], string][])("%s: %j, %s", (part, wanted) => {
    expect(size(part)).toEqual(wanted);
  });
  it("leaves 4 between the doors, which are rounded down", () => {
    const [left, right] = ["doors.left-right-stile", "doors.right-left-stile"].map((id) =>
      build?.parts.find((part) => part.id === id),
    );
    expect(mm(right?.body.low[0]) - mm(left?.body.high[0])).toBe(4);
  });
  it("bores the cups 21.5 from the edge of the door: 4 + 35 / 2", () => {
    const door = build?.parts.find(({ id }) => id === "doors.left-left-stile");
    const cups = build?.holes.filter(({ part, kind }) => part === door?.id && kind === "cup") ?? [];
    expect(cups.length).toBeGreaterThanOrEqual(2);
    for (const { at, stages } of cups) {
      expect(mm(at[0]) - mm(door?.body.low[0])).toBe(21.5);
      expect([mm(stages[0]?.diameter), mm(stages[0]?.depth)]).toEqual([35, 12.5]);
    }
  });
  it("hangs on one stud for certain, 490 / 400, and on two as the maker found them", () => {
    expect(build?.checks.find(({ rule }) => rule === "only-one-stud")).toMatchObject({
      verdict: "accepted",
      value: 1.225,
      limit: 2,
    });
    const screws = build?.hardware.filter(({ item }) => item.kind === "wall screw") ?? [];
    // 400 apart, about the middle of 560.
    expect(screws.map(({ at }) => mm(at[0]))).toEqual([80, 480]);
  });
  it("opens both doors, one after the other or together", () => {
    expect(build?.motions.map(({ kind }) => kind)).toEqual(["swing", "swing"]);
    for (const { range } of build?.motions ?? []) expect(range).toBeGreaterThanOrEqual(90);
  });
  it("has four shelves with equal spaces, (656 − 4 × 12) / 5 = 121.6, each on its mark", () => {
    const tops = [1, 2, 3, 4].map((i) =>
      mm(build?.parts.find(({ id }) => id === `cabinet.loose-shelf-${i}`)?.body.low[2]),
    );
    // 12 above the floor of the case: 121.6, 255.2, 388.8, 522.4, rounded.
    expect(tops.map((top) => top - 12)).toEqual([122, 255, 389, 522]);
  });
  it("glues the face frame to the case and not to the strips of its loose shelves, which are built before and go in whole", () => {
    const glued = (build?.joints ?? []).filter(({ parts: [id], glue }) => glue && id.startsWith("face-frame."));
    expect(glued.some(({ parts: [, mate] }) => mate === "cabinet.left-side")).toBe(true);
    expect(glued.filter(({ parts: [, mate] }) => mate.includes("shelf"))).toEqual([]);
    const titles = (build?.steps ?? []).map(({ title }) => title);
    expect(titles.filter((title) => /shel[fv]/u.test(title) && /^(?:Build|Add|Glue)/u.test(title))).toEqual([
      "Build the four loose shelves",
      "Add the four loose shelves",
    ]);
  });
  it("bores spare holes 32 apart above and below each of the 16 pins, but for those that would touch others", () => {
    const pins = build?.holes.filter(({ kind }) => kind === "pin") ?? [];
    expect(build?.fasteners.filter(({ kind }) => kind === "shelf pin")).toHaveLength(16);
    const column = pins.filter(({ part, at }) => part === "cabinet.left-side" && mm(at[1]) === mm(pins[0]?.at[1]));
    const heights = column.map(({ at }) => mm(at[2])).toSorted((a, b) => a - b);
    // 131.5 is 2.5 under the lowest shelf, 134 from the floor; 195.5 and 200.5 would be one hole in another.
    expect(heights).toContain(131.5);
    for (const [i, z] of heights.slice(1).entries()) expect(z - (heights[i] ?? 0)).toBeGreaterThanOrEqual(10);
    expect(heights.length).toBeGreaterThan(4 * 3);
  });
  // Where the sheet measures 11.6: 554 − 2 × 11.6 = 530.8; the doors stay.
  it("widens inside with thinner plywood, and leaves the doors", () => {
    const thin = solveText(text, {}, {}, { ply12: "11.6" }).build;
    const of = (part: string) => thin?.cutList.find(({ parts }) => parts.includes(part));
    expect(mm(of("doors.left-top-rail")?.length)).toBe(170);
    expect(mm(of("cabinet.top-panel")?.length)).toBe(542);
  });
});
