/** Loose shelves of a case. Figures worked out by hand from common practice, no source, unless named. */
import { describe, expect, it } from "vitest";
import { solveText } from "../../../examples/compiled.ts";
import { inch } from "./piece.ts";

const cabinet = (shelves: string, more = "", door = ""): string => `plan: 1
title: Cabinet for the returned books
units: inch
outside: { width: 24, depth: 12, height: 36 }
stock:
  ply: { sold as: 3/4 MDF, measures: 3/4 }
  oak: { wood: white oak, sold as: 4/4, planed to: 3/4, widths: 4 to 8 }
hardware:
  plates: { kind: shelf pin with a plate, price: 0.4 }
  thick: { kind: shelf pin, across: 5/16, long: 1, deep: 1/2 }
${more}piece:
  cabinet:
    kind: case
    made of: ply
    join: dado
    openings: { across: [{ name: bay, ${door}shelves: ${shelves} }] }
`;
const solved = (...texts: Parameters<typeof cabinet>) => {
  const { build, findings } = solveText(cabinet(...texts));
  const part = (name: string) => build?.parts.find(({ id }) => id === `cabinet.${name}`);
  const pins = build?.holes.filter(({ kind }) => kind === "pin") ?? [];
  return { build, findings, part, pins };
};
const sides = (box: ReturnType<ReturnType<typeof solved>["part"]>) => [inch(box?.body.low[0]), inch(box?.body.high[0])];

describe("loose shelves", () => {
  it("are 1/8 in shorter than their opening in all, 3/16 in on pins with plates", () => {
    const length = (shelves: string) => inch(solved(shelves).part("bay-loose-shelf-1")?.length);
    expect(length("{ loose: 2 }")).toBe(22.5 - 1 / 8);
    expect(length("{ loose: 2, pins: plates }")).toBe(22.5 - 3 / 16);
    expect(length("{ loose: 2, pins: plates, play: 1/4 }")).toBe(22.5 - 1 / 4);
  });

  it("lie on the pins that the plan names, in holes as deep as it says", () => {
    const { build, pins } = solved("{ loose: 1, pins: { with: thick, in from each edge: 2 } }");
    expect(pins.every(({ stages }) => inch(stages[0]?.diameter) === 5 / 16 && inch(stages[0]?.depth) === 1 / 2)).toBe(
      true,
    );
    expect(new Set(pins.map(({ at }) => inch(at[1])))).toEqual(new Set([2, 12 - 1 / 8 - 2]));
    expect(build?.fasteners.find(({ kind }) => kind === "shelf pin")?.item).toBe("shelf pin 5⁄16 in across, 1 in long");
    const deeper = solved("{ loose: 1, pins: { deep: 1/4 } }");
    expect(deeper.pins.map(({ stages }) => inch(stages[0]?.depth))).toEqual(deeper.pins.map(() => 1 / 4));
  });

  it("are paid for by the pin where the plan has a price", () => {
    const { build } = solved("{ loose: 2, pins: plates }");
    const bought = build?.purchases.find(({ item }) => item.startsWith("shelf pin with a plate"));
    expect([bought?.quantity, bought?.price]).toEqual([8, 3.2]);
  });

  it("have two more holes above and below each pin, none within 5 in of the ends of the side", () => {
    // Tops at 7: pins at 7 + 3/4 (floor) − 3/4 − 1/8 = 6 7/8; below it only 5 5/8, as 4 3/8 is too low.
    const { pins } = solved("{ loose: [7] }");
    const column = pins.filter(({ part, at }) => part === "cabinet.left-side" && inch(at[1]) === 1.5);
    const heights = column.map(({ at }) => inch(at[2])).toSorted((a, b) => a - b);
    expect(heights).toEqual([5.625, 6.875, 8.125, 9.375]);
  });

  it("lie on the holes of a ladder where one is asked for", () => {
    const { pins, part } = solved("{ loose: 3, pins: { ladder: yes, apart: 2 } }");
    const column = pins.filter(({ part: id, at }) => id === "cabinet.left-side" && inch(at[1]) === 1.5);
    const heights = column.map(({ at }) => inch(at[2])).toSorted((a, b) => a - b);
    // Bottoms a whole number of 2 in above the floor at 3/4: holes at 3/4 + 2 n − 1/8, from 5 in up to 31 in.
    expect(heights).toEqual(Array.from({ length: 13 }, (_, i) => 0.625 + 2 * (i + 3)));
    for (const i of [1, 2, 3]) expect(((inch(part(`bay-loose-shelf-${i}`)?.body.low[2]) ?? 0) - 0.75) % 2).toBe(0);
  });

  it("stay 1/4 in behind an inset door of their opening, unless the plan says more", () => {
    const door = "door: { made of: oak, boards: 4 }, ";
    const front = (shelves: string) => inch(solved(shelves, "", door).part("bay-loose-shelf-1")?.body.low[1]);
    expect(front("{ loose: 1 }")).toBe(3 / 4 + 1 / 4);
    expect(front("{ loose: 1, set back: 2 }")).toBe(2);
    expect(inch(solved("{ count: 1 }", "", door).part("bay-shelf-1")?.body.low[1])).toBe(1);
  });

  it("have a strip along the front that hangs down, or stands up, and comes out with them", () => {
    const { part, build, findings } = solved("{ loose: 1, front edge: { lip: oak, high: 1 1/2 } }");
    expect(findings.filter(({ severity }) => severity !== "advice")).toEqual([]);
    const [shelf, lip] = [part("bay-loose-shelf-1"), part("bay-loose-shelf-1-lip")];
    expect(inch(shelf?.body.low[1])).toBe(3 / 4);
    expect(inch(lip?.body.high[2])).toBe(inch(shelf?.body.high[2]));
    // 3/32 in off each side; the shelf 1/16 in.
    expect(sides(lip)).toEqual([3 / 4 + 3 / 32, 24 - 3 / 4 - 3 / 32]);
    const together = build?.steps.some(({ actions }) =>
      actions.some(
        (action) => action.do === "add" && action.parts.length === 2 && action.parts.includes(lip?.id ?? ""),
      ),
    );
    expect(together).toBe(true);
    const up = solved("{ count: 1, front edge: { lip: oak, high: 1 1/2, flush with: bottom } }");
    expect(inch(up.part("bay-shelf-1-lip")?.body.low[2])).toBe(inch(up.part("bay-shelf-1")?.body.low[2]));
    expect(sides(up.part("bay-shelf-1-lip"))).toEqual([3 / 4, 24 - 3 / 4]);
  });
});
