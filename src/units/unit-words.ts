import { inches, type Length, millimetres } from "./length.ts";

/** What one of a unit is: a length, a foot (which inches may follow), or a degree. */
export type Unit =
  | { readonly kind: "length"; readonly one: Length }
  | { readonly kind: "inch"; readonly one: Length }
  | { readonly kind: "foot"; readonly one: Length }
  | { readonly kind: "degree" };

const inch: Unit = { kind: "inch", one: inches(1) };
const foot: Unit = { kind: "foot", one: inches(12) };
const mm: Unit = { kind: "length", one: millimetres(1) };
const cm: Unit = { kind: "length", one: millimetres(10) };
const metre: Unit = { kind: "length", one: millimetres(1000) };
const degree: Unit = { kind: "degree" };

/** Every way of writing a unit, in lower case. The inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
export const UNIT_WORDS: ReadonlyMap<string, Unit> = new Map<string, Unit>([
  ...['"', "″", "”", "''", "in", "inch", "inches"].map((word) => [word, inch] as const),
  ...["'", "′", "’", "ft", "foot", "feet"].map((word) => [word, foot] as const),
  ...["mm", "millimetre", "millimetres", "millimeter", "millimeters"].map((word) => [word, mm] as const),
  ...["cm", "centimetre", "centimetres", "centimeter", "centimeters"].map((word) => [word, cm] as const),
  ...["m", "metre", "metres", "meter", "meters"].map((word) => [word, metre] as const),
  ...["deg", "degree", "degrees", "°"].map((word) => [word, degree] as const),
]);

/** Fractions that are one character. */
export const FRACTION_CHARACTERS: ReadonlyMap<string, readonly [number, number]> = new Map([
  ["½", [1, 2]],
  ["⅓", [1, 3]],
  ["⅔", [2, 3]],
  ["¼", [1, 4]],
  ["¾", [3, 4]],
  ["⅕", [1, 5]],
  ["⅖", [2, 5]],
  ["⅗", [3, 5]],
  ["⅘", [4, 5]],
  ["⅙", [1, 6]],
  ["⅚", [5, 6]],
  ["⅐", [1, 7]],
  ["⅛", [1, 8]],
  ["⅜", [3, 8]],
  ["⅝", [5, 8]],
  ["⅞", [7, 8]],
  ["⅑", [1, 9]],
  ["⅒", [1, 10]],
]);
