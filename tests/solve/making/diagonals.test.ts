/** A frame is proved square by the corners that it has when it is closed: expected values are worked out by hand from the sizes in the plans. */
import { describe, expect, test } from "vitest";
import { built, solveText, textOf } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "../told/examples.ts";
import { plain } from "./plans.ts";

/** The sentences about diagonals, as printed, with the titles of their steps. */
const toldIn = (name: string): readonly (readonly [string, string])[] =>
  (solveText(textOf(name)).build?.steps ?? []).flatMap(({ title, text }) =>
    text.filter((each) => each.includes("from corner to corner")).map((each) => [title, plain(each)] as const),
  );

describe("diagonals are those between corners that are there", () => {
  const cabinet = toldIn("index-cabinet");

  // Top panel and fixed shelf are 34 9/16 between the sides and go 1/4 into each: 35 1/16; 8 21/32 over both. √(35.0625² + 8.65625²) = 36.115.
  test("tongues that still stand out are measured with the rest", () => {
    expect(cabinet).toContainEqual([
      "Build the cabinet",
      "Check that it is square: measure across its front from corner to corner, outside. Both diagonals are 36 1/8 in, equal within 1/8 in.",
    ]);
  });

  // The sides are 31 apart outside and 16 high; in front they are 2 in narrower at the top. √(31² + 16²) = 34.885.
  test("what tapers in front is measured across its back", () => {
    const [told, ...others] = toldIn("old-plans/wall-shelf");
    expect(told?.[1]).toContain(
      "Check that it is square: measure across its back from corner to corner, outside. Both diagonals are 34 7/8 in, equal within 1/16 in.",
    );
    expect(others).toEqual([]);
  });

  // Feet that taper have no sharp corner outside: posts 1 1/4 wide stand 12 1/2 apart outside, rails leave 10 between them. √(10² + 10²) = 14.142.
  // Their tops are square: √(12.5² + 12.5²) = 17.678.
  test("an end whose posts taper at their feet is measured inside, the whole across its top; its own top slides, and keeps nothing", () => {
    expect(toldIn("old-plans/plant-stand")).toEqual([
      [
        "Glue up the post (B), the rail (E), the lower rail (F) and the post (A)",
        "Check that it is square: measure inside, from corner to corner of the room between the post (B), the post (A), the lower rail (F) and the rail (E). Both diagonals are 14 1/8 in, equal within 1/16 in.",
      ],
      [
        "Add the frame from step 13",
        "Check that it is square: measure across its top from corner to corner, outside. Both diagonals are 17 11/16 in, equal within 1/16 in.",
      ],
    ]);
  });

  test("what stands between two others in dados is proved square to them", () => {
    const step = solveText(textOf("manuals-bookcase")).build?.steps.find(({ title }) =>
      title.startsWith("Glue in the divider"),
    );
    expect(step?.text.map(plain)).toContain(
      "Check with a square, along and across, that the divider (C) stands square to what it is glued to, and shift the clamps until it does.",
    );
  });
});

describe("in a bench whose ends are put together first", () => {
  const bench = toldIn("old-plans/piano-bench");
  const of = (title: string): string => bench.find(([each]) => each === title)?.[1] ?? "";

  // Rails are 10 between the posts; from 3 3/4 to 19 1/2 up. √(10² + 15.75²) = 18.656.
  test("rails with bare tenons are measured between their shoulders", () => {
    expect(of("Build the left end")).toBe(
      "Check that it is square: measure from corner to corner of the shoulders: the tenons stand out past them. Both diagonals are 18 11/16 in, equal within 1/16 in.",
    );
  });

  // Posts stand 36 apart outside and are 19 1/2 long: √(36² + 19.5²) = 40.942.
  test("the second end closes it; a top on buttons keeps nothing as it finds it", () => {
    expect(of("Add the right end")).toContain("measure across its front from corner to corner, outside");
    // The other end is told as the first, mirrored.
    expect(bench.map(([title]) => title)).toEqual([
      "Build the left end",
      "Glue in the post (A) and the frame post (B)",
      "Add the right end",
    ]);
  });
});

