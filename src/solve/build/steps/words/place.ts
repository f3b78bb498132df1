import { inverse, placed, turnedVec } from "../../../../geometry/index.ts";
import { isSame, type Length, TOLERANCE } from "../../../../units/length.ts";
import { equal, less, max, min, rational, round } from "../../../../units/rational.ts";
import { type AxisIndex, faceOf, INDICES, otherAxes, triple } from "../../../design/space.ts";
import type { Direction, Joint, Part, Point } from "../../../design.ts";
import { LOCATED } from "../../jigs/spacers.ts";
import { fastIds } from "../../order/links.ts";
import { called, listed, series, type Work } from "../draft.ts";
import type { Move } from "../moves.ts";
import { along, coversMore, OUTSIDE, sidesTold } from "./along.ts";
import { calledAmong } from "./by-place.ts";
import { bareFace, between, isLost, meetingOf, outermost } from "./edges.ts";
import { sharedLevel, spacerTexts } from "./level-walls.ts";
import { notchRound } from "./notched-round.ts";
import { overhang } from "./overhang.ts";
import { gapText, runTexts } from "./rows.ts";
import { type Seen, seenOf } from "./seen.ts";

/** Where parts go that nothing else locates: the first of a row and the gap, or each of them. */
export function placeTexts(work: Work, moves: readonly Move[], up: Direction): readonly string[] {
  const gap = gapText(work, moves);
  const told = gap ? moves.slice(0, 1) : moves;
  const sentences = told.flatMap((move) => placeText(work, move, up) ?? []);
  const which = moves.flatMap(({ arriving }) => arriving).length > 1 ? "each" : "it";
  const spacers = moves.flatMap(({ arriving, present }) =>
    arriving.flatMap((id) => spacerTexts(work, id, present, which)),
  );
  return [...new Set([...sentences, ...spacers]), ...(gap ? [gap] : []), ...runTexts(work, moves)];
}

/** How the arriving part lies on the first part that it is joined to; a body by what of it stands out farthest there. */
function placeText(work: Work, move: Move, up: Direction): string | null {
  const joints = move.work.map(({ joint }) => joint);
  const joint = joints[0];
  if (!joint || joints.some(({ method }) => LOCATED.has(method))) return null;
  const arrives = (id: string): boolean => move.arriving.includes(id);
  const [own, mate] = arrives(joint.parts[0]) ? joint.parts : [joint.parts[1], joint.parts[0]];
  if (!joint.contact[0]) return null;
  const [part, base] = [work.part(own), work.part(mate)];
  if (part.turned || base.turned) {
    const met = meeting(work, joint, base);
    // What covers the other from side to side is told the other way round.
    return met.every((word) => COVERS.test(word))
      ? `Place the ${called(work, own)} so that the ${called(work, mate)} lies ${series(meeting(work, joint, part))}.`
      : `Place the ${called(work, own)} ${series(met)} of the ${called(work, mate)}.`;
  }
  const present = reached(work, joint, mate, move.present);
  const outer = joint.setWith ? null : outerOf(work, joint, own, mate, move);
  const others = joints.flatMap((other) =>
    other !== joint && other.parts.includes(own) && other.parts.some((id) => present.includes(id)) ? [other] : [],
  );
  const site = { present, arriving: move.arriving, up, others, box: outer?.box };
  return `Place ${outer ? listed(work, outer.ids) : `the ${called(work, own)}`} ${onMate(work, joint, own, mate, site)}${outer ? "" : notchRound(part, base)}.`;
}

