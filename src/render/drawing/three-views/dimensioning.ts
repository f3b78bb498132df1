/** Which dimensions go beside which view: each place of the piece is measured once, in the first view that shows it. */
import { equal, type Length, subtract, toNumber } from "../../../units/index.ts";
import type { Body } from "../dimension/bodies.ts";
import { chosen, spans } from "../dimension/chain.ts";
import type { Feet, Measure } from "../dimension/rows.ts";
import { type SideName, sideOf } from "../dimension/side.ts";
import { MATTERS, type Station, stations } from "../dimension/stations.ts";
import type { Pen } from "../drawing.ts";
import type { Extent } from "../fit.ts";
import type { Aspect, Laid, Outside } from "./aspect.ts";

/** Rows of dimensions beside one view, from inside to outside. */
export interface Rows {
  /** Index of the view. */
  readonly view: number;
  readonly side: SideName;
  readonly stops: readonly Station[];
  /** Whether the outside size stands here. */
  readonly overall: boolean;
}

/** A side of a view where rows may stand; `orElse` where their lines would run across more of the view than from there. */
export interface Wanted {
  readonly view: number;
  readonly side: SideName;
  readonly overall: boolean;
  readonly orElse?: SideName;
}

/** Places along each axis of the piece. */
export type Measured = readonly [readonly Length[], readonly Length[], readonly Length[]];

const GAP_ACROSS = 8.5;
const GAP_UP = 11;

/** Each place once, on the first of the wanted sides that shows it; `before`: what is told already. */
export function dimensioning(
  bodies: readonly Body[],
  aspects: readonly Aspect[],
  wanted: readonly Wanted[],
  { low, high }: Outside,
  { scale, before = [[], [], []] }: { readonly scale: number; readonly before?: Measured },
): readonly Rows[] {
  const measured = before.map((places) => [...places]) as [Length[], Length[], Length[]];
  return wanted.flatMap(({ view, side, overall, orElse = side }): Rows[] => {
    const aspect = aspects[view];
    if (!aspect) return [];
    const level = side === "below" || side === "above";
    const { axes, extent, lines } = aspect;
    const axis = axes[level ? 0 : 1];
    const all = stations(bodies, lines, extent, axis, level ? 0 : 1);
    const rules = { scale, gap: level ? GAP_ACROSS : GAP_UP, face: level ? "low" : "high" } as const;
    const isFresh = ({ at }: Station): boolean => !measured[axis].some((other) => equal(other, at));
    const few = chosen(all.filter(isFresh), low[axis], high[axis], rules);
    // A chain of what is fresh alone would lump together what is measured elsewhere; it stands only where it tells more.
    const full = few.length > 0 ? chosen(all, low[axis], high[axis], rules) : few;
    const stops = full.filter(isFresh).length >= few.length ? full : few;
    measured[axis].push(...stops.map(({ at }) => at));
    return [{ view, side: farther(stops, extent, side) ? orElse : side, stops, overall }];
  });
}

/** Every place that some views show well, whether it is measured there or not. */
export function shownIn(bodies: readonly Body[], aspects: readonly Aspect[]): Measured {
  const places: [Length[], Length[], Length[]] = [[], [], []];
  for (const { axes, extent, lines } of aspects)
    for (const shown of [0, 1] as const) {
      const axis = axes[shown];
      const shownWell = stations(bodies, lines, extent, axis, shown).filter(({ weight }) => weight >= MATTERS);
      places[axis].push(...shownWell.map(({ at }) => at));
    }
  return places;
}

/** Whether the lines that the stops extend end farther from this side, left or right, than from the other. */
function farther(stops: readonly Station[], { low, high }: Extent, side: SideName): boolean {
  const fromLeft = stops.reduce((sum, stop) => sum + stop.low - low[0], 0);
  const fromRight = stops.reduce((sum, stop) => sum + high[0] - stop.high, 0);
  return side === "right" && fromRight > fromLeft;
}

/** The rows in places of the page, and how far in the lines that their extension lines continue end. */
export function onSide(
  { side: name, stops, overall }: Rows,
  { aspect, fit, box }: Laid,
  { low, high }: Outside,
  pen: Pen,
): { readonly rows: readonly (readonly Measure[])[]; readonly feet: Feet } {
  const side = sideOf(box, name);
  const axis = aspect.axes[side.level ? 0 : 1];
  const place = (length: Length): number => {
    const at = toNumber(length);
    const [x, y] = fit.page(side.level ? [at, aspect.extent.low[1]] : [aspect.extent.low[0], at]);
    return side.level ? x : y;
  };
  const chain =
    stops.length === 0
      ? []
      : spans(
          stops.map(({ at }) => at),
          low[axis],
          high[axis],
          pen,
        );
  const whole = overall ? [{ from: low[axis], to: high[axis], text: pen.print(subtract(high[axis], low[axis])) }] : [];
  const feet = new Map(
    stops.map((stop) => {
      const at = toNumber(stop.at);
      const ends = [stop.low, stop.high].map((across) => side.out(fit.page(side.level ? [at, across] : [across, at])));
      return [place(stop.at), Math.min(0, Math.max(...ends))] as const;
    }),
  );
  const measures = (row: typeof chain): Measure[] =>
    row.map(({ from, to, text }) => ({ from: place(from), to: place(to), text }));
  return { rows: [measures(chain), measures(whole)], feet };
}
