/** Phrases of the text alternatives. */
import type { Units } from "../../parse/draft.ts";
import type { Build, BuiltPart } from "../../solve/build.ts";
import { subtract } from "../../units/index.ts";
import type { Pen } from "./drawing.ts";
import { outsideOf } from "./outside.ts";

/** "a, b and c" */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

/** "A Left leg (2), B Rail": parts by mark, in cut-list order. */
export function partsInWords(parts: readonly BuiltPart[]): string {
  const lines = new Map<string, { name: string; count: number }>();
  for (const { mark, name } of parts) {
    const line = lines.get(mark);
    if (line) line.count++;
    else lines.set(mark, { name, count: 1 });
  }
  return listed([...lines].map(([mark, { name, count }]) => `${mark} ${name}${count > 1 ? ` (${count})` : ""}`));
}

/** The parts with these ids, in cut-list order. */
export function chosenParts(build: Build, ids: readonly string[]): readonly BuiltPart[] {
  const wanted = new Set(ids);
  return build.parts.filter(({ id }) => wanted.has(id));
}

/** "36 in wide, 12 in deep and 18 in high": the outside of some parts; nothing for none. */
export function outsideInWords(parts: readonly BuiltPart[], units: Units, pen: Pen): string {
  const size = outsideOf(parts);
  if (!size) return "";
  const [wide, deep, high] = ([0, 1, 2] as const).map((i) => {
    const length = subtract(size.high[i], size.low[i]);
    return `${pen.print(length)} ${units === "mm" ? "mm" : "in"}`;
  });
  return `${wide} wide, ${deep} deep and ${high} high.`;
}
