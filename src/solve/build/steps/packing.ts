/** What reaches farther down than what the work rests on: the work is raised for it. */
import { type Length, UNITS_PER_MM } from "../../../units/length.ts";
import { equal, less, max, min, rational, sign, subtract, toNumber } from "../../../units/rational.ts";
import { opposite, sameDirection } from "../../design/space.ts";
import type { Direction } from "../../design.ts";
import { backedTexts } from "./backed.ts";
import { barsUnder } from "./bars-under.ts";
import { lowestOf } from "./box-of.ts";
import { definite, type Work } from "./draft.ts";
import { blocksForJaws } from "./jaw-room.ts";
import { lowHeadTexts } from "./low-heads.ts";
import { type Lying, STEEP } from "./lying.ts";
import { type Move, togetherAfter } from "./moves.ts";
import { hasMitreBelow } from "./open-mitres.ts";
import { otherFeet } from "./other-feet.ts";
import { raisedEnds } from "./plumb.ts";
import { isSteady, liesAnyhow, standingOn } from "./resting.ts";
import { onceLaid, type Sentence, sentence } from "./sentence.ts";
import { stoodUpTexts } from "./stood-up.ts";
import { tippingTexts } from "./tipping.ts";

/** The work does not rock on less. */
const LEVEL = UNITS_PER_MM;

/** How far some of what comes reaches below what the work rests on, and which of it does. */
interface Past {
  readonly by: Length;
  readonly ids: readonly string[];
}

/** Null where all ends on the bench, or above it. */
export function pastTheBench(work: Work, moves: readonly Move[], up: Direction): Past | null {
  const [first] = moves;
  if (!first || first.starts) return null;
  const arriving = moves.flatMap((move) => move.arriving);
  const reaches = lowestOf(work, arriving, up);
  const by = subtract(lowestOf(work, first.present, up), reaches);
  return sign(by) > 0 ? { by, ids: arriving.filter((id) => equal(lowestOf(work, [id], up), reaches)) } : null;
}

/** What stands by itself only when more is on it. */
function heldTexts(work: Work, moves: readonly Move[], up: Direction, raised: boolean): readonly string[] {
  const all = togetherAfter(moves);
  const [first] = moves;
  if (liesAnyhow(work, moves)) return [];
  if (up[2] === 0) return first?.starts === false ? tippingTexts(work, first.present, up, raised) : [];
  if (all.length < 3 || isSteady(work, all, up)) return [];
  return ["It does not stand by itself yet: prop it, or let a second person hold it, until more is on it."];
}

/** Where something stands out below what the work would lie on: what else lies on blocks while it is struck or screwed. */
function levelTexts(work: Work, moves: readonly Move[], { up, before }: Lying): readonly Sentence[] {
  const [first] = moves as readonly [Move];
  if (first.starts || up[2] === 1 || moves.every((move) => move.work.every(({ drives }) => drives.length === 0)))
    return [];
  const turned = !sameDirection(up, before);
  const on = standingOn(work, first.present, up);
  if (!on) return [];
  // The thin end of a mitre that is open yet breaks off under the weight.
  const [open, whole] = [true, false].map((is) =>
    on.lowest.filter((id) => hasMitreBelow(work, id, first.present, up) === is),
  ) as [string[], string[]];
  if (on.blocks < LEVEL) {
    if (open.length === 0 || whole.length === 0) return [];
    const jaws = blocksForJaws(work, moves, up, lowestOf(work, whole, up));
    const high = jaws.n === 0n ? "" : ` at least ${work.print(jaws)} high`;
    const room = jaws.n === 0n ? "" : ", and jaws go under the work";
    const others = otherFeet(work, first.present, whole, up);
    const more = others
      ? `, and blocks ${work.print(rational(Math.round(others.by)))} higher under ${definite(work, others.ids)}, or it tips over`
      : "";
    return [
      onceLaid(
        ["battens", ...(others ? (["blocks"] as const) : [])],
        `Lay battens${high} under ${definite(work, whole)}${more}: nothing may bear on the points of the open mitres of ${definite(work, open)}${room}.`,
      ),
    ];
  }
  const stand = on.lowest.length > 1 ? "stand" : "stands";
  const rests = on.blocked.map((id) => lowestOf(work, [id], up)).reduce(max);
  const jaws = blocksForJaws(work, moves, up, rests);
  if (toNumber(jaws) > on.blocks)
    return [
      onBlocks(
        turned,
        `at least ${work.print(jaws)} high under ${definite(work, on.blocked)}: ${definite(work, on.lowest)} ${stand} out ${work.print(rational(Math.round(on.blocks)))} below, and the jaws of the clamps go under ${on.lowest.length > 1 ? "them" : "it"}.${open.length > 0 ? " Nothing may bear on the points of open mitres." : ""}`,
      ),
    ];
  return [
    onBlocks(
      turned,
      `${open.length > 0 ? "more than " : ""}${work.print(rational(Math.round(on.blocks)))} high under ${definite(work, on.blocked)}: ${definite(work, on.lowest)} ${stand} out so far below${open.length > 0 ? ", and nothing may bear on the points of open mitres" : ""}.`,
    ),
  ];
}

