import { describe, expect, it } from "vitest";
import { roomForMovement } from "../../../../src/solve/design/fastening/movement.ts";
import { soundDesign } from "../plan.ts";
import { errorsOf, fitted, inch, top } from "./piece.ts";

/** Room across the grain at each fastener of a joint, in inches, with the distance from the held line. */
const rooms = (text: string, part: string): readonly (readonly [number, number])[] => {
  const { joint, best } = fitted(text, part);
  return roomForMovement(joint, best.fasteners).map(({ fromLine, room }) => [inch(fromLine), inch(room)] as const);
};

describe("slotted screws in low rails", () => {
  const slotted = (more = ""): string => top(`with: slotted screws, screw: { gauge: 8 }${more}`, "1", "1 1/4");

  // The rails' middles lie at 4 1/2 and 15 1/2 in: 5 1/2 in from the middle of both, 10 in. 5.5 / 64 in is next under 1/8 in.
  // Together 27/64 in; 14/32 is the next mark of a rule.
  it("are as long as the hole of the shank, 11/64 in, and the movement either way", () => {
    const { joint, best } = fitted(slotted(), "front-rail");
    expect(joint.kind).toBe("sliding");
    const slots = best.holes.filter(({ kind }) => kind === "slot");
    expect(slots).toHaveLength(best.fasteners.length);
    for (const { slot, stages } of slots) {
      expect(inch(slot?.length)).toBeCloseTo(14 / 32, 9);
      expect(inch(stages.at(-1)?.diameter)).toBe(11 / 64);
      expect(slot?.along).toEqual([0, 1, 0]);
    }
    for (const [from, room] of rooms(slotted(), "front-rail")) expect([from, room]).toEqual([-5.5, 1 / 8]);
  });

  it("are as long as is said", () => {
    for (const [, room] of rooms(slotted(", slot: 1/2"), "back-rail"))
      expect(room).toBeCloseTo((1 / 2 - 11 / 64) / 2, 9);
  });

  // Held at its front edge, the front rail's holes are round and fit; the back rail's are 11 in from there: 11 / 64 in is next under 3/16.
  it("are round holes where the wood is held still", () => {
    const { joint, best } = fitted(slotted(", hold still: front"), "front-rail");
    expect(joint.kind).toBe("fixed");
    expect(best.holes.filter(({ kind }) => kind === "slot")).toEqual([]);
    expect(rooms(slotted(", hold still: front"), "front-rail").map(([, room]) => room)).toEqual(
      best.fasteners.map(() => 0),
    );
    // From the front of the rail under it, 4 in, to the middle of the back rail, 15 1/2 in.
    for (const [from, room] of rooms(slotted(", hold still: front"), "back-rail"))
      expect([from, room]).toEqual([11.5, 3 / 16]);
  });

  it("have one round hole in the middle of a batten across the grain", () => {
    const { best } = fitted(slotted(), "side-rail");
    expect(best.fasteners.length % 2).toBe(1);
    const room = rooms(slotted(), "side-rail").map(([from, r]) => [from, r > 0]);
    expect(room).toEqual([
      [-4, true],
      [0, false],
      [4, true],
    ]);
  });

  // Trade rule, common practice: the washer is at least 3/8 in wider than the hole.
  it("have washers that cover their holes", () => {
    for (const method of ["slotted screws", "oversized holes with washers"]) {
      const { best } = fitted(top(`with: ${method}`, "1", "1 1/4"), "back-rail");
      for (const { with: items = [], id } of best.fasteners) {
        const [, whole = "0", , over = "0", under = "1"] =
          /washer (\d+)?\s?((\d+)\u2044(\d+))? in/.exec(items[0] ?? "") ?? [];
        const wide = Number(whole) + Number(over) / Number(under);
        const hole = best.holes.find((each) => each.for === id && each.kind !== "pilot")?.stages.at(-1);
        expect(wide).toBeGreaterThanOrEqual(inch(hole?.diameter) + 3 / 8);
      }
    }
  });

  it("need a rail that a slot can be cut through", () => {
    expect(errorsOf(top("with: slotted screws"))[0]).toMatch(/^fastener-needs-room: .*3 1\/2 in thick/);
  });
});

describe("plain screws in wide holes", () => {
  const wide = (more: string): string => top(`with: screws, screw: { gauge: 8 }, oversized: 5/16${more}`, "1", "1 1/4");

  // A #8 head is about 5/16 in wide (ASME B18.6.1, from memory): alone it would fall through.
  it("have a washer under the head that is wider than the hole, and is bought", () => {
    const { best } = fitted(wide(""), "front-rail");
    for (const { with: items, head } of best.fasteners) {
      expect(items?.[0]).toContain("washer 3⁄4");
      expect(inch(head.diameter)).toBe(3 / 4);
    }
  });

  it("are not sunk into a rail that is too thin for the washer, nor countersunk", () => {
    const below = wide(", counterbore: 1/4").replace(
      "join: panel, to: [front-rail, back-rail, side-rail]",
      "join: front-rail, to: panel",
    );
    expect(errorsOf(below)[0]).toMatch(/^fastener-needs-room: .*does not fit/);
    const sunk = wide("").replace("gauge: 8", "gauge: 8, head: countersunk");
    expect(errorsOf(sunk)[0]).toMatch(/^fastener-needs-room: .*countersunk/);
  });
});

