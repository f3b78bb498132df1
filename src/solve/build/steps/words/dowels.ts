/** How holes for dowels come to face each other: bored from one face, and marked from there on what they meet. */
import type { Length } from "../../../../units/length.ts";
import { equal, less, subtract } from "../../../../units/rational.ts";
import { faceOf, INDICES, indexOf } from "../../../design/space.ts";
import type { Hole, Part } from "../../../design.ts";
import { type Mating, markedFrom, matingsOf } from "../dowelled.ts";
import { called, numberWord, series, type Work } from "../draft.ts";
import { placeWords } from "./by-place.ts";
import { boringText } from "./holes.ts";
import { sideWord } from "./measured.ts";
import { onMate } from "./place.ts";

/** All holes of a part on the bench: those that are measured; then those for dowels that what they meet marks, and only then bored. */
export function holeTexts(work: Work, part: Part, holes: readonly Hole[]): readonly string[] {
  const own = holes.filter(({ kind }) => kind === "dowel");
  const joints = new Map(work.plan.fasteners.map(({ id, joint }) => [id, joint]));
  const matings = matingsOf(work).filter(({ joint }) => own.some((hole) => joints.get(hole.for ?? "") === joint.id));
  const marked = new Set(markedFrom(work).map(({ joint }) => joint.id));
  const of = (some: readonly Mating[]): readonly Hole[] =>
    own.filter((hole) => some.some(({ joint }) => joints.get(hole.for ?? "") === joint.id));
  const here = matings.filter(({ joint, met }) => met === part.id && marked.has(joint.id));
  const measured = of(matings.filter((each) => !here.includes(each)));
  const pricked = of(here);
  return [
    ...boringText(
      work,
      part,
      holes.filter((hole) => !pricked.includes(hole)),
    ),
    ...fenceTexts(work, part, measured, matings),
    ...markTexts(work, here),
    ...boringText(work, part, pricked).map((text) => text.replace(/^Bore /u, "At the pricks bore ")),
    ...otherTexts(work, part, here),
  ];
}

/** The face that a jig lies against, the same for all holes in ends and edges. */
function fenceTexts(work: Work, part: Part, holes: readonly Hole[], matings: readonly Mating[]): readonly string[] {
  const thin = indexOf(part.axes.thickness);
  const beside = holes.filter(({ direction }) => direction[thin] === 0);
  const [first] = beside;
  if (!first) return [];
  const high = fenceIsHigh(work, part, matings);
  const distance = ({ at }: Hole): Length =>
    high ? subtract(part.blank.high[thin], at[thin]) : subtract(at[thin], part.blank.low[thin]);
  const face = faceOf(thin, high);
  const sides = [...new Set(beside.map(({ direction }) => sideOf(part, direction)))];
  const one = beside.every((hole) => equal(distance(hole), distance(first)));
  return [
    `For the dowel holes in the ${series(sides)} lay the dowelling jig against the ${face} face${one ? `, ${work.place(distance(first))} from it to the middle of the holes` : ""}. Mark that face, and work from no other. The bit passes the bushing of the jig first: set its stop for the depth that is told and the height of the bushing.`,
  ];
}

const sideOf = (part: Part, direction: Hole["direction"]): string => {
  const axis = INDICES.find((i) => direction[i] !== 0) ?? 0;
  return `${faceOf(axis, direction[axis] < 0)} ${sideWord(part, axis)}`;
};

/** The face that comes nearest to one of what it meets: there a step would show. */
function fenceIsHigh(work: Work, part: Part, matings: readonly Mating[]): boolean {
  const thin = indexOf(part.axes.thickness);
  const [mating] = matings;
  const other = mating && work.part(mating.measured === part.id ? mating.met : mating.measured);
  if (!other || part.turned || other.turned) return false;
  const gap = (side: "low" | "high"): Length => {
    const by = subtract(part.body[side][thin], other.body[side][thin]);
    return by.n < 0n ? { n: -by.n, d: by.d } : by;
  };
  return less(gap("high"), gap("low"));
}

const ON_BENCH =
  "Let both lie or stand on the bench with a side down on which they are flush: there they are so by themselves.";

