/** The measures in the drawing of a part are those that its step tells: whole sizes as they are listed, holes to what a rule has marks for. */
import type { Build, BuiltPart, CutLine } from "../../solve/build.ts";
import { ON_A_RULE, placeStep } from "../../solve/design/boring/marks.ts";
import { featureBox, isSquare } from "../../solve/design/shapes/feature-box.ts";
import { extent, INDICES, indexOf } from "../../solve/design/space.ts";
import { holeOnBench, onBench } from "../../solve/design/turning.ts";
import { fromFirst } from "../../units/from-first.ts";
import { isSame, type Length } from "../../units/length.ts";
import { divide, subtract } from "../../units/rational.ts";
import { roundTo } from "../../units/round.ts";

/** From a measure of the drawing to what is printed for it. */
export function asTold({ design, holes }: Build, part: BuiltPart, line: CutLine): (length: Length) => Length {
  const { blank, axes, id } = part;
  const sizes = (["length", "width", "thickness"] as const).map((size) => ({
    drawn: extent(blank, indexOf(axes[size])),
    listed: line[size],
  }));
  // A number stands for its distance from one side or from the other.
  const fromSides = (at: readonly Length[]): readonly Length[] =>
    INDICES.flatMap((i) => [subtract(at[i] as Length, blank.low[i]), subtract(blank.high[i], at[i] as Length)]);
  const cuts = onBench(part).features.flatMap((feature) => {
    if (!("size" in feature) || !isSquare(feature)) return [];
    const { low, high } = featureBox(feature);
    return [...fromSides(low), ...fromSides(high)];
  });
  const isCut = (at: Length): boolean => cuts.some((other) => isSame(at, other));
  const own = holes.filter((hole) => hole.part === id);
  const placed = own.map((hole) => ({ of: hole.for, sides: fromSides(holeOnBench(part, hole).at) }));
  const bored = placed.flatMap(({ sides }) => sides).filter((at) => !isCut(at));
  const step = placeStep(design);
  // The holes of one piece of hardware lie as far from each other wherever they are told.
  const rows = [...new Set(placed.flatMap(({ of }) => of ?? []))].flatMap((of) => {
    const set = placed.filter((hole) => hole.of === of);
    return (set[0]?.sides ?? []).map((_, i) => set.map(({ sides }) => sides[i] as Length));
  });
  const inRows = rows.filter(({ length }) => length > 1).map((row) => fromFirst(row, step));
  // What a fine rule has a mark for is not rounded.
  const fine = ON_A_RULE[design.units];
  return (length) => {
    const whole = sizes.find(({ drawn }) => isSame(drawn, length));
    if (whole) return whole.listed;
    const exact = divide(length, fine).d === 1n && !bored.some((at) => isSame(at, length));
    if (exact) return length;
    const inRow = isCut(length) ? [] : inRows.flatMap((told) => told(length) ?? []);
    return inRow[0] ?? roundTo(length, step);
  };
}
