import type { Finding } from "../../../src/findings/finding.ts";
import type { Check } from "../../../src/solve/build.ts";
import { solveText } from "../../examples/compiled.ts";

export interface Judged {
  readonly findings: readonly Finding[];
  readonly checks: readonly Check[];
  /** The verdict of a rule about a part or stock. */
  readonly of: (rule: string, subject: string) => Check | undefined;
  /** "rule: message" of the findings of a rule. */
  readonly told: (rule: string) => readonly Finding[];
}

/** A plan that has a build, as its checks judge it. */
export function judge(text: string): Judged {
  const { build, findings } = solveText(text);
  if (!build) throw new Error(findings.map(({ at, rule, message }) => `${at.line} ${rule}: ${message}`).join("\n"));
  return {
    findings,
    checks: build.checks,
    of: (rule, subject) => build.checks.find((check) => check.rule === rule && check.subject === subject),
    told: (rule) => findings.filter((finding) => finding.rule === rule),
  };
}

/** A white oak table for the reading corner, 14 in deep, its top on two long rails; `top` adds to the top's stock. */
export const table = (joints: string, top = "", more = ""): string => `plan: 1
title: Table for the reading corner
units: inch
${more}
outside: { width: 40, depth: 14, height: 18 }
stock:
  legs: { wood: white oak, sold as: 10/4, planed to: { thick: 2 1/4, wide: 2 1/4 } }
  rails: { wood: white oak, sold as: 5/4, planed to: 1, widths: 4 to 8 }
  top: { wood: white oak, sold as: 6/4, planed to: 1 1/4, widths: 5 to 16${top} }
piece:
  front-left-leg: { made of: legs, as: upright, left: 1, front: 1, bottom: 0, under: table-top }
  front-right-leg: { mirror of: front-left-leg, about: across }
  back-left-leg: { mirror of: front-left-leg, about: deep }
  back-right-leg: { mirror of: front-right-leg, about: deep }
  front-rail: { made of: rails, as: on edge, up: 3, between: [front-left-leg, front-right-leg], flush with: [front-left-leg.front, front-left-leg.top] }
  back-rail: { mirror of: front-rail, about: deep }
  left-rail: { made of: rails, as: on edge, up: 3, between: [front-left-leg, back-left-leg], flush with: [front-left-leg.left, front-left-leg.top] }
  right-rail: { mirror of: left-rail, about: across }
  table-top: { made of: top, as: lying flat, grain: across, left: 0, right: outside.right, front: 0, back: outside.back, top: outside.top }
joints:
  - { join: [front-rail, back-rail], to: [front-left-leg, front-right-leg, back-left-leg, back-right-leg], with: mortise and tenon, tenon: { thick: 3/8, long: 1 } }
  - { join: [left-rail, right-rail], to: [front-left-leg, front-right-leg, back-left-leg, back-right-leg], with: mortise and tenon, tenon: { thick: 3/8, long: 1/2 } }
${joints}
`;

/** A shelf between two sides: what it is made of, how wide the case is, and what the plan says besides. */
export const shelf = (stock: string, wide: string, more: string): string => `plan: 1
title: Shelf for the paint tins
units: inch
outside: { width: ${wide}, depth: 11 1/4, height: 26 }
${more}
stock:
  sides: { sold as: 3/4 MDF, measures: 3/4 }
  board: { ${stock} }
piece:
  left-side: { made of: sides, as: upright, facing: left, grain: up, left: 0, front: 0, back: outside.back, bottom: 0, top: outside.top }
  right-side: { mirror of: left-side, about: across }
  shelf: { made of: board, as: lying flat, grain: across, between: [left-side, right-side], front: 0, back: outside.back, bottom: 15 }
joints:
  - { join: shelf, to: [left-side, right-side], with: nails, from: left-side, nail: { length: 2 }, count: 2 }
`;
