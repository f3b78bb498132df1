/** Where the opening of a door or a drawer is measured, and what follows from what it measures. */
import { roundTo } from "../../../../units/index.ts";
import { subtract, toNumber } from "../../../../units/rational.ts";
import { roomStep } from "../../../design/boring/marks.ts";
import { type AxisIndex, enclosing, indexOf, triple } from "../../../design/space.ts";
import type { Part } from "../../../design.ts";
import { called, capital, listed, numberWord, series, type Work } from "../draft.ts";
import type { Entering, Opening } from "../openings.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { calledAmong } from "./by-place.ts";
import { rowAxis } from "./row-axis.ts";
import { pairWants } from "./slide-room.ts";
import { theWhich, whichOf } from "./which.ts";

/** Parts of one door or drawer that are cut to what they go into. */
export interface Fitted {
  readonly parts: readonly Part[];
  readonly openings: readonly Opening[];
}

type Kinded = Fitted & { readonly kind: Entering["kind"] };

/** Each opening, those that differ only in where they are once; then what changes when they come out otherwise. */
export function openingTexts(work: Work, all: readonly Kinded[]): readonly string[] {
  const alike = groupedBy(all, ({ openings }) => openings.map((opening) => keyOf(work, opening)).join());
  const which = whichOf(all.map(({ parts }) => parts.map(({ blank }) => blank).reduce(enclosing)));
  const told = alike.map((own) => {
    const fitted = own[0] as Kinded;
    const text = fitted.openings.map((opening) => openingText(work, fitted, opening, own.length === 1)).join(" ");
    if (!which || alike.length === 1) return text;
    const words = own.map((each) => which[all.indexOf(each)] as string);
    return `For ${theWhich(words, KINDS[fitted.kind])}: ${text.charAt(0).toLowerCase()}${text.slice(1)}`;
  });
  const changes = changesText(work, all);
  return [
    ...told,
    ...(alike.length < all.length ? eachText(all) : []),
    ...(changes === "" ? [] : [changes, ...hingesText(work, all)]),
  ];
}

/** Several that go in between the same two parts, as drawers one below the other do, are measured each where it goes. */
function eachText(all: readonly Kinded[]): readonly string[] {
  const across = all.map(({ openings }) => openings.find(({ count }) => count === 1));
  const [first] = across;
  // What is side by side in one opening is measured for its height in places over the whole of it.
  if (!first || across.includes(undefined) || first.axis === 2) return [];
  const same = across.every((each) => each?.low === first.low && each.high === first.high);
  return [
    same
      ? `Measure where each goes: cut each to its own measure, with its number from ${fromWords(all)}, 1 to ${all.length}, on it and on its opening; or all to the smallest.`
      : "Measure for each: no two openings are quite the same.",
  ];
}

/** The direction in which several follow each other. */
function fromWords(all: readonly Kinded[]): string {
  const boxes = all.map(({ parts }) => parts.map(({ blank }) => blank).reduce(enclosing));
  const along = rowAxis(boxes.map(({ low }) => triple((i) => toNumber(low[i]))));
  return ["the left", "the front", "below"][along] ?? "";
}

/** The same for an opening and its mirror image. */
const keyOf = (work: Work, { axis, low, high, room, filled }: Opening): string =>
  [axis, ...[low, high].map(({ id }) => work.line(id).mark).sort(), work.print(room), work.print(filled)].join();

function openingText(work: Work, fitted: Kinded, opening: Opening, alone: boolean): string {
  const { axis, low, high, filled } = opening;
  // What is expected is what a rule shows, and what is taken off that.
  const ids = new Set(fitted.parts.map(({ id }) => id));
  const runs = work.design.joints.find(({ kind, parts: [side] }) => kind === "running" && ids.has(side));
  const room = roundTo(opening.room, roomStep(work.design, axis === 2 ? undefined : runs?.method));
  const left = subtract(room, filled);
  const smaller = work.print(left);
  // Of several openings that are told at once, only the marks of what bounds them are the same.
  const bound = (id: string): string => (alone ? calledAmong(work, id, [low.id, high.id]) : called(work, id));
  const wants = runs && axis !== 2 ? pairWants(work, runs, left) : "";
  const size = axis === 2 ? "high" : fitted.kind === "rests" ? "long" : "wide";
  return [
    `Measure ${low === high ? `the opening in the ${called(work, low.id)}` : `from the ${bound(low.id)} to the ${bound(high.id)}`}, ${placesOf(fitted.parts, axis)}: ${work.print(room)} is expected.`,
    `${subjectOf(work, fitted, opening)} ${smaller} less than the smallest of these, ${work.print(filled)} ${size}${wants === "" ? "" : `: ${wants}`}.`,
  ].join(" ");
}

