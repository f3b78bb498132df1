import { describe, expect, test } from "vitest";
import { toInches } from "../../../src/units/length.ts";
import { said } from "../../examples/compiled.ts";
import { designOf, soundDesign } from "../../solve/design/plan.ts";

/** A cabinet of 30 × 20 × 30 behind a frame of 2 in. */
const framed = (openings: string, more = "") => `plan: 1
title: Framed cabinet
units: inch
outside: { width: 30, depth: 20, height: 30 }
stock:
  ply: { sold as: 3/4 plywood, measures: 3/4 }
  show: { wood: hard maple, sold as: 4/4, planed to: 3/4 }
piece:
  frame:
    kind: face-frame
    made of: show
    stiles: 2
    case: cabinet
    ${openings}
  cabinet: { kind: case, behind: frame.left-stile, made of: ply${more} }
`;
const rows = "openings: { down: [{ high: 6, across: [equal, { divider: stile, wide: 3 }, equal] }, the rest] }";

describe("a face frame", () => {
  const place = (text: string, id: string): readonly number[] => {
    const part = soundDesign(text).parts.find((each) => each.id === id);
    if (!part) throw new Error(`no part ${id}`);
    return [0, 2].flatMap((axis) => [part.body.low[axis as 0 | 2], part.body.high[axis as 0 | 2]].map(toInches));
  };
  const ids = (text: string): readonly string[] => soundDesign(text).parts.map(({ id }) => id);

  test("without openings is four members round one", () => {
    expect(ids(framed("")).filter((id) => id.startsWith("frame."))).toEqual(
      ["left-stile", "right-stile", "top-rail", "bottom-rail"].map((name) => `frame.${name}`),
    );
  });

  // 30 − 2 − 6 = 22 is the upper edge of the rail; (30 − 2 × 2 − 3) / 2 = 11 1/2 lies on each side of the stile.
  test("with a row of openings above one has a rail, and a stile between the rails", () => {
    expect(place(framed(rows), "frame.rail-1")).toEqual([2, 28, 20, 22]);
    expect(place(framed(rows), "frame.opening-1-stile-1")).toEqual([13.5, 16.5, 22, 28]);
  });

  test("a case behind it has a panel in the middle of the stile, and one level with the rail", () => {
    const text = framed(rows, ", join: { with: dado, deep: 1/4 }, openings: { behind: frame }");
    // Without what is let in: between the shelf at 22 and the top panel at 30 − 3/4, and between the sides.
    expect(place(text, "cabinet.opening-1-divider-1")).toEqual([14.625, 15.375, 22, 29.25]);
    expect(place(text, "cabinet.divider-1")).toEqual([0.75, 29.25, 21.25, 22]);
    expect(ids(framed(rows)).filter((id) => id.includes("divider"))).toEqual([]);
  });

  test("its shelves are those of the case", () => {
    const shelves = rows.replace("the rest", "{ shelves: 2 }");
    const text = framed(shelves, ", openings: { behind: frame }");
    expect(ids(text).filter((id) => id.includes("shelf"))).toEqual([
      "cabinet.opening-2-shelf-1",
      "cabinet.opening-2-shelf-2",
    ]);
  });

  test("what is no frame with openings is told", () => {
    for (const [openings, name] of [
      ["", "frame"],
      [rows, "fram"],
    ] as const) {
      const { findings } = designOf(framed(openings, `, openings: { behind: ${name} }`));
      expect(said(findings).join("\n")).toMatch(/a face frame with `openings`/);
    }
  });
});
