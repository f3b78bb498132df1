import { describe, expect, it } from "vitest";
import { errorsOf, fitted, inch } from "./piece.ts";

/** A rail 4 in high between two posts, 1 1/2 in thick all of them, or as said. */
const frame = (joint: string, rail = "1 1/2"): string => `plan: 1
title: Frame
units: inch
stock:
  posts: { wood: white oak, sold as: 8/4, planed to: 1 1/2, widths: 3 to 8 }
  rails: { wood: white oak, sold as: 8/4, planed to: ${rail}, widths: 3 to 8 }
piece:
  left-post: { made of: posts, as: upright, facing: left, width: 4, left: 0, front: 0, bottom: 0, up: 20 }
  right-post: { like: left-post, left: 30 }
  rail: { made of: rails, as: on edge, facing: front, between: [left-post, right-post], front: 1, bottom: 5, up: 3 }
joints:
  - { join: [left-post, right-post], to: rail, ${joint} }
`;

describe("bolts and cross dowels", () => {
  // 5/16 in bolt: washer 1/16, post 1 1/2; then 1 1/4 in of rail, the barrel 1/2 and 1/16 past it: 3 3/8 in; sold: 3 1/2.
  // The barrel's middle lies 3 1/2 − 1 9/16 − 1/4 − 1/16 = 1 5/8 in from the end.
  const { best } = fitted(frame("with: bolts and cross dowels, bolt: { diameter: 5/16 }"), "left-post");
  const [bolt] = best.fasteners;
  const holes = (kind: string) => best.holes.filter((hole) => hole.kind === kind);

  it("take the shortest bolt that reaches past the barrel", () => {
    expect(best.fasteners).toHaveLength(1);
    expect(inch(bolt?.length)).toBe(3.5);
    expect(inch(bolt?.head.at[0])).toBe(-1 / 16);
  });

  it("have the barrel's bore on the axis of the bolt, from the back", () => {
    const [bore] = holes("nut");
    expect(bore?.at.map(inch)).toEqual([1.5 + 1.625, 2.5, 6.5]);
    expect(bore?.direction.map((c) => c + 0)).toEqual([0, -1, 0]);
    // To the axis, 3/4 in, and half of a barrel 1 in long.
    expect(bore?.stages.map(({ diameter, depth }) => [inch(diameter), inch(depth)])).toEqual([[1 / 2, 1.25]]);
  });

  it("have a bore in the end of the rail 1/2 in deeper than the bolt", () => {
    expect(holes("bolt").map(({ stages }) => stages.map(({ depth }) => inch(depth)))).toEqual([
      [1.5],
      [3.5 - 1.5625 + 0.5],
    ]);
    for (const { stages } of holes("bolt")) expect(inch(stages[0]?.diameter)).toBe(5 / 16 + 1 / 16);
  });

  it("do not fit thin rails, and short bolts do not reach", () => {
    expect(errorsOf(frame("with: bolts and cross dowels, bolt: { diameter: 5/16 }", "3/4"))[0]).toMatch(
      /^cross-dowel-needs-room/,
    );
    const short = errorsOf(frame("with: bolts and cross dowels, bolt: { diameter: 5/16, length: 3 }"));
    expect(short[0]).toMatch(/^bolt-too-short: a bolt 3 in long is too short: it needs 3 3\/8 in/);
  });
});

describe("bolts with nuts", () => {
  const seat = (joint: string): string => `plan: 1
title: Seat
units: inch
stock:
  wood: { wood: white oak, sold as: 8/4, planed to: 1 1/2, widths: 3 to 10 }
piece:
  seat: { made of: wood, as: lying flat, grain: across, left: 0, right: 30, front: 0, back: 8, bottom: 10 }
  bearer: { made of: wood, as: lying flat, grain: deep, left: 3, across: 3, front: 0, back: 8, under: seat }
joints:
  - { join: seat, to: bearer, ${joint} }
`;

  // 1 1/2 + 1 1/2, washers 1/16 each, nut 7/32: 3 11/32 in; sold: 3 1/2.
  it("go through both, with length for two washers and the nut", () => {
    const { best } = fitted(seat("with: bolts, bolt: { diameter: 1/4 }"), "seat");
    for (const { length, head, nut, with: items } of best.fasteners) {
      expect(inch(length)).toBe(3.5);
      expect(inch(head.at[2])).toBe(11.5 + 1 / 16);
      expect(inch(nut?.at[2])).toBe(8.5 - 1 / 16);
      expect(items).toHaveLength(3);
    }
  });

  // Sunk 1/2 in: 2 27/32 in; sold: 3.
  it("are shorter where their heads are sunk", () => {
    const { best } = fitted(seat("with: bolts, bolt: { diameter: 1/4 }, counterbore: 1/2"), "seat");
    expect(best.fasteners.map(({ length, head }) => [inch(length), head.seat])).toEqual([
      [3, "sunk"],
      [3, "sunk"],
    ]);
  });
});
