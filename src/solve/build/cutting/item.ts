import type { Length } from "../../../units/length.ts";
import { ceil, equal, floor, less, type Rational } from "../../../units/rational.ts";
import type { Blank } from "../../build.ts";

/**
 * One way for a blank to lie. `width` and `length` are whole units of 1/16 µm with one kerf added: parts with a kerf between them
 * fit a board exactly as parts grown by a kerf fit a board grown by a kerf. `across` and `along` are the exact sizes without it.
 */
export interface Shape {
  readonly width: number;
  readonly length: number;
  readonly across: Length;
  readonly along: Length;
  /** The blank's length lies over the board's width. */
  readonly turned: boolean;
}

/** A blank and the ways in which its grain lets it lie, at least one. */
export interface Item {
  readonly blank: Blank;
  readonly shapes: readonly [Shape, ...Shape[]];
}

/** What is bought: its usable size grown by a kerf, and what it costs (its area, as long as there are no prices). */
export interface Bin {
  /** As sold. */
  readonly soldLength: Length;
  readonly width: number;
  readonly length: number;
  readonly cost: number;
}

/** What a board or sheet gives when it is trimmed. */
export interface Usable {
  readonly width: Length;
  readonly length: Length;
}

/** Boards are rounded down, parts and kerf up: what fits in whole units fits exactly. */
const up = (a: Rational): number => Number(ceil(a));
const wholeDown = (a: Rational): number => Number(floor(a));

/** The blank on boards that give `room`. A size that fits by less than a unit counts as the whole room: nothing else fits there. */
export function makeItem(blank: Blank, kerf: Length, room: Usable): Item {
  const whole = (size: Length, most: Length): number =>
    up(kerf) + (less(most, size) ? up(size) : Math.min(up(size), wholeDown(most)));
  const shape = (across: Length, along: Length, turned: boolean): Shape => ({
    width: whole(across, room.width),
    length: whole(along, room.length),
    across,
    along,
    turned,
  });
  const straight = shape(blank.width, blank.length, false);
  const turned = shape(blank.length, blank.width, true);
  const square = equal(blank.width, blank.length);
  if (blank.grain === "width") return { blank, shapes: [turned] };
  return { blank, shapes: blank.grain === "free" && !square ? [straight, turned] : [straight] };
}

/** The item without ways in which it fits no size; it must fit one. */
export function fitting(item: Item, sizes: readonly { readonly usable: Usable }[]): Item {
  const [first, ...others] = item.shapes.filter((shape) =>
    sizes.some(({ usable }) => !less(usable.width, shape.across) && !less(usable.length, shape.along)),
  );
  return first === undefined ? item : { ...item, shapes: [first, ...others] };
}

/** A board or sheet of this size in whole units, grown by a kerf. */
export const makeBin = (room: Usable, kerf: Length, soldLength: Length, cost: number): Bin => ({
  soldLength,
  width: wholeDown(room.width) + up(kerf),
  length: wholeDown(room.length) + up(kerf),
  cost,
});
