/** What is marked in a step's picture: what is new, by name what is bought, and, finer, what it goes on. */
import type { View } from "../../../geometry/picture/index.ts";
import type { Vec, VisibleFace } from "../../../geometry/types.ts";
import type { Step } from "../../../solve/build.ts";
import { isName } from "../balloon.ts";
import type { Fit } from "../fit.ts";
import { labels, type Marked, type PartLabel, shows } from "../labels.ts";
import { seenArea } from "../targets.ts";
import type { Scene } from "./scene.ts";

/** More marks than these leave no room for those of what was there before, nor are needed to know again what was taken off. */
const MANY = 8;
/** So many go with those of what was there before, which are left out one by one where there is no place for them. */
const MOST = 10;

export interface Seen {
  readonly faces: readonly VisibleFace[];
  readonly view: View;
  readonly fit: Fit;
  /** Ids of what is drawn in hidden lines, and marked all the same. */
  readonly behind: ReadonlySet<string>;
  /** Only what is around something is drawn. */
  readonly isCloseUp: boolean;
}

export function marksOf(step: Step, scene: Scene, { faces, view, fit, behind, isCloseUp }: Seen): readonly PartLabel[] {
  const { items, hardware, goes, fresh } = scene;
  if (step.shows.as) return labels(items, faces, view, fit);
  const there = new Set(faces.filter(({ polygons }) => polygons.length > 0).map(({ id }) => id));
  const isThere = ({ id }: Marked): boolean => !isCloseUp || there.has(id) || behind.has(id);
  const named = clearerHalves(hardware, (id) => seenArea(faces, id, fit.scale));
  const bought = items.filter(({ id }) => named.has(id));
  // A line to what cannot be seen would strike the work through; it is counted with what can.
  const isSeen = (item: Marked): boolean => isThere(item) && shows(item, faces, view, fit);
  const unseen = new Map<string, number>();
  for (const item of bought) if (!isSeen(item)) unseen.set(item.mark, (unseen.get(item.mark) ?? 0) + 1);
  const marked = new Set(step.shows.fresh);
  // Of a body that comes off or goes on again what the words call by its mark.
  const words = [step.title, ...step.text].join(" ");
  const isNamed = (mark: string): boolean => words.includes(`(${mark})`);
  const going = labels(
    items.filter((item) => goes.has(item.id) && isNamed(item.mark) && isThere(item)),
    ...[faces, view, fit],
  );
  const isMarked = ({ id }: Marked): boolean => !goes.has(id) && marked.has(id) && !hardware.has(id);
  const fitted = labels(
    items.filter((item) => (isMarked(item) && isThere(item)) || (named.has(item.id) && isSeen(item))),
    ...[faces, view, fit],
    unseen,
  );
  const own = [...(going.length > MANY ? [] : going), ...(fitted.length > MANY ? spokenOf(fitted, isNamed) : fitted)];
  const receiving = new Set(step.actions.flatMap((action) => (action.do === "add" ? action.to : [])));
  const under = labels(
    items.filter(
      (item) =>
        !fresh.has(item.id) &&
        (((receiving.has(item.id) || scene.beside?.has(item.id)) && isNamed(item.mark)) ||
          isFilling(item, scene, step)) &&
        isSeen(item),
    ),
    ...[faces, view, fit],
  );
  const known = new Set(own.map(({ mark }) => mark));
  const rest = under.filter(({ mark }) => !known.has(mark)).map((each) => ({ ...each, isPresent: true }));
  return own.length + rest.length > MOST ? own : [...own, ...rest];
}

/** Whether it stands alone within parts that are worked on in their places: without a mark it would be taken for an opening. */
function isFilling({ id, solid }: Marked, { items, fresh }: Scene, { shows, kind }: Step): boolean {
  const others = items.filter((each) => shows.fresh.includes(each.id));
  if (
    kind !== "fit" ||
    shows.present.length > FILL ||
    others.length < 3 ||
    !shows.present.includes(id) ||
    fresh.has(id)
  )
    return false;
  const { low, high } = around(others);
  return INDICES.every((i) => solid.low[i] >= low[i] && solid.high[i] <= high[i]);
}

/** So many parts at most fill a frame. */
const FILL = 2;
const INDICES = [0, 1, 2] as const;

const around = (items: readonly Marked[]) => ({
  low: INDICES.map((i) => Math.min(...items.map(({ solid }) => solid.low[i]))) as unknown as Vec,
  high: INDICES.map((i) => Math.max(...items.map(({ solid }) => solid.high[i]))) as unknown as Vec,
});

/** Of a body of many parts what the words speak of; all where that is nothing. */
function spokenOf(all: readonly PartLabel[], isNamed: (mark: string) => boolean): readonly PartLabel[] {
  const kept = all.filter(({ mark }) => isName(mark) || isNamed(mark.replace(/ × \d+$/u, "")));
  return kept.some(({ mark }) => !isName(mark)) ? kept : all;
}

/** Of what is bought as one, the half that is seen better. */
function clearerHalves(hardware: ReadonlyMap<string, string>, seen: (id: string) => number): ReadonlySet<string> {
  const best = new Map<string, string>();
  for (const [id, whole] of hardware) {
    const other = best.get(whole);
    if (other === undefined || seen(id) > seen(other)) best.set(whole, id);
  }
  return new Set(best.values());
}
