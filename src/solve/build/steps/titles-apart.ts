/** Steps of one title are told apart by where in the piece their parts go. */
import type { AxisIndex } from "../../design/space.ts";
import type { Part } from "../../design.ts";
import type { StepDraft, Work } from "./draft.ts";
import { placeWord } from "./words/which.ts";

/** Of more that stand in a row one is not found sooner by counting. */
const MOST = 4;
/** Side by side, one above the other, one behind the other. */
const AXES: readonly AxisIndex[] = [0, 2, 1];
const WHERE: Readonly<Record<string, string>> = {
  ...{ left: "at the left", middle: "in the middle", right: "at the right" },
  ...{ lower: "at the bottom", upper: "at the top", front: "at the front", back: "at the back" },
};

export function titlesApart(work: Pick<Work, "part">, drafts: readonly StepDraft[]): readonly StepDraft[] {
  const alike = new Map<string, StepDraft[]>();
  for (const draft of drafts)
    if (draft.kind === "join" || draft.kind === "glue-up" || draft.kind === "fit")
      alike.set(draft.title, [...(alike.get(draft.title) ?? []), draft]);
  return drafts.map((draft) => {
    const all = alike.get(draft.title) ?? [];
    if (!all.includes(draft)) return draft;
    const place = placesOf(all.map(({ shows }) => shows.fresh.map(work.part)))?.[all.indexOf(draft)];
    return place === undefined ? draft : { ...draft, title: `${draft.title}, ${whole(WHERE[place] ?? place)}` };
  });
}

/** It goes into the next line together. */
const whole = (words: string): string => words.replaceAll(" ", "\u00a0");

type Bodies = readonly (readonly Pick<Part, "solid">[])[];

/** A word for each of some bodies that stand clear of each other along a direction: the one along which they stand farthest apart. Null where there is none. */
function placesOf(bodies: Bodies): readonly string[] | null {
  if (bodies.length < 2 || bodies.length > MOST || bodies.some((body) => body.length === 0)) return null;
  const rows = AXES.map((axis) => {
    const spans = spansOf(bodies, axis);
    const order = inOrder(spans);
    const gaps = order.slice(1).map((i, at) => (spans[i]?.[0] ?? 0) - (spans[order[at] ?? 0]?.[1] ?? 0));
    return { axis, order, clear: Math.min(...gaps) };
  });
  const best = rows.reduce((one, other) => (other.clear > one.clear ? other : one));
  return best.clear < 0
    ? cornersOf(bodies)
    : bodies.map((_, i) => placeWord(best.order.indexOf(i), bodies.length, best.axis));
}

type Span = readonly [low: number, high: number];

const spansOf = (bodies: Bodies, axis: AxisIndex): readonly Span[] =>
  bodies.map(
    (body): Span => [
      Math.min(...body.map(({ solid }) => solid.low[axis])),
      Math.max(...body.map(({ solid }) => solid.high[axis])),
    ],
  );

const inOrder = (spans: readonly Span[]): readonly number[] =>
  spans.map((_, i) => i).toSorted((i, j) => (spans[i]?.[0] ?? 0) - (spans[j]?.[0] ?? 0));

/** "at the front left": bodies of which no direction tells all apart, and two together do. */
function cornersOf(bodies: Bodies): readonly string[] | null {
  const halves = ([2, 1, 0] as const).flatMap((axis) => {
    const spans = spansOf(bodies, axis);
    const order = inOrder(spans);
    const low: number[] = [];
    for (const i of order)
      if (low.length === 0 || low.some((j) => (spans[i]?.[0] ?? 0) < (spans[j]?.[1] ?? 0))) low.push(i);
    const high = order.filter((i) => !low.includes(i));
    const clear = high.every((i) => low.every((j) => (spans[j]?.[1] ?? 0) <= (spans[i]?.[0] ?? 0)));
    return high.length > 0 && clear ? [bodies.map((_, i) => placeWord(low.includes(i) ? 0 : 1, 2, axis))] : [];
  });
  if (halves.length < 2) return null;
  const words = bodies.map((_, i) => `at the ${halves.map((half) => half[i]).join(" ")}`);
  return new Set(words).size === bodies.length ? words : null;
}