/** "Where you measure more or less across, ... get longer or shorter by as much; in the height, ..." */
function changesText(work: Work, all: readonly Kinded[]): string {
  const several = all.filter(({ parts, openings }) => parts.length > 1 || openings.some(({ count }) => count > 1));
  const axes = [...new Set(several.flatMap(({ openings }) => openings.map(({ axis }) => axis)))];
  const told = axes.flatMap((axis) => {
    const along = (size: "length" | "width"): readonly string[] =>
      several.flatMap(({ parts }) =>
        parts.flatMap((part) => (indexOf(part.axes[size]) === axis && runsThrough(part, parts, axis) ? [part.id] : [])),
      );
    const counts = [
      ...new Set(several.flatMap(({ openings }) => openings.flatMap((one) => (one.axis === axis ? [one.count] : [])))),
    ];
    const words = [
      ...changing(work, along("length"), "longer or shorter"),
      ...changing(work, along("width"), "wider or narrower"),
    ];
    return words.length > 0 ? [`${WAYS[axis]}, ${series(words)} by ${shareWords(counts)}`] : [];
  });
  return told.length > 0 ? `Where you measure more or less ${told.join("; ")}.` : "";
}

/** Several in one opening share what it gets larger or smaller by. */
function shareWords(counts: readonly number[]): string {
  const [count = 1] = counts;
  if (counts.every((each) => each === 1)) return "as much";
  const share = counts.length === 1 ? SHARES[count] : undefined;
  return share ? `${share} of it each` : "their share of it";
}

const SHARES: Readonly<Record<number, string>> = {
  2: "half",
  3: "a third",
  4: "a quarter",
  5: "a fifth",
  6: "a sixth",
};

/** Hinges that are told from both ends of a stile would meet the holes for their other leaves no more. */
function hingesText(work: Work, all: readonly Kinded[]): readonly string[] {
  const ids = new Set(all.flatMap(({ parts }) => parts.map(({ id }) => id)));
  const hung = work.design.joints.filter(({ kind, parts: [id] }) => {
    if (kind !== "hinged" || !ids.has(id)) return false;
    const along = indexOf(work.part(id).axes.length);
    return all.some(
      (one) => one.openings.some(({ axis }) => axis === along) && one.parts.some((part) => part.id === id),
    );
  });
  if (hung.length === 0) return [];
  const [stiles, holders] = ([0, 1] as const).map((end) => [...new Set(hung.map(({ parts }) => parts[end]))]);
  const one = stiles?.length === 1;
  return [
    `Where the length of ${listed(work, stiles ?? [])} changes, hold ${one ? "it" : "each"} where it will hang, and mark the places of its hinges from those in ${listed(work, holders ?? [])}, not by the figures.`,
  ];
}

const WAYS: Readonly<Record<AxisIndex, string>> = { 0: "across", 1: "in the depth", 2: "in the height" };

const changing = (work: Work, ids: readonly string[], change: string): readonly string[] =>
  ids.length === 0 ? [] : [`${listed(work, ids)} ${ids.length === 1 ? "gets" : "get"} ${change}`];

/** A box is measured over its depth, what lies in a face over that. */
function placesOf(parts: readonly Part[], axis: AxisIndex): string {
  if (axis === 2) return "at the left, in the middle and at the right";
  if (reach(parts, axis === 0 ? 1 : 0) <= reach(parts, 2)) return "below, in the middle and above";
  return axis === 0 ? "in front, in the middle and behind" : "at the left, in the middle and at the right";
}

/** "The drawer is", "Both doors together are", "The false front (M) is". */
function subjectOf(work: Work, { parts, kind }: Kinded, { count }: Opening): string {
  const [first] = parts as readonly [Part];
  if (count > 1) return `${count === 2 ? "Both" : capital(`all ${numberWord(count)}`)} together are`;
  return `The ${parts.length === 1 ? called(work, first.id) : KINDS[kind]} is`;
}

/** What parts are together. */
export const KINDS = { swing: "door", slide: "drawer", lift: "lid", rests: "shelf" } as const;

/** Over more than half of what the parts are together. */
const runsThrough = (part: Part, parts: readonly Part[], axis: AxisIndex): boolean =>
  reach([part], axis) * 2 > reach(parts, axis);

/** From the lowest to the highest of some parts. */
const reach = (parts: readonly Part[], axis: AxisIndex): number =>
  Math.max(...parts.map(({ solid }) => solid.high[axis])) - Math.min(...parts.map(({ solid }) => solid.low[axis]));
