import type { BuildRecord, Part } from "./record.ts";

/** The sizes of a part as the cut list prints them, in mm: thickness, width, length; undefined where it prints no three sizes. */
export function printedOf(record: BuildRecord, part: Part): readonly [number, number, number] | undefined {
  const line = record.cutList.find(({ parts }) => parts.includes(part.id));
  const sizes = line?.shown.split(" × ").map(numberOf) ?? [];
  const unit = record.units === "inch" ? 25.4 : 1;
  const [thickness, width, length] = sizes.map((size) => size * unit);
  if (thickness === undefined || width === undefined || length === undefined || sizes.some(Number.isNaN))
    return undefined;
  return [thickness, width, length];
}

/** "16 1/2", "23/32", "613.5". */
function numberOf(text: string): number {
  return text
    .trim()
    .split(" ")
    .map((term) => term.split("/").map(Number))
    .reduce((sum, [top = Number.NaN, under = 1]) => sum + top / under, 0);
}
