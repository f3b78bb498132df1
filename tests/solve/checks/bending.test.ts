import { describe, expect, test } from "vitest";
import { judge, shelf, table } from "./plan.ts";

const INCH = 25.4;

describe("a shelf", () => {
  // Between the sides: 36 in less 2 × 3/4; 20 lb for each foot; white oak 1.78·10⁶ psi; half as much again for creep.
  const SPAN = 34.5;
  const byHand = (thick: number, psi: number): number => {
    const load = (20 / 12) * SPAN;
    return (1.5 * 5 * load * SPAN ** 3) / (384 * psi * ((11.25 * thick ** 3) / 12));
  };
  const OAK = "wood: white oak, sold as: 4/4, planed to: 3/4, widths: 8 to 16";

  test("of oak under books sags as the beam says, and is told with what would do", () => {
    const { of, told } = judge(shelf(OAK, "36", "carries: books"));
    const check = of("shelf-sags", "shelf");
    expect((check?.value ?? 0) / INCH).toBeCloseTo(byHand(0.75, 1.78e6), 4);
    expect((check?.limit ?? 0) / INCH).toBeCloseTo((0.02 * SPAN) / 12, 6);
    expect(check?.verdict).toBe("warns");
    const [finding] = told("shelf-sags");
    // 3/4 × ∛(0.0655 / 0.0575) = 0.783, to the next eighth; sag goes with L⁴, the limit with L: 34.5 × ∛(0.0575 / 0.0655) = 33.03
    expect(finding?.help).toMatch(/7\/8 in thick.*longer than 33 in.*a strip of wood 3\/4 in thick and/);
  });

  test("thicker, shorter or with nothing on it it holds, and says so", () => {
    const verdict = (text: string) => judge(text).of("shelf-sags", "shelf")?.verdict;
    expect(verdict(shelf(OAK.replace("to: 3/4", "to: 7/8"), "36", "carries: books"))).toBe("holds");
    expect(verdict(shelf(OAK, "33 1/2", "carries: books"))).toBe("holds");
    expect(verdict(shelf(OAK, "36", "carries: clothes"))).toBe("holds");
    expect(verdict(shelf(OAK, "36", "carries: nothing"))).toBe(undefined);
    expect(verdict(shelf(OAK, "36", ""))).toBe(undefined);
  });

  test("a part's own load counts before the plan's", () => {
    const text = shelf(OAK, "36", "carries: nothing").replace("bottom: 15 }", "bottom: 15, carries: 60 lb }");
    // 60 lb over 34.5 in
    const byMass = (1.5 * 5 * 60 * SPAN ** 3) / (384 * 1.78e6 * ((11.25 * 0.75 ** 3) / 12));
    expect((judge(text).of("shelf-sags", "shelf")?.value ?? 0) / INCH).toBeCloseTo(byMass, 4);
  });

  test("of MDF it sags more, by the stiffness of 2.5 GPa", () => {
    const { of } = judge(shelf("sold as: 3/4 MDF, measures: 3/4", "36", "carries: books"));
    expect((of("shelf-sags", "shelf")?.value ?? 0) / INCH).toBeCloseTo(byHand(0.75, (2.5 / 6.894757) * 1e6), 4);
  });

  test("a cleat under the middle halves the span", () => {
    const held = shelf(OAK, "60", "carries: books")
      .replace("joints:", "joints:\n  - { join: prop, to: shelf, with: screws, from: shelf, count: 2 }")
      .replace(
        "joints:",
        "  prop: { made of: sides, as: upright, facing: left, grain: up, across: middle, front: 0, back: outside.back, bottom: 0, under: shelf }\njoints:",
      );
    // (60 - 3 × 3/4) / 2
    expect((judge(held).of("shelf-sags", "shelf")?.limit ?? 0) / INCH).toBeCloseTo((0.02 * 28.875) / 12, 4);
  });
});

