import { expect, test } from "vitest";
import { built, solveText } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

const closet = () => built("old-plans/china-closet");
const said = (title: RegExp): string => textOfStep(stepWith(closet(), title));

test("what goes together as the mirror image of an earlier step is told so, also where no word names a side", () => {
  expect(said(/^Build the right end/u)).toMatch(
    /As step \d+, mirrored \(left and right change places\), with the right/u,
  );
  expect(said(/^Glue up the right end back post/u)).toMatch(/As step \d+, mirrored \(left and right change places\)/u);
  // The same parts, the same way round.
  const boards = built("rope-chest").steps.filter(({ title }) => title.startsWith("Glue up the back panel"));
  expect(boards.length).toBeGreaterThan(0);
  for (const step of boards) expect(textOfStep(step)).not.toContain("mirrored");
});

test("a part with a rabbet that is pressed in has it told on which side that lies", () => {
  expect(said(/^Glue up the left end back post/u)).toContain(
    "Press the upright (K) into the groove, with glue. The rabbet of the upright (K) faces left.",
  );
  expect(said(/^Glue in the upright.*left/u)).toContain("The rabbet of the upright (K) faces left.");
});

test("beads whose holes are bored nearer to one edge lie with that outwards, away from the glass", () => {
  // 3/16 in from an edge of 3/4 in: the other edge covers the pane.
  expect(said(/^Put in the long pane.*left/u)).toContain(
    "The holes are bored nearer to one edge of each: that edge lies outwards, on the wood, and the other over the glass.",
  );
  expect(said(/^Put in the pane .*left/u)).not.toContain("bored nearer");
});

test("what is only counted again is not called another thing than there, but what comes from another side is", () => {
  expect(said(/^Put in the long pane.*right/u)).toMatch(/as there\. Drive 26 wood screws/u);
  expect(said(/^Screw on two shelf blocks.*right|^Add two shelf blocks.*right|shelf blocks \(AD\).*right/u)).toMatch(
    /tells what is not the same here\. Drive 2 wood screws .* from the left/u,
  );
});

// The legs were marked from each other's aprons: of two of a mark only one fits.
test("a step that is told as another one says by itself which of their mark its parts are", () => {
  const steps = built("loan-desk").steps.filter(({ title }) => /^Glue up the leg/u.test(plain(title)));
  expect(steps.map(textOfStep).map((text) => /By what is written on them take ([^.]*)\./u.exec(text)?.[1])).toEqual([
    "the front right leg (B), the right short apron (D) and the back right leg (A)",
    "the front left leg (A), the left short apron (D) and the back left leg (B)",
  ]);
});

// Two screws each through two cleats: read in order, all four would be in before it is said that some wait.
test("what waits for a later proof is told before the first of several kinds is driven", () => {
  const { text } = stepWith(built("old-plans/bookcase"), /^Screw on the left side/u);
  const at = (words: RegExp): number => text.findIndex((each) => words.test(each));
  expect(at(/^Of the screws below drive one in each joint for now/u)).toBeGreaterThan(-1);
  expect(at(/^Of the screws below/u)).toBeLessThan(at(/^Drive \d/u));
});

// The slots of splined mitres lie aslant to the piece: two like frames are told, and nothing fails.
test("frames whose cuts lie aslant are compared too", () => {
  const rails = (name: string, up: string, wide: string) => `
  ${name}-front: { made of: wood, as: lying flat, grain: across, left: 0, right: ${wide}, front: 0, deep: 2, ${up} }
  ${name}-back: { like: ${name}-front, front: outside.back - 2 }
  ${name}-left: { made of: wood, as: lying flat, grain: deep, front: 0, back: outside.back, left: 0, across: 2, ${up} }
  ${name}-right: { like: ${name}-left, left: ${wide} - 2 }`;
  const mitred = (name: string) =>
    `  - { join: [${name}-front, ${name}-back], to: [${name}-left, ${name}-right], with: splined mitre }`;
  const asOne = (name: string) => `  - { build as one: [${name}-front, ${name}-back, ${name}-left, ${name}-right] }`;
  const { build, findings } = solveText(`plan: 1
title: Two frames
units: inch
outside: { width: 20, depth: 16, height: 3 }
stock:
  wood: { wood: cherry, sold as: 4/4, planed to: 3/4, widths: 3 to 8 }
piece:${rails("low", "bottom: 0", "20")}${rails("high", "top: 3", "19")}
  post: { made of: wood, as: upright, facing: front, left: 0, front: 0, across: 1 1/2, bottom: 3/4, top: 2 1/4 }
  other-post: { like: post, left: 17 }
joints:
${mitred("low")}
${mitred("high")}
  - { join: [post, other-post], to: [low-front, high-front], with: glue }
order:
${asOne("low")}
${asOne("high")}
`);
  expect(findings.filter(({ severity }) => severity === "error")).toEqual([]);
  const glued = (build?.steps ?? []).filter(({ title }) => /^Glue up|^Build/u.test(plain(title)));
  expect(glued.length).toBeGreaterThan(1);
});
