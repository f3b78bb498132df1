/**
 * The inks of a plan. Few, and each tells from the next in a black-and-white print too: nothing is said by colour alone.
 * Contrast on white after WCAG 2.1: the black 18 : 1, the grey 6 : 1, the accent 7 : 1.
 */
import type { Ink } from "./document.ts";

export { BLACK, GREY, WHITE } from "./style.ts";

/** What is new, arrows and numbered cuts: the red of iron oxide. */
export const ACCENT: Ink = [0.6, 0.2, 0.11];

/** Wood that the eye should go to, by how its face lies to the light: from above, from the front, from the side. */
export const TINT: { readonly light: Ink; readonly middle: Ink; readonly dark: Ink } = {
  light: [0.95, 0.91, 0.84],
  middle: [0.89, 0.82, 0.7],
  dark: [0.82, 0.73, 0.58],
};

/** Hardware that is put on, in the same light: a tint of the accent. */
export const METAL: typeof TINT = {
  light: [0.95, 0.76, 0.69],
  middle: [0.91, 0.66, 0.57],
  dark: [0.86, 0.57, 0.47],
};

/** Panes: paler than any wood, and cold. */
export const GLASS: Ink = [0.91, 0.96, 0.98];

/** A wall that the piece stands before. */
export const WALL: Ink = [0.94, 0.94, 0.93];

/** Relative luminance after WCAG 2.1, 0 (black) to 1 (white); the exponent 2.4 as x² · x^0.4 by square roots and Newton's step. */
export function luminance(ink: Ink): number {
  const linear = (c: number): number => (c <= 0.03928 ? c / 12.92 : power24((c + 0.055) / 1.055));
  return 0.2126 * linear(ink[0]) + 0.7152 * linear(ink[1]) + 0.0722 * linear(ink[2]);
}

/** Contrast of two inks, 1 to 21. */
export function contrast(a: Ink, b: Ink): number {
  const [p, q] = [luminance(a) + 0.05, luminance(b) + 0.05];
  return p > q ? p / q : q / p;
}

/** x^2.4 = x² · (x²)^(1/5), by Newton's method; 0 < x ≤ 1. */
function power24(x: number): number {
  const square = x * x;
  let root = 1;
  for (let i = 0; i < 40; i++) root -= (root * root * root * root * root - square) / (5 * root * root * root * root);
  return square * root;
}
