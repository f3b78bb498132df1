import { describe, expect, it } from "vitest";
import { notMarkedExactly } from "../../src/findings/rules/not-marked-exactly.ts";
import { chains } from "../audit/chains.ts";
import { modelOf } from "../audit/model.ts";
import type { BuildRecord } from "../audit/record.ts";
import type { V3 } from "../audit/vector.ts";
import { recordOf, SOME_EXAMPLES, solveText, textOf } from "./compiled.ts";

const made = (text: string, choose: Readonly<Record<string, string>> = {}): BuildRecord => {
  const { build } = solveText(text, {}, choose);
  if (build === undefined) throw new Error("does not compile");
  return JSON.parse(recordOf(text, build)) as BuildRecord;
};
const chainsOf = (record: BuildRecord) => chains(modelOf(record));

describe.each(SOME_EXAMPLES)("%s", (name) => {
  it("adds up by every way round", () => {
    const { closed, open } = chainsOf(made(textOf(name)));
    expect(open).toEqual([]);
    expect(closed).toBeGreaterThan(0);
  });
});

it("adds up under the other option", () => {
  expect(chainsOf(made(textOf("workbench-cart"), { top: "slab" })).open).toEqual([]);
});

it("adds up with the gap that rounding leaves, as it is stated", () => {
  const record = made(notMarkedExactly.wrong);
  // 24 1/100 in less two legs of 1 1/2 in each is marked as 21 in: 1/100 in is 0.254 mm.
  expect(record.joints.map(({ gap }) => gap).filter((gap) => gap > 0)).toEqual([expect.closeTo(0.254, 6)]);
  expect(chainsOf(record).open).toEqual([]);
});

/** By a sixteenth of an inch. */
const deeper = ([long, wide, deep]: V3): V3 => [long, wide, deep + 25.4 / 16];

describe("what does not add up is told", () => {
  const wrong = (name: string, change: (record: BuildRecord) => void) => {
    const record = made(textOf(name));
    change(record);
    return chainsOf(record).open;
  };

  it("a bottom printed a sixteenth too long", () => {
    const open = wrong("manuals-bookcase", ({ cutList }) => {
      for (const line of cutList.filter(({ parts }) => parts.includes("case.bottom-panel")))
        line.shown = line.shown.replace("35 1/16", "35 1/8");
    });
    // 1/16 in is 1.5875 mm.
    expect(open.some((told) => told.startsWith("width") && told.includes("1.587"))).toBe(true);
  });

  it("legs printed a sixteenth too short, against the height outside", () => {
    const open = wrong("boot-bench", ({ cutList }) => {
      for (const line of cutList) line.shown = line.shown.replace("16 1/2", "16 7/16");
    });
    expect(open.some((told) => told.startsWith("height"))).toBe(true);
  });

  it("a dado a sixteenth too deep", () => {
    const open = wrong("manuals-bookcase", ({ parts }) => {
      const dado = parts.find(({ id }) => id === "case.left-side")?.features.find(({ kind }) => kind === "dado");
      if (dado && "size" in dado) dado.size = deeper(dado.size);
    });
    expect(open).not.toEqual([]);
  });

  it("a tenon a sixteenth too long", () => {
    const open = wrong("old-plans/medicine-cabinet", ({ parts }) => {
      const rail = parts.find(({ id }) => id === "front-lower-rail");
      for (const tenon of rail?.features ?? []) if ("size" in tenon) tenon.size = deeper(tenon.size);
    });
    expect(open).not.toEqual([]);
  });

  it("a gap of rounding that is not stated", () => {
    const record = made(notMarkedExactly.wrong);
    for (const joint of record.joints) joint.gap = 0;
    expect(chainsOf(record).open).not.toEqual([]);
  });
});
