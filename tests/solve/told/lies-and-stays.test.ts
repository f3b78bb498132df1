/** Where work lies, what stays in it, and where a drill has no room, in the words of the examples. */
import { expect, test } from "vitest";
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
  expect(text).toContain("and for its pilot hole a drill bit in an extension as long");
});
