import { squash } from "../names.ts";
import { bumper } from "./bumper.ts";
import { buttHinge } from "./butt-hinge.ts";
import { caster } from "./caster.ts";
import { holdShut } from "./catch.ts";
import { continuousHinge } from "./continuous-hinge.ts";
import { cupHinge, frameCupHinge, insetCupHinge } from "./cup-hinge.ts";
import { drawerStop } from "./drawer-stop.ts";
import { foot } from "./foot.ts";
import { hook } from "./hook.ts";
import type { HardwareKind } from "./kind.ts";
import { knob } from "./knob.ts";
import { leveller } from "./leveller.ts";
import { lidSupport } from "./lid-support.ts";
import { pull } from "./pull.ts";
import { platePin, shelfPin } from "./shelf-pin.ts";
import { sideSlide, undermountSlide } from "./slide.ts";
import { stop } from "./stop.ts";
import { wallScrew } from "./wall-screw.ts";
import { wallStrap } from "./wall-strap.ts";

export type { HardwareField, HardwareKind } from "./kind.ts";

/** What is fixed to a part without joining it to another. */
const FITTED: readonly HardwareKind[] = [
  ...[knob, pull, holdShut, stop, bumper, hook],
  ...[foot, caster, leveller],
  ...[wallStrap, wallScrew, lidSupport],
];

/** Every kind of hardware. A new one is a file here and a line in this list. */
export const HARDWARE: readonly HardwareKind[] = [
  ...FITTED,
  cupHinge,
  insetCupHinge,
  frameCupHinge,
  buttHinge,
  continuousHinge,
  sideSlide,
  undermountSlide,
  drawerStop,
  shelfPin,
  platePin,
];

const BY_WORD: ReadonlyMap<string, HardwareKind> = new Map(
  HARDWARE.flatMap((each) => [each.kind, ...each.also].map((word) => [squash(word), each] as const)),
);
/** By any of its words. */
export const hardwareKind = (word: string): HardwareKind | undefined => BY_WORD.get(squash(word));
