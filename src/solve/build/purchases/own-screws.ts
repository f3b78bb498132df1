/** The screws that come with hardware, or are bought where they do not: how many, how thick, and how long at most. */
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { absolute, add, less, min, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { INCH_SCREWS, METRIC_SCREWS } from "../../design/fastening/catalogue.ts";
import { depthAt } from "../../design/fastening/line.ts";
import { INDICES } from "../../design/space.ts";
import type { Design, Hardware, Hole } from "../../design.ts";

/** Wood in front of a screw's point. Common practice, no source. */
const UNDER = millimetres(3, 2);
/** Lengths on the shelf. Common practice, no source. */
const STEP = { inch: inches(1, 8), mm: millimetres(2) } as const;

export interface OwnScrews {
  readonly design: Pick<Design, "parts" | "units">;
  readonly holes: readonly Hole[];
  readonly print: (length: Length) => string;
}

/** Of some hardware alike, `used` sold pieces or pairs in all: "with its screws, 12 to a pair, #6 × 3/8 in at most". Empty where it has none of its own. */
export function ownScrews(
  hardware: readonly Hardware[],
  sold: { readonly used: number; readonly unit: string },
  given: OwnScrews,
): readonly string[] {
  const own = screwsOf(hardware, given);
  if (!own) return [];
  const each = own.count / sold.used;
  const count = Number.isInteger(each) ? `${each} to a ${sold.unit}` : `${own.count} in all`;
  return [`with its screws, ${count}, ${own.size}; buy them where they are not in the box`];
}

/** The same where they are driven, with those that are bought apart: "4 screws #6 × 1/2 in". Empty where it has none. */
export function screwsTold(hardware: readonly Hardware[], given: OwnScrews): readonly string[] {
  const apart = new Map<string, number>();
  for (const item of hardware.flatMap(({ halfOf, with: more = [] }) => (halfOf === undefined ? more : [])))
    apart.set(item, (apart.get(item) ?? 0) + 1);
  const own = screwsOf(hardware, given);
  return [
    ...[...apart].map(([item, count]) => `${count} ${count === 1 ? item : item.replace(/\bscrew\b/u, "screws")}`),
    ...(own ? [`${own.count} ${own.count === 1 ? "screw" : "screws"} ${own.size}`] : []),
  ];
}

/** How many, and of which size: "#6 × 3/8 in". */
function screwsOf(
  hardware: readonly Hardware[],
  { design, holes, print }: OwnScrews,
): { readonly count: number; readonly size: string } | null {
  const ids = new Set(hardware.map(({ id }) => id));
  const own = holes.filter(({ kind, for: id, stages }) => kind === "pilot" && stages.length === 1 && ids.has(id ?? ""));
  const [first] = own;
  const item = hardware[0]?.item;
  // A hook is a screw itself.
  if (!first || !item || item.kind === "hook" || hardware.some((each) => each.with !== undefined)) return null;
  const [said, thread] = [item.measures.get("screw"), item.measures.get("thread")];
  const size = sizeOf(thread, first.stages[0]?.diameter as Length, design.units);
  const room = own.flatMap((hole) => {
    const wood = roomOf(hole, design);
    return wood === null ? [] : [add(wood, passedBy(hole, hardware, STEP[design.units]))];
  });
  const most = room.length > 0 && roundTo(room.reduce(min), STEP[design.units], "down");
  const tooLong = most && (!said || less(most, said));
  const long = said && !tooLong ? ` × ${print(said)}` : "";
  const limit =
    most && most.n > 0n && long === "" ? `, no longer than ${print(most)}, or they come out on the other side` : "";
  return { count: own.length, size: `${size}${long}${limit}` };
}

/** By the thread, or else by the hole that is bored for it: "#6", "3.5 mm". */
function sizeOf(thread: Length | undefined, pilot: Length, units: Design["units"]): string {
  const sizes = units === "inch" ? INCH_SCREWS : METRIC_SCREWS;
  const off = (each: (typeof sizes)[number]): Length =>
    absolute(thread ? subtract(each.shank, thread) : subtract(each.pilot.hardwood, pilot));
  return sizes.reduce((best, each) => (less(off(each), off(best)) ? each : best)).name;
}

/** Folded from sheet: the member that lies on the wood is a web of 1 mm or so, however thick the pair is. */
const isFolded = ({ item: { kind } }: Hardware): boolean => kind.endsWith("slide");

/** What a screw passes of its own hardware before it is in the wood: of a block, not of a bracket, a leaf or a web. */
function passedBy({ for: id, at, direction }: Hole, hardware: readonly Hardware[], least: Length): Length {
  const own = hardware.find((each) => each.id === id);
  const axis = INDICES.find((i) => Math.abs(direction[i]) === 1);
  if (!own || axis === undefined || isFolded(own)) return ZERO;
  const thick = depthAt(own.solid, at, axis, direction[axis] > 0 ? -1 : 1);
  return less(least, thick) ? thick : ZERO;
}

/** How long a screw may be in the wood that a hole is bored into. */
function roomOf({ part: id, at, direction }: Hole, { parts }: OwnScrews["design"]): Length | null {
  const part = parts.find((each) => each.id === id);
  const axis = INDICES.find((i) => Math.abs(direction[i]) === 1);
  if (!part || part.turned || axis === undefined) return null;
  return subtract(depthAt(part.solid, at, axis, direction[axis] > 0 ? 1 : -1), UNDER);
}