describe("a seat", () => {
  const seated = (seats: string) =>
    judge(table("  - { join: [front-rail, back-rail], to: table-top, with: glue }", "", `used for: ${seats}`));

  test("its weight goes through the top to both rails, half to each", () => {
    const { of } = seated("{ seats: 2, each weighs: 200 lb }");
    // Span 40 - 2 - 2 × 2 1/4; the load of 400 lb lies evenly over the rail's own length; 1 × 3 in, 1.78·10⁶ psi.
    const span = 33.5;
    const byHand = (5 * 200 * span ** 3) / (384 * 1.78e6 * ((1 * 27) / 12));
    const check = of("seat-bends", "front-rail");
    expect((check?.value ?? 0) / INCH).toBeCloseTo(byHand, 3);
    expect((check?.limit ?? 0) / INCH).toBeCloseTo(span / 360, 5);
    expect(check?.verdict).toBe("holds");
    expect(of("seat-bends", "back-rail")?.value).toBeCloseTo(check?.value ?? 0, 6);
    expect(of("seat-bends", "table-top")?.verdict).toBe("holds");
  });

  test("too many people are told, with the width that would do", () => {
    const [finding] = seated("{ seats: 10, each weighs: 250 lb }").told("seat-bends");
    expect(finding?.message).toMatch(/rail bends .* under 10 people of 250 lb each/);
    expect(finding?.help).toMatch(/at least .* in wide/);
  });

  test("nobody of whom nothing is said weighs other than 200 lb", () => {
    const value = (seats: string) => seated(seats).of("seat-bends", "front-rail")?.value;
    expect(value("{ seats: 2 }")).toBeCloseTo(value("{ seats: 2, each weighs: 200 lb }") ?? 0, 6);
  });
});

/** A chest that is sat on: its lid lies on its walls, however it is held. */
const chest = (lid: string, seats: string): string => `plan: 1
title: Box bench for the reading corner
units: inch
outside: { width: 36, depth: 16, height: 18 }
used for: ${seats}
stock:
  board: { sold as: 4/4, wood: eastern white pine, planed to: 3/4, widths: 5 to 8 }
piece:
  chest: { kind: box, made of: board, boards: 3, join: box joint, bottom panel: board }
  lid: { kind: chest-lid, made of: board, boards: 3, on: chest${lid} }
`;

describe("a chest that is sat on", () => {
  const HINGED =
    ", form: slab with battens, hinged to: chest.back-panel, support: lid support, supported from: chest.left-side";
  test.each([HINGED, ", form: slab with battens, hinge: loose, hinged to: chest.back-panel"])(
    "bends in its lid between its walls",
    (lid) => {
      const { of, told } = judge(chest(lid, "{ seats: 3, each weighs: 900 lb }"));
      const check = of("seat-bends", "lid.slab");
      // From front to back between 3/4 in walls, 16 − 1 1/2: a 360th of 14 1/2 in.
      expect((check?.limit ?? 0) / INCH).toBeCloseTo(14.5 / 360, 4);
      expect(check?.verdict).toBe("warns");
      expect(told("seat-bends")[0]?.message).toContain("3 people of 900 lb each");
      expect(judge(chest(lid, "{ seats: 1, each weighs: 50 lb }")).of("seat-bends", "lid.slab")?.verdict).toBe("holds");
    },
  );
  test("says what it cannot check", () => {
    const { told } = judge(chest(HINGED, "{ seats: 3, on: chest.left-side }"));
    expect(told("seat-not-checked")).toHaveLength(0);
    const upright = judge(
      table(
        "  - { join: [front-rail, back-rail], to: table-top, with: glue }",
        "",
        "used for: { seats: 1, on: front-left-leg }",
      ),
    );
    expect(upright.told("seat-not-checked").map(({ severity }) => severity)).toEqual(["advice"]);
  });
});

/** A bookcase of 3/4 birch plywood (23/32): what stands in front of its one opening, and what that holds. */
const bookcase = (holds: string, more = "", frame = ""): string => `plan: 1
title: Bookcase for the tool library
units: inch
outside: { width: 47 1/2, depth: 12, height: 24 }
${more}
stock:
  ply: { sold as: 3/4 birch plywood, measures: 23/32 }
  oak: { sold as: 4/4, wood: red oak, planed to: 3/4, widths: 4 to 8 }
piece:
  cabinet:
    kind: case
    made of: ply
    ${frame === "" ? `openings: { down: [ { high: the rest, ${holds} } ] }` : `front: 3/4\n    openings: { behind: face }`}
${frame}`;

const SHELF = "cabinet.opening-1-loose-shelf-1";

