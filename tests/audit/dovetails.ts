/** Promise 0: tails of sliding dovetails and their housings slope as they are told, on both sides. */
import { isBox, type Model } from "./model.ts";
import { TOLERANCE } from "./overlap.ts";
import type { BoxFeature } from "./record.ts";
import { dot, plus, times, type V3 } from "./vector.ts";
import { type Violations, violation } from "./violation.ts";

const BESIDE = 5 * TOLERANCE;
const SHARES = [0.05, 0.25, 0.5, 0.75, 0.95];

export function* dovetails(model: Model): Violations {
  for (const part of model.record.parts) {
    const filled = (at: V3) =>
      model.solid(part.id).some(({ faces }) => faces.every(({ normal, offset }) => dot(at, normal) <= offset));
    for (const feature of part.features.filter(isBox)) {
      if (feature.kind !== "tail" && feature.kind !== "dovetail housing") continue;
      const told = flanks(feature);
      const stands = feature.kind === "tail";
      const [wood, air] = stands ? [told.inner, told.outer] : [told.outer, told.inner];
      // Where another cut crosses, only what is taken away can be told: of each line along the flank, some of the wood is there.
      const sound = wood.every((line) => line.some(filled)) && !air.flat().some(filled);
      if (!sound)
        yield violation("dovetails are as told", part.id, `a ${feature.kind} does not slope by ${feature.lean}`);
    }
  }
}

/** Lines of points along both flanks at some depths, just inside the section and just outside it. */
function flanks({ origin, along, across, into, size, lean = 0 }: BoxFeature) {
  const lines = SHARES.flatMap((deep) =>
    [false, true].map((high) => (outside: number): readonly V3[] => {
      const inset = lean * (1 - deep) - outside * BESIDE;
      const at = plus(plus(origin, times(into, deep * size[2])), times(across, high ? size[1] - inset : inset));
      return SHARES.map((share) => plus(at, times(along, share * size[0])));
    }),
  );
  return { inner: lines.map((line) => line(-1)), outer: lines.map((line) => line(1)) };
}
