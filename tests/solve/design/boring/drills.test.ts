import { describe, expect, it } from "vitest";
import { drillFor, sayDrill } from "../../../../src/solve/design/boring/drills.ts";
import { depthSteps, placeStep } from "../../../../src/solve/design/boring/marks.ts";
import { inches, millimetres, toInches, toMillimetres } from "../../../../src/units/length.ts";

const plain = (text: string): string => text.replaceAll("\u202f", " ").replaceAll("\u2044", "/");

// Fractional drills step by 1/64 in: ASME B94.11M, from memory. Metric ones by 0.1 mm while they are thin: ISO 235, from memory.
describe("a drill is sold", () => {
  it("in sixty-fourths of an inch: never wider where a thread must hold, never narrower where something must pass", () => {
    for (let mils = 40; mils <= 500; mils += 3) {
      const wanted = inches(mils, 1000);
      const [hold, clear] = [drillFor(wanted, "hold", "inch"), drillFor(wanted, "clear", "inch")].map(toInches);
      expect(Number.isInteger((hold as number) * 64) && Number.isInteger((clear as number) * 64)).toBe(true);
      expect(hold).toBeLessThanOrEqual(mils / 1000 + 1e-9);
      expect(clear).toBeGreaterThanOrEqual(mils / 1000 - 1e-9);
      expect((clear as number) - (hold as number)).toBeLessThanOrEqual(1 / 64 + 1e-9);
    }
  });

  it("in tenths of a millimetre up to 6, in halves up to 13, then in whole ones", () => {
    const clear = (hundredths: number): number => toMillimetres(drillFor(millimetres(hundredths, 100), "clear", "mm"));
    expect([437, 612, 1301, 2650].map(clear)).toEqual([4.4, 6.5, 14, 27]);
    expect(toMillimetres(drillFor(inches(7, 64), "hold", "mm"))).toBe(2.7);
  });

  it("at the sizes that charts of decimal equivalents give for metric hardware", () => {
    // 2.5 mm is 0.0984 in: 3/32 is 0.0938, 7/64 0.1094. 4.5 mm is 0.1772: 11/64 is 0.1719, 3/16 0.1875.
    expect(plain(sayDrill(drillFor(millimetres(5, 2), "hold", "inch"), "inch"))).toBe("3/32 in");
    expect(plain(sayDrill(drillFor(millimetres(9, 2), "clear", "inch"), "inch"))).toBe("3/16 in");
  });

  it("in the other unit where only that is as wide as what goes in", () => {
    const fit = (wanted: ReturnType<typeof inches>, units: "inch" | "mm") =>
      plain(sayDrill(drillFor(wanted, "fit", units), units));
    expect(fit(millimetres(35), "inch")).toBe("35 mm");
    expect(fit(millimetres(5), "inch")).toBe("5 mm");
    expect(fit(inches(1, 4), "mm")).toBe("1/4 in");
    expect(fit(inches(1, 2), "mm")).toBe("1/2 in");
    expect(fit(inches(3, 8), "inch")).toBe("3/8 in");
  });

  it("no thinner than the first of its series", () => {
    expect(toInches(drillFor(inches(1, 100), "hold", "inch"))).toBe(1 / 64);
  });
});

describe("a stop and a rule", () => {
  it("go by the plan's precision, depths to 1/32 in or 0.5 mm at the finest, places to 1/64 in", () => {
    const inch = (n: number, d: number) => ({ units: "inch", precision: inches(n, d) }) as const;
    expect(toInches(depthSteps(inch(1, 64)).usual)).toBe(1 / 32);
    expect(toInches(depthSteps(inch(1, 16)).usual)).toBe(1 / 16);
    expect(toInches(depthSteps(inch(1, 4)).usual)).toBe(1 / 16);
    expect(toMillimetres(depthSteps({ units: "mm", precision: millimetres(1, 10) }).usual)).toBe(0.5);
    expect([1, 64].map((d) => toInches(placeStep(inch(1, d))))).toEqual([1 / 64, 1 / 64]);
  });
});
