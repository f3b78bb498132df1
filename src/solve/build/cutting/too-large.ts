import type { Finding } from "../../../findings/finding.ts";
import { largerThanAnySheet } from "../../../findings/rules/larger-than-any-sheet.ts";
import { longerThanAnyBoard } from "../../../findings/rules/longer-than-any-board.ts";
import { thickerThanItsStock } from "../../../findings/rules/thicker-than-its-stock.ts";
import { widerThanAnyBoard } from "../../../findings/rules/wider-than-any-board.ts";
import type { Span } from "../../../findings/span.ts";
import type { Units } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { compare, equal, less } from "../../../units/rational.ts";
import type { Stock } from "../../design.ts";
import type { Item, Usable } from "./item.ts";
import type { Size as SizeOfBoard } from "./sizes.ts";

/** The largest piece that the stock gives, and where the parts are written. */
interface Place {
  readonly stock: Stock;
  readonly usable: Usable;
  readonly sizes: readonly SizeOfBoard[];
  readonly spans: ReadonlyMap<string, Span>;
  readonly units: Units;
}

/** Parts the blanks of which no board or sheet of the stock can give, and what to say of them. */
export function tooLarge(items: readonly Item[], place: Place): { unfit: ReadonlySet<Item>; findings: Finding[] } {
  const { stock, usable, sizes } = place;
  const sold = stock.roughThickness ?? stock.thickness;
  const thick = items.filter(
    ({ blank }) =>
      less(stock.thickness, blank.thickness) &&
      !(blank.why !== "as finished" && blank.why !== "largest" && equal(blank.thickness, sold)),
  );
  const large = items.filter(
    (item) =>
      !sizes.some(({ usable: u }) => item.shapes.some((s) => !less(u.width, s.across) && !less(u.length, s.along))),
  );
  const wide = large.filter(({ shapes: [s] }) => less(usable.width, s.across));
  const long = large.filter(({ shapes: [s] }) => less(usable.length, s.along));
  const findings =
    stock.form === "sheet"
      ? [...sayThick(thick, place), ...saySheet(large, place)]
      : [...sayThick(thick, place), ...sayWide(wide, place), ...sayLong(long, place)];
  return { unfit: new Set([...thick, ...large]), findings };
}

type Size = (item: Item) => Length;

/** The parts once each, the largest size among them, and where to point. */
function group(items: readonly Item[], size: Size, { stock, spans, units }: Place) {
  const [largest, ...others] = items.toSorted((a, b) => compare(size(b), size(a)));
  if (largest === undefined) return undefined;
  const parts = [...new Set([largest, ...others].map(({ blank }) => blank.part))];
  const at = spans.get(largest.blank.part);
  const also = at === undefined ? [] : [{ at: stock.at, label: "its stock" }];
  return {
    at: at ?? stock.at,
    largest,
    size: size(largest),
    common: { parts, stock: stock.name, units },
    more: { also },
  };
}

function sayThick(items: readonly Item[], place: Place): Finding[] {
  const found = group(items, ({ blank }) => blank.thickness, place);
  if (found === undefined) return [];
  const sizes = { thickness: found.size, sold: place.stock.thickness };
  return [thickerThanItsStock(found.at, { ...found.common, ...sizes }, found.more)];
}

function sayWide(items: readonly Item[], place: Place): Finding[] {
  const found = group(items, ({ shapes: [s] }) => s.across, place);
  if (found === undefined) return [];
  const sizes = { width: found.size, sold: place.usable.width, assumed: place.stock.assumed };
  return [widerThanAnyBoard(found.at, { ...found.common, ...sizes }, found.more)];
}

function sayLong(items: readonly Item[], place: Place): Finding[] {
  const found = group(items, ({ shapes: [s] }) => s.along, place);
  if (found === undefined) return [];
  const sizes = { length: found.size, sold: place.usable.length, assumed: place.stock.assumed };
  return [longerThanAnyBoard(found.at, { ...found.common, ...sizes }, found.more)];
}

function saySheet(items: readonly Item[], place: Place): Finding[] {
  const found = group(items, ({ shapes: [s] }) => s.along, place);
  if (found === undefined) return [];
  const [shape] = found.largest.shapes;
  const { width: soldWidth, length: soldLength } = place.usable;
  const sizes = { width: shape.across, length: shape.along, soldWidth, soldLength };
  return [largerThanAnySheet(found.at, { ...found.common, ...sizes }, found.more)];
}
