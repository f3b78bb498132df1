/** How holes for dowels come to face each other: bored from one face, and marked from there on what they meet. */
import { turnedVec } from "../../../../geometry/index.ts";
import type { Length } from "../../../../units/length.ts";
import { equal, less, subtract } from "../../../../units/rational.ts";
import { faceOf, INDICES, indexOf, unit } from "../../../design/space.ts";
import { holeOnBench } from "../../../design/turning.ts";
import type { Hole, Part } from "../../../design.ts";
import { type Mating, markedFrom, matingsOf } from "../dowelled.ts";
import { capital, numberWord, series, type Work } from "../draft.ts";
import { type Sentence, sentence } from "../sentence.ts";
import { boltHoleTexts } from "./bolt-holes.ts";
import { calledAmong, placeWords } from "./by-place.ts";
import { boringText, mouthSide } from "./holes.ts";
import { onMate } from "./place.ts";
import { onLeaning, touchWords } from "./slant-places.ts";

/** All holes of a part on the bench: those that are measured; then those for dowels that what they meet marks, and only then bored. */
export function holeTexts(work: Work, part: Part, holes: readonly Hole[]): readonly Sentence[] {
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
    ...boltHoleTexts(work, holes),
    ...fenceTexts(work, part, measured, matings),
    ...markTexts(work, here),
    ...boringText(work, part, pricked).map((text) => text.replace(/^Bore /u, "At the pricks bore ")),
    ...otherTexts(work, part, here),
  ];
}

/** The share of a direction along an axis above which it lies along that. */
const STRAIGHT = 0.999;

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
  const sides = [...new Set(beside.map((hole) => mouthSide(part, hole)))];
  const one = beside.every((hole) => equal(distance(hole), distance(first)));
  const sloped = beside.some(({ direction }) => direction.every((each) => Math.abs(each) < STRAIGHT));
  return [
    ...(sloped ? ["Measure them square to the edges, not along the slope of the ends."] : []),
    `For the dowel holes in the ${series(sides)} lay the dowelling jig against the ${face} face${one ? `, ${work.place(distance(first))} from it to the middle of the holes` : ""}. Mark that face, and work from no other. The bit passes the bushing of the jig first: set its stop for the depth that is told and the height of the bushing.`,
  ];
}

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

/** How they come to lie in one plane: on a side where they do, or with packing under what lies higher. */
const onBench = (places: readonly string[]): string =>
  places.every((place) => place.includes(" flush "))
    ? "Let both lie or stand on the bench with a side down on which they are flush: there they are so by themselves."
    : "Where they are flush, let both lie or stand on the bench with that side down: there they are so by themselves; under what lies so much higher, put packing as thick as that.";

/** From which parts it is marked differs where the rest is as before. */
const anew = (words: string): Sentence => sentence(words, { counts: true });

const STANDING = "As it stands in the piece, ";

/** What marks its holes, each part by the end or edge that has the first of them, where it comes to lie. */
function markTexts(work: Work, matings: readonly Mating[]): readonly Sentence[] {
  if (matings.length === 0) return [];
  const { from, places } = marking(work, matings);
  // Of a row at the end of a part some may belong to what stands beside this.
  const some = matings.some((each) => holesOn(work, each).own < holesOn(work, each).all);
  const whose = matings.length === 1 ? "its" : "their";
  return [
    anew(
      `Mark the dowel holes from ${series(from)}: put dowel centres into ${whose} holes${some ? " (those that come to lie on it)" : ""}, lay ${matings.length === 1 ? "it" : "each"} in place, ${heldBy(work, matings)}, and press.`,
    ),
    ...places,
    ...(places.some((place) => place.includes(" flush ")) ? [onBench(places)] : []),
    "Bore where the points have pricked, the drill guided square, the height of its guide added to the stop. The places in the drawing are for checking; what is said of bits and depths holds.",
  ];
}

