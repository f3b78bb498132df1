/** The text of a dimension that is shorter than it. */
import type { Item } from "../../document.ts";
import type { Pen } from "../drawing.ts";
import { centred, strokes } from "../ink.ts";
import { apart } from "../part/ordinates.ts";
import { type Box, boxAround, grown, type Plate, type Segment } from "../plate.ts";
import { NARROW } from "../strokes.ts";
import { type Lettered, TEXT } from "./measure.ts";
import type { Side } from "./side.ts";

const middleOf = ({ measure }: Lettered): number => (measure.from + measure.to) / 2;
const halfOf = ({ width }: Lettered, side: Side): number => (side.level ? width : TEXT) / 2;

/** Between two texts. */
const ASIDE = 7;

/**
 * Where along the side the texts of one row stand that are outside it: each as near to its dimension as their order lets it be, and
 * within the row, where lines go out from its ends.
 */
export function spreadOut(
  row: readonly Lettered[],
  [low, high]: readonly [number, number],
  side: Side,
): ReadonlyMap<Lettered, number> {
  const sorted = [...row].sort((a, b) => middleOf(a) - middleOf(b));
  let taken = 0;
  const before = sorted.map((one, i) => {
    const last = sorted[i - 1];
    taken += last ? halfOf(last, side) + halfOf(one, side) + ASIDE : 0;
    return taken;
  });
  const wanted = sorted.map((one, i) => middleOf(one) - (before[i] ?? 0));
  const [first, last] = [sorted[0], sorted.at(-1)];
  const most = last ? high - ASIDE / 2 - halfOf(last, side) - taken : 0;
  const least = first ? low + ASIDE / 2 + halfOf(first, side) : 0;
  const set = apart(wanted, least, 0).map((at) => Math.max(least, Math.min(at, most)));
  return new Map(set.map((at, i) => [sorted[i] as Lettered, at + (before[i] ?? 0)]));
}

/** In the row (`end`: −1 its first, 1 its last, null within). */
export interface InRow {
  readonly end: -1 | 1 | null;
  /** How far out the row stands, and where along it the text would stand best beside those of its neighbours. */
  readonly level: number;
  readonly best: number;
}

/** Text outside its dimension: at the end of the row, straight out from it, or shifted along it with a leader. */
export function outsideText(
  one: Lettered,
  { end, level, best }: InRow,
  side: Side,
  plate: Plate,
  pen: Pen,
): readonly Item[] {
  const { measure, width } = one;
  const middle = middleOf(one);
  const half = halfOf(one, side);
  const clear = (side.level ? TEXT / 2 : width / 2) + 5;
  const candidates: { along: number; out: number; cost: number; leader: boolean }[] = [];
  if (end !== null) {
    const outwards = end * (measure.from < measure.to ? 1 : -1);
    const tip = end === 1 ? measure.to : measure.from;
    candidates.push({ along: tip + outwards * (half + 4), out: 0, cost: 1, leader: false });
  }
  candidates.push({ along: best, out: clear, cost: 1.2, leader: Math.abs(best - middle) > 0.1 });
  for (const out of [clear, clear + 2, clear + TEXT + 2, clear + 2 * TEXT + 4])
    for (const n of [0, 1, -1, 2, -2, 3, -3]) {
      const shift = n * (half / 2 + 1.5);
      candidates.push({
        along: middle + shift,
        out,
        cost: Math.abs(shift) + 1.5 * out,
        leader: n !== 0 || out > clear,
      });
    }
  candidates.sort((a, b) => a.cost - b.cost);
  for (const { along, out, leader } of candidates) {
    const centre = side.spot(along, level + out);
    const box = boxAround(centre[0], centre[1], width, TEXT * 0.96);
    if (!plate.isFree(roomy(box)) || plate.linesThrough(box) > 0) continue;
    const line: Segment = [side.spot(middle, level), side.spot(along, level + out - clear + 4)];
    if (leader && plate.blocks(shortened(line))) continue;
    plate.addBox(box);
    if (leader) plate.addLeader(line);
    return [...strokes(leader ? [line] : [], NARROW), centred(pen, measure.text, centre, { size: TEXT }).item];
  }
  return [];
}

/** Numbers beside each other keep so far apart that they are not read as one. */
const roomy = (box: Box): Box => ({ ...grown(box, 1.2), left: box.left - ASIDE / 2, right: box.right + ASIDE / 2 });

/** Without its ends, which stand on the dimension line and at the text. */
function shortened([[x1, y1], [x2, y2]]: Segment): Segment {
  const [dx, dy] = [(x2 - x1) / 10, (y2 - y1) / 10];
  return [
    [x1 + dx, y1 + dy],
    [x2 - dx, y2 - dy],
  ];
}
