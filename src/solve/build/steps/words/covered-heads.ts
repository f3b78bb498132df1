/** Heads that something is laid on later, or that something slides over: one that stands out by a hair keeps it off, or scratches it. */
import { cylinder, hullHits, type Vec } from "../../../../geometry/index.ts";
import { plus, times } from "../../../../geometry/vec.ts";
import { inches, millimetres, UNITS_PER_MM } from "../../../../units/length.ts";
import { toNumber } from "../../../../units/rational.ts";
import { INDICES } from "../../../design/space.ts";
import type { Fastener, Pose } from "../../../design.ts";
import type { Drive } from "../../order/index.ts";
import { definite, type Work } from "../draft.ts";
import { isStruck } from "../moves.ts";
import { whichHeads } from "./close.ts";

/** How far below the surface they lie. Common practice, no source. */
const DEEP = { inch: inches(1, 32), mm: millimetres(1) } as const;
/** What is not nearer to a head does not lie on it, mm. */
const BEHIND = { from: 0.05, to: 0.5 } as const;

/** `there`: ids of what stands together by then. */
export function coveredTexts(work: Work, drives: readonly Drive[], there: readonly string[]): readonly string[] {
  const later = work.design.parts.map(({ id }) => id).filter((id) => !there.includes(id));
  const covered = drives.flatMap((drive) => {
    if (drive.fastener.head.seat !== "flush") return [];
    const room = roomOver(drive.fastener);
    const here = room(STILL);
    const over = later.filter((id) => hullHits(here, work.part(id).solid));
    const slid = slidOver(work, drive.fastener, later, room);
    const [passes, passed] = [
      slid.on.filter((id) => !over.includes(id)),
      slid.under.filter((id) => !over.includes(id)),
    ];
    return over.length + passes.length + passed.length > 0 ? [{ drive, over, passes, passed }] : [];
  });
  if (covered.length === 0) return [];
  const own = covered.map(({ drive }) => drive);
  const how = own.every(isStruck) ? "with a nail set " : "";
  const [they, them] = own.length === 1 ? ["it slides", "it"] : ["they slide", "them"];
  const all = (
    of: "over" | "passes" | "passed",
    say: (ids: readonly string[], on: string) => string,
  ): readonly string[] => {
    const ids = [...new Set(covered.flatMap((each) => each[of]))];
    const some = covered.some((each) => each[of].length === 0) ? "some of them" : them;
    return ids.length > 0 ? [say(ids, some)] : [];
  };
  const why = [
    ...all("over", (ids, on) => `${definite(work, ids)} ${ids.length === 1 ? "comes" : "come"} to lie on ${on}`),
    ...all("passes", (ids, on) => `${on === "some of them" ? "some of them slide" : they} over ${definite(work, ids)}`),
    ...all("passed", (ids, on) => `${definite(work, ids)} ${ids.length === 1 ? "slides" : "slide"} over ${on}`),
  ].join(", and ");
  return [
    `Sink ${whichHeads(work, own, drives)} ${how}${work.print(DEEP[work.design.units])} below the surface: ${why}.`,
  ];
}

const STILL: Vec = [0, 0, 0];

/** The thin room over a head, shifted: what reaches into it lies on the head there. */
function roomOver({ head, direction }: Fastener): (shift: Vec) => ReturnType<typeof cylinder> {
  const at: Vec = [toNumber(head.at[0]), toNumber(head.at[1]), toNumber(head.at[2])];
  const back = times(direction, -1);
  const start = plus(at, times(back, BEHIND.from * UNITS_PER_MM));
  return (shift) =>
    cylinder(plus(start, shift), back, toNumber(head.diameter) / 2, (BEHIND.to - BEHIND.from) * UNITS_PER_MM);
}

/** What a head that moves slides over on its way out, and what slides over one that stays. */
function slidOver(
  { motions, part }: Work,
  { head, through: [carrier] }: Fastener,
  later: readonly string[],
  room: ReturnType<typeof roomOver>,
): { readonly on: readonly string[]; readonly under: readonly string[] } {
  const slides = motions.filter(({ kind }) => kind === "slide");
  const meets = (id: string, poses: readonly Pose[], way: 1 | -1): boolean => {
    const { solid } = part(id);
    const last = times(poses.at(-1)?.shift ?? STILL, way);
    // Most parts lie nowhere near its way.
    const beside = INDICES.some((i) => {
      const at = toNumber(head.at[i]);
      const reach = toNumber(head.diameter) + UNITS_PER_MM;
      return solid.high[i] < at + Math.min(0, last[i]) - reach || solid.low[i] > at + Math.max(0, last[i]) + reach;
    });
    return !beside && poses.some(({ shift }) => hullHits(room(times(shift, way)), solid));
  };
  const moving = slides.find(({ moves }) => carrier !== undefined && moves.includes(carrier));
  const on = moving
    ? later.filter((id) => !slides.some(({ moves }) => moves.includes(id)) && meets(id, moving.poses, 1))
    : [];
  const under = slides.flatMap(({ moves, poses }) =>
    moving ? [] : later.filter((id) => moves.includes(id) && meets(id, poses, -1)),
  );
  return { on, under };
}
