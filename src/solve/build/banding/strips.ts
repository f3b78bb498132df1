/** Strips of banding: how long each is cut, and how much is bought. */
import type { Units } from "../../../parse/draft.ts";
import {
  add,
  ceil,
  divide,
  inches,
  type Length,
  millimetres,
  multiply,
  rational,
  sum,
  toNumber,
} from "../../../units/index.ts";
import type { CutLine, Purchase } from "../../build.ts";
import { makingOf } from "../../design/making/plain.ts";
import { faceAxis, indexOf } from "../../design/space.ts";
import type { Band, Part } from "../../design.ts";
import { bareSize } from "../cut-list/blanks.ts";

/** More than the edge at each end of a strip, so that the iron or the clamps hold it to its end. Common practice, no source. */
export const OVER_EACH_END = { inch: inches(1), mm: millimetres(25) } as const;
/** Bought over what the strips take. Common practice, no source. */
const SPARE = rational(105, 100);

/** The edge that a band covers: ends as the part is sawn, long edges over the bands of the ends. */
export function bandedLength(part: Part, line: Pick<CutLine, "width" | "length">, band: Band): Length {
  const bare = bareSize(part, line);
  if (isOnEnd(part, band)) return bare.width;
  const ends = makingOf(part).banding.filter((other) => isOnEnd(part, other));
  return add(bare.length, sum(ends.map(({ thickness }) => thickness)));
}

const isOnEnd = (part: Part, { edge }: Band): boolean => faceAxis(edge) === indexOf(part.axes.length);

/** A line for each kind of band, in the order of the cut list: in whole feet, or tenths of a metre. */
export function bandingPurchases(parts: readonly Part[], lines: readonly CutLine[], units: Units): readonly Purchase[] {
  const byId = new Map(parts.map((part) => [part.id, part]));
  const strips = new Map<string, Length[]>();
  for (const line of lines)
    for (const part of line.parts.flatMap((id) => byId.get(id) ?? []))
      for (const band of makingOf(part).banding) {
        const length = add(bandedLength(part, line, band), multiply(OVER_EACH_END[units], rational(2)));
        strips.set(band.item, [...(strips.get(band.item) ?? []), length]);
      }
  const [step, unit] = units === "inch" ? [inches(12), "feet"] : [millimetres(100), "m"];
  return [...strips].map(([item, lengths]) => {
    const steps = rational(ceil(divide(multiply(sum(lengths), SPARE), step)));
    const quantity = toNumber(units === "inch" ? steps : divide(steps, rational(10)));
    return { section: "supplies", item, quantity, unit, price: null, onHand: 0, waste: 0 };
  });
}
