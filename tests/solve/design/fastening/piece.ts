import type { Arrangement, Joint } from "../../../../src/solve/design.ts";
import { inches, type Length, toInches } from "../../../../src/units/index.ts";
import { designOf, soundDesign } from "../plan.ts";

/** A white oak top, 20 in from front to back, on two rails along its grain and two battens across it; the rails stand 4 in in. */
export const top = (joint: string, rail = "3/4", high = "3 1/2"): string => `plan: 1
title: Top
units: inch
stock:
  slab: { wood: white oak, sold as: 4/4, planed to: 3/4, widths: 6 to 20 }
  rails: { wood: white oak, sold as: 8/4, planed to: ${rail}, widths: 2 to 6 }
piece:
  panel: { made of: slab, as: lying flat, grain: across, left: 0, right: 36, front: 0, back: 20, bottom: 10 }
  front-rail: { made of: rails, as: on edge, facing: front, left: 4, right: 32, front: 4, up: ${high}, under: panel }
  back-rail: { made of: rails, as: on edge, facing: back, left: 4, right: 32, back: 16, up: ${high}, under: panel }
  side-rail: { made of: rails, as: on edge, facing: left, deep: between front-rail and back-rail, left: 4, up: ${high}, under: panel }
joints:
  - { join: panel, to: [front-rail, back-rail, side-rail], ${joint} }
  - { join: side-rail, to: [front-rail, back-rail], with: glue }
`;

export interface Fitted {
  readonly joint: Joint;
  readonly best: Arrangement;
}

/** The joint with a part, and the arrangement that is tried first. */
export function fitted(text: string, part: string): Fitted {
  const joint = soundDesign(text).joints.find(({ parts, method }) => method !== "glue" && parts.includes(part));
  const [best] = joint?.arrangements ?? [];
  if (!joint || !best) throw new Error(`nothing fastens ${part}`);
  return { joint, best };
}

export const inch = (length: Length | undefined): number => toInches(length ?? inches(0));

/** Rule and message of the errors in a source. */
export const errorsOf = (text: string): readonly string[] =>
  designOf(text).findings.flatMap(({ severity, rule, message }) =>
    severity === "error" ? [`${rule}: ${message}`] : [],
  );
