import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { audit, type BuildRecord } from "../audit/index.ts";
import type { Fastener } from "../audit/record.ts";
import { recordOf, solveText } from "./compiled.ts";

/** The record of a plan that keeps its promises, as a reader would have it. */
function recordFor(plan: string): BuildRecord {
  const text = readFileSync(new URL(`../solve/design/plans/${plan}.yaml`, import.meta.url), "utf8");
  const { build } = solveText(text);
  if (!build) throw new Error(`${plan} does not compile`);
  return JSON.parse(recordOf(text, build)) as BuildRecord;
}

const bolt = ({ fasteners }: BuildRecord, across: boolean): Fastener => {
  const found = fasteners.find(
    (f) => f.nut && (f.nut.direction.findIndex(Boolean) !== f.direction.findIndex(Boolean)) === across,
  );
  if (!found) throw new Error("no such bolt");
  return found;
};
const nut = (record: BuildRecord, across: boolean) => bolt(record, across).nut ?? expect.fail("no nut");

describe("an auditor finds", () => {
  it.each<[string, string, (record: BuildRecord) => void, string]>([
    [
      "a cross dowel beside its bolt",
      "knock-down-bench",
      (r) => {
        const {
          at: [x, y, z],
        } = nut(r, true);
        nut(r, true).at = [x, y, z + 1];
      },
      "point ends inside",
    ],
    [
      "a bolt that stops short of its cross dowel",
      "knock-down-bench",
      (r) => (bolt(r, true).length -= 6),
      "point ends inside",
    ],
    ["a bolt too short for its nut", "knock-down-bench", (r) => (bolt(r, false).length -= 12), "point ends inside"],
    [
      "a nut that was not bought",
      "knock-down-bench",
      (r) => bolt(r, false).with.push("nut of gold"),
      "purchases add up",
    ],
    [
      "a slot that runs into the pilot of another screw",
      "slotted-table",
      (r) => {
        const slot = r.holes.find((hole) => hole.slot)?.slot ?? expect.fail("no slot");
        slot.length = 400;
      },
      "holes do not meet",
    ],
    [
      "a pin hole through its side",
      "pin-shelves",
      (r) => {
        const stage = r.holes.find((hole) => hole.kind === "pin")?.stages[0] ?? expect.fail("no pin");
        stage.depth = 19;
      },
      "keep is kept",
    ],
  ])("%s", (_, plan, spoil, check) => {
    const record = recordFor(plan);
    expect(audit(record)).toEqual([]);
    spoil(record);
    expect(audit(record).map((violation) => violation.check)).toContain(check);
  });
});
