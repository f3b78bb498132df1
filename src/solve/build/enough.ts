/** The piece of a sheet or board that does where the rest of it stays untouched: smaller ones are sold, or lie about. */
import type { Units } from "../../parse/draft.ts";
import {
  add,
  compare,
  inches,
  type Length,
  less,
  max,
  millimetres,
  min,
  multiply,
  rational,
  roundTo,
  ZERO,
} from "../../units/index.ts";
import type { Jig, Layout } from "../build.ts";
import type { Stock } from "../design.ts";
import { isRough } from "./cutting/sizes.ts";
import { TRIM } from "./cutting/trim.ts";
import { series } from "./steps/draft.ts";

export interface Enough {
  /** Of the layout, counted from 1 among those of its stock. */
  readonly number: number;
  readonly layout: Layout;
  readonly width: Length;
  readonly length: Length;
  /** It has a grain, which runs along its length. */
  readonly grain: boolean;
  /** What is made from the rest of such sheets or boards. */
  readonly jigs: readonly string[];
}

/** What is asked for is told in these. */
const STEP = { inch: inches(1), mm: millimetres(10) } as const;
/** A piece is named that is no more than this share of the whole. Common practice, no source. */
const SHARE = rational(1, 2);

/**
 * Of the bought sheets or boards of a stock that of which the least is used, if it is less than half: the corner that its layout uses, with
 * the kerfs of the last cuts, and the edge that is straightened.
 */
export function enoughOf(
  stock: Stock,
  layouts: readonly Layout[],
  jigs: readonly Pick<Jig, "id" | "from">[],
  units: Units,
): Enough | null {
  const made = jigs.flatMap(({ id, from }) => (from === stock.name ? [id] : []));
  const corners = layouts.flatMap((layout, i) =>
    layout.source === "buy"
      ? [{ number: i + 1, layout, ...cornerOf(stock, layout, units), grain: !stock.grainless, jigs: made }]
      : [],
  );
  const [least] = corners.toSorted((a, b) => compare(areaOf(a), areaOf(b)) || b.number - a.number);
  return least && !less(multiply(areaOf(least.layout), SHARE), areaOf(least)) ? least : null;
}

const areaOf = ({ width, length }: Pick<Layout, "width" | "length">): Length => multiply(width, length);

function cornerOf(stock: Stock, layout: Layout, units: Units): Pick<Enough, "width" | "length"> {
  const { placements, kerf } = layout;
  const edge = isRough(stock) ? TRIM[units].roughEdge : ZERO;
  const wide = placements.map(({ x, width }) => add(x, width)).reduce(max, ZERO);
  const long = placements.map(({ y, length }) => add(y, length)).reduce(max, ZERO);
  const whole = (size: Length): Length => roundTo(size, STEP[units], "up");
  return {
    width: min(whole(add(add(wide, kerf), edge)), layout.width),
    length: min(whole(add(long, kerf)), layout.length),
  };
}

/** "for sheet 2 a piece 15 in wide and 35 in long, along the grain, is enough"; without a number where there is one sheet only. */
export function sayEnough(enough: Enough, count: number, print: (length: Length) => string): string {
  const { layout, number, width, length, grain, jigs } = enough;
  const besides = jigs.length === 0 ? "" : `, besides an offcut of something as thick for ${series(jigs)}`;
  const which = count === 1 ? "" : `for ${layout.kind} ${number} `;
  return `${which}a piece ${print(width)} wide and ${print(length)} long${grain ? ", along the grain," : ""} is enough${besides}`;
}