/** What marks its holes, each part by the end or edge that has the first of them, where it comes to lie. */
function markTexts(work: Work, matings: readonly Mating[]): readonly string[] {
  if (matings.length === 0) return [];
  const { from, places } = marking(work, matings);
  // Of a row at the end of a part some may belong to what stands beside this.
  const some = matings.some((each) => holesOn(work, each).own < holesOn(work, each).all);
  const whose = matings.length === 1 ? "its" : "their";
  return [
    `Mark the dowel holes from ${series(from)}: put dowel centres into ${whose} holes${some ? " (those that come to lie on it)" : ""}, lay ${matings.length === 1 ? "it" : "each"} in place, held square by a block that is clamped beside it, and press.`,
    ...places,
    ...(places.some((place) => place.includes(" flush ")) ? [ON_BENCH] : []),
    "Bore where the points have pricked, the drill guided square, the height of its guide added to the stop. The places in the drawing are for checking; what is said of bits and depths holds.",
  ];
}

/** In the side of the measured part that has the holes of a joint: its own, and all. */
export function holesOn({ plan }: Work, { joint, measured }: Mating): { readonly own: number; readonly all: number } {
  const ids = new Set(plan.chosen.get(joint.id)?.fasteners.map(({ id }) => id));
  const holes = plan.holes.filter(({ part, kind }) => part === measured && kind === "dowel");
  const own = holes.filter((hole) => ids.has(hole.for ?? ""));
  const [first] = own;
  return { own: own.length, all: holes.filter((hole) => hole.direction.join() === first?.direction.join()).length };
}

/** "top rail (L)", or "front top rail (L)" where there are several of them that are not bored alike. */
function named(work: Work, id: string): string {
  const { mark, parts } = work.line(id);
  if (parts.length === 1) return called(work, id);
  return `${placeWords(work, id)} (${mark})`;
}

/** "the front edge of the chest panel (A)", and how that lies on what it marks. */
function marking(work: Work, matings: readonly Mating[]) {
  const place = ({ joint, measured: id, met }: Mating): string | null =>
    work.part(id).turned || work.part(met).turned
      ? null
      : `The ${named(work, id)} lies ${onMate(work, joint, id, met)}.`;
  return {
    from: [...new Set(matings.map((each) => `${sideWith(work, each)}the ${named(work, each.measured)}`))],
    places: [...new Set(matings.flatMap((each) => place(each) ?? []))],
  };
}

/** "the front edge of ": of a part as it stands in the piece, where its holes for a joint are; empty where it stands askew. */
function sideWith(work: Work, { joint, measured }: Mating): string {
  const part = work.part(measured);
  const ids = new Set(work.plan.chosen.get(joint.id)?.fasteners.map(({ id }) => id));
  const hole = work.plan.holes.find((each) => each.part === measured && ids.has(each.for ?? ""));
  return part.turned || !hole ? "" : `the ${sideOf(part, hole.direction)} of `;
}

/** More of one mark are not told one by one. */
const MOST = 4;

/** Others of the same mark that meet other parts, or other sides of them: which marks each of those. */
function otherTexts(work: Work, part: Part, here: readonly Mating[]): readonly string[] {
  const { parts } = work.line(part.id);
  if (here.length === 0) return [];
  const marked = markedFrom(work);
  const own = JSON.stringify(marking(work, here));
  const told = parts
    .filter((id) => id !== part.id)
    .map((id) => ({
      id,
      ...marking(
        work,
        marked.filter(({ met }) => met === id),
      ),
    }))
    .filter(({ from, places }) => from.length > 0 && JSON.stringify({ from, places }) !== own);
  if (told.length > MOST) {
    const from = [...new Set(told.flatMap((each) => each.from))];
    return [
      `Others of the ${numberWord(parts.length)} are marked from ${series(from)} in the same way, each where it stands.`,
    ];
  }
  const place = told.length === 0 ? [] : ["Write on each of them where it goes: from here on they are not exchanged."];
  const others = told.flatMap(({ id, from, places }) => [
    `${parts.length === 2 ? "The other" : "Another"}, the ${placeWords(work, id)}, is marked from ${series(from)} in the same way.${places.length > 0 ? " As it stands in the piece:" : ""}`,
    ...places.map((place) => `– ${place}`),
  ]);
  return [...others, ...place];
}
