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
