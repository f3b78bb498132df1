import type { Face } from "../../../parse/draft.ts";
import { less } from "../../../units/rational.ts";
import type { Part } from "../../design.ts";
import { faceOf, indexOf, middle } from "../space.ts";
import { fitBumper } from "./bumper.ts";
import { fitCatch } from "./catch.ts";
import { fitDrawerStop } from "./drawer-stop.ts";
import type { Fitter } from "./fitter.ts";
import { fitHook } from "./hook.ts";
import { fitKnob } from "./knob.ts";
import { fitLidSupport } from "./lid-support.ts";
import { fitCaster, fitFoot, fitLeveller } from "./on-floor.ts";
import { fitBlock } from "./plates.ts";
import { fitPull } from "./pull.ts";
import { fitWallScrew } from "./wall-screw.ts";

/** How a kind is fixed, and the face that it is put on when nothing is said. */
export interface Fitted {
  readonly fit: Fitter;
  readonly face: Face | ((part: Part, against: Part | null) => Face);
}

/** The broad face that looks to what it works against; the front where nothing is named. */
function towards(part: Part, against: Part | null): Face {
  const axis = indexOf(part.axes.thickness);
  return against ? faceOf(axis, less(middle(part.body, axis), middle(against.body, axis))) : faceOf(axis, false);
}

/** What a piece can stand on: it counts in the outside. */
export const ON_FLOOR: ReadonlySet<string> = new Set(["foot", "caster", "leveller"]);

/** A new one is a file here and a line in this table. */
export const FITTERS: ReadonlyMap<string, Fitted> = new Map<string, Fitted>([
  ["knob", { fit: fitKnob, face: "front" }],
  ["drawer stop", { fit: fitDrawerStop, face: "front" }],
  ["hook", { fit: fitHook, face: "front" }],
  ["pull", { fit: fitPull, face: "front" }],
  ["catch", { fit: fitCatch, face: towards }],
  ["stop", { fit: fitBlock, face: towards }],
  ["bumper", { fit: fitBumper, face: "back" }],
  ["foot", { fit: fitFoot, face: "bottom" }],
  ["caster", { fit: fitCaster, face: "bottom" }],
  ["leveller", { fit: fitLeveller, face: "bottom" }],
  ["wall strap", { fit: fitBlock, face: "back" }],
  ["wall screw", { fit: fitWallScrew, face: "front" }],
  ["lid support", { fit: fitLidSupport, face: towards }],
]);
