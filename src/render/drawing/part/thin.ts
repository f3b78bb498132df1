/** Strips that would be drawn as one line are drawn larger, with gaps in their rows of holes too. */
import { toVec } from "../feature-box.ts";
import { heightOf } from "../fit.ts";
import type { Scale } from "../scale.ts";
import type { Arranged } from "./arrange.ts";
import type { Bore } from "./bores.ts";
import { framed } from "./places.ts";
import type { Sheet } from "./sheet.ts";

/** A face that is drawn narrower than this, in points, shows nothing of what is in it; one that is wider than the other shows enough. */
const THIN = 5;
const ENOUGH = 12;

/** Of a thin one the first of the larger scales at which it goes in and is as wide as need be; else as it is. */
export function thicker(
  sheet: Sheet,
  usual: Arranged,
  scales: readonly Scale[],
  at: (sheet: Sheet, scale: Scale) => Arranged | null,
): Arranged {
  const wide = ({ points }: Scale): number => heightOf(sheet.face.extent) * points;
  if (wide(usual.scale) >= THIN) return usual;
  const broken = { ...sheet, kept: sheet.least };
  const larger = scales.filter(({ points }) => points > usual.scale.points).toReversed();
  let best = usual;
  for (const scale of larger) {
    if (wide(best.scale) >= ENOUGH) break;
    best = at(broken, scale) ?? best;
  }
  return best;
}

/** Without the holes that lie in its gaps. */
export function seenOf(bores: readonly Bore[], { lies }: Sheet, { along }: Arranged): readonly Bore[] {
  const frame = framed(lies);
  return bores.map((bore) => ({
    ...bore,
    holes: bore.holes.filter((hole) => !along.hides(frame(toVec(hole.at))[0])),
  }));
}
