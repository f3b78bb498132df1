/** Phrases of the text alternatives. */
import type { View } from "../../geometry/picture/index.ts";
import type { Vec } from "../../geometry/types.ts";
import type { Build, BuiltPart, Step } from "../../solve/build.ts";
import type { Units } from "../../solve/design.ts";
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

/** What a step's picture shows. */
export function stepInWords(build: Build, { number, title, shows }: Step, view: Pick<View, "name">): string {
  const [fresh, present] = [chosenParts(build, shows.fresh), chosenParts(build, shows.present)];
  const fasteners = build.fasteners.filter(({ id }) => shows.fasteners.includes(id));
  const kinds = [...new Set(fasteners.map(({ item }) => item))].map(
    (item) => `${fasteners.filter((f) => f.item === item).length} of ${item}`,
  );
  return [
    `Step ${number}, ${title}, seen from ${view.name}.`,
    fresh.length > 0 ? `New: ${partsInWords(fresh)}.` : "",
    present.length > 0 ? `There already: ${partsInWords(present)}.` : "",
    kinds.length > 0 ? `Driven: ${listed(kinds)}.` : "",
    ...shows.travel.map(({ parts, along }) => `${partsInWords(chosenParts(build, parts))} go ${wayInWords(along)}.`),
  ]
    .filter((text) => text !== "")
    .join(" ");
}

/** A direction in the words of the finished piece: "to the left", "down". */
function wayInWords(along: Vec): string {
  const words = [
    ["to the left", "to the right"],
    ["to the front", "to the back"],
    ["down", "up"],
  ].flatMap(([low = "", high = ""], i) => {
    const part = along[i] ?? 0;
    return Math.abs(part) < 0.05 ? [] : [part < 0 ? low : high];
  });
  return listed(words);
}
