/** Bolt holes of two parts have to meet, and with them the bores of their cross dowels. Common practice, no source. */
import { inches, millimetres } from "../../../../units/length.ts";
import type { Hole } from "../../../design.ts";
import type { Work } from "../draft.ts";

/** How the bolt holes of a part come square, are tried, and what helps where they do not meet; nothing where there are none. */
export function boltHoleTexts({ design, print }: Work, holes: readonly Hole[]): readonly string[] {
  const bolts = holes.filter(({ kind }) => kind === "bolt");
  if (bolts.length === 0) return [];
  const crossed = holes.some(({ kind }) => kind === "nut");
  const wider = print(design.units === "inch" ? inches(1, 32) : millimetres(1));
  return [
    `Guide the drill square for the bolt holes${crossed ? " and the cross dowel holes" : ""}: they have to meet others.`,
    ...(crossed
      ? ["Try each: a bolt that is pushed in by hand has to find the thread of its cross dowel."]
      : bolts.some(({ through }) => through)
        ? [
            `Where one does not meet its fellow when all is tried dry, widen the one that goes right through, by ${wider} at most: the washer covers it.`,
          ]
        : []),
  ];
}
