/** The board or sheet on the page: its length along the wider side of the frame. */
import type { Layout, Rectangle } from "../../../solve/build.ts";
import { equal, type Length, toNumber } from "../../../units/index.ts";
import type { Frame } from "../../style.ts";
import type { Spot } from "../drawing.ts";
import type { Box } from "../plate.ts";

export interface Board {
  /** Whether the grain runs across the page. */
  readonly lying: boolean;
  readonly box: Box;
  readonly spot: (x: Length, y: Length) => Spot;
  readonly rectangle: (r: Rectangle) => Box;
  /** A length on paper. */
  readonly long: (length: Length) => number;
}

/** How the board lies when drawn as large as the room allows. */
export const liesDown = ({ width, length }: Layout, room: Frame): boolean => {
  const [w, l] = [toNumber(width), toNumber(length)];
  return Math.min(room.width / l, room.height / w) >= Math.min(room.width / w, room.height / l);
};

/**
 * A board is drawn at least this wide, and as much wider as its narrowest part needs for its mark, up to a limit: its length is to
 * scale, its width is not. Sheets keep their shape.
 */
const LEAST_WIDE = 34;
const LEAST_PART = 17;
const MOST_WIDE = 190;
/** With more cuts than this a board is drawn so much wider that their numbers have room on its parts. */
const MANY = 20;
const LEAST_AMONG_MANY = 30;

/** Points on paper for each unit of a board's width, at least; boards of one stock as wide as one another are drawn alike. */
export const widest = (layout: Layout, all: readonly Layout[]): number => {
  const { kind, stock, width } = layout;
  const alike = all.filter((other) => other.kind === kind && other.stock === stock && equal(other.width, width));
  return Math.max(...[layout, ...alike].map(widened));
};

function widened({ kind, width, placements, cuts }: Layout): number {
  const least = LEAST_WIDE / toNumber(width);
  if (kind === "sheet") return least;
  const narrowest = placements.reduce((so, each) => Math.min(so, toNumber(each.width)), toNumber(width));
  const part = cuts.length > MANY ? LEAST_AMONG_MANY : LEAST_PART;
  return Math.max(least, Math.min(part / narrowest, MOST_WIDE / toNumber(width)));
}

/** In the middle of the room's width, at its top; `least` points for each unit of its width, where there is room. */
export function boardOn(layout: Layout, room: Frame, scale: number, lying: boolean, least = widened(layout)): Board {
  const most = (lying ? room.height : room.width) / toNumber(layout.width);
  const over = Math.max(scale, Math.min(least, most));
  const [wide, long] = [toNumber(layout.width) * over, toNumber(layout.length) * scale];
  const [across, down] = lying ? [long, wide] : [wide, long];
  const left = room.x + (room.width - across) / 2;
  const box = { left, top: room.y, right: left + across, bottom: room.y + down };
  // Lying down is the upright board turned clockwise, so that neither is a mirror image.
  const spot = (x: Length, y: Length): Spot => {
    const [a, b] = [toNumber(x) * over, toNumber(y) * scale];
    return lying ? [box.left + b, box.top + a] : [box.left + a, box.bottom - b];
  };
  return {
    lying,
    box,
    spot,
    long: (length) => toNumber(length) * scale,
    rectangle: ({ x, y, width, length }) => {
      const [a, b] = [toNumber(x) * over, toNumber(y) * scale];
      const [w, l] = [toNumber(width) * over, toNumber(length) * scale];
      return lying
        ? { left: box.left + b, top: box.top + a, right: box.left + b + l, bottom: box.top + a + w }
        : { left: box.left + a, top: box.bottom - b - l, right: box.left + a + w, bottom: box.bottom - b };
    },
  };
}
