/** What a builder could turn, and all joints of the step would close all the same, is told; what the joints force is not. */
import { describe, expect, test } from "vitest";
import { built, solveText } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

/** Two posts and a rail between them, its tenons in the middle of its thickness and of its width. */
const frame = ({ rail = "", post = "", bottom = 7, shoulders = "" } = {}): string => {
  const { build, findings } = solveText(`plan: 1
title: Frame
units: inch
stock: { wood: { wood: oak, sold as: 8/4, planed to: 1 1/2 }, thin: { wood: oak, sold as: 4/4, planed to: 3/4 } }
piece:
  left-post: { made of: wood, as: upright, facing: front, left: 0, front: 0, wide: 1 1/2, deep: 1 1/2, bottom: 0, up: 20${post} }
  right-post: { like: left-post, left: 20 }
  rail: { made of: thin, as: on edge, grain: across, between: [left-post, right-post], front: 3/8, bottom: ${bottom}, up: 4${rail} }
joints:
  - { join: rail, to: [left-post, right-post], with: mortise and tenon, tenon: { thick: 1/4, long: 3/4${shoulders} } }
`);
  if (!build) throw new Error(JSON.stringify(findings.map(({ rule, message }) => [rule, message])));
  return build.steps
    .filter(({ kind }) => kind === "glue-up")
    .map(textOfStep)
    .join(" ");
};

const GROOVE = "groove: { in: back, near: top, in from: 1/2, wide: 1/4, deep: 1/4 }";
const HOLE = ", hole: { in: front, from left: 3/4, from top: 2, diameter: 3/8, deep: 1/2 }";

describe("a rail between two posts", () => {
  test("that is the same from both sides is told no way", () => {
    expect(frame()).not.toMatch(/\b(?:faces (?:the|left|right)|nearer)\b/u);
  });

  // All three turned about the upright are the same frame, seen from behind.
  test("is told no face where the whole frame can be turned so that it is right, only what is up", () => {
    const text = frame({ rail: `, ${GROOVE}` });
    expect(text).toContain("Turn the rail (B) so that the edge with the groove nearer to it comes to the top.");
    expect(text).not.toMatch(/faces (?:the|left|right)/u);
  });

  // Its tenons fit both ways round and both ways up: by half turns the groove comes to the front, or to the lower edge.
  test("with a groove in one face is told where that looks, and which edge is nearer, where the posts are no more the same from behind", () => {
    const text = frame({ rail: `, ${GROOVE}`, post: HOLE });
    expect(text).toContain("The groove of the rail (C) faces the back, nearer to the top edge.");
    expect(text).toContain("The hole of the left post (A) faces the front.");
  });

  test("is told no edge where the groove is in the middle, or its outline shows which way up it is", () => {
    const rail = ", groove: { in: back, near: top, in from: 1 7/8, wide: 1/4, deep: 1/4 }";
    expect(frame({ rail, post: HOLE })).toContain("The groove of the rail (C) faces the back.");
    const arched = frame({ rail: `, ${GROOVE}, arch: { in: bottom, deep: 1 }`, post: HOLE });
    expect(arched).toContain("The groove of the rail (C) faces the back.");
  });

  // Half a turn about the upright leaves it as it is. On its head its tenons go in all the same, and it stands 1 - 1/4 higher: past the ends of the posts
  // where it is flush with them, and that is seen.
  test("is told what comes to the top, but where it would stand out of the posts on its head", () => {
    const rail = ", groove: { in: top, near: front, in from: 1/4, wide: 1/4, deep: 1/4 }";
    const given = { rail, post: HOLE, shoulders: ", shoulder above: 1/4, shoulder below: 1" };
    expect(frame(given)).toContain("The groove of the rail (C) faces the top.");
    expect(frame({ ...given, bottom: 16 })).not.toContain("The groove");
  });
});

describe("piano bench", () => {
  const said = (title: RegExp): string => textOfStep(stepWith(built("old-plans/piano-bench"), title));

  test("groove and mortise of one end look the same way", () => {
    expect(said(/^Build the left end/u)).toContain(
      "The groove of the end rail (F) and the mortise for the stretcher (C) of the lower end rail (E) face right.",
    );
  });

  test("and to the side where the posts have their open mortises", () => {
    expect(said(/^Glue in the post \(A\)/u)).toContain(
      "The groove of the end rail (F) faces right, as the mortises for the side rail (D) of the post (A) and the frame post (B) do.",
    );
  });

  // Their tenons are mitred towards those of the end rails: turned round they would not go home.
  test("what is mitred on to what is there needs no words", () => {
    expect(said(/^Glue in two side rails/u)).not.toMatch(/grooves? [^.]*\bfaces?\b/u);
  });
});

