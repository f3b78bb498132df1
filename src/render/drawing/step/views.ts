/** From where a step is seen: one of the eight isometric directions, turned only when it must. */
import { type Placed, Stage, type View, viewFrom } from "../../../geometry/picture/index.ts";
import type { Vec } from "../../../geometry/types.ts";
import { dot, norm } from "../../../geometry/vec.ts";
import { shareSeen } from "../visibility.ts";
import type { Mouth } from "./mouths.ts";

/** What a reader has to see in a step. */
export interface Subject {
  readonly items: readonly Placed[];
  /** Ids of what is new. */
  readonly fresh: ReadonlySet<string>;
  /** Mouths of the screws' holes and of what is cut, and the ways in. */
  readonly mouths: readonly Mouth[];
  /** Of the hardware that is put on, each with the ids of its halves, first the one whose place the words tell. */
  readonly hardware?: readonly (readonly string[])[];
}

/** A view kept from the step before may be this much worse than the best. */
const LOYALTY = 0.75;
/** Another direction must be so many times as good as the usual one. */
const BETTER = 1.15;
/** The same two where only hardware is put on, which is small, and is looked at from where it is seen. */
const FITTINGS = { loyalty: 0.9, better: 1.1 } as const;
/** Good enough not to look further: of the parts alone, and more than all of them with a third of the screws. */
const GOOD = { parts: 0.6, mouths: 0.7 } as const;
/** A screw that goes in on the side that is seen, behind something, is worth so much of one that is seen. */
const BEHIND = 0.25;
/** Hardware is known again where so much of it is seen. */
const KNOWN = 0.3;
/** The half whose place the words do not tell is worth so much of the other. */
const OTHER_HALF = 0.3;
/** The sine of how far what points up may lean back: an isometric view leans less, one of another lie more. */
const UPRIGHT = 0.7;
/** What a view is worth that hides a new part. */
const HIDDEN = 0.5;
/** So good that no other direction is tried. */
const PLAIN = 0.8;

/** `ceiling` is what points up the page. The view before is kept while it shows the new parts well enough. */
export function chooseView(subject: Subject, ceiling: Vec, before: View | null): View {
  const [first, ...others] = candidates(ceiling);
  if (!first) throw new Error("no direction to look from");
  const same = before && dot(before.up, ceiling) > UPRIGHT * norm(before.up) * norm(ceiling) ? before : null;
  const good = subject.mouths.length + (subject.hardware ?? []).length > 0 ? GOOD.mouths : GOOD.parts;
  const known = new Map<string, number>();
  const scoreOf = (view: View): number => {
    const points = known.get(view.key) ?? score(subject, view);
    known.set(view.key, points);
    return points;
  };
  if (same && scoreOf(same) >= good) return same;
  const isFitted = subject.fresh.size === 0 && (subject.hardware ?? []).length > 0;
  const { loyalty, better } = isFitted ? FITTINGS : { loyalty: LOYALTY, better: BETTER };
  let best = { view: first, score: scoreOf(first) };
  // A part alone is turned in the hand; what stands on the bench is seldom looked at from below, sooner for what is put on there.
  const below = subject.items.length === 1 ? 0.9 : subject.fresh.size === 0 ? 0.8 : 0.6;
  for (const view of others) {
    if (best.score >= PLAIN) break;
    const points = scoreOf(view) * (dot(view.towards, ceiling) > 0 ? 1 : below);
    if (points > best.score * better) best = { view, score: points };
  }
  return same && scoreOf(same) >= loyalty * best.score ? same : best.view;
}

/** From above before from below, from the front right first. */
export function candidates(ceiling: Vec): readonly View[] {
  const up = ([0, 1, 2] as const).find((i) => ceiling[i] !== 0) ?? 2;
  const [across, deep] = up === 2 ? ([0, 1] as const) : up === 1 ? ([0, 2] as const) : ([1, 2] as const);
  return [1, -1].flatMap((height) =>
    [
      [1, -1],
      [-1, -1],
      [1, 1],
      [-1, 1],
    ].map(([a = 1, b = 1]): View => {
      const towards: [number, number, number] = [0, 0, 0];
      towards[up] = height * Math.sign(ceiling[up]);
      // On its side it turns its front to the reader as it does when it stands.
      towards[across] = up === 0 ? -a : a;
      towards[deep] = up === 0 ? -b : b;
      return viewFrom(saidFrom(towards), towards, ceiling);
    }),
  );
}

const saidFrom = ([x, y, z]: Vec): string =>
  `the ${y < 0 ? "front" : "back"} ${x > 0 ? "right" : "left"} and ${z > 0 ? "above" : "below"}`;

/** The new parts' worst and mean share, and the share of mouths whose way in is seen and of hardware that is known again: 0 to 1. */
function score({ items, fresh, mouths, hardware = [] }: Subject, view: View): number {
  const stage = new Stage(items, view);
  const shares = items.filter(({ id }) => fresh.has(id)).map((item) => shareSeen(item, stage));
  const parts = shares.length === 0 ? 1 : 0.5 * mean(shares) + 0.5 * Math.min(...shares);
  const ways = mouths.map(({ at, direction }) =>
    dot(direction, view.towards) >= 0 ? 0 : stage.hides(at) ? BEHIND : 1,
  );
  const put = hardware.map((halves) => {
    const known = items.flatMap((item) => {
      const half = halves.indexOf(item.id);
      return half < 0 ? [] : [(half === 0 ? 1 : OTHER_HALF) * Math.min(1, shareSeen(item, stage) / KNOWN)];
    });
    return Math.max(0, ...known);
  });
  const besides = [ways, put].filter(({ length }) => length > 0).map(mean);
  if (besides.length === 0) return parts;
  // A part that is put on must be seen, whatever holds it.
  const hidden = shares.some((share) => share <= 0) ? HIDDEN : 1;
  return hidden * (0.5 * parts + 0.5 * mean(besides));
}

const mean = (all: readonly number[]): number => all.reduce((a, b) => a + b, 0) / Math.max(1, all.length);
