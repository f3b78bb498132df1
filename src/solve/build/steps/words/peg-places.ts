/** Where dowels of several sizes go: holes that look alike tell nobody, and one too long bursts what it goes into. */
import { compare, subtract } from "../../../../units/rational.ts";
import { type AxisIndex, faceOf, INDICES } from "../../../design/space.ts";
import { holeOnBench } from "../../../design/turning.ts";
import type { Fastener, Hole } from "../../../design.ts";
import { listed, numberWord, series, type Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { sideWord } from "./measured.ts";

/** ", in two top rails (L)", or ", where the bottom panel (D) meets two chest posts (J)": of those of one size among all that are put in; empty where there is one size. */
export function pegPlace(work: Work, list: readonly Fastener[], all: readonly Fastener[]): string {
  if (list.length === all.length) return "";
  const carriers = [...new Set(list.flatMap(({ travelsWith }) => travelsWith ?? []))];
  const others = all.filter((each) => !list.includes(each));
  const mixed = carriers.filter((id) => others.some(({ travelsWith }) => travelsWith === id));
  if (mixed.length === 0) return `, in ${listed(work, carriers)}`;
  const mates = [...new Set(list.flatMap((each) => mateOf(work, each)))];
  const rows = new Set(carriers.map((id) => rowText(work, id, list)));
  const [row = ""] = rows.size === 1 ? rows : [];
  return `, where ${listed(work, carriers)} ${carriers.length === 1 ? "meets" : "meet"} ${listed(work, mates)}${row}`;
}

const mateOf = ({ design }: Work, { joint, travelsWith }: Fastener): readonly string[] =>
  design.joints.flatMap(({ id, parts }) => (id === joint ? parts.filter((part) => part !== travelsWith) : []));

/** ": in the left end and right end the middle three of the seven". */
function rowText(work: Work, carrier: string, list: readonly Fastener[]): string {
  const part = work.part(carrier);
  const own = new Set(list.map(({ id }) => id));
  const holes = work.plan.holes
    .filter((hole) => hole.part === carrier && hole.kind === "dowel")
    .map((hole) => holeOnBench(part, hole));
  const sides = new Map<string, string[]>();
  for (const row of groupedBy(holes, ({ direction }) => direction.join())) {
    const which = placesIn(row, own);
    const [first] = row;
    if (which === null || !first) continue;
    const axis = INDICES.find((i) => first.direction[i] !== 0) ?? 0;
    const side = `${faceOf(axis, first.direction[axis] < 0)} ${sideWord(part, axis)}`;
    sides.set(which, [...(sides.get(which) ?? []), side]);
  }
  const told = [...sides].map(([which, names]) => `in the ${series(names)} ${which}`);
  return told.length === 0 ? "" : `: ${series(told)}`;
}

/** Which of the holes in one side, along it: "the middle three of the seven", "the two at either side of the middle three"; null for none or all of them. */
function placesIn(row: readonly Hole[], own: ReadonlySet<string>): string | null {
  const axis = INDICES.reduce<AxisIndex>((so, i) => (compare(spread(row, i), spread(row, so)) > 0 ? i : so), 0);
  const sorted = row.toSorted((a, b) => compare(a.at[axis], b.at[axis]));
  const places = sorted.flatMap((hole, i) => (own.has(hole.for ?? "") ? [i + 1] : []));
  const [n, all] = [places.length, row.length];
  const [first = 1, last = 1] = [places[0], places.at(-1)];
  if (n === 0 || n === all) return null;
  if (last - first + 1 === n && first - 1 === all - last)
    return `the middle ${n === 1 ? "one" : numberWord(n)} of the ${numberWord(all)}`;
  const outer = all - n;
  const before = places.filter((place, i) => place === i + 1).length;
  if (n % 2 === 0 && before === n / 2 && places.slice(before).every((place, i) => place === outer + before + i + 1))
    return `the ${numberWord(before)} at either side of the middle ${numberWord(outer)}`;
  return `no. ${series(places.map(String))} of the ${numberWord(all)}, counted from the ${faceOf(axis, false)}`;
}

const spread = (row: readonly Hole[], axis: AxisIndex): Hole["at"][AxisIndex] => {
  const at = row.map((hole) => hole.at[axis]).toSorted(compare);
  const [low, high] = [at[0], at.at(-1)];
  return low && high ? subtract(high, low) : { n: 0n, d: 1n };
};
