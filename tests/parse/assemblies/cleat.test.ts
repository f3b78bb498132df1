import { describe, expect, test } from "vitest";
import { toInches } from "../../../src/units/length.ts";
import { solveText } from "../../examples/compiled.ts";
import { partsOf, sound } from "./opened.ts";

/** A cabinet for the wall of the glue corner, 38 in wide; the plywood measures 23/32 (common practice, no source). */
const cabinet = (
  hanging: string,
  { wall = "", width = "38", back = "groove 1/4 deep, in from the back: 3/4" } = {},
) => `plan: 1
title: Cabinet for glues
units: inch
outside: { width: ${width}, depth: 7, height: 16 }
${wall}
stock:
  ply: { sold as: 3/4 birch plywood, measures: 23/32 }
  thin: { sold as: 1/4 birch plywood, measures: 7/32 }
  oak: { wood: white oak, sold as: 4/4, planed to: 3/4, widths: 4 to 8 }
piece:
  cabinet: { kind: case, made of: ply, join: screws, back: { made of: thin, in: ${back} } }
  hanging: { kind: cleat, made of: oak, case: cabinet, ${hanging} }
`;
const PAIR = "form: bevelled pair";

describe("a bevelled pair of cleats", () => {
  test("has the room that it takes behind the back, where nothing else is said of that", () => {
    const text = cabinet(PAIR, { back: "" }).replace("back: { made of: thin, in:  }", "back: thin");
    const { design } = sound(text);
    const back = design.parts.find(({ id }) => id === "cabinet.back-panel")?.body.high[1];
    const upper = design.parts.find(({ id }) => id === "hanging.upper-cleat")?.body.low[1];
    // The oak is 3/4 thick, the piece 7 deep.
    expect([back, upper].map((at) => toInches(at as never))).toEqual([6.25, 6.25]);
  });
  test.each([
    ["groove, in from the back: 1/2", /make `in from the back` of the back 1\/4 in more/],
    ["rabbet", /let the back in by a groove/],
  ])("a back in a %s in their place is told with what moves it", (back, help) => {
    const { findings } = solveText(cabinet(PAIR, { back }));
    expect(findings.find(({ rule }) => rule === "parts-overlap")?.help).toMatch(help);
  });
  test("lies between the sides, the one on the wall 3/4 short of each", () => {
    // 38 − 2 × 23/32 = 36 9/16; less 2 × 3/4 = 35 1/16.
    const parts = partsOf(cabinet(PAIR));
    expect(parts["hanging.upper-cleat"]).toBe("3/4 × 3 × 36 9/16");
    expect(parts["hanging.spacer"]).toBe("3/4 × 3 × 36 9/16");
    expect(parts["hanging.wall-cleat"]).toBe("3/4 × 3 × 35 1/16");
  });
  test("has bevels that lie on each other, and reaches over by as much as it is thick", () => {
    const { design } = sound(cabinet(PAIR));
    const part = (id: string) => design.parts.find((each) => each.id === `hanging.${id}`);
    const [upper, wall] = [part("upper-cleat"), part("wall-cleat")];
    expect(toInches(upper?.body.low[2] as never)).toBe(16 - 23 / 32 - 3);
    expect(toInches(wall?.body.high[2] as never)).toBe(16 - 23 / 32 - 3 + 3 / 4);
    const [joint] = design.joints.filter(({ method }) => method === "hangs on");
    expect(joint?.kind).toBe("resting");
    // 45 degrees.
    for (const { normal } of joint?.contact ?? []) expect(Math.abs(normal[2])).toBeCloseTo(Math.SQRT1_2, 12);
    expect(joint?.contact).toHaveLength(1);
  });
  test("is screwed to the wall first; then the piece comes down along the bevel", () => {
    const { steps } = sound(cabinet(PAIR));
    const [screwed, hung] = steps.slice(-2);
    expect(screwed?.title).toMatch(/^Screw the wall cleat \(.\) to the wall$/);
    expect(hung?.title).toBe("Hang the piece on the wall");
    const [first, second] = hung?.actions.filter((action) => action.do === "add") ?? [];
    expect([first?.parts, first?.to]).toEqual([["hanging.wall-cleat"], []]);
    expect(second?.parts).toHaveLength(7);
    expect(second?.legs).toEqual([
      { along: [0, expect.closeTo(Math.SQRT1_2), expect.closeTo(-Math.SQRT1_2)], distance: null },
    ]);
    expect(screwed?.cautions.join(" ")).toContain("yours to judge");
  });
  test("comes after everything else, finish included", () => {
    const { steps } = sound(cabinet(PAIR, { wall: "finish: { with: hard oil, coats: 2 }" }));
    expect(steps.slice(-3).map(({ kind }) => kind)).toEqual(["finish", "fit", "join"]);
    expect(steps.some(({ kind }) => kind === "take-off")).toBe(false);
  });
});

