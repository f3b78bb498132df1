import type { BuiltMotion } from "../../../build.ts";
import { millimetresOf, type Place } from "./weight-and-feet.ts";

/** The pin that something swings about: a point of it, and the level axis of the piece across it. Millimetres. */
export function pinOf({ poses }: BuiltMotion): { readonly at: Place; readonly across: 0 | 1 } {
  const [origin, pin] = poses[0]?.rotate.about ?? [
    [0, 0, 0],
    [1, 0, 0],
  ];
  return { at: millimetresOf(origin), across: Math.abs(pin[0]) > Math.abs(pin[1]) ? 1 : 0 };
}
