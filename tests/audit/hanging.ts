/** Promise 3, of a piece on a wall: nothing but its weight is needed to keep it on its cleat. */
import type { Model } from "./model.ts";
import { overlaps } from "./overlap.ts";
import type { V3 } from "./vector.ts";
import { type Violations, violation } from "./violation.ts";

/** 2 mm down, and away from the wall: both have to be stopped by the cleat. */
const WAYS: readonly (readonly [string, V3])[] = [
  ["down", [0, 0, -2]],
  ["away from the wall", [0, -2, 0]],
];

export function* hanging(model: Model): Violations {
  const hung = model.record.joints.filter(({ method }) => method === "hangs on");
  const walls = [...new Set(hung.flatMap(({ parts: [, wall] }) => wall ?? []))];
  for (const wall of walls) {
    const piece = model.record.parts.map(({ id }) => id).filter((id) => !walls.includes(id));
    for (const [words, way] of WAYS)
      if (!piece.some((id) => overlaps(model.solid(id), model.solid(wall), way)))
        yield violation("what hangs stays on its wall", wall, `what hangs on it is free to go ${words}`);
  }
}
