/** Saw cuts: a line along the middle of the kerf, and a number. */
import type { Cut, Layout } from "../../../solve/build.ts";
import { add, half } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { ACCENT, WHITE } from "../../palette.ts";
import { circle } from "../../shapes.ts";
import type { Pen, Spot } from "../drawing.ts";
import { ahead, centred, heading, strokes } from "../ink.ts";
import { type Box, boxAround, grown, meets, type Plate, passes, type Segment } from "../plate.ts";
import { CUT } from "../strokes.ts";
import type { Board } from "./board.ts";

const RADIUS = 7;
const SIZE = 10;

const lineOf = (board: Board, { kind, from, to }: Cut, { kerf }: Layout): Segment => {
  const aside = half(kerf);
  const middle = ([x, y]: Cut["from"]): Spot =>
    kind === "rip" ? board.spot(add(x, aside), y) : board.spot(x, add(y, aside));
  return [middle(from), middle(to)];
};

/** A number is not set on a part that it would hide half of. */
const NARROW = 4 * RADIUS;
/** Nor farther from its cut than this to spare a part. */
const NEAR = 30;

/** `parts`: where they lie on the page. */
export function drawCuts(layout: Layout, board: Board, parts: readonly Box[], plate: Plate, pen: Pen): readonly Item[] {
  const narrow = parts.filter(({ left, right, top, bottom }) => Math.min(right - left, bottom - top) < NARROW);
  const lines = layout.cuts.map((cut) => ({ cut, line: lineOf(board, cut, layout) }));
  for (const { line } of lines) plate.addLine(line);
  const numbers = lines.flatMap(({ cut, line }) => {
    const width = widthOf(pen, cut);
    const strange = parts.filter((box) => !isBeside(box, line));
    const meetsAny = (boxes: readonly Box[], at: Spot): boolean =>
      boxes.some((box) => meets(boxAround(...at, width, 2 * RADIUS), box));
    // On a part that it does not touch a number is read as that of another cut.
    const hides = (at: Spot): boolean => meetsAny(narrow, at) || meetsAny(strange, at);
    const on = (not: typeof hides): Place | null => {
      const at = onCut(line, board, plate, width, not);
      return at ? { at, leader: null } : null;
    };
    const beside = asidePlaces(line, board, plate, width);
    const isNear = ({ at, far, open }: Aside): boolean => far <= NEAR && open && !hides(at);
    const { at, leader } = on(hides) ??
      beside.find((place) => isNear(place) && !place.led(strange)) ??
      beside.find(isNear) ??
      on(() => false) ??
      beside.find(({ open }) => open) ??
      beside[0] ?? { at: middleOf(line), leader: null };
    plate.addBox(boxAround(at[0], at[1], width, 2 * RADIUS));
    if (leader) plate.addLeader(leader);
    return [...strokes(leader ? [leader] : [], { width: 0.5, ink: ACCENT }), ...numberAt(pen, cut, at)];
  });
  return [
    ...strokes(
      lines.map(({ line }) => line),
      CUT,
    ),
    ...numbers,
  ];
}

export const widthOf = (pen: Pen, { number }: Cut): number =>
  Math.max(2 * RADIUS, pen.measure(String(number), "bold", SIZE) + 5);

export const numberAt = (pen: Pen, cut: Cut, spot: Spot): readonly Item[] => [
  circle(spot[0], spot[1], widthOf(pen, cut) / 2, { fill: WHITE, stroke: { width: 0.7, ink: ACCENT } }),
  centred(pen, String(cut.number), spot, { font: "bold", size: SIZE, ink: ACCENT }).item,
];

/** Whether a cut runs along a side of a part, farther than to its corner. */
function isBeside({ left, right, top, bottom }: Box, [[x1, y1], [x2, y2]]: Segment): boolean {
  const shared = (a: number, b: number, low: number, high: number): number =>
    Math.min(Math.max(a, b), high) - Math.max(Math.min(a, b), low);
  const near = (at: number, sides: readonly [number, number]): boolean =>
    sides.some((side) => Math.abs(side - at) < CLOSE);
  return Math.abs(y1 - y2) < Math.abs(x1 - x2)
    ? shared(x1, x2, left, right) > CLOSE && near(y1, [top, bottom])
    : shared(y1, y2, top, bottom) > CLOSE && near(x1, [left, right]);
}
/** Half a kerf on paper, and what no eye tells. */
const CLOSE = 3;

