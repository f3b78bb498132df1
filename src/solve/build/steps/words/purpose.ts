/** What a cut is for that belongs to no joint: what goes into it, and what room it leaves for wood that grows across its grain. */
import type { Length } from "../../../../units/length.ts";
import { less, multiply, rational, subtract, ZERO } from "../../../../units/rational.ts";
import { type AxisIndex, axisOf, faceOf, INDICES, indexOf } from "../../../design/space.ts";
import { shareOfMovement } from "../../../design/use/seasons.ts";
import { USUAL_SITE } from "../../../design/use/site.ts";
import type { Feature, Part } from "../../../design.ts";
import { isNear } from "../../tight.ts";
import { boxOfPiece, lieBeside, NEAR } from "../bounding.ts";
import { called, listed, type Work } from "../draft.ts";
import { type BoxFeature, spanOf } from "./boxes.ts";

const KINDS: readonly Feature["kind"][] = ["notch", "dado", "groove", "rabbet"];

/**
 * "They are for the back posts (B), with 1/4 in of room in front of them in which the board (J) swells: leave it open." `list`: cuts of one size.
 */
export function purposeTexts(work: Work, part: Part, list: readonly BoxFeature[]): readonly string[] {
  if (part.turned || list.some(({ kind, for: joint }) => joint !== null || !KINDS.includes(kind))) return [];
  const { parts } = work.design;
  const others = parts.filter(({ id, turned }) => id !== part.id && !turned);
  const [it, give] = list.length === 1 ? ["It is", "It gives"] : ["They are", "They give"];
  const inside = [...new Set(list.flatMap((cut) => others.filter((other) => reachesInto(cut, other))))];
  if (inside.length > 0) {
    const airs = list.flatMap((cut) => inside.flatMap((other) => airBeside(work, part, cut, other)));
    const what = listed(
      work,
      inside.map(({ id }) => id),
    );
    return [`${it} for ${what}${roomText(work, airs, inside)}.`];
  }
  const over = [...new Set(list.flatMap((cut) => others.filter((other) => swellsInto(work, cut, other))))];
  const ids = over.map(({ id }) => id);
  const [one, open] = [over.length === 1 ? "stands" : "stand", list.length === 1 ? "it" : "them"];
  const where = list.every(({ into }) => into[2] < 0) ? "over" : "at";
  return over.length > 0
    ? [`${give} ${listed(work, ids)}, which ${one} ${where} ${open}, room to swell: leave ${open} open.`]
    : [];
}

/** Room between what is in a cut and the wood beside it, in a direction in which wood moves. */
interface Air {
  readonly wide: Length;
  /** Where it lies, seen from what is in the cut. */
  readonly side: { readonly axis: AxisIndex; readonly high: boolean };
  /** What grows into it. */
  readonly grows: string;
}

function roomText(work: Work, airs: readonly Air[], inside: readonly Part[]): string {
  const [first] = airs;
  if (!first) return "";
  const same = airs.every(({ side }) => side.axis === first.side.axis && side.high === first.side.high);
  const place = same ? SIDES[faceOf(first.side.axis, first.side.high)] : "beside";
  const amounts = new Set(airs.map(({ wide }) => work.print(wide)));
  const amount = amounts.size === 1 ? `${work.print(first.wide)} of room` : "room";
  const [grows, ...more] = [...new Set(airs.map((air) => air.grows))];
  const one = inside.length === 1;
  const itself = inside.some(({ id }) => id === grows);
  const swells =
    itself || more.length > 0 ? (one ? "it swells" : "they swell") : `the ${called(work, grows as string)} swells`;
  return `, with ${amount} ${place} ${one ? "it" : "them"} in which ${swells}: leave that open`;
}

const SIDES = {
  left: "at the left of",
  right: "at the right of",
  front: "in front of",
  back: "behind",
  bottom: "below",
  top: "above",
} as const;

function airBeside(work: Work, part: Part, cut: BoxFeature, other: Part): readonly Air[] {
  // Glass has its play, whatever the wood does.
  if (!reachesInto(cut, other) || work.stock(other.stock).form === "pane") return [];
  return INDICES.flatMap((axis) => {
    const { low, high } = spanOf(cut, axis);
    return [false, true].flatMap((isHigh): readonly Air[] => {
      const wide = isHigh ? subtract(high, other.body.high[axis]) : subtract(other.body.low[axis], low);
      // Where the cut opens at a side of the part there is no wood that could meet it.
      const shut = isHigh ? less(high, part.blank.high[axis]) : less(part.blank.low[axis], low);
      const grows = [part, other].find((each) => !less(multiply(growth(work, each, axis), FILLS), wide));
      return shut && less(NEAR, wide) && grows ? [{ wide, side: { axis, high: isHigh }, grows: grows.id }] : [];
    });
  });
}

/** What fills less than a third of its room does not need it. Common practice, no source. */
const FILLS = rational(3);

/** By how much it swells in a direction: across its grain, and nothing where it is a sheet or glass. */
function growth(work: Work, part: Part, axis: AxisIndex): Length {
  if (indexOf(part.axes.width) !== axis) return ZERO;
  return multiply(part.width, shareOfMovement(work.stock(part.stock), work.design.site ?? USUAL_SITE) ?? ZERO);
}

/** Whether some of its wood lies in the cut. */
const reachesInto = (cut: BoxFeature, { solid }: Part): boolean =>
  solid.pieces.map(boxOfPiece).some((box) =>
    INDICES.every((axis) => {
      const { low, high } = spanOf(cut, axis);
      return less(NEAR, subtract(high, box.low[axis])) && less(NEAR, subtract(box.high[axis], low));
    }),
  );

/** Whether it ends at the mouth of the cut, and grows towards its bottom. */
function swellsInto(work: Work, cut: BoxFeature, other: Part): boolean {
  const axis = axisOf(cut.into);
  if (less(multiply(growth(work, other, axis), FILLS), cut.size[2])) return false;
  const spans = INDICES.map((i) => spanOf(cut, i));
  const [x, y, z] = spans as [Span, Span, Span];
  const room = { low: [x.low, y.low, z.low], high: [x.high, y.high, z.high] } as const;
  const up = cut.into[axis] > 0;
  return other.solid.pieces
    .map(boxOfPiece)
    .some(
      (box) =>
        isNear(up ? box.high[axis] : box.low[axis], up ? room.low[axis] : room.high[axis]) &&
        lieBeside(box, room, axis),
    );
}

type Span = ReturnType<typeof spanOf>;
