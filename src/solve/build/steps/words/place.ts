import { inverse, placed, turnedVec } from "../../../../geometry/index.ts";
import { isSame, type Length } from "../../../../units/length.ts";
import { equal, max, min, rational, round, subtract, toNumber } from "../../../../units/rational.ts";
import { type AxisIndex, extent, faceOf, INDICES, middle, triple } from "../../../design/space.ts";
import type { Joint, Part, Point } from "../../../design.ts";
import { evenGap, LOCATED } from "../../jigs/spacers.ts";
import { fastBodies } from "../../order/links.ts";
import { called, listed, series, type Work } from "../draft.ts";
import type { Move } from "../moves.ts";
import { calledAmong } from "./by-place.ts";
import { type Overhang, overhang } from "./overhang.ts";
import { type Seen, seenOf } from "./seen.ts";

/** Where parts go that nothing else locates: the first of a row and the gap, or each of them. */
export function placeTexts(work: Work, moves: readonly Move[]): readonly string[] {
  const gap = gapText(work, moves);
  const told = gap ? moves.slice(0, 1) : moves;
  const sentences = told.flatMap((move) => placeText(work, move) ?? []);
  return [...new Set(sentences), ...(gap ? [gap] : [])];
}

/** How the arriving part lies on the first part that it is joined to. */
function placeText(work: Work, move: Move): string | null {
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
  return `Place the ${called(work, own)} ${onMate(work, joint, own, mate, { ...move, present: reached(work, joint, mate, move.present) })}.`;
}

/** A front is set on its box, and measured from that: the case is out of reach behind it. */
function reached({ design }: Work, { setWith }: Joint, mate: string, present: readonly string[]): readonly string[] {
  if (!setWith) return present;
  const box = fastBodies(design)
    .map((places) => places.flatMap((place) => design.parts[place]?.id ?? []))
    .find((ids) => ids.includes(mate));
  return present.filter((id) => box?.includes(id));
}

/** "flush with the front and 1 in from the top of the rail (C)": a part that lies square against another, in the two directions of their contact. */
export function onMate(
  work: Work,
  joint: Joint,
  own: string,
  mate: string,
  { present: there, arriving }: Pick<Move, "present" | "arriving"> = { present: [], arriving: [] },
): string {
  const normal = joint.contact[0]?.normal ?? [0, 0, 1];
  const part = seenOf(work, own, [...there, ...arriving]).box;
  const { box: base, inside } = seenOf(work, mate, there);
  const words = INDICES.filter((i) => Math.abs(normal[i]) < 0.5).map((axis) =>
    along(work, part, base, axis, overhang(work, joint, axis, there, arriving), inside),
  );
  const [one = "", two = ""] = words;
  // "flush with the right and the top"
  const told =
    words.length === 2 && words.every((word) => ONE_SIDE.test(word))
      ? `${one} and ${two.replace(/^flush with /u, "")}`
      : series(words);
  const named = [...inside.values()].some((each) => told.includes(each));
  const mates = calledAmong(work, mate, there);
  return named ? `on the ${mates}, ${told}` : `${told} of the ${mates}`;
}

const NOT_HELD: Seen["inside"] = new Map();
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

/** "flush with the front", "standing 3 in past the left", "1 in from the front", "midway between the left and the right (3/4 in past each)" */
export function along(
  work: Work,
  part: Part["body"],
  base: Part["body"],
  axis: AxisIndex,
  covers: Overhang | null = null,
  held: Seen["inside"] = NOT_HELD,
): string {
  const name = (face: string): string => `the ${held.get(face) ?? face}`;
  const level = (face: string): string => `${held.has(face) ? "against" : "flush with"} ${name(face)}`;
  // Positive: inside the other part's face.
  const low = { face: faceOf(axis, false), inside: subtract(part.low[axis], base.low[axis]) };
  const high = { face: faceOf(axis, true), inside: subtract(base.high[axis], part.high[axis]) };
  if (low.inside.n === 0n && high.inside.n === 0n) return `${level(low.face)} and ${name(high.face)}`;
  for (const { face, inside } of [low, high]) if (inside.n === 0n) return level(face);
  if (equal(middle(part, axis), middle(base, axis))) {
    const { n, d } = low.inside;
    const at = { n: -n, d };
    const each =
      n > 0n
        ? `${work.place(low.inside)} from each`
        : // What covers everything is measured from the outside, where a rule reaches.
          covers && !equal(covers.past, at)
          ? `${work.place(covers.past)} past ${named(work, covers, held)} at each`
          : `${work.place(at)} past each`;
    return `midway between ${name(low.face)} and ${name(high.face)} (${each})`;
  }
  const near = Math.abs(toNumber(low.inside)) <= Math.abs(toNumber(high.inside)) ? low : high;
  const { n, d } = near.inside;
  return n > 0n
    ? `${work.place(near.inside)} from ${name(near.face)}`
    : `standing ${work.place({ n: -n, d })} past ${name(near.face)}`;
}

/** What a side is named by already is its outside. */
const named = (work: Work, { outer }: Overhang, held: Seen["inside"]): string =>
  outer.some((id) => [...held.values()].includes(called(work, id))) ? "the outside" : listed(work, outer);

/** The even gap in a row of alike parts; null when there is none. */
function gapText(work: Work, moves: readonly Move[]): string | null {
  const ids = moves.flatMap((move) => move.arriving);
  const located = moves.some((move) => move.work.some(({ joint }) => LOCATED.has(joint.method)));
  if (ids.length < 2 || located) return null;
  if (ids.some((id) => work.part(id).turned)) return null;
  const bodies = ids.map((id) => work.part(id).body);
  for (const axis of INDICES) {
    const row = bodies.toSorted((a, b) => toNumber(subtract(a.low[axis], b.low[axis])));
    const gap = sameElsewhere(row, axis) ? evenGap(row, axis) : null;
    if (gap === null) continue;
    const jig = work.jigs.find(({ laid, width }) => laid === "between" && equal(width, gap));
    return `Leave ${work.print(gap)} between one and the next: ${jig ? `${jig.id} is as thick.` : "a spacer of that thickness helps."}`;
  }
  return null;
}

const sameElsewhere = (row: readonly Part["body"][], axis: AxisIndex): boolean => {
  const first = row[0] as Part["body"];
  return row.every((box) =>
    INDICES.every((i) => i === axis || (equal(box.low[i], first.low[i]) && equal(extent(box, i), extent(first, i)))),
  );
};
