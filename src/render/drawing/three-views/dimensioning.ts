/** Which dimensions go beside which view: each place of the piece is measured once, in the first view that shows it. */
import { compare, equal, type Length, subtract, TOLERANCE, toNumber } from "../../../units/index.ts";
import type { Body } from "../dimension/bodies.ts";
import { chosen, isAtEnd, spans } from "../dimension/chain.ts";
import { closes, type Printing } from "../dimension/closing.ts";
import type { Feet } from "../dimension/extension-lines.ts";
import type { Measure } from "../dimension/measure.ts";
import { type Side, type SideName, sideOf } from "../dimension/side.ts";
import { MATTERS, type Station, stations } from "../dimension/stations.ts";
import type { Pen } from "../drawing.ts";
import type { Aspect, Laid } from "./aspect.ts";
import { besides } from "./besides.ts";

/** Dimensions in a line, all of them of what stands in a row: from a place that is told already to the next one. */
export interface Chain {
  readonly stops: readonly Station[];
  readonly from: Length;
  readonly to: Length;
}

/** Rows of dimensions beside one view, from inside to outside. */
export interface Rows {
  /** Index of the view. */
  readonly view: number;
  readonly side: SideName;
  readonly chains: readonly Chain[];
  /** Whether the outside size stands here. */
  readonly overall: boolean;
  /** Whether some chain of the drawing closes only as it is told to the marks of a rule: then all are. */
  readonly finely?: boolean;
}

/** Two sides of a view, the first of them where it makes no difference. */
export interface Wanted {
  readonly view: number;
  readonly sides: readonly [SideName, SideName];
  readonly overall: boolean;
}

/** Places along each axis of the piece. */
export type Measured = readonly [readonly Length[], readonly Length[], readonly Length[]];

const GAP = { level: 8.5, upright: 11 } as const;
/** So much of a row a number takes. */
const PITCH = { level: 24, upright: 14 } as const;

/** Each place once, on the side of the first view that shows it to which its line is nearest; `before`: what is told already. */
export function dimensioning(
  bodies: readonly Body[],
  aspects: readonly Aspect[],
  wanted: readonly Wanted[],
  {
    scale,
    before = [[], [], []],
    printing,
    cut = false,
  }: {
    readonly scale: number;
    readonly before?: Measured;
    readonly printing?: Printing;
    /** Cut open: how high something ends deep inside is told by the cut list, from where its other end is measured; beside the view it would be taken for what stands at the side. */
    readonly cut?: boolean;
  },
): readonly Rows[] {
  const measured = before.map((places) => [...places]) as [Length[], Length[], Length[]];
  const all = wanted.flatMap(({ view, sides, overall }): readonly Rows[] => {
    const aspect = aspects[view];
    if (!aspect) return [];
    const { low, high } = aspect.outside;
    const level = sides[0] === "below" || sides[0] === "above";
    const axis = aspect.axes[level ? 0 : 1];
    const way = level ? "level" : "upright";
    const gap = GAP[way];
    const rules = { scale, gap, pitch: PITCH[way], face: level ? "low" : "high" } as const;
    const isMeasured = (place: Length): boolean => measured[axis].some((other) => equal(other, place));
    // Of a thin part that is measured to one face the cut list tells the other; where something else ends there too that is not
    // measured, like the base under a bottom, it is told.
    const isThin = (at: Length, twin: Length): boolean => Math.abs(toNumber(twin) - toNumber(at)) * scale < gap;
    // A notch that goes round something is told by it.
    const isRound = (at: Length): boolean => measured[axis].some((other) => isAtEnd(at, other, scale));
    const told = ({ at, gap: gapped, twins, notch }: Station): boolean =>
      isMeasured(at) ||
      (notch === true && isRound(at)) ||
      (!gapped && twins.some((twin) => isThin(at, twin)) && twins.every(isMeasured));
    const all = stations(bodies, aspect, level ? 0 : 1);
    if (cut && !level) {
      const inside = all.filter((station) => isDeep(station, aspect, scale));
      measured[axis].push(...inside.filter(({ gap, twins }) => !gap && twins.some(isMeasured)).map(({ at }) => at));
    }
    return besides(all, aspect.extent, sides).map(({ side, rows }, i): Rows => {
      const chains = rows.flatMap((row): readonly Chain[] => {
        const isFresh = (station: Station): boolean => !told(station);
        const few = chosen(row.filter(isFresh), low[axis], high[axis], rules);
        if (few.length === 0) return [];
        // A chain of what is fresh alone would lump together what is measured elsewhere; it stands only where it tells more.
        const full = chosen(row, low[axis], high[axis], rules);
        const stops = full.filter(isFresh).length >= few.length ? full : few;
        const chain = { stops, ...reach(stops, isFresh, low[axis], high[axis]) };
        measured[axis].push(...stops.map(({ at }) => at));
        return [chain];
      });
      if (!overall || i > 0) return { view, side, chains, overall: false };
      const back = level
        ? setBack(
            all.filter((station) => !told(station)),
            low[axis],
            high[axis],
            scale,
          )
        : null;
      if (back) measured[axis].push(...back.stops.map(({ at }) => at));
      return { view, side, chains: back ? [...chains, back] : chains, overall };
    });
  });
  const closesAsPrinted = ({ view, side, chains }: Rows): boolean =>
    chains.every(({ stops }) => {
      const aspect = aspects[view] as Aspect;
      const axis = aspect.axes[side === "below" || side === "above" ? 0 : 1];
      const { low, high } = aspect.outside;
      const places = [low[axis], ...stops.map(({ at }) => at).sort(compare), high[axis]];
      return printing === undefined || closes(places, printing);
    });
  const finely = !all.every(closesAsPrinted);
  return finely ? all.map((each) => ({ ...each, finely })) : all;
}

