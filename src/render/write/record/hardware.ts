/** Hardware and motions, as the record has them. */
import type { BuiltMotion } from "../../../solve/build.ts";
import type { Hardware } from "../../../solve/design.ts";
import { UNITS_PER_MM } from "../../../units/length.ts";
import type { Frame } from "./frame.ts";
import type { Json } from "./json.ts";
import { millimetres } from "./number.ts";
import { pieceRecords } from "./parts.ts";

export const hardwareRecord = ({ id, item, carriedBy, at, solid, halfOf }: Hardware, frame: Frame): Json => ({
  ...{ id, item: item.label, kind: item.kind, carriedBy, at: frame.point(at), solids: pieceRecords(solid, frame) },
  decides: new Map<string, Json>([
    ...[...item.measures].map(([name, value]) => [name, millimetres(value)] as const),
    ...[...item.numbers].map(([name, value]) => [name, value] as const),
  ]),
  price: item.price,
  halfOf: halfOf ?? null,
});

/** Degrees of a swing, millimetres of a slide. */
export function motionRecord({ name, kind, moves, range, poses, needs }: BuiltMotion, frame: Frame): Json {
  const far = (value: number): number => (kind === "slide" ? value / UNITS_PER_MM : value);
  return {
    ...{ name, kind, parts: moves, range: far(range) },
    poses: poses.map(({ at, rotate, shift }) => ({
      at: far(at),
      rotate: { about: [frame.vec(rotate.about[0]), rotate.about[1]], degrees: rotate.degrees },
      shift: shift.map((value) => value / UNITS_PER_MM),
    })),
    needs: needs.map(({ motion, open }) => ({ motion, open: far(open) })),
  };
}
