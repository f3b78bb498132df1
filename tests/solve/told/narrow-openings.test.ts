/** Sides that look into openings where no hand with a block gets in are sanded before a glue-up closes these. */
import { expect, test } from "vitest";
import { built, solveText } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

const SANDED = /sand the (faces|edges|sides) of ([^.]*?) that will look into narrow openings with 120, then 180 grit/u;

/** Two rails, and between them two slats 1 in wide that stand so far apart. */
const slats = (apart: string): string => {
  const { build, findings } = solveText(`plan: 1
title: Slats
units: inch
stock: { wood: { wood: oak, sold as: 4/4, planed to: 3/4 } }
piece:
  rail: { made of: wood, as: on edge, grain: across, left: 0, right: 24, front: 0, bottom: 0, up: 3 }
  top-rail: { like: rail, bottom: 15 }
  slat: { made of: wood, as: upright, facing: front, left: 8, wide: 1, front: 0, between: [rail, top-rail] }
  other-slat: { like: slat, left: 9 + ${apart} }
joints:
  - { join: [slat, other-slat], to: [rail, top-rail], with: mortise and tenon, tenon: { thick: 1/4, long: 3/4 } }
`);
  if (!build) throw new Error(JSON.stringify(findings.map(({ rule, message }) => [rule, message])));
  return plain(build.steps.map(textOfStep).join(" "));
};

// A block and the fingers round it need about 3 in: common practice, no source.
test("slats closer than a hand with a block are told, those farther apart are not", () => {
  expect(SANDED.exec(slats("2"))?.slice(1)).toEqual(["edges", "two rails (A) and two slats (B)"]);
  expect(slats("4")).not.toMatch(SANDED);
});

// Three slats 1 in apart; bars of a lattice with openings 2 5/8 in high.
test("slats of an end and bars of a lattice are sanded before they are glued in, and not told again", () => {
  const said = (name: string, title: RegExp) => SANDED.exec(plain(textOfStep(stepWith(built(name), title))));
  expect(said("old-plans/piano-bench", /^Build the left end/u)?.[2]).toContain("three slats (G)");
  expect(said("old-plans/piano-bench", /^Glue in two side rails/u)).toBeNull();
  expect(said("old-plans/bookcase", /^Build the two lattices/u)?.[2]).toBe(
    "two long lattice bars (P) and two short lattice bars (Q)",
  );
});
