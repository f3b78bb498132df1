/** Boards of beech. */
import type { Stock } from "../../../src/solve/design.ts";
import { millimetres } from "../../../src/units/index.ts";

const at = { start: 0, end: 0, line: 3, column: 5 };

/** Measures in millimetres. */
export const beech = (name: string, label: string, thickness: number, width: number): Stock => ({
  name,
  at,
  form: "board",
  label,
  species: "beech",
  softwood: false,
  thickness: millimetres(thickness),
  width: null,
  soldWidth: millimetres(width),
  soldLengths: [millimetres(700)],
  assumed: true,
  density: 700,
  roughThickness: null,
  price: null,
});
