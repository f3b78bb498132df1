import { squash } from "../names.ts";
import { buttHinge } from "./butt-hinge.ts";
import { continuousHinge } from "./continuous-hinge.ts";
import { cupHinge, frameCupHinge, insetCupHinge } from "./cup-hinge.ts";
import { drawerStop } from "./drawer-stop.ts";
import type { HardwareKind } from "./kind.ts";
import { knob } from "./knob.ts";
import { sideSlide, undermountSlide } from "./slide.ts";

export type { HardwareField, HardwareKind } from "./kind.ts";

/** Every kind of hardware. A new one is a file here and a line in this list. */
export const HARDWARE: readonly HardwareKind[] = [
  knob,
  cupHinge,
  insetCupHinge,
  frameCupHinge,
  buttHinge,
  continuousHinge,
  sideSlide,
  undermountSlide,
  drawerStop,
];

const BY_WORD: ReadonlyMap<string, HardwareKind> = new Map(
  HARDWARE.flatMap((each) => [each.kind, ...each.also].map((word) => [squash(word), each] as const)),
);
/** By any of its words. */
export const hardwareKind = (word: string): HardwareKind | undefined => BY_WORD.get(squash(word));