describe("a frame is proved in the step that closes it, across its own plane", () => {
  const table = toldIn("old-plans/library-table");
  const of = (title: string): string => table.find(([each]) => each.startsWith(title))?.[1] ?? "";

  // Legs stand 41 apart outside and are 30 1/4 long: √(41² + 30.25²) = 50.952.
  test("two legs with a rail at their tops, by the corners of the legs, and not again when shelves go on elsewhere", () => {
    expect(of("Glue up two legs")).toBe(
      "Check that it is square: measure from corner to corner of two legs (A), outside. Both diagonals are 50 15/16 in, equal within 1/8 in.",
    );
    expect(of("Glue in four shelves")).toBe("");
    expect(textOfStep(stepWith(built("old-plans/library-table"), /^Glue in four shelves/u))).toContain(
      "that the four shelves (H) stand square",
    );
  });

  // 41 × 29 1/2 above: √(41² + 29.5²) = 50.510; the sides 29 1/2 × 30 1/4: √(29.5² + 30.25²) = 42.253.
  test("a table across its top and both of its sides", () => {
    expect(of("Add the frame from step")).toBe(
      "Check that it is square: measure across its top from corner to corner, outside. Both diagonals are 50 1/2 in, equal within 1/8 in. Measure across its left and its right too: 42 1/4 in both ways, equal within 1/8 in.",
    );
  });

  // Drawers 24 7/8 wide, sides 14 long: √(24.875² + 14²) = 28.545. They lie on their tops, and the fronts hang down past the sides.
  test("a drawer on the side that lies uppermost, without its front as with it", () => {
    expect(of("Build the two drawers")).toContain(
      "from corner to corner of two sides (P), outside. Both diagonals are 28 9/16 in",
    );
    expect(of("Glue in the box front")).toContain("across its bottom from corner to corner of two sides (P), outside");
  });
});

describe("while it can still be put right", () => {
  const chest = solveText(textOf("rope-chest")).build?.steps.find(({ title }) => title === "Build the chest");
  const texts = (chest?.text ?? []).map(plain);

  // The chest is 39 × 19 1/2 outside: √(39² + 19.5²) = 43.603.
  test("a frame is proved on the side that lies uppermost, before its bottom is glued in", () => {
    const proof = texts.indexOf(
      "Check that it is square: measure across its bottom from corner to corner, outside. Both diagonals are 43 5/8 in, equal within 1/8 in.",
    );
    expect(chest?.up).toEqual([0, 0, -1]);
    expect(proof).toBeGreaterThan(texts.findIndex((text) => text.startsWith("Clamp across the corners")));
    expect(texts.findIndex((text) => text.startsWith("Set the bottom panel"))).toBeGreaterThan(proof);
  });

  test("a lid that is hung proves nothing of its chest", () => {
    const hung = toldIn("old-plans/cedar-chest").filter(([title]) => title.startsWith("Hang"));
    expect(hung).toEqual([]);
  });
});

describe("a case past whose sides other parts reach is proved by the corners of those", () => {
  const of = (told: readonly (readonly [string, string])[], title: string): string =>
    told.find(([each]) => each.startsWith(title))?.[1] ?? "";

  // Sides 50 high, 28 3/4 + 2 × 3/4 apart outside, under a top that overhangs them: √(50² + 30.25²) = 58.439.
  test("of the bookcase when its second side is on, and once more before its backing", () => {
    const told = toldIn("old-plans/bookcase");
    expect(of(told, "Screw on the right side")).toContain(
      "Check that it is square: measure across its front from corner to corner of the left side (A) and the right side (B), outside. Both diagonals are 58 7/16 in, equal within 1/8 in.",
    );
    expect(told.filter(([, text]) => text.includes("once more, 58 7/16 in both ways")).map(([title]) => title)).toEqual(
      ["Add eleven lower backings (W)"],
    );
    // It was laid on its front to cut what goes on: the outer corners of its sides are 50 × 30.25 in apart behind too.
    expect(of(told, "Add eleven lower backings")).toContain("measure across its back from corner to corner once more");
  });

  // Posts 54 high and 42 apart outside: √(54² + 42²) = 68.41.
  test("of posts that boards close side by side, before the first of those", () => {
    const told = toldIn("old-plans/china-closet");
    expect(told.filter(([, text]) => text.includes("once more, 68 7/16 in both ways")).map(([title]) => title)).toEqual(
      ["Nail on the left back board (U)"],
    );
  });

  test("what goes into an opening is cut when the backing keeps the case square", () => {
    const { build } = solveText(textOf("old-plans/bookcase"));
    const places = ["Cut the parts of two doors", "Add eleven lower backings"].map((title) =>
      build?.steps.findIndex((step) => step.title.startsWith(title)),
    ) as [number, number];
    expect(places[1]).toBeGreaterThan(0);
    expect(places[0]).toBeGreaterThan(places[1]);
  });

  // Sides 57 high over a plinth that is set back, 36 wide outside: √(57² + 36²) = 67.417.
  test("of the manuals bookcase over its plinth, and before its back", () => {
    const told = toldIn("manuals-bookcase");
    expect(of(told, "Glue in the left side (A) and the right side (B)")).toContain(
      "Both diagonals are 67 7/16 in, equal within 1/8 in",
    );
    expect(of(told, "Nail on the back panel")).toContain("across its back from corner to corner once more, 67 7/16 in");
  });
});
