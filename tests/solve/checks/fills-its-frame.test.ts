import { describe, expect, test } from "vitest";
import { fillsItsFrame } from "../../../src/findings/rules/fills-its-frame.ts";
import { textOf } from "../../examples/compiled.ts";
import { judge } from "./plan.ts";

const INCH = 25.4;
const RULE = "fills-its-frame";
/** White oak, flat-sawn: 0.00365 of its width for each per cent; 6 to 10 % are the seasons of a heated house (Wood Handbook FPL-GTR-190, Table 13-5, Eq. 13-2). */
const SHARE = 0.00365 * 4;

describe("a board in a frame", () => {
  test("pushes it open by its width × 0.00365 × 4 where it fills it: 14 1/2 in", () => {
    const { of, told } = judge(fillsItsFrame.wrong);
    expect(of(RULE, "panel")?.value).toBeCloseTo(14.5 * SHARE * INCH, 6);
    expect(of(RULE, "panel")).toMatchObject({ limit: INCH / 16, verdict: "warns" });
    expect(told(RULE)[0]?.help).toContain("1/4 in narrower");
  });

  test("is not judged where it has room on one side", () => {
    expect(judge(fillsItsFrame.right).of(RULE, "panel")).toBeUndefined();
  });

  test("swells from the moisture on the day of building, where that is known: by half from 8 %", () => {
    const known = fillsItsFrame.wrong.replace("widths: 6 to 18 }", "widths: 6 to 18, moisture: 8 % }");
    expect(judge(known).of(RULE, "panel")?.value).toBeCloseTo((14.5 * SHARE * INCH) / 2, 6);
  });

  test("holds where the frame is open at one side, and nothing keeps that from moving", () => {
    const open = fillsItsFrame.wrong
      .replace("  - { join: [front-rim, back-rim], to: [left-rim, right-rim], with: dowels }\n", "")
      .replace("  - { join: [front-rim, back-rim], to: [left-batten, right-batten], with: screws }", "")
      .replace("  left-rim:", "  left-rim-x:")
      .split("\n");
    const kept = open.filter((line) => !/left-rim-x|right-rim|back-rim/u.test(line) && line !== "");
    const text = kept.join("\n").replace("joints:", "joints:\n  - { join: front-rim, to: panel, with: glue }");
    expect(judge(text).told(RULE)).toEqual([]);
  });
});

describe("boards edge to edge", () => {
  const row = (gap: string): string =>
    fillsItsFrame.wrong
      .replace(
        /^ {2}panel: .*$/mu,
        `  panel: { made of: slab, as: lying flat, grain: across, left: 3/4, right: 29 1/4, width: (outside.depth - 1 1/2 - ${gap}) / 2, count: 2, spread: deep between front-rim and back-rim, top: outside.top }`,
      )
      .replace("with: slotted screws }", "with: nails, from: panel }");

  test("swell together, though nails let each of them move", () => {
    const { of, told } = judge(row("0"));
    expect(of(RULE, "panel.1")?.value).toBeCloseTo(14.5 * SHARE * INCH, 6);
    expect(told(RULE)[0]?.message).toContain("`panel.1` and `panel.2` fill the room");
    expect(told(RULE)[0]?.help).toContain("gaps of 1/4 in in all");
  });

  test("need gaps between them", () => {
    expect(judge(row("1/4")).told(RULE)).toEqual([]);
  });
});

test("a panel whose tongues reach the bottoms of their grooves fills its frame; with room in the grooves it does not", () => {
  const door = (play: string): string => `plan: 1
title: Door for the paint store
units: inch
outside: { width: 20, depth: 1, height: 30 }
stock:
  rails: { wood: white oak, sold as: 4/4, planed to: 3/4 }
  panels: { wood: white oak, sold as: 4/4, planed to: 1/4, widths: 5 to 18 }
piece:
  left-stile: { made of: rails, as: upright, facing: front, left: 0, across: 2, front: 0, bottom: 0, top: outside.top }
  right-stile: { mirror of: left-stile, about: across }
  lower-rail: { made of: rails, as: on edge, facing: front, between: [left-stile, right-stile], up: 2, bottom: 0, front: 0 }
  upper-rail: { like: lower-rail, top: outside.top, bottom: outside.top - 2 }
  panel: { made of: panels, facing: front, grain: up, across: between left-stile and right-stile, up: between lower-rail and upper-rail,
    centred on: { deep: lower-rail } }
joints:
  - { join: [lower-rail, upper-rail], to: [left-stile, right-stile], with: mortise and tenon, tenon: { thick: 1/4, long: 1 } }
  - { join: panel, to: [left-stile, right-stile, lower-rail, upper-rail], with: groove, deep: 3/8, play: ${play} }
`;
  // 16 in between the stiles and 3/8 in each of them, less the 1/2 in of each stile from its edge to the middle of the tenons.
  expect(judge(door("0")).of(RULE, "panel")?.value).toBeCloseTo((16.75 - 1) * SHARE * INCH, 6);
  expect(judge(door("1/8")).of(RULE, "panel")).toBeUndefined();
});

describe("a board against something at one edge, and nailed beyond", () => {
  const table = textOf("old-plans/library-table");

  // A drawer bottom of flat-sawn pine from the front to the last brads: 13 1/4 - 3/16 in. Wood Handbook, Eq. 13-2, 0.0021 for each per cent.
  test("pushes that off when it swells, which a gap there mends", () => {
    const tight = judge(table.replace(", play: 1/8,", ","));
    const [finding] = tight.told("fills-its-frame");
    expect(finding?.message).toMatch(/box-front` and is nailed to/u);
    const [, from, until] = /from ([\d.]+) % moisture to ([\d.]+) %/u.exec(finding?.why ?? "") ?? [];
    const value = (tight.of("fills-its-frame", "front-drawer.bottom-panel")?.value ?? 0) / 25.4;
    expect(value).toBeCloseTo((13 + 1 / 16) * 0.0021 * (Number(until) - Number(from)), 2);
    expect(judge(table).told("fills-its-frame")).toEqual([]);
  });
});