/** Of parts some of which stand on their mates at an angle: what is cut at the end tells that. */
function heldBy(work: Work, matings: readonly Mating[]): string {
  const square = matings.every(({ joint, measured }) => {
    const { axes, turned } = work.part(measured);
    const sides = INDICES.map((i) => unit(i, 1)).map((way) => (turned ? turnedVec(turned.placement, way) : way));
    const { normal } = joint.contact[0] ?? { normal: unit(indexOf(axes.length), 1) };
    return sides.some((way) => Math.abs(way[0] * normal[0] + way[1] * normal[1] + way[2] * normal[2]) > STRAIGHT);
  });
  return square
    ? "held square by a block that is clamped beside it"
    : "its end flat on it, held so by a block that is clamped beside it";
}

/** In the side of the measured part that has the holes of a joint: its own, and all. */
export function holesOn(work: Work, mating: Mating): { readonly own: number; readonly all: number } {
  const isDowel = ({ kind }: Hole): boolean => kind === "dowel";
  const holes = work.plan.holes.filter((hole) => hole.part === mating.measured && isDowel(hole));
  const own = holesOf(work, mating, mating.measured).filter(isDowel);
  const [first] = own;
  return { own: own.length, all: holes.filter((hole) => hole.direction.join() === first?.direction.join()).length };
}

/** Which of those that are not bored alike. */
const named = (work: Work, id: string): string => calledAmong(work, id, work.line(id).parts);

/** "the front edge of the chest panel (A)", and how that lies on what it marks. */
function marking(work: Work, matings: readonly Mating[]) {
  const place = (mating: Mating): string | null => {
    const { joint, measured: id, met } = mating;
    if (!work.part(id).turned && !work.part(met).turned)
      return `The ${named(work, id)} lies ${onMate(work, joint, id, met)}.`;
    const [bored] = holesOf(work, mating, met);
    const touches =
      (bored && touchWords(work, work.part(id), work.part(met), bored)) ??
      onLeaning(work, joint, work.part(id), work.part(met));
    return touches ? `${STANDING}the ${named(work, id)} ${touches}.` : null;
  };
  return {
    from: [...new Set(matings.map((each) => `${sideWith(work, each)}the ${named(work, each.measured)}`))],
    places: [...new Set(matings.flatMap((each) => place(each) ?? []))],
  };
}

/** "the front edge of ": of a part as it is bored, where its holes for a joint are. */
function sideWith(work: Work, mating: Mating): string {
  const part = work.part(mating.measured);
  const [hole] = holesOf(work, mating, part.id);
  return hole ? `the ${mouthSide(part, holeOnBench(part, hole))} of ` : "";
}

/** The holes of a joint in one of its parts. */
function holesOf({ plan }: Work, { joint }: Mating, part: string): readonly Hole[] {
  const ids = new Set(plan.chosen.get(joint.id)?.fasteners.map(({ id }) => id));
  return plan.holes.filter((each) => each.part === part && ids.has(each.for ?? ""));
}

/** More of one mark are not told one by one. */
const MOST = 4;

/** Others of the same mark that meet other parts, or other sides of them: which marks each of those. */
function otherTexts(work: Work, part: Part, here: readonly Mating[]): readonly Sentence[] {
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
      anew(
        `Others of the ${numberWord(parts.length)} are marked from ${series(from)} in the same way, each where it stands.`,
      ),
    ];
  }
  const place =
    told.length === 0
      ? []
      : [
          "Write on each of them where it goes, and on what it was marked from which end goes to it: from here on they are not exchanged.",
        ];
  const others = told.flatMap(({ id, from, places }) => [
    anew(
      `${parts.length === 2 ? "The other" : "Another"}, the ${placeWords(work, id)}, is marked from ${series(from)} in the same way.${places.length > 0 ? " As it stands in the piece:" : ""}`,
    ),
    ...places.map((place) => `– ${capital(place.replace(STANDING, ""))}`),
  ]);
  return [...others, ...place];
}
