/** Where work lies, what stays in it, and where a drill has no room, in the words of the examples. */
import { describe, expect, test } from "vitest";
import { sayWeight } from "../../../src/solve/build/cut-list/weight.ts";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

// Its side tapers for 12 3/4 of its 16 in: on the rest of it, 3 1/4 in, nothing so high lies.
test("work does not lie on a front that slopes away", () => {
  const text = textOfStep(stepWith(built("old-plans/wall-shelf"), /^Glue in the left side/u));
  expect(text).toContain("clear of the left side (C) and the right side (D)");
});

test("shelves that do not come out are carried with the piece, and go in from below upwards", () => {
  const build = built("old-plans/bookcase");
  const loose = build.parts.filter(({ id }) => id.startsWith("shelf."));
  const doors = build.parts.filter(({ id }) => /^(?:left|right)-(?:door|lattice)\./u.test(id));
  const kg = build.parts.reduce((so, { mass }) => so + mass, 0) - doors.reduce((so, { mass }) => so + mass, 0);
  expect(loose).toHaveLength(3);
  const carried = textOfStep(stepWith(build, /^Fit the wall strap/u));
  expect(carried).toContain(`so it weighs about ${plain(sayWeight(kg, "inch"))}`);
  expect(carried).toContain("tape three shelves (V) to the pins");
  expect(carried).not.toContain("while it is empty");
  expect(textOfStep(stepWith(build, /^Add three shelves/u))).toContain("the lowest first and the highest last");
});

// The brace leans over the rail: its foot stands 9 mm from one of three holes.
test("a head with little room is told by its place, and its pilot hole with it", () => {
  const text = textOfStep(stepWith(built("workbench-cart"), /^Screw on the shelf/u));
  expect(text).toMatch(/behind the head into the back lower rail \(.\), \d+ mm from the left end of the shelf/u);
  expect(text).toContain("use a right-angle driver there, for its pilot hole too");
});

describe("a bookcase whose bottom and top hang together by a post of 2 in", () => {
  const step = () => stepWith(built("old-plans/bookcase"), /^Screw on the top back board/u);

  // Lying on its front, what is screwed to the back edge of the top would be held 14 in above the bench; on its back it lies there.
  test("is laid on its back for what would be held in the air", () => {
    expect(step().up).toEqual([0, -1, 0]);
    expect(textOfStep(step())).toContain("Lay the work down on its back.");
  });

  test("is turned by two, when its glue is hard", () => {
    const { steps } = built("old-plans/bookcase");
    const glued = stepWith(built("old-plans/bookcase"), /^Glue in the top board/u);
    const said = steps.filter(({ cautions }) => cautions.some((each) => each.includes("hangs together by")));
    expect(said.map(({ number }) => number)).toEqual([step().number]);
    expect(said[0]?.cautions.map(plain).join(" ")).toContain(
      "by the center piece (C) alone: turn it with a second person",
    );
    expect(said[0]?.hands).toBe(2);
    expect((said[0]?.start ?? 0) - glued.end).toBeGreaterThanOrEqual(24 * 60);
  });

  // A post that is joined along its length to both sides, and a rail between two legs that weigh less.
  test("what is stiff or light is turned by one", () => {
    for (const name of ["old-plans/library-table", "old-plans/china-closet"])
      expect(
        built(name)
          .steps.flatMap(({ cautions }) => cautions)
          .join(),
      ).not.toContain("hangs together by");
  });
});
