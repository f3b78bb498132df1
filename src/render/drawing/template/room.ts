/** How large a jig or the holes of hardware are drawn where they are not in their true size. */
import type { Units } from "../../../solve/design.ts";
import { UNITS_PER_INCH } from "../../../units/length.ts";
import { LEADER, PITCH, SIZE } from "../part/ordinates.ts";
import { type Scale, usualScale } from "../scale.ts";

/** Beside two others, beside one other, over the page; what goes beside others is drawn there if it is no smaller than `ENOUGH`. */
const WIDTHS = { three: 156, two: 236 } as const;
const HIGHEST = 130;
const ENOUGH = 72 / UNITS_PER_INCH / 6.5;
/** Numbers at the left; and at the right the last number of a row. */
const MARGIN = LEADER + 30 + SIZE;
const AFTER = 24;

/** `wide` and `high` in units of 1/16 µm; `numbers` that stand above it; `page`: as wide as anything may be. */
export function scaleFor(wide: number, high: number, numbers: number, units: Units, page: number): Scale {
  const found = [WIDTHS.three, WIDTHS.two, page - AFTER].map((width) =>
    usualScale(units, ({ points }) => wide * points <= width - MARGIN && high * points <= HIGHEST),
  );
  const good = found.find(({ points }) => points >= ENOUGH && numbers * PITCH <= wide * points);
  return good ?? (found.at(-1) as Scale);
}
