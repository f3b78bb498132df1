/** Plans for the reading room of a tool library: a bench with a glued seat, and a case that is banded and fitted. */
import { hasErrors } from "../../../src/findings/outcome.ts";
import type { Blank, Build, CutLine, Step } from "../../../src/solve/build.ts";
import { type Length, printLength } from "../../../src/units/index.ts";
import { auditOf, said, solveText } from "../../examples/compiled.ts";

export const ROUGH = `rough sizes:
  parts: { longer: 1, wider: 1/4 }
  slabs: { longer: 1, wider: 1/2, each board wider: 1/4 }
  legs: { longer: 1, thicker: 1/4, wider: 1/4 }`;

/** A seat of three oak boards over a frame with mortises and tenons. */
export const bench = (rough = ROUGH): string => `plan: 1
title: Reading bench
units: inch
stock:
  seat: { wood: white oak, sold as: 6/4, planed to: 1 1/4, widths: 5 to 8 }
  legs: { wood: white oak, sold as: 10/4, planed to: { thick: 2 1/4, wide: 2 1/4 } }
  rails: { wood: white oak, sold as: 5/4, planed to: 1, widths: 4 to 8 }
piece:
  seat: { made of: seat, boards: 3, as: lying flat, grain: across, left: 0, right: 52, front: 0, back: 14, top: 17 3/4 }
  front-left-leg: { made of: legs, as: upright, facing: front, left: 4, front: 1, bottom: 0, under: seat }
  front-right-leg: { like: front-left-leg, right: 48 }
  back-left-leg: { like: front-left-leg, back: 13 }
  back-right-leg: { like: front-right-leg, back: 13 }
  front-apron: { made of: rails, as: on edge, facing: front, width: 3 1/2, between: [front-left-leg, front-right-leg], front: 1 3/16, under: seat }
  back-apron: { like: front-apron, between: [back-left-leg, back-right-leg], back: 12 13/16 }
  left-apron: { made of: rails, as: on edge, facing: left, width: 3 1/2, between: [front-left-leg, back-left-leg], left: 4 3/16, under: seat }
  right-apron: { like: left-apron, between: [front-right-leg, back-right-leg], right: 47 13/16 }
joints:
  - join: [front-apron, back-apron, left-apron, right-apron]
    to: [front-left-leg, front-right-leg, back-left-leg, back-right-leg]
    with: mortise and tenon
    glue: yes
    tenon: { thick: 3/8, long: 1 1/4, shoulder above: 1/2, shoulder below: 1/4 }
  - { join: [left-apron, right-apron], to: seat, with: pocket screws }
${rough}
`;

/** A case of plywood 30 × 12 × 20, with further settings for its shelf and sides, and more parts and joints. */
export const shelfCase = (shelf: string, { side = "", parts = "", joints = "", stock = "" } = {}): string => `plan: 1
title: Case for picture books
units: inch
stock:
  ply: { sold as: 3/4 birch plywood, measures: 23/32${stock} }
piece:
  left-side: { made of: ply, as: upright, facing: left, left: 0, front: 0, back: 12, bottom: 0, top: 20${side} }
  right-side: { like: left-side, right: 30 }
  floor-panel: { made of: ply, as: lying flat, grain: across, between: [left-side, right-side], front: 0, back: 12, bottom: 0 }
  lid-panel: { like: floor-panel, bottom: 20 - 23/32 }
  shelf: { made of: ply, as: lying flat, grain: across, between: [left-side, right-side], front: 1, back: 11, bottom: 10${shelf} }
${parts}
joints:
  - { join: [left-side, right-side], to: [floor-panel, lid-panel], with: screws }
  - { join: [left-side, right-side], to: shelf, with: screws, count: 2 }
${joints}
`;

export interface Built extends Build {
  readonly told: readonly string[];
}

/** The build of a plan without errors whose record keeps its promises. */
export function built(text: string): Built {
  const { build, findings } = solveText(text);
  if (!build || hasErrors(findings)) throw new Error(said(findings).join("\n"));
  const broken = auditOf(text, build);
  if (broken.length > 0) throw new Error(JSON.stringify(broken, null, 1));
  return { ...build, told: findings.map(({ rule }) => rule) };
}

const print = (length: Length, units: "inch" | "mm" = "inch"): string => printLength(length, { units }).text;

/** "1 1/2 × 5 1/8 × 53 glue-up" */
export const blankText = (blank: Blank, units: "inch" | "mm" = "inch"): string =>
  `${[blank.thickness, blank.width, blank.length].map((size) => print(size, units)).join(" × ")} ${blank.why}`;

export const blanksOf = (build: Build, part: string): readonly string[] =>
  build.blanks.filter((blank) => blank.part === part).map((blank) => blankText(blank, build.design.units));

export const lineOf = (build: Build, part: string): CutLine =>
  build.cutList.find((line) => line.parts.includes(part)) as CutLine;

/** Texts with plain blanks and slashes. */
export const plain = (text: string): string => text.replaceAll("\u202f", " ").replaceAll("\u2044", "/");

export const stepWith = (build: Build, title: string): Step => {
  const found = build.steps.find((step) => plain(step.title).includes(title));
  if (!found) throw new Error(`no step ${title} in ${build.steps.map((step) => plain(step.title)).join("; ")}`);
  return found;
};
