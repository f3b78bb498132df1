/** Parts that have to come from one piece of stock: in a row from one strip, or anywhere from the same sheet. */
import { alikeOfTwoStocks } from "../../../findings/rules/alike-of-two-stocks.ts";
import { stripNotInARow } from "../../../findings/rules/strip-not-in-a-row.ts";
import { compare, equal, less } from "../../../units/rational.ts";
import type { Part } from "../../design.ts";
import type { Entry } from "../expand/entry.ts";
import { type AxisIndex, indexOf } from "../space.ts";
import type { MakingContext } from "./context.ts";
import { makingOf } from "./plain.ts";

/** For each part that shares its sheet with others: the first of them, in source order. */
export function alikeGroups(
  entries: readonly Entry[],
  parts: readonly Part[],
  { directory, report }: Pick<MakingContext, "directory" | "report">,
): ReadonlyMap<string, string> {
  const order = new Map(parts.map((part, i) => [part.id, i]));
  const stock = new Map(parts.map((part) => [part.id, part.stock]));
  const leader = new Map<string, string>();
  const find = (id: string): string => leader.get(id) ?? id;
  for (const entry of entries)
    for (const reference of entry.draft.alike ?? [])
      for (const other of directory.find(reference) ?? []) {
        if (!order.has(other.id) || other.id === entry.id) continue;
        if (stock.get(other.id) !== stock.get(entry.id)) {
          report(alikeOfTwoStocks(reference.at, { part: entry.id, other: other.id }));
          continue;
        }
        const both = [find(entry.id), find(other.id)].sort((a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0));
        const [first = entry.id, second = first] = both;
        for (const { id } of parts) if (find(id) === first || find(id) === second) leader.set(id, first);
      }
  const sizes = new Map<string, number>();
  for (const first of leader.values()) sizes.set(first, (sizes.get(first) ?? 0) + 1);
  return new Map([...leader].filter(([, first]) => (sizes.get(first) ?? 0) > 1));
}

/** Parts of one strip in their order, and the direction of the row. */
export interface Strip {
  readonly parts: readonly Part[];
  readonly along: "length" | "width";
}

/** The parts as a row in one board: null where they do not lie so. */
export function stripOf(parts: readonly Part[]): Strip | null {
  const [first] = parts;
  if (!first || parts.length < 2) return null;
  const same = parts.every(
    (part) =>
      part.stock === first.stock &&
      equal(part.thickness, first.thickness) &&
      part.axes.length === first.axes.length &&
      part.axes.width === first.axes.width &&
      makingOf(part).cut === makingOf(first).cut &&
      makingOf(part).boards * makingOf(part).layers === 1,
  );
  if (!same) return null;
  for (const along of ["length", "width"] as const) {
    const axis = indexOf(first.axes[along]);
    const other = indexOf(first.axes[along === "length" ? "width" : "length"]);
    const row = parts.toSorted((a, b) => compare(a.body.low[axis], b.body.low[axis]));
    const apart = row.slice(1).every((part, i) => !less(part.body.low[axis], (row[i] as Part).body.high[axis]));
    if (apart && row.every((part) => meets(part, first, other))) return { parts: row, along };
  }
  return null;
}

const meets = (a: Part, b: Part, axis: AxisIndex): boolean =>
  less(a.body.low[axis], b.body.high[axis]) && less(b.body.low[axis], a.body.high[axis]);

/** Parts by the name of their strip, in source order. */
export function stripsOf(parts: readonly Part[]): ReadonlyMap<string, readonly Part[]> {
  const strips = new Map<string, Part[]>();
  for (const part of parts) {
    const { strip } = makingOf(part);
    if (strip !== null) strips.set(strip, [...(strips.get(strip) ?? []), part]);
  }
  return strips;
}

export function reportStrips(parts: readonly Part[], { report }: Pick<MakingContext, "report">): void {
  for (const [name, members] of stripsOf(parts)) {
    const [first] = members;
    if (first && stripOf(members) === null)
      report(stripNotInARow(first.at, { strip: name, parts: members.map(({ id }) => id) }));
  }
}
