/** Strips of banding: how long each is cut, and how much is bought. */
import type { Units } from "../../../parse/draft.ts";
import {
  add,
  divide,
  inches,
  type Length,
  less,
  millimetres,
  multiply,
  rational,
  sum,
  toNumber,
} from "../../../units/index.ts";
import type { CutLine } from "../../build.ts";
import { makingOf } from "../../design/making/plain.ts";
import { faceAxis, indexOf } from "../../design/space.ts";
import type { Band, Part } from "../../design.ts";
import { bareSize } from "../cut-list/blanks.ts";
import type { Need } from "../purchases/need.ts";

/** More than the edge at each end of a strip, so that the iron or the clamps hold it to its end. Common practice, no source. */
export const OVER_EACH_END = { inch: inches(1), mm: millimetres(25) } as const;
/** Bought over what the strips take, as a share of it. Common practice, no source. */
const SPARE = 0.05;

/** The edge that a band covers: ends as the part is sawn, long edges over the bands of the ends. */
export function bandedLength(part: Part, line: Pick<CutLine, "width" | "length">, band: Band): Length {
  const bare = bareSize(part, line);
  if (isOnEnd(part, band)) return bare.width;
  const ends = makingOf(part).banding.filter((other) => isOnEnd(part, other));
  return add(bare.length, sum(ends.map(({ thickness }) => thickness)));
}

const isOnEnd = (part: Part, { edge }: Band): boolean => faceAxis(edge) === indexOf(part.axes.length);

/** Thicker than this it is wood that is bought by its length; what is thinner comes in rolls. Common practice, no source. */
const ROLLED = millimetres(2);
/** Lengths of rolls in feet and m. Common practice, no source. */
const ROLLS = { inch: [25, 50, 250], mm: [10, 25, 50] } as const;

/** Rolled edging has glue on its back that an iron melts; a strip of wood is glued on. */
export const isIronedOn = ({ thickness }: Pick<Band, "thickness">): boolean => !less(ROLLED, thickness);

/** Each kind of band, in the order of the cut list: in feet or m. */
export function bandingNeeds(parts: readonly Part[], lines: readonly CutLine[], units: Units): readonly Need[] {
  const byId = new Map(parts.map((part) => [part.id, part]));
  const strips = new Map<string, { thickness: Length; lengths: Length[] }>();
  for (const line of lines)
    for (const part of line.parts.flatMap((id) => byId.get(id) ?? []))
      for (const band of makingOf(part).banding) {
        const length = add(bandedLength(part, line, band), multiply(OVER_EACH_END[units], rational(2)));
        const known = strips.get(band.item);
        if (known) known.lengths.push(length);
        else strips.set(band.item, { thickness: band.thickness, lengths: [length] });
      }
  const [one, of] = units === "inch" ? [inches(12), "feet"] : [millimetres(1000), "m"];
  return [...strips].map(([item, { thickness, lengths }]) => {
    const used = toNumber(divide(sum(lengths), one));
    const [words, spare] = [`about ${Math.ceil(used)} ${of} are used`, used * SPARE];
    const common = { section: "supplies", item, used, spare, price: null } as const;
    return isIronedOn({ thickness })
      ? {
          ...common,
          sold: { unit: "roll", boxes: ROLLS[units], of },
          notes: ["with glue on its back that an iron melts", words],
        }
      : { ...common, sold: { unit: of, boxes: [], of }, notes: ["strips of wood, to be glued on"] };
  });
}
