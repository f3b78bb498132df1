/** Wood of which so much of the thickness goes off that nobody planes it away by hand. */
import { inches, type Length, less, millimetres, multiply, rational, subtract } from "../../../units/index.ts";
import type { Work } from "./draft.ts";

/** More than this, and more than a third of the thickness. Common practice, no source. */
const MUCH = { inch: inches(1, 4), mm: millimetres(6) } as const;
const THIRD = rational(1, 3);

/** Whether wood as thick as `sawn` is resawn, or planed by machine, before it ends as thick as `planed`. */
export function isMuchOff({ design }: Pick<Work, "design">, sawn: Length, planed: Length): boolean {
  const off = subtract(sawn, planed);
  return less(MUCH[design.units], off) && less(multiply(sawn, THIRD), off);
}
