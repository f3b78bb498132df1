/** What is left of tenons beside the grooves of their own parts, and their mortises; volumes worked out by hand. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { volume } from "../../../src/geometry/index.ts";
import type { Design, Part } from "../../../src/solve/design.ts";
import { inches, UNITS_PER_INCH } from "../../../src/units/index.ts";
import { toNumber } from "../../../src/units/rational.ts";
import { soundDesign } from "./plan.ts";

const planned = (name: string): string => readFileSync(new URL(`plans/${name}.yaml`, import.meta.url), "utf8");
const part = ({ parts }: Design, id: string): Part => parts.find((each) => each.id === id) as Part;
const inches3 = ({ solid }: Pick<Part, "solid">): number => toNumber(volume(solid)) / UNITS_PER_INCH ** 3;

test("tenon beside a groove a little narrower than it: no fins stand on its cheeks, and its mortise is no longer than it", () => {
  const text = planned("panel-door")
    .replace(
      "panel: { wood: cherry, sold as: 4/4, planed to: 1/4",
      "panel: { wood: cherry, sold as: 4/4, planed to: 7/32",
    )
    .replace(", shoulder: 1/2", "");
  const door = soundDesign(text);
  // 3 in less 1/2 at the end of the stile and 3/8 of groove: 2 1/8; 1/4 thick, 1 1/4 long, its mortise 1/16 deeper.
  const rail = 11.5 * 3 * 0.75 + 2 * (17 / 8) * 0.25 * 1.25 - 11.5 * (3 / 8) * (7 / 32);
  expect(inches3(part(door, "bottom-rail"))).toBeCloseTo(rail, 9);
  const [low, high] = [(17 / 8) * 0.25 * (21 / 16), (11 / 8) * 0.25 * (21 / 16)];
  // The panel ends 1/8 short of the mortises: no wall is left there, and the groove runs from one into the other.
  const groove = (28 - 3 - 2.25 + 2 * (3 / 8)) * (3 / 8) * (7 / 32);
  expect(inches3(part(door, "left-stile"))).toBeCloseTo(28 * 2.25 * 0.75 - low - high - groove, 9);
  // A wall of 1/4 in stands.
  const apart = soundDesign(text.replace("long: 1 1/4", "long: 1 1/4, shoulder: 1/2"));
  expect(part(apart, "left-stile").features.filter(({ kind }) => kind === "groove")).toMatchObject([
    { size: [inches(93, 4), expect.anything(), expect.anything()] },
  ]);
  // A shoulder that is said stays,
  const said = soundDesign(text.replace("long: 1 1/4", "long: 1 1/4, shoulder above: 3/16"));
  expect(inches3(part(said, "bottom-rail"))).toBeCloseTo(rail + 2 * (3 / 16) * (1 / 32) * 1.25, 9);
  // but where a groove as wide as the tenon leaves nothing of it: the mortise ends there too.
  const none = soundDesign(
    text.replace("planed to: 7/32", "planed to: 1/4").replace("long: 1 1/4", "long: 1 1/4, shoulder above: 3/16"),
  );
  const mortises = part(none, "left-stile").features.filter(({ kind }) => kind === "mortise");
  expect(mortises.map((each) => ("size" in each ? toNumber(each.size[0]) / UNITS_PER_INCH : 0)).sort()).toEqual([
    27 / 16,
    17 / 8,
  ]);
});