describe("wall screws", () => {
  const screws = (text: string) => {
    const { build } = solveText(text);
    return build?.hardware.filter(({ item }) => item.kind === "wall screw") ?? [];
  };
  test("stand as far apart as the studs, about the middle: 8 either way of 19", () => {
    const found = screws(cabinet(PAIR));
    expect(found.map(({ at }) => toInches(at[0]))).toEqual([3, 19, 35].map((x) => expect.closeTo(x)));
    expect(screws(cabinet(PAIR, { wall: "wall: { studs apart: 24 }" })).map(({ at }) => toInches(at[0]))).toEqual([
      7, 31,
    ]);
  });
  test("lie sunk in the cleat behind the back, and stand out of a rail before it", () => {
    const [sunk] = screws(cabinet(PAIR));
    expect(sunk?.solid.pieces).toEqual([]);
    const { build } = solveText(cabinet("form: rail", { back: "rabbet" }));
    const [head] = build?.hardware ?? [];
    expect(head?.solid.pieces.length).toBeGreaterThan(0);
    // Rail and back are bored through.
    expect(build?.holes.filter((hole) => hole.for === head?.id).map(({ part }) => part)).toEqual([
      "hanging.rail",
      "cabinet.back-panel",
    ]);
  });
  test("want two studs behind what they go through, wherever it hangs", () => {
    const check = (text: string) => solveText(text).build?.checks.find(({ rule }) => rule === "only-one-stud");
    // 35 1/16 / 16 = 2.19; 21 1/16 / 16 = 1.32; 21 1/16 / 10 1/2 = 2.01.
    expect(check(cabinet(PAIR))).toMatchObject({ verdict: "holds", limit: 2, value: expect.closeTo(35.0625 / 16) });
    expect(check(cabinet(PAIR, { width: "24" }))).toMatchObject({
      verdict: "warns",
      value: expect.closeTo(21.0625 / 16),
    });
    expect(check(cabinet(PAIR, { width: "24", wall: "wall: { studs apart: 10 1/2 }" }))).toMatchObject({
      verdict: "holds",
    });
    expect(check(cabinet(PAIR, { width: "24", wall: "wall: solid" }))).toBeUndefined();
    const { findings } = solveText(cabinet(PAIR, { width: "24" }));
    // The first of two lies at least 1/2 from an end, and at most 21 1/16 − 16 − 1/2.
    expect(findings.map(({ help }) => help).join()).toContain("from 1/2 in to 4 9/16 in from its end");
  });
  const along = (text: string) =>
    (solveText(text).build?.hardware ?? [])
      .filter(({ item }) => item.kind === "wall screw")
      .map(({ at }) => toInches(at[0]));
  const missed = (text: string) => solveText(text).build?.checks.find(({ rule }) => rule === "wall-screws-miss-studs");
  test("have a screw for each of two studs as soon as both ends leave 1/2 in", () => {
    // 17 1/16 long, in a cabinet 20 wide: 10 ± 8. Where 16 1/16 is left, only one.
    expect(along(cabinet(PAIR, { width: "20" }))).toEqual([2, 18]);
    expect(along(cabinet(PAIR, { width: "19" }))).toEqual([9.5]);
    expect(missed(cabinet(PAIR, { width: "20" }))).toMatchObject({ verdict: "holds", value: 2 });
    const { findings } = solveText(cabinet(PAIR, { width: "19" }));
    expect(findings.find(({ rule }) => rule === "only-one-stud")?.help).not.toContain("accept");
  });
  test("stand whole distances of studs apart where their number is said", () => {
    expect(along(cabinet(`${PAIR}, count: 2`, { width: "20" }))).toEqual([2, 18]);
    // 35 1/16 long: there is room for two distances.
    expect(along(cabinet(`${PAIR}, count: 2`))).toEqual([3, 35]);
    expect(missed(cabinet(`${PAIR}, count: 2`))).toMatchObject({ verdict: "holds", value: 2 });
  });
  test("are told of when they cannot be in studs, or are all in one", () => {
    // Three share 17 1/16: 5 11/16 apart; no two of them are 16 apart.
    expect(missed(cabinet(`${PAIR}, count: 3`, { width: "20" }))).toMatchObject({ verdict: "warns", value: 1 });
    expect(missed(cabinet(`${PAIR}, count: 1`))).toMatchObject({ verdict: "warns", value: 1, limit: 2 });
    expect(missed(cabinet(`${PAIR}, count: 3`, { wall: "wall: solid" }))).toBeUndefined();
  });
});
