/** A drawer on wood turns about the front edge of what carries it until something above it is struck: its geometry by hand; 5° is common practice, no source. */
import { describe, expect, test } from "vitest";
import { drawerExample } from "../../../src/findings/drawer-example.ts";
import { solveText, textOf } from "../../examples/compiled.ts";
import { judge } from "./plan.ts";

const cabinet = (rails: string, stop = "\n    stop: drawer stop"): string =>
  drawerExample(
    ["join: screws", `join: screws, top panel: rails, top rails: { wide: ${rails} }`],
    ["  runs: { kind: side slide, load: 100 lb }\n", ""],
    ["slides: runs", `runs on: cabinet.bottom-panel\n    long: 14${stop}`],
  );
const nod = (text: string) => judge(text).of("drawer-nods", "planes");
const DEGREES = 180 / Math.PI;

/**
 * `high`: of its sides; `over`: what is free above them; `behind`: how far behind the edge that they turn about they still reach, or what is over them
 * does, if that is less. The upper back corner rises to high · cos t + behind · sin t; along a rail its upper edge is high / cos t + behind · tan t high.
 */
const byHand = (rises: (t: number) => number, above: number): number => {
  let t = 0;
  while (rises(t) < above && t < 1) t += 0.00001;
  return t * DEGREES;
};

describe("in the library table", () => {
  const table = textOf("old-plans/library-table");
  // Sides 3 3/4 high, the strips 3 13/16. Shut the backs stand 14 in behind the fronts, inside them a stop of 3/4, before that a rail of 7/8 behind the same
  // face: out by 14 - 3/8 - 3/4 - 7/8 = 12. The support begins 3/4 behind that face: 14 - 12 - 3/4 = 1 1/4 are left behind its edge.
  const high = 3.75;
  test("strips above the sides hold its drawers", () => {
    const by = byHand((t) => high * Math.cos(t) + 1.25 * Math.sin(t), 3.8125);
    expect(by).toBeCloseTo(3.1, 1);
    for (const name of ["front-drawer", "back-drawer"]) {
      const found = judge(table).of("drawer-nods", name);
      expect(found).toMatchObject({ verdict: "holds", limit: 5 });
      expect(Math.abs((found?.value ?? 0) - by)).toBeLessThan(0.1);
    }
  });
  test("a stop that is thinner by 3/8 leaves 7/8, too little", () => {
    const thin = table.replace("drawer stop, thick: 3/4, screw: 1 ", "drawer stop, screw: 5/8 ");
    const by = byHand((t) => high * Math.cos(t) + 0.875 * Math.sin(t), 3.8125);
    const found = judge(thin).of("drawer-nods", "front-drawer");
    expect(found?.verdict).toBe("warns");
    expect(Math.abs((found?.value ?? 0) - by)).toBeLessThan(0.1);
  });
  // The corner reaches sqrt(3.75² + 1.25²) = 3.953 at most, and the rail, 1/8 behind the edge and 3 7/8 up, is met by the upper edge first.
  test("without strips they nod by more than twice the limit", () => {
    const bare = table
      .replace(/^ {2}left-kicker:[^}]*\}\n {2}right-kicker:.*\n/mu, "")
      .replace(/^ {2}- \{ join: (left|right)-kicker.*\n/gmu, "");
    expect(bare).not.toContain("left-kicker");
    const by = byHand((t) => high / Math.cos(t) + 0.125 * Math.tan(t), 3.875);
    const { checks, findings } = { checks: judge(bare), findings: judge(bare).told("drawer-nods") };
    const found = checks.of("drawer-nods", "front-drawer");
    expect(found?.verdict).toBe("warns");
    expect(found?.value).toBeGreaterThan(10);
    expect(by).toBeGreaterThan(10);
    expect(findings[0]?.help).toContain("strip of wood (a kicker) above each of its sides, 1/16 in over them");
  });
});

describe("on the bottom of a case", () => {
  test("a rail of 3 in holds it, one of 1 in does not", () => {
    expect(nod(cabinet("3"))?.verdict).toBe("holds");
    expect(nod(cabinet("1"))?.verdict).toBe("warns");
  });
  test("a drawer on slides is no matter of this", () => {
    expect(judge(drawerExample()).of("drawer-nods", "planes")).toBeUndefined();
  });
  test("without a stop it is opened by half, and the same rail is struck", () => {
    expect(nod(cabinet("3", ""))?.value).toBeGreaterThan(1);
    expect(solveText(cabinet("3", "")).findings.map(({ rule }) => rule)).not.toContain("drawer-nods");
  });
});