/** They are laid where the work is turned for them, and lie there where it is not. */
const onBlocks = (turned: boolean, so: string): Sentence =>
  sentence(`${turned ? "Lay" : "The work rests on"} blocks ${so}`, {
    under: { what: ["blocks"], laid: `Lay blocks ${so}` },
  });

/** Whether what comes as one is an end or a frame with the feet of the piece: they carry it. */
const standsOnFeet = ({ design, part }: Work, moves: readonly Move[], { ids }: Past, up: Direction): boolean => {
  const floor = design.parts.map(({ body }) => body.low[2]).reduce(min);
  return (
    up[2] === 1 &&
    moves.every(({ arrivesBuilt, along }) => arrivesBuilt && Math.abs(along[2]) < STEEP) &&
    ids.every((id) => equal(part(id).body.low[2], floor))
  );
};

/** What hangs, runs or lies loose is told of by itself, and a frame lies flat. */
function packingTexts(work: Work, moves: readonly Move[], up: Direction): readonly string[] {
  const past = liesAnyhow(work, moves) ? null : pastTheBench(work, moves, up);
  if (!past) return [];
  const jaws = blocksForJaws(work, moves, up, lowestOf(work, moves[0]?.present ?? [], up));
  const [they, reach] = past.ids.length > 1 ? ["they", "reach"] : ["it", "reaches"];
  if (less(past.by, jaws))
    return [
      `Raise the work on blocks at least ${work.print(jaws)} high, clear of ${definite(work, past.ids)}: ${they} ${reach} ${work.print(past.by)} below what is there, and jaws go under that.`,
    ];
  if (standsOnFeet(work, moves, past, up))
    return [
      `Raise the work on blocks ${work.print(past.by)} high, beside ${definite(work, past.ids)}: ${they} ${reach} so far below what is there, and ${past.ids.length > 1 ? "stand" : "stands"} on the bench while ${past.ids.length > 1 ? "they are" : "it is"} put on.`,
    ];
  return [
    `Raise the work on blocks more than ${work.print(past.by)} high, clear of ${definite(work, past.ids)}: ${they} ${reach} so far below what is there.`,
  ];
}

/** What would fall over on what it rests on alone, where the work is raised for other reasons: blocks higher than those under the work. */
function tiltsTexts(work: Work, moves: readonly Move[], up: Direction): readonly string[] {
  const [first] = moves as readonly [Move];
  const on = first.starts || liesAnyhow(work, moves) ? null : standingOn(work, first.present, up);
  if (!on || on.blocks < LEVEL) return [];
  return [
    `Put blocks ${work.print(rational(Math.round(on.blocks)))} higher than the others under ${definite(work, on.blocked)}: on ${definite(work, on.lowest)} alone the work would fall over.`,
  ];
}

/** What lies on the bench itself leaves no room for a jaw under it. */
function jawTexts(work: Work, moves: readonly Move[], { up, before }: Lying): readonly string[] {
  const [first] = moves as readonly [Move];
  if (first.starts) return [];
  const jaws = blocksForJaws(work, moves, up, lowestOf(work, togetherAfter(moves), up));
  if (jaws.n === 0n) return [];
  // What splays has lain on packing since it was laid down.
  const raised = sameDirection(up, before) ? raisedEnds(work, first.present, up) : null;
  return [
    `Raise the work on blocks at least ${work.print(jaws)} high, or let it stand out over the edge of the bench where clamps press: their jaws go under it.`,
    ...(raised
      ? [
          `The packing stays: ${work.print(raised.by)} higher under the ${raised.end} ends of ${definite(work, raised.ids)} than under their ${opposite(raised.end)} ends.`,
        ]
      : []),
  ];
}

/** All that is told of what the work stands on; what it is laid on for itself, whatever is put on, tells so. */
export function underTexts(work: Work, moves: readonly Move[], place: Lying): readonly Sentence[] {
  const { up } = place;
  const raised = packingTexts(work, moves, up);
  const level = raised.length > 0 ? raised : levelTexts(work, moves, place);
  const jaws = level.length > 0 ? level : jawTexts(work, moves, place);
  const under = jaws.length > 0 ? jaws : barsUnder(work, moves, up);
  const low = under.length > 0 ? under : lowHeadTexts(work, moves, up);
  return [
    ...low,
    ...(raised.length > 0 ? tiltsTexts(work, moves, up) : []),
    ...(raised.length > 0 ? [] : backedTexts(work, moves, up)),
    ...stoodUpTexts(work, moves, up),
    ...heldTexts(work, moves, up, low.length > 0),
  ];
}
