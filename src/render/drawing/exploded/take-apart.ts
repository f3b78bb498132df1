/** A piece taken apart for a picture: how far, and from which side it is seen. */
import { ISOMETRIC, ISOMETRIC_LEFT, Stage, type View } from "../../../geometry/picture/index.ts";
import type { Vec } from "../../../geometry/types.ts";
import { minus, norm } from "../../../geometry/vec.ts";
import type { Build, BuiltPart } from "../../../solve/build.ts";
import { once } from "../../once.ts";
import { type Extent, extentOfItems, scaleInto } from "../fit.ts";
import type { Marked } from "../labels.ts";
import { outsideOf } from "../outside.ts";
import { shareSeen } from "../visibility.ts";
import { type Move, movesOf } from "./moves.ts";
import { outwards, type Shifts, spread } from "./spread.ts";

export interface TakenApart {
  readonly items: readonly Marked[];
  readonly view: View;
  readonly shifts: Shifts;
  readonly extent: Extent;
  /** The same with other gaps, so many times as wide along each axis. */
  readonly stretched: (stretch: Vec) => TakenApart;
  /** How much of the parts shows, at most their number. */
  readonly shown: () => number;
}

/** Gaps tried, as shares of the piece's largest size, until enough of every part shows. */
const GAPS: readonly number[] = [0.09, 0.15, 0.24];
/** Share of a part that must show. */
const ENOUGH = 0.3;

/** The smallest gap and the usual view in which enough of every part shows; else those in which most does. Null for no wood. */
export function takeApart(build: Build, only?: ReadonlySet<string>): TakenApart | null {
  const parts = only ? build.parts.filter(({ id }) => only.has(id)) : build.parts;
  if (!outsideOf(parts)) return null;
  const known = movesAmong(build, parts);
  const moves = known.length > 0 ? known : outwards(parts);
  const size = Math.max(...parts.map(({ solid }) => norm(minus(solid.high, solid.low))));
  const take = (gap: number, view: View, stretch: Vec = [1, 1, 1]): TakenApart => {
    const shifts = spread(parts, moves, gap * size, stretch);
    const items = parts.map(({ id, mark, solid }): Marked => ({ id, mark, solid, shift: shifts.get(id) ?? [0, 0, 0] }));
    const shown = once((): number => {
      const stage = new Stage(items, view);
      return items.reduce((sum, item) => sum + Math.min(1, shareSeen(item, stage) / ENOUGH), 0);
    });
    return { items, view, shifts, shown, extent: extentOfItems(items, view), stretched: (by) => take(gap, view, by) };
  };
  let best: { readonly taken: TakenApart; readonly shown: number } | null = null;
  for (const gap of GAPS)
    for (const view of [ISOMETRIC, ISOMETRIC_LEFT]) {
      const taken = take(gap, view);
      const shown = taken.shown();
      if (shown >= parts.length) return taken;
      if (!best || shown > best.shown + 1e-6) best = { taken, shown };
    }
  return best?.taken ?? null;
}

/** Of some parts, without the others. */
function movesAmong(build: Build, parts: readonly BuiltPart[]): readonly Move[] {
  const there = new Set(parts.map(({ id }) => id));
  return movesOf(build).flatMap(({ parts: moving, into, along }): Move[] => {
    const [here, met] = [moving, into].map((ids) => ids.filter((id) => there.has(id)));
    return here && met && here.length > 0 && met.length > 0 ? [{ parts: here, into: met, along }] : [];
  });
}

/** Gaps across and up, so many times as wide, that may fill a frame better. */
const ACROSS: readonly number[] = [1, 1.4, 1.8];
const UP: readonly number[] = [0.8, 1, 1.4, 1.9, 2.5];
/** So many of the best are looked at for what shows. */
const LOOKED_AT = 4;
/** In so much smaller a scale more air is not worth it. */
const SMALLER = 0.97;

/** With the gaps that fill the room: as large as it goes, and then as much air between the parts as the shape of the room allows. */
export function toFill(taken: TakenApart, room: { readonly width: number; readonly height: number }): TakenApart {
  const frame = { x: 0, y: 0, ...room };
  const least = SMALLER * scaleInto(taken.extent, frame);
  const usual = taken.shown();
  const tried = ACROSS.flatMap((across) =>
    UP.map((up) => {
      const each = taken.stretched([across, across, up]);
      const scale = scaleInto(each.extent, frame);
      return { each, scale, worth: scale * scale * scale * scale * across * across * up };
    }),
  );
  const order = tried.filter(({ scale }) => scale >= least).sort((a, b) => b.worth - a.worth);
  return order.slice(0, LOOKED_AT).find(({ each }) => each.shown() >= usual - 1e-6)?.each ?? taken;
}
