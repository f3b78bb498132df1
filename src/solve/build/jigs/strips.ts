import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, half, subtract, ZERO } from "../../../units/rational.ts";
import type { Design, Hole } from "../../design.ts";
import type { Jig } from "../model/jig.ts";

/** Of a drilling strip, and its wood beyond the highest hole. Common practice, no source. */
const SIZE = {
  inch: { wide: inches(2), beyond: inches(1) },
  mm: { wide: millimetres(50), beyond: millimetres(25) },
} as const;
/** Fewer holes in a row are set out one by one. */
const LEAST = 3;

/** A strip for each pattern of rows of shelf pins that comes more than once: its holes lie as high as those of the side. */
export function drillingStrips({ parts, units }: Design, holes: readonly Hole[]): readonly Omit<Jig, "id" | "from">[] {
  const patterns = new Map<
    string,
    { readonly jig: Omit<Jig, "id" | "from">; readonly parts: Set<string>; count: number }
  >();
  for (const { id, body, turned } of parts) {
    if (turned) continue;
    const rows = new Map<string, Hole[]>();
    for (const hole of holes) {
      if (hole.part !== id || hole.kind !== "pin") continue;
      const line = `${hole.direction.join()} ${key(hole.at[0])} ${key(hole.at[1])}`;
      rows.set(line, [...(rows.get(line) ?? []), hole]);
    }
    for (const row of rows.values()) {
      const jig = stripFor(id, row, body.low[2], SIZE[units === "inch" ? "inch" : "mm"]);
      if (jig.holes.length < LEAST) continue;
      const pattern = jig.holes.map(({ y, diameter }) => `${key(y)} ${key(diameter)}`).join();
      const before = patterns.get(pattern);
      if (before) before.count += 1;
      else patterns.set(pattern, { jig, parts: new Set(), count: 1 });
      patterns.get(pattern)?.parts.add(id);
    }
  }
  return [...patterns.values()]
    .filter(({ count }) => count > 1)
    .map(({ jig, parts: own }) => ({ ...jig, parts: [...own] }));
}

const key = ({ n, d }: Length): string => `${n}/${d}`;

/** Along the middle of the strip, from its lower end. */
function stripFor(
  part: string,
  row: readonly Hole[],
  floor: Length,
  { wide, beyond }: { readonly wide: Length; readonly beyond: Length },
): Omit<Jig, "id" | "from"> {
  const holes = row
    .map(({ at, stages }) => ({ x: half(wide), y: subtract(at[2], floor), diameter: stages[0]?.diameter ?? ZERO }))
    .toSorted((a, b) => compare(a.y, b.y));
  return {
    what: "the shelf pins",
    parts: [part],
    bores: "pin",
    laid: "on the end",
    width: wide,
    length: add(holes.at(-1)?.y ?? ZERO, beyond),
    holes,
  };
}