describe("doors", () => {
  test("the cups of a stile look to the back, its fellow's knob to the top, and one of them is told its side", () => {
    const text = textOfStep(stepWith(built("index-cabinet"), /^Build the left lower door/u));
    expect(text).toContain("The outer door stile (R) lies on the left.");
    expect(text).toContain("The holes for the cup hinge of the outer door stile (R) face the back.");
    expect(text).toContain(
      "Turn the left inner door stile (S) so that the end with the hole for the knob nearer to it comes to the top.",
    );
    // The panel goes into grooves and mortises that can look nowhere else.
    expect(text).not.toMatch(/The (?:mortise|groove)s? of/u);
  });

  test("where the name tells the side, only the holes are told", () => {
    const text = textOfStep(stepWith(built("key-cabinet"), /^Build the door/u));
    expect(text).toContain("The holes for the catch of the right door stile (H) face the back.");
    expect(text).toContain(
      "Turn the left door stile (G) so that the face with the holes for the butt hinge nearer to it comes to the front.",
    );
    expect(text).not.toContain("lies on the left");
  });
});

// Its mortises lie in the middle of a post of 1 1/4 in: 3/4 in thick it fits flush with the outside as well as with the inside. The upper rail would
// stand out of the posts.
test("a rail that would go into its mortises turned over, and shifted, is told its side", () => {
  const text = textOfStep(stepWith(built("old-plans/plant-stand"), /^Glue up the post \(B\), the rail \(E\)/u));
  expect(text).toContain("The wide ends of the screw holes of the lower rail (F) face right.");
  expect(text).not.toMatch(/of the rail \(E\) faces? (?:left|right)\b/u);
});

test("pegs go through a breadboard end from above: it is told as it is set on, not when they are in", () => {
  const build = built("loan-desk");
  expect(textOfStep(stepWith(build, /^Glue up the panel \(E\) and two breadboard ends/u))).toContain(
    "The peg holes of each of two breadboard ends (F) face the top.",
  );
  expect(textOfStep(stepWith(build, /^Add the panel \(E\)/u))).not.toMatch(/peg holes [^.]*\bface\b/u);
});

test("a chest of boards with small chamfers is told where these lie, and not again as more boards come to it", () => {
  const build = built("old-plans/cedar-chest");
  const ends = textOfStep(stepWith(build, /^Nail the side \(A\), the left end/u));
  for (const [name, side] of [
    ["side (A)", "the front"],
    ["left end (D)", "left, at the top edge"],
    ["right end (E)", "right, at the top edge"],
  ])
    expect(ends).toContain(`The chamfer of the ${name} faces ${side}.`);
  expect(textOfStep(stepWith(build, /^Nail on the side \(A\)/u))).toContain(
    "The chamfer of the side (A) faces the back.",
  );
  const texts = build.steps.map(({ text }) => plain(text.join(" ")));
  expect(texts.filter((text) => /The chamfers? (?:of|lies|lie)\b/u.test(text))).toHaveLength(2);
});

// Its tenons fit both ways round and both ways up. A chamfer at an edge lies at both sides that meet there.
describe("small chamfers at the edges of a rail", () => {
  const told = (...edges: readonly (readonly [string, string])[]): string =>
    frame({
      rail: `, chamfer: [${edges.map(([a, b]) => `{ along: ${b} ${a}, by: 1/8 }`).join(", ")}]`,
      post: HOLE,
    });

  test("at one face and at both edges tell the face", () => {
    expect(told(["front", "top"], ["front", "bottom"])).toContain(
      "The chamfers of the rail (C) and the hole of the left post (A) face the front.",
    );
  });

  test("at three edges tell front from back, and top from bottom", () => {
    const text = told(["front", "top"], ["front", "bottom"], ["back", "top"]);
    expect(text).toContain("Of the rail (C) the front face has two chamfers, the face across from it one.");
    expect(text).toContain("Of the rail (C) the top edge has two chamfers, the edge across from it one.");
  });

  test("at all four are the same from all sides", () => {
    expect(told(["front", "top"], ["front", "bottom"], ["back", "top"], ["back", "bottom"])).not.toContain(
      "chamfers of",
    );
  });
});