/** Of a body that arrives whole: what of it reaches farthest where it meets the other, where that hides the side of the joined part that would be told. */
function outerOf(work: Work, joint: Joint, own: string, mate: string, { arriving, present }: Move) {
  const box = seenOf(work, own, arriving).box;
  const plane = meetingOf(joint, box);
  if (arriving.length < 2 || !plane) return null;
  const base = bareFace(work, mate, box, plane, present).box;
  const reach = otherAxes(plane.normal).map((axis) => {
    const ends = outermost(work, arriving, plane, axis);
    const level = equal(box.low[axis], base.low[axis]) || equal(box.high[axis], base.high[axis]);
    const hidden =
      ends !== null &&
      sidesTold(box, base, axis).some((high) =>
        high ? less(box.high[axis], ends.high.at) : less(ends.low.at, box.low[axis]),
      );
    return { axis, ends, level, hidden };
  });
  if (reach.some(({ level }) => level) || !reach.some(({ hidden }) => hidden)) return null;
  const all = reach.flatMap(({ ends }) => (ends ? [ends.low.of, ends.high.of] : []));
  // Few parts that stand out on all sides: four legs, not legs and rails.
  const most = Math.max(...all.flat().map((id) => all.filter((of) => of.includes(id)).length));
  const ids = [...new Set(all.flat())].filter((id) => all.filter((of) => of.includes(id)).length === most);
  if (most < 2 || !all.every((of) => of.some((id) => ids.includes(id)))) return null;
  return {
    ids,
    box: reach.reduce((so, { axis, ends }) => (ends ? between(so, axis, ends.low.at, ends.high.at) : so), box),
  };
}

/** A front is set on its box, and measured from that: the case is out of reach behind it. */
function reached({ design }: Work, { setWith }: Joint, mate: string, present: readonly string[]): readonly string[] {
  if (!setWith) return present;
  const box = fastIds(design).find((ids) => ids.includes(mate));
  return present.filter((id) => box?.includes(id));
}

/** Where something comes: what is there, what comes with it, how the work lies, its other joints; `box` where a body is told by what stands out of it. */
interface Coming {
  readonly present: readonly string[];
  readonly arriving: readonly string[];
  readonly up?: Direction;
  readonly others?: readonly Joint[];
  readonly box?: Part["body"] | undefined;
}

/** "flush with the front and 1 in from the top of the rail (C)": a part that lies square against another, in the two directions of their contact. */
export function onMate(
  work: Work,
  joint: Joint,
  own: string,
  mate: string,
  coming: Coming = { present: [], arriving: [] },
): string {
  const normal = joint.contact[0]?.normal ?? [0, 0, 1];
  const told = INDICES.filter((i) => Math.abs(normal[i]) < 0.5).map((axis) => {
    const first = inDirection(work, joint, own, mate, axis, coming);
    if (first.sound) return { mate, ...first };
    // Another part that it comes on in the same plane may have an edge that is bare.
    for (const other of coming.others ?? []) {
      const on = other.parts[0] === own ? other.parts[1] : other.parts[0];
      if (!samePlane(joint, other) || work.part(on).turned) continue;
      const next = inDirection(work, other, own, on, axis, coming);
      if (next.sound) return { mate: on, ...next };
    }
    return { mate, ...first, text: first.outside ?? first.text, named: first.outside !== null || first.named };
  });
  const mates = (id: string): string => calledAmong(work, id, coming.present);
  const [one, two] = told;
  if (one && two && one.mate !== two.mate)
    return series(told.map((each) => (each.named ? each.text : `${each.text} of the ${mates(each.mate)}`)));
  // After the name of another part "from the top" would be that of the other.
  const words = told.map(({ text, named }, i) =>
    i > 0 && one?.named && !named && !PAST_NAMED.test(text) ? `${text} of the ${mates(one.mate)}` : text,
  );
  // "flush with the right and the top"
  const both =
    words.length === 2 && words.every((word) => ONE_SIDE.test(word))
      ? `${words[0]} and ${(words[1] as string).replace(/^flush with /u, "")}`
      : series(words);
  const on = one?.mate ?? mate;
  // What it reaches past is named, and is no side of the part that it comes on.
  if (words.every((word) => PAST_NAMED.test(word))) return both;
  const at = coming.up ? lies(work.part(own), work.part(on), coming.up) : "on";
  // Several that it comes against are told in a row.
  const rest = at === "against" ? both.replace(/^against /u, "") : both;
  return told.some(({ named }) => named) ? `${at} the ${mates(on)}, ${rest}` : `${both} of the ${mates(on)}`;
}

