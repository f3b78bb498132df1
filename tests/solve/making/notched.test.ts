/** What comes down over posts that stand is marked from them (common practice, no source). */
import { expect, test } from "vitest";
import { built, plain, stepWith } from "./plans.ts";

/** A frame of four posts 2 × 2 with rails, and a shelf with a notch for each of the `corners`. */
const stand = (corners: readonly string[], play = "1/16"): string => `plan: 1
title: Stand for jars
units: inch
outside: { width: 20, depth: 14, height: 24 }
stock:
  posts: { wood: white oak, sold as: 10/4, planed to: { thick: 2, wide: 2 } }
  rails: { wood: white oak, sold as: 5/4, planed to: 3/4, widths: 4 to 8 }
  wood: { sold as: 3/4 MDF }
piece:
  left-front-post: { called: post, made of: posts, as: upright, left: 0, front: 0, bottom: 0, top: 24 }
  right-front-post: { mirror of: left-front-post, about: across }
  left-back-post: { mirror of: left-front-post, about: deep }
  right-back-post: { mirror of: right-front-post, about: deep }
  front-rail: { made of: rails, as: on edge, facing: front, between: [left-front-post, right-front-post], front: 1/2, bottom: 10, up: 3 }
  back-rail: { mirror of: front-rail, about: deep }
  left-rail: { made of: rails, as: on edge, facing: left, between: [left-front-post, left-back-post], left: 1/2, bottom: 10, up: 3 }
  right-rail: { mirror of: left-rail, about: across }
  shelf: { made of: wood, as: lying flat, grain: across, left: 0, right: ${corners.length > 1 ? 20 : 18}, front: 0, back: ${corners.length > 1 ? 14 : 12}, on: front-rail, notch: [
    ${corners.map((at) => `{ at: ${at}, wide: 2, deep: 2 + ${play} }`).join(", ")}] }
joints:
  - { join: [front-rail, back-rail, left-rail, right-rail], to: [left-front-post, right-front-post, left-back-post, right-back-post], with: dowels }
  - { join: shelf, to: front-rail, with: glue }
`;
const FOUR = ["left front", "right front", "left back", "right back"];

// Notches 2 1/16 deep for posts 2 deep leave 1/16; in the length they are as wide as the posts.
test("notches round posts are marked from those, and sawn larger by their play", () => {
  const text = plain(stepWith(built(stand(FOUR)), "Cut the shelf").text.join(" "));
  expect(text).toMatch(/Measure how far two posts \(.\) and two posts \(.\) stand into that/u);
  expect(text).toContain("Saw them larger than that by their play: 1/16 in across its width.");
  expect(text).not.toContain("along its length");
});

test("without play they are sawn as they are drawn", () => {
  const text = plain(stepWith(built(stand(FOUR, "0")), "Cut the shelf").text.join(" "));
  expect(text).toContain("Notches: before it has them it does not get to its place.");
  expect(text).not.toContain("by their play");
});

test("one notch alone is cut by its figures: no distance to another has to fit", () => {
  const { steps } = built(stand(["left front"]));
  expect(steps.flatMap(({ text }) => text).join(" ")).not.toContain("mark them from");
});
