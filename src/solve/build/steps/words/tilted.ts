/** How parts go in that no straight way lets in. */

import { circlePoint } from "../../../../geometry/angle.ts";
import { inches, millimetres, UNITS_PER_MM } from "../../../../units/length.ts";
import { toNumber } from "../../../../units/rational.ts";
import { roundTo } from "../../../../units/round.ts";
import type { Leg } from "../../../build.ts";
import { type AxisIndex, extent, faceOf, INDICES } from "../../../design/space.ts";
import type { Part } from "../../../design.ts";
import { onPins } from "../../order/links.ts";
import { tiltOf } from "../../order/tilt.ts";
import { called, capital, listed, numberWord, plural, series, type Work } from "../draft.ts";
import type { Move } from "../moves.ts";

/** Those that go in alike together; of several of one mark that do not, which. */
export function tiltTexts(work: Work, moves: readonly Move[], built: string | null): readonly string[] {
  const ways = new Map<string, string[]>();
  for (const { union, arriving } of moves) {
    const way = tiltText(work, union.legs ?? [], arriving);
    if (way !== null) ways.set(way, [...(ways.get(way) ?? []), ...arriving]);
  }
  const all = moves.flatMap(({ arriving }) => arriving);
  const order = ways.size > 0 && built === null ? orderText(work, all) : [];
  const told = [...ways].map(([way, ids]) => {
    const what = built ?? (ways.size === 1 && ids.length === all.length ? listed(work, ids) : whichOf(work, all, ids));
    const one = ids.length === 1 || built !== null;
    return `${capital(what)} ${one ? "does" : "do"} not go in straight: ${way}`;
  });
  return [...order, ...told];
}

/** What is turned on its way in needs the room that others fill later. */
function orderText(work: Work, ids: readonly string[]): readonly string[] {
  const heights = ids.map((id) => toNumber(work.part(id).body.low[2]));
  if (ids.length < 2 || new Set(ids.map((id) => work.line(id).mark)).size > 1) return [];
  const rises = heights.every((at, i) => i === 0 || (heights[i - 1] ?? 0) < at);
  const falls = heights.every((at, i) => i === 0 || at < (heights[i - 1] ?? 0));
  if (!rises && !falls) return [];
  return [
    `They go in one after another, the ${rises ? "lowest first and the highest" : "highest first and the lowest"} last: each needs the room of those after it.`,
  ];
}

/** "the lowest and the middle one of three shelves (T)": by their heights. */
function whichOf(work: Work, all: readonly string[], ids: readonly string[]): string {
  const marks = [...new Set(ids.map((id) => work.line(id).mark))];
  return series(
    marks.map((mark) => {
      const alike = all
        .filter((id) => work.line(id).mark === mark)
        .toSorted((a, b) => toNumber(work.part(a).body.low[2]) - toNumber(work.part(b).body.low[2]));
      const own = ids.filter((id) => work.line(id).mark === mark);
      const [first = ""] = own;
      if (alike.length === 1) return `the ${called(work, first)}`;
      const which = own.map((id) => rank(alike.indexOf(id), alike.length)).toSorted();
      return `the ${series(which)} of ${numberWord(alike.length)} ${plural(work, first)}`;
    }),
  );
}

const rank = (i: number, n: number): string =>
  i === 0
    ? "lowest"
    : i === n - 1
      ? "highest"
      : n === 3
        ? "middle one"
        : `${i + 1}${["th", "st", "nd", "rd"][i + 1] ?? "th"} from below`;

function tiltText(work: Work, legs: readonly Leg[], ids: readonly string[]): string | null {
  const tilt = tiltOf(legs);
  const first = legs.find((leg) => "along" in leg && leg.distance === null);
  if (!tilt || !first || !("along" in first)) return null;
  const axis = INDICES.find((i) => Math.abs(first.along[i]) > 0.7) ?? 1;
  const side = faceOf(axis, first.along[axis] < 0);
  const high = work.print(roundTo(millimetres(tilt.lift), STEP[work.design.units], "up"));
  const aside = tilt.aside ? " beside what stands in its way, move it behind that" : "";
  if (tilt.degrees === 0) {
    const above = tilt.lift > 0 ? `, where it is open, about ${high} above its place` : "";
    return `pass it in from the ${side}${aside}${above}, and ${tilt.lift > 0 ? "lower" : "bring"} it there.`;
  }
  const pinned = ids.every((id) => onPins(work.design).has(id));
  const half = Math.max(...ids.map((id) => extentsOf(work.part(id), axis))) / 2;
  const deep = half * circlePoint(Math.round(4 * tilt.degrees), 1440)[1] > tilt.lift * UNITS_PER_MM;
  const down = pinned && deep && tilt.lift > 0 ? ", its lower end down between its pins" : "";
  const over = pinned ? ", so that both ends swing in above the pins" : "";
  const level =
    tilt.lift > 0 ? `level it with its middle about ${high} above its place${over}, and lower it there` : "level it";
  return `raise one end until it slopes about ${Math.round(tilt.degrees)}°, pass it in from the ${side}${aside}${down}, ${level}.`;
}

/** How long it is in the direction in which it slopes. */
const extentsOf = ({ body }: Part, out: AxisIndex): number => toNumber(extent(body, out === 0 ? 1 : 0));

/** Heights are told to this. */
const STEP = { inch: inches(1, 4), mm: millimetres(5) } as const;