/** How one lies to the other that it meets, as the work lies. */
function lies({ body: own }: Part, { body: other }: Part, up: Direction): "on" | "under" | "against" {
  const axis = INDICES.find((i) => up[i] !== 0) ?? 2;
  const isPast = (one: Part["body"], over: Part["body"]): boolean =>
    up[axis] > 0 ? !less(one.low[axis], over.high[axis]) : !less(over.low[axis], one.high[axis]);
  return isPast(own, other) ? "on" : isPast(other, own) ? "under" : "against";
}

const PAST_NAMED = / past .+ at each\)$/u;

const samePlane = (a: Joint, b: Joint): boolean => {
  const [one, two] = [a.contact[0], b.contact[0]];
  const axis = INDICES.find((i) => Math.abs(one?.normal[i] ?? 0) > 0.99);
  if (!one || !two || axis === undefined || Math.abs(two.normal[axis]) < 0.99) return false;
  return Math.abs((one.polygons[0]?.[0]?.[axis] ?? 0) - (two.polygons[0]?.[0]?.[axis] ?? 0)) <= TOLERANCE;
};

/** How a part lies on another in one direction; not `sound` where the edge that is told cannot be reached; `outside`: from the outermost of what is there. */
function inDirection(work: Work, joint: Joint, own: string, mate: string, axis: AxisIndex, coming: Coming) {
  const { present, arriving, up = null } = coming;
  const part = coming.box ?? seenOf(work, own, [...present, ...arriving]).box;
  const plane = meetingOf(joint, part);
  const { box: base, inside } = plane ? bareFace(work, mate, part, plane, present) : seenOf(work, mate, present);
  const covers = overhang(work, joint, axis, present, arriving);
  const level = axis === 2 && !coming.box ? sharedLevel(work, own, present) : null;
  if (level) {
    const told = along(work, part, between(base, axis, level.low, level.high), axis, null, level.inside);
    return { text: told, sound: true, named: true, outside: null };
  }
  const text = along(work, part, base, axis, covers, inside);
  const isNamed = (words: string, held: Seen["inside"]): boolean =>
    [...held.values()].some((each) => words.includes(each));
  const sides = coversMore(part, base, axis, covers) ? [] : sidesTold(part, base, axis);
  const lost = sides.some(
    (high) =>
      plane !== null &&
      !inside.has(faceOf(axis, high)) &&
      isLost(work, { mate, edge: base[high ? "high" : "low"][axis], axis, high }, part, plane, present, up),
  );
  const ends = lost && plane ? outermost(work, present, plane, axis) : null;
  const outer = new Map(
    ends
      ? [false, true].map((high) => [
          faceOf(axis, high),
          `${OUTSIDE}the ${called(work, ends[high ? "high" : "low"].of[0] as string)}`,
        ])
      : [],
  );
  return {
    text,
    sound: !lost,
    named: isNamed(text, inside),
    outside: ends && along(work, part, between(base, axis, ends.low.at, ends.high.at), axis, null, outer),
  };
}

const ONE_SIDE = /^flush with the \w+$/u;
const COVERS = /^flush with .* and /;

/** Where a part that does not lie square meets the other: its touching area, from the sides of the other as it lies on the bench. */
function meeting(work: Work, joint: Joint, base: Part): readonly string[] {
  const back = base.turned && inverse(base.turned.placement);
  const largest = joint.contact.reduce((a, b) => (b.area > a.area ? b : a));
  const points = largest.polygons.flat().map((p): readonly Length[] => {
    const at = p.map((value) => rational(Math.round(value))) as unknown as Point;
    return (back ? placed(back, at) : at).map((value) => rational(round(value)));
  });
  const bound = (axis: AxisIndex, choose: typeof max): Length =>
    points.map((p) => p[axis] as Length).reduce((a, b) => choose(a, b));
  // Closer than a hair to a side is flush with it.
  const near = (value: Length, side: Length): Length => (isSame(value, side) ? side : value);
  const area = {
    low: triple((axis) => near(bound(axis, min), base.body.low[axis])),
    high: triple((axis) => near(bound(axis, max), base.body.high[axis])),
  };
  const normal = back ? turnedVec(back, largest.normal) : largest.normal;
  return INDICES.filter((i) => Math.abs(normal[i]) < 0.5).map((axis) => along(work, area, base.body, axis));
}
