/** What is driven where an ordinary bit, or the chuck that bores for it, does not go in. */
import { cylinder, hullHits } from "../../../../geometry/index.ts";
import { plus, times } from "../../../../geometry/vec.ts";
import { type Length, UNITS_PER_MM } from "../../../../units/length.ts";
import { compare, subtract, toNumber } from "../../../../units/rational.ts";
import type { Tool } from "../../../build.ts";
import { faceOf, indexOf } from "../../../design/space.ts";
import type { Fastener, Hole } from "../../../design.ts";
import { sitsAt } from "../../drilling/sits-at.ts";
import { stopOf } from "../../drilling/stop.ts";
import type { Drive } from "../../order/index.ts";
import { definite, listed, numberWord, series, type Work } from "../draft.ts";
import { usualReach } from "../long-bits.ts";

/** What is taken where an ordinary bit and drill do not go in. */
export const DRIVEN_WITH: Readonly<Partial<Record<Tool, string>>> = {
  long: "a bit 12 in (300 mm) long",
  angle: "a right-angle driver",
  stubby: "a stubby screwdriver",
};

/** The chuck of a drill. Common practice, no source. */
const CHUCK = { across: 45 * UNITS_PER_MM, long: 150 * UNITS_PER_MM };

/**
 * "There is little room behind the heads of those into the back rail (E): use a bit 12 in (300 mm) long there, and for their pilot holes a drill bit in an
 * extension as long." `there`: ids of what stands together by then.
 */
export function closeTexts(work: Work, drives: readonly Drive[], there: readonly string[]): readonly string[] {
  const close = drives.filter(({ tool }) => DRIVEN_WITH[tool] !== undefined);
  const crowded = drives.filter((drive) => !close.includes(drive) && chuckHits(work, drive.fastener, there));
  return [
    ...driverTexts(work, close, drives),
    ...(crowded.length > 0
      ? [
          `The chuck of a drill has no room behind ${whichHeads(work, crowded, drives)}: bore ${pilotsOf(crowded.length)} with a drill bit in an extension.`,
        ]
      : []),
  ];
}

/** The same of screws that come out, or go into their old holes. */
export function closeAgain(work: Work, drives: readonly Drive[]): readonly string[] {
  return driverTexts(
    work,
    drives.filter(({ tool }) => DRIVEN_WITH[tool] !== undefined),
    drives,
    false,
  );
}

/** A sentence for each tool. `bores`: for their pilots too. */
const driverTexts = (work: Work, close: readonly Drive[], drives: readonly Drive[], bores = true): readonly string[] =>
  [...new Set(close.map(({ tool }) => tool))].map((tool) => driverText(work, tool, drives, bores));

function driverText(work: Work, tool: Tool, drives: readonly Drive[], bores: boolean): string {
  const own = drives.filter((each) => each.tool === tool);
  const where = own.length < drives.length ? " there" : "";
  const bored = own.filter(({ fastener }) => bores && pilotOf(work, fastener) !== undefined);
  const too =
    bored.length === 0 || tool === "stubby"
      ? ""
      : tool === "long"
        ? `, and for ${pilotsOf(bored.length)} a drill bit in an extension as long`
        : `, for ${pilotsOf(bored.length)} too`;
  const aslant = tool === "long" && own.some(({ axis }) => axis !== null);
  const lean = aslant
    ? " Hold it leaning a little, 5° at most, away from what stands beside it: straight behind it the drill has no room."
    : "";
  return `There is little room behind ${whichHeads(work, own, drives)}: use ${DRIVEN_WITH[tool]}${where}${too}.${lean}`;
}

const pilotsOf = (n: number): string => (n === 1 ? "its pilot hole" : "their pilot holes");

/** The pilot that is bored when the parts are together. */
const pilotOf = ({ plan }: Work, { id }: Fastener): Hole | undefined =>
  plan.holes.find((hole) => hole.for === id && !hole.atBench && hole.kind === "pilot");

/** Whether the chuck, behind a usual bit that bores the pilot to its depth, runs into something. */
function chuckHits(work: Work, fastener: Fastener, there: readonly string[]): boolean {
  const pilot = pilotOf(work, fastener);
  const diameter = pilot?.stages.at(-1)?.diameter;
  const reach = diameter && usualReach(diameter);
  if (!pilot || !reach) return false;
  const { head, direction, through, into } = fastener;
  const back = times(direction, -1);
  const out = Math.max(0, toNumber(subtract(reach, stopOf(pilot, work.plan, null))));
  const at = plus([toNumber(head.at[0]), toNumber(head.at[1]), toNumber(head.at[2])], times(back, out));
  const chuck = cylinder(at, back, CHUCK.across / 2, CHUCK.long);
  return there.some((id) => id !== into && !through.includes(id) && hullHits(chuck, work.part(id).solid));
}

/** "the heads", "the heads of those into the back rail (E)", "the head into the rail (E), 3 in from the left end of the shelf (J)", "four of the heads" */
export function whichHeads(work: Work, some: readonly Drive[], all: readonly Drive[]): string {
  if (some.length === all.length) return all.length === 1 ? "the head" : "the heads";
  const into = [...new Set(some.map(({ fastener }) => fastener.into))];
  const ofThese = all.filter(({ fastener }) => into.includes(fastener.into));
  if (some.length === ofThese.length) return `the heads of those into ${listed(work, into)}`;
  const heads = some.length === 1 ? "the head" : "the heads";
  const anywhere = placesOf(work, some, all) ?? placesOf(work, some, all, { size: "width" });
  if (anywhere !== null) return `${heads} ${anywhere}`;
  const among = placesOf(work, some, all, { narrow: true });
  return among === null ? `${numberWord(some.length)} of the heads` : `${heads} into ${definite(work, into)}, ${among}`;
}

/** Where they are along what they pass, from its end, or across it, from its edge; null where others are as far from there, `narrow`: others into the same parts. */
function placesOf(
  work: Work,
  some: readonly Drive[],
  all: readonly Drive[],
  { size = "length", narrow = false }: { readonly size?: "length" | "width"; readonly narrow?: boolean } = {},
): string | null {
  // What passes a button or a clip is found along what that sits on.
  const panelOf = ({ fastener }: Drive): string | undefined =>
    fastener.through[0] ?? sitsAt(work.design.joints, fastener)[0];
  const panels = [...new Set(some.map(panelOf))];
  const into = new Set(some.map(({ fastener }) => fastener.into));
  const key = (drive: Drive): Length | null => {
    const { fastener } = drive;
    const panel = panelOf(drive);
    if (panel === undefined || work.part(panel).turned) return null;
    const axis = indexOf(work.part(panel).axes[size]);
    return subtract(fastener.head.at[axis], work.part(panel).body.low[axis]);
  };
  const own = some.map(key);
  if (own.some((at) => at === null) || new Set(panels.map((id) => work.part(id as string).axes[size])).size > 1)
    return null;
  const places = [...new Set((own as Length[]).toSorted(compare).map(work.place))];
  const others = all.filter(
    (each) => !some.includes(each) && panels.includes(panelOf(each)) && (!narrow || into.has(each.fastener.into)),
  );
  if (others.some((each) => places.includes(work.place(key(each) as Length)))) return null;
  const [first] = panels as [string];
  const end = faceOf(indexOf(work.part(first).axes[size]), false);
  return `${series(places)} from the ${end} ${size === "length" ? "end" : "edge"} of ${definite(work, panels as string[])}`;
}
