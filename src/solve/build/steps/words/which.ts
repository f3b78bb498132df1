/** Which of several that are called alike: by where they stand. */
import { less, max, min } from "../../../../units/rational.ts";
import type { AxisIndex } from "../../../design/space.ts";
import type { Box } from "../../../design.ts";
import { WAYS } from "../../cut-list/sides.ts";
import { series } from "../draft.ts";

const NUMBERS = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"];

/** "first", "fifth"; "12th". */
export const ordinal = (number: number): string =>
  NUMBERS[number - 1] ?? `${number}${number % 100 > 13 ? (["th", "st", "nd", "rd"][number % 10] ?? "th") : "th"}`;

/** "left", "middle" or "right", "lower" or "upper"; of more than three "lowest", "second from the left": where one of some stands along an axis, counted from 0. */
export function placeWord(at: number, count: number, axis: AxisIndex): string {
  const [low, high] = WAYS[axis];
  const own = count === 2 ? [low, high] : count === 3 ? [low, "middle", high] : [];
  if (axis === 2 && count > 3 && (at === 0 || at === count - 1)) return at === 0 ? "lowest" : "highest";
  return own[at] ?? `${ordinal(at + 1)} from ${axis === 2 ? "below" : `the ${low}`}`;
}

/** "left", "middle", "right"; "first from below": a word for each of some bodies that stand side by side or one above another. Null where they do neither. */
export function whichOf(boxes: readonly Box[]): readonly string[] | null {
  for (const axis of [0, 2] as const) {
    const order = boxes
      .map((_, i) => i)
      .sort((i, j) => (less((boxes[i] as Box).low[axis], (boxes[j] as Box).low[axis]) ? -1 : 1));
    const apart = order.every((i, at) => {
      const next = boxes[order[at + 1] ?? -1];
      return next === undefined || !less(next.low[axis], (boxes[i] as Box).high[axis]);
    });
    if (boxes.length < 2 || boxes.length > NUMBERS.length || !apart) continue;
    return boxes.map((_, i) => placeWord(order.indexOf(i), boxes.length, axis));
  }
  return null;
}

/** "the left and the right drawer", "the first drawer from below". */
export const theWhich = (words: readonly string[], kind: string): string =>
  series(
    words.map((word, i) => {
      const [own = "", ...from] = word.split(" ");
      const named = i === words.length - 1 || from.length > 0 ? ` ${kind}` : "";
      return [`the ${own}${named}`, ...from].join(" ");
    }),
  );

/** Whether some stand above others, over the same width. */
export const someAbove = (boxes: readonly Box[]): boolean =>
  boxes.some((one) =>
    boxes.some(
      (other) =>
        !less(other.low[2], one.high[2]) && less(max(one.low[0], other.low[0]), min(one.high[0], other.high[0])),
    ),
  );