describe("a shelf on pins", () => {
  // Between the points of the pins, which reach 3/8 in out of the sides: 47 1/2 − 2 × 23/32 − 2 × 3/8 = 45.3125; its ends stand 1/16 off the
  // sides. Plywood 7.92 GPa, the middle of the five lay-ups of J. Korean Wood Sci. Tech. 53(4), Table 3; half as much again for creep.
  const psi = (7.92 / 6.894757) * 1e6;
  const span = 47.5 - 2 * (23 / 32) - 0.75;
  const broad = 12 - 1 / 8;
  const byHand = (pounds: number): number =>
    (1.5 * 5 * pounds * (span / (47.5 - 2 * (23 / 32) - 1 / 8)) * span ** 3) /
    (384 * psi * ((broad * (23 / 32) ** 3) / 12));
  const loose = (more: string, plan = "") => judge(bookcase(`shelves: { loose: 1${more} }`, plan));

  test("bends from pins to pins, and is told", () => {
    const { of, told } = loose(", carries: 60 lb");
    const check = of("shelf-sags", SHELF);
    expect((check?.value ?? 0) / INCH / byHand(60)).toBeCloseTo(1, 2);
    expect((check?.limit ?? 0) / INCH).toBeCloseTo((0.02 * span) / 12, 2);
    expect(told("shelf-sags")).toHaveLength(1);
  });
  test("with little on it holds", () => {
    expect(loose(", carries: 8 lb").of("shelf-sags", SHELF)?.verdict).toBe("holds");
  });
  test("carries what the plan says, and is told beside other boards of its case", () => {
    const places = loose("", "carries: books").told("shelf-sags");
    expect(places.map(({ message }) => message).join()).toMatch(/loose-shelf-1/u);
  });
  test("with a lip glued along its front is stiffer by that, as one section about its common middle", () => {
    const { of } = loose(", carries: 60 lb, front edge: { lip: oak, high: 2 }");
    // Board 11 1/8 × 23/32, lip 3/4 × 2 of red oak, 1.82·10⁶ psi, tops flush; transformed section, any handbook.
    const [t, b, n] = [23 / 32, broad - 0.75, 1.82e6 / psi];
    const [a1, a2] = [b * t, n * 0.75 * 2];
    const y = (a1 * (t / 2) + a2 * 1) / (a1 + a2);
    const inertia = (b * t ** 3) / 12 + a1 * (t / 2 - y) ** 2 + (n * 0.75 * 8) / 12 + a2 * (1 - y) ** 2;
    const plain = (broad * t ** 3) / 12;
    const check = of("shelf-sags", SHELF);
    expect((check?.value ?? 0) / INCH / ((byHand(60) * plain) / inertia)).toBeCloseTo(1, 2);
    expect(check?.basis).toMatch(/with what is glued along it/u);
  });
  test("the height of strip that the help names would do", () => {
    const [finding] = loose(", carries: 60 lb").told("shelf-sags");
    const high = /thick and (\S+(?: \S+)?) in high/u.exec(finding?.help ?? "")?.[1];
    const strip = (height: string) => loose(`, carries: 60 lb, front edge: { lip: ply, high: ${height} }`);
    expect(strip(high ?? "0").of("shelf-sags", SHELF)?.verdict).toBe("holds");
    expect(strip("1 1/2").of("shelf-sags", SHELF)?.verdict).toBe("warns");
  });
});

describe("the bottom of a case", () => {
  const bottom = (more: string) => judge(bookcase("name: bay", `carries: 300 lb${more}`)).of;
  test("that lies on the floor does not bend", () => {
    expect(bottom("")("shelf-sags", "cabinet.bottom-panel")).toBe(undefined);
  });
  test("held off the floor it bends from side to side", () => {
    const text = bookcase("name: bay", "carries: 300 lb").replace(
      "    made of: ply\n",
      "    made of: ply\n    bottom panel: { up: 2 }\n",
    );
    expect(judge(text).of("shelf-sags", "cabinet.bottom-panel")?.verdict).toBe("warns");
  });
  test("on a base it bends across it, from the front of the base to its back", () => {
    const text = bookcase("name: bay", "carries: 300 lb")
      .replace("    made of: ply\n", "    made of: ply\n    on: base\n")
      .replace(
        "piece:\n",
        "piece:\n  base: { kind: base, made of: ply, form: toe-kick, high: 4, in at the front: 2 }\n",
      );
    const check = judge(text).of("shelf-sags", "cabinet.bottom-panel");
    expect(check?.verdict).toBe("holds");
    expect((check?.limit ?? 0) / INCH).toBeLessThan((0.02 * 12) / 12);
  });
});

test("the rail of a face frame that is glued along a fixed shelf is counted", () => {
  const frame = (fixed: string) => `  face:
    kind: face-frame
    made of: oak
    case: cabinet
    to the case: { with: ${fixed} }
    openings: { down: [ { high: equal }, { high: equal } ] }
`;
  const sag = (fixed: string): number =>
    judge(bookcase("", "carries: books", frame(fixed))).of("shelf-sags", "cabinet.divider-1")?.value ?? 0;
  const [glued, screwed] = [sag("glue"), sag("nails")];
  // Board 11 1/4 × 23/32 behind a rail 3/4 × 1 1/2 whose top is flush with it or not: 2.4 times as stiff and more; nails alone slip.
  expect(screwed / glued).toBeGreaterThan(2);
});
