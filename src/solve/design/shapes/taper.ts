import type { Face, ShapeDraft } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { half, multiply, type Rational, rational, subtract, ZERO } from "../../../units/rational.ts";
import type { Box, Direction, Point } from "../../design.ts";
import { extent, faceAxis, facePosition, isHigh, moveFace, opposite, point, triple } from "../space.ts";
import { type Measure, NOTHING, type Shaped } from "./shaped.ts";
import { planeCut } from "./workpiece.ts";

type Taper = ShapeDraft & { readonly shape: "taper" };

export function taper(shape: Taper, body: Box, measure: Measure): Shaped | null {
  const [to, over] = [measure(shape.to), measure(shape.over)];
  if (!to || !over) return null;
  const end = shape.end.value;
  const shapes = shape.faces.map((face) => {
    const both = shape.faces.includes(opposite(face));
    const lost = subtract(extent(body, faceAxis(face)), to);
    // The face starts to lean `over` away from the end and has lost `inset` where it gets there.
    const inset = both ? half(lost) : lost;
    return slopeBetween("taper", face, end, over, inset, body);
  });
  return { ...NOTHING, cuts: shapes.flatMap((s) => s.cuts), features: shapes.flatMap((s) => s.features) };
}

/** A flat that leaves `face` at the distance `back` from `end` and meets `end` at the distance `down` from `face`. */
export function slopeBetween(
  kind: "taper" | "chamfer" | "bevel",
  face: Face,
  end: Face,
  back: Length,
  down: Length,
  body: Box,
): Shaped {
  const signed = (of: Face, value: Rational): Rational => (isHigh(of) ? value : multiply(value, rational(-1)));
  const normal = triple((axis) =>
    axis === faceAxis(face) ? signed(face, back) : axis === faceAxis(end) ? signed(end, down) : ZERO,
  );
  const start = moveFace(body, end, multiply(back, rational(-1)));
  const at = triple((axis) =>
    axis === faceAxis(face)
      ? facePosition(body, face)
      : axis === faceAxis(end)
        ? facePosition(start, end)
        : body.low[axis],
  );
  const cut = planeCut(point(...at), normal, { eases: kind === "chamfer" });
  const direction = cut.normal.map(Number) as unknown as Direction;
  return { ...NOTHING, cuts: [cut], features: [{ kind, for: null, origin: cut.point, normal: direction }] };
}

/** The plane of a tapered face: a point, and its outward normal. */
export function taperPlane(
  shape: Taper,
  face: Face,
  body: Box,
  measure: Measure,
): { readonly point: Point; readonly normal: Point } | null {
  const cut = taper(
    { ...shape, faces: shape.faces.filter((each) => each === face || each === opposite(face)) },
    body,
    measure,
  );
  const i = shape.faces.filter((each) => each === face || each === opposite(face)).indexOf(face);
  const plane = cut?.cuts[i];
  return plane?.kind === "plane"
    ? { point: plane.point, normal: triple((axis) => rational(plane.normal[axis])) }
    : null;
}
