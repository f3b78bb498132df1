/** The labels of parts in a picture. */
import { type Placed, picturePoint, type View } from "../../geometry/picture/index.ts";
import type { Vec, VisibleFace } from "../../geometry/types.ts";
import { plus, times } from "../../geometry/vec.ts";
import { isName } from "./balloon.ts";
import type { Label } from "./balloon-places.ts";
import type { Spot } from "./drawing.ts";
import { extentOfItems, type Fit } from "./fit.ts";
import { heading } from "./ink.ts";
import { seenArea, targetsOn } from "./targets.ts";

/** Of more than this many alike, the one that is best seen stands for all, wherever they are. */
const ALIKE = 8;
/** So many alike that stand together have one label. */
const TOGETHER = 3;
/** Of names, which take room, so many. */
const PAIR = 2;
/** So many points of each of them are offered: its largest face's middle and ends. */
const FIRST = 3;
/** Points on paper from middle to middle. */
const NEAR = 64;
/** Square points; less of a part is no place for a leader. */
const ENOUGH = 12;
/** Of the rectangle around what is small. */
const SHARE = 0.25;

export interface Marked extends Placed {
  readonly mark: string;
}

export interface PartLabel extends Label {
  readonly parts: readonly string[];
  /** Points on any of several alike that it stands for, the one that is best seen first. */
  readonly any?: readonly Spot[];
}

const NONE: ReadonlyMap<string, number> = new Map();

/**
 * One label for each part that has a mark, and one for several alike that stand together, with their number; a leader to a part
 * that does not show is dashed. In the order of the marks' first parts. `unseen`: how many more of a mark there are that are not
 * drawn; then the one that is best seen stands for all, as it does wherever they are where they are `scattered`.
 */
export function labels(
  parts: readonly Marked[],
  faces: readonly VisibleFace[],
  view: View,
  fit: Fit,
  unseen = NONE,
  scattered = false,
): readonly PartLabel[] {
  const marks = [...new Set(parts.map(({ mark }) => mark))].filter((mark) => mark !== "");
  return marks.flatMap((mark): readonly PartLabel[] => {
    const alike = parts
      .filter((part) => part.mark === mark)
      .map((part) => ({
        label: labelOf(part, faces, view, fit),
        at: fit.page(picturePoint(view, middleOf(part))),
        seen: seenArea(faces, part.id, fit.scale),
      }));
    const more = unseen.get(mark) ?? 0;
    const groups = alike.length > ALIKE || more > 0 || scattered ? [alike] : groupsOf(alike);
    return groups.flatMap((group) => {
      const [clearest] = [...group].sort((a, b) => b.seen - a.seen);
      const least = scattered || isName(mark) ? PAIR : TOGETHER;
      if (!clearest || (group.length < least && more === 0)) return group.map(({ label }) => label);
      const parts = group.flatMap(({ label }) => label.parts);
      const seen = [clearest, ...group.filter((one) => one !== clearest && !one.label.hidden)];
      const any = seen.flatMap(({ label }) => label.targets.slice(0, FIRST));
      return [{ ...clearest.label, mark: `${mark} × ${group.length + more}`, parts, any }];
    });
  });
}

/** Those that stand near one another, in a chain. */
function groupsOf<T extends { readonly at: Spot }>(all: readonly T[]): readonly (readonly T[])[] {
  const groups: T[][] = [];
  for (const one of all) {
    const near = groups.filter((group) => group.some(({ at }) => heading(at, one.at).distance <= NEAR));
    const rest = groups.filter((group) => !near.includes(group));
    groups.splice(0, groups.length, ...rest, [...near.flat(), one]);
  }
  return groups;
}

const middleOf = ({ solid, shift = [0, 0, 0] }: Marked): Vec => plus(times(plus(solid.low, solid.high), 0.5), shift);

/** Whether enough of a part is seen for a leader to end on it. */
export function shows(part: Marked, faces: readonly VisibleFace[], view: View, fit: Fit): boolean {
  const { low, high } = extentOfItems([part], view);
  const all = (high[0] - low[0]) * (high[1] - low[1]) * fit.scale * fit.scale;
  return seenArea(faces, part.id, fit.scale) >= Math.min(ENOUGH, SHARE * all);
}

function labelOf(part: Marked, faces: readonly VisibleFace[], view: View, fit: Fit): PartLabel {
  const { id, mark } = part;
  return shows(part, faces, view, fit)
    ? { mark, parts: [id], targets: targetsOn(faces, id, fit), hidden: false }
    : { mark, parts: [id], targets: [fit.page(picturePoint(view, middleOf(part)))], hidden: true };
}