/** Beyond the end of a cut that reaches the edge of the board, else on the cut, as near its ends as there is room. */
function onCut(
  [from, to]: Segment,
  board: Board,
  plate: Plate,
  width: number,
  hides: (at: Spot) => boolean,
): Spot | undefined {
  const { along, distance } = heading(from, to);
  const { left, right, top, bottom } = board.box;
  const outside = ([x, y]: Spot) => x < left - 1 || x > right + 1 || y < top - 1 || y > bottom + 1;
  const beyond = [ahead(from, along, -RADIUS - 2), ahead(to, along, RADIUS + 2)].filter(outside);
  const steps = Array.from({ length: 21 }, (_, i) => (i % 2 === 0 ? i / 40 : 1 - (i - 1) / 40));
  const upon = steps.map((t) => ahead(from, along, distance * Math.min(0.97, Math.max(0.03, t))));
  const past = [ahead(to, along, RADIUS + 2), ahead(from, along, -RADIUS - 2)];
  const free = (spot: Spot): boolean => plate.isFree(grown(boxAround(...spot, width, 2 * RADIUS), 0.8));
  return beyond.find(free) ?? [...upon, ...past].find((spot) => free(spot) && !hides(spot));
}

interface Place {
  readonly at: Spot;
  readonly leader: Segment | null;
}
interface Aside extends Place {
  readonly far: number;
  /** Its leader crosses nothing. */
  readonly open: boolean;
  /** Whether it passes through some parts. */
  readonly led: (parts: readonly Box[]) => boolean;
}

/** In a crowd: beside the cut or in line with it farther off, else round the board, with a leader. */
function asidePlaces([from, to]: Segment, board: Board, plate: Plate, width: number): readonly Aside[] {
  const { left, right, top, bottom } = board.box;
  const { along } = heading(from, to);
  const middle = middleOf([from, to]);
  const places: Spot[] = [];
  for (let n = 0; n < 24; n++)
    for (const by of n === 0 ? [0] : [n * 8, -n * 8]) {
      const [x, y] = [middle[0] + by, middle[1] + by];
      places.push([x, top - RADIUS - 2], [x, bottom + RADIUS + 2], [left - RADIUS - 2, y], [right + RADIUS + 2, y]);
    }
  for (const t of [0.1, 0.3, 0.5, 0.7, 0.9])
    for (const off of [13, 18, 24, 31]) {
      const on = ahead(from, along, heading(from, to).distance * t);
      places.push(ahead(on, [-along[1], along[0]], off), ahead(on, [along[1], -along[0]], off));
    }
  for (const by of [18, 26, 34]) places.push(ahead(to, along, by), ahead(from, along, -by));
  const ends = [0, 0.1, 0.3, 0.5, 0.7, 0.9, 1].map((t) => ahead(from, along, heading(from, to).distance * t));
  const nearest = (at: Spot): Spot =>
    ends.reduce((a, b) => (heading(at, b).distance < heading(at, a).distance ? b : a));
  const leaderTo = (at: Spot): Segment => [ahead(at, heading(at, nearest(at)).along, width / 2), nearest(at)];
  const far = (p: Spot) => heading(p, nearest(p)).distance;
  return places
    .filter((at) => plate.isFree(grown(boxAround(...at, width, 2 * RADIUS), 0.5)))
    .map((at): Aside => {
      const leader = leaderTo(at);
      const led = (parts: readonly Box[]): boolean => parts.some((box) => passes(leader, grown(box, -1)));
      return { at, leader, far: far(at), open: !plate.blocks(leader), led };
    })
    .sort((p, q) => p.far - q.far || p.at[0] - q.at[0] || p.at[1] - q.at[1]);
}

const middleOf = ([from, to]: Segment): Spot => [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