/** In points: a line that begins so far from both sides is not followed out to a number there. */
const DEEP = 24;

const isDeep = ({ low, high }: Station, { extent }: Aspect, scale: number): boolean =>
  Math.min(low - extent.low[0], extent.high[0] - high) * scale >= DEEP;

/** What stands so little back from the outside that no chain tells it, like a frame under a top, has a dimension of its own. */
function setBack(all: readonly Station[], low: Length, high: Length, scale: number): Chain | null {
  const nearest = (end: Length): Station | undefined =>
    all
      .filter(({ at, gap, weight }) => !gap && weight >= MATTERS && isAtEnd(at, end, scale) && !equal(at, end))
      .sort((a, b) => b.weight - a.weight)[0];
  const [first, last] = [nearest(low), nearest(high)];
  const stops = [first, last].filter((each) => each !== undefined);
  return stops.length === 0 ? null : { stops, from: first?.at ?? low, to: last?.at ?? high };
}

/** From the last place before what is fresh to the first behind it. */
function reach(
  stops: readonly Station[],
  isFresh: (station: Station) => boolean,
  low: Length,
  high: Length,
): { readonly from: Length; readonly to: Length } {
  const [first, last] = [stops.findIndex(isFresh), stops.findLastIndex(isFresh)];
  return { from: stops[first - 1]?.at ?? low, to: stops[last + 1]?.at ?? high };
}

/** Every place that some views show well, whether it is measured there or not. */
export function shownIn(bodies: readonly Body[], aspects: readonly Aspect[]): Measured {
  const places: [Length[], Length[], Length[]] = [[], [], []];
  for (const aspect of aspects)
    for (const shown of [0, 1] as const) {
      const shownWell = stations(bodies, aspect, shown).filter(({ weight }) => weight >= MATTERS);
      places[aspect.axes[shown]].push(...shownWell.map(({ at }) => at));
    }
  return places;
}

/** The rows in places of the page, and where the wood ends from which their extension lines come. */
export function onSide(
  { side: name, chains, overall, finely = false }: Rows,
  { aspect, fit, box }: Laid,
  pen: Pen,
): { readonly rows: readonly (readonly Measure[])[]; readonly feet: Feet } {
  const { low, high } = aspect.outside;
  const side = sideOf(box, name);
  const axis = aspect.axes[side.level ? 0 : 1];
  const page = (along: number, across: number) => fit.page(side.level ? [along, across] : [across, along]);
  const feet = new Map<number, number>();
  const corners = chains.flatMap(({ stops }) => stops).filter(({ corner }) => corner);
  const place = (length: Length): number => {
    const at = toNumber(length);
    const [x, y] = page(at, aspect.extent.low[side.level ? 1 : 0]);
    const along = side.level ? x : y;
    const corner = corners.find((stop) => equal(stop.at, length));
    const out = corner ? side.out(page(at, corner.low)) : edgeAt(aspect, at, side, page);
    feet.set(along, Math.min(0, ...[out].filter(Number.isFinite)));
    return along;
  };
  const rows = chains.map(({ stops, from, to }) => {
    const places = stops.map(({ at }) => at);
    return spans(places, low[axis], high[axis], { ...pen, finely }, { from, to });
  });
  const whole = { from: low[axis], to: high[axis], text: pen.print(subtract(high[axis], low[axis])) };
  const measures = [...rows, overall ? [whole] : []].map((row) =>
    row.map(({ from, to, text }): Measure => ({ from: place(from), to: place(to), text })),
  );
  return { rows: measures, feet };
}

/** How far out the outermost line lies that crosses or touches a place; −Infinity where none does. */
function edgeAt(
  { lines }: Aspect,
  at: number,
  side: Side,
  page: (along: number, across: number) => readonly [number, number],
): number {
  const [u, v] = side.level ? ([0, 1] as const) : ([1, 0] as const);
  const outs = lines.flatMap(({ visible }) =>
    visible.flatMap(([a, b]) => {
      if (Math.min(a[u], b[u]) > at + TOLERANCE || Math.max(a[u], b[u]) < at - TOLERANCE) return [];
      const long = b[u] - a[u];
      const across = Math.abs(long) <= TOLERANCE ? [a[v], b[v]] : [a[v] + ((at - a[u]) / long) * (b[v] - a[v])];
      return across.map((each) => side.out(page(at, each)));
    }),
  );
  return outs.reduce((most, out) => Math.max(most, out), -Infinity);
}