describe("buttons", () => {
  // Tongue 5/16 in with the gap of 1/8 in, groove 1/16 deeper: common practice, no source.
  it("lie in a groove 3/8 in wide and 3/8 in under the edge", () => {
    const { parts } = soundDesign(top("with: buttons in a groove, gap: 1/8"));
    const groove = parts.find(({ id }) => id === "front-rail")?.features.find(({ kind }) => kind === "groove");
    if (!groove || !("size" in groove)) throw new Error("no groove");
    expect(groove.size.map(inch)).toEqual([28, 3 / 8, 3 / 8]);
    expect(groove.into).toEqual([0, -1, 0]);
    expect(inch(groove.origin[2])).toBe(10 - 3 / 8 - 3 / 8);
  });

  it("stand off the rail by their gap, their screws 5/8 in further, 25/32 in under the top", () => {
    const { best } = fitted(top("with: buttons in a groove, gap: 1/8"), "front-rail");
    for (const { head, direction, slack } of best.fasteners) {
      expect(inch(head.at[1])).toBe(4.75 + 1 / 8 + 5 / 8);
      expect(inch(head.at[2])).toBe(10 - 25 / 32);
      expect(direction).toEqual([0, 0, 1]);
      expect(inch(slack?.[1])).toBe(1 / 8);
    }
    expect(best.fasteners.map(({ head }) => inch(head.at[0]))).toEqual(
      [6.5, 6.5 + 23 / 3, 6.5 + 46 / 3, 29.5].map((x) => expect.closeTo(x, 9)),
    );
  });

  it("in mortises stand where these are cut", () => {
    const text = top("with: buttons in mortises, count: 2");
    const part = soundDesign(text).parts.find(({ id }) => id === "side-rail");
    const middles = (part?.features ?? []).flatMap((f) =>
      f.kind === "mortise" && "size" in f ? [inch(f.origin[1]) + inch(f.size[0]) / 2] : [],
    );
    expect(fitted(text, "side-rail").best.fasteners.map(({ head }) => inch(head.at[1]))).toEqual(middles);
    expect(middles).toHaveLength(2);
    // Along the rail, which runs across the grain, half of what the mortise is longer than the button.
    for (const [, room] of rooms(text, "side-rail")) expect(room).toBeGreaterThan(0);
  });

  it("need a rail that is thick enough", () => {
    expect(errorsOf(top("with: buttons in a groove", "1/2"))[0]).toMatch(
      /^fastener-needs-room: front-rail .*1\/2 in thick/,
    );
  });
});

describe("figure-eight fasteners", () => {
  it("stand 30 degrees askew on a rail along the grain, their two screws 5/8 in apart", () => {
    const { best } = fitted(top("with: figure-eight fasteners"), "front-rail");
    for (const { head, id } of best.fasteners) {
      const recess = best.holes.find((hole) => hole.for === id && hole.kind === "recess");
      const [dx, dy] = [0, 1].map((i) => inch(head.at[i as 0 | 1]) - inch(recess?.at[i as 0 | 1]));
      expect(Math.hypot(dx as number, dy as number)).toBeCloseTo(5 / 8, 6);
      expect((Math.atan2(dx as number, dy as number) * 180) / Math.PI).toBeCloseTo(30, 6);
      // 1/4 in from the inner face of the rail.
      expect(inch(recess?.at[1])).toBe(4.75 - 1 / 4);
    }
    // What swinging from 30 to 15 degrees gains: 5/8 (cos 15° − cos 30°).
    for (const [, room] of rooms(top("with: figure-eight fasteners"), "front-rail"))
      expect(room).toBeCloseTo((5 / 8) * (Math.cos(Math.PI / 12) - Math.cos(Math.PI / 6)), 3);
  });

  it("need 11/16 in of rail", () => {
    expect(errorsOf(top("with: figure-eight fasteners", "5/8"))[0]).toMatch(/5\/8 in thick, and needs 11\/16 in/);
  });
});

it("a clip's kerf is 1/8 in wide", () => {
  const { parts } = soundDesign(top("with: clips, gap: 1/8"));
  const kerf = parts.find(({ id }) => id === "back-rail")?.features.find(({ kind }) => kind === "groove");
  expect(kerf && "size" in kerf ? kerf.size.map(inch) : null).toEqual([28, 1 / 8, 3 / 8]);
});

it("wood can be held only along its grain", () => {
  expect(errorsOf(top("with: slotted screws, hold still: left", "1", "1 1/4"))[0]).toMatch(/^hold-still-along-grain/);
});
