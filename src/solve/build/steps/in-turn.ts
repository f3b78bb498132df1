/** What is done between placing and driving: the work held against the hammer, and proved square while one fastener a joint still lets it be shifted. */
import { dot } from "../../../geometry/vec.ts";
import { faceOf, INDICES } from "../../design/space.ts";
import type { Direction } from "../../design.ts";
import type { JointWork } from "../order/plan.ts";
import { backedInTurn } from "./backed.ts";
import { definite, series, type Work } from "./draft.ts";
import { LEVEL, STEEP } from "./lying.ts";
import type { Move } from "./moves.ts";
import { pressedTexts } from "./pressed.ts";
import { proppedTexts } from "./propped.ts";
import { type Sentence, tells, wordsOf } from "./sentence.ts";
import { isTurnedFor, sidesOf } from "./struck-sides.ts";

const isDriven = (text: Sentence): boolean => tells(text, "drives") === "fasteners";

/** Before the first sentence that drives, and the holes for that. */
const before = (texts: readonly Sentence[], own: readonly string[]): readonly Sentence[] => {
  const at = texts.findIndex((text) => isDriven(text) || tells(text, "drives") === "holes");
  return at < 0 ? texts : [...texts.slice(0, at), ...own, ...texts.slice(at)];
};

/** What is screwed by its end hangs on its screws; what is nailed from a side slides and springs. */
export const heldWhileDriven = (
  texts: readonly Sentence[],
  work: Work,
  moves: readonly Move[],
  up: Direction,
): readonly Sentence[] =>
  heldWhileStruck(before(texts, [...proppedTexts(work, moves, up), ...pressedTexts(work, moves, up)]), work, moves, up);

/** Common practice, no source. */
function heldWhileStruck(
  texts: readonly Sentence[],
  work: Work,
  moves: readonly Move[],
  up: Direction,
): readonly Sentence[] {
  const struck = moves.filter(({ work: own }) =>
    own.some(({ drives }) => drives.some(({ tool }) => tool === "hammer")),
  );
  const wet = struck.filter(({ work: own }) =>
    own.some(({ joint, drives }) => joint.glue && drives.some(({ tool }) => tool === "hammer")),
  );
  const drivesOf = (of: readonly Move[]) => of.flatMap(({ work: own }) => own.flatMap(({ drives }) => drives));
  const isLevel = ({ fastener }: JointWork["drives"][number]): boolean => Math.abs(dot(fastener.direction, up)) < LEVEL;
  const one = moves.flatMap(({ arriving }) => arriving).length === 1;
  const what = one ? "it" : "each";
  // It hangs under what is hammered.
  if (
    drivesOf(wet).some((drive) => !isLevel(drive)) &&
    wet.some(({ along, starts }) => !starts && dot(along, up) > LEVEL)
  )
    return before(texts, [
      `Prop ${what} from below while it is nailed: blocks cut to the height between the bench and it, one just under where the hammer strikes.`,
    ]);
  const level = drivesOf(struck).filter(isLevel);
  const sides = sidesOf(level, up);
  const isWet = drivesOf(wet).some(isLevel);
  const [blow] = level;
  if (!isWet && sides.length < 2) return blow ? before(texts, [againstText(blow, sides)]) : texts;
  const held = `Hold ${what} while it is nailed: with clamps where they reach, else with props cut to length`;
  if (!isTurnedFor(work, moves, up))
    return before(texts, [
      `${held}; and have a second person press a heavy block against the side across from the hammer, in line with its blows.`,
    ]);
  const downTo = (way: Direction): readonly string[] => [
    ...new Set(level.flatMap(({ fastener }) => (dot(fastener.direction, way) < -STEEP ? [fastener.into] : []))),
  ];
  const loose = !isWet && level.length === drivesOf(moves).length;
  return before(texts, [
    ...(isWet ? [`${held}.`] : []),
    ...(loose
      ? [
          `Nothing holds ${one ? "it" : "them"} yet when the work is turned: clamp ${one ? "it" : "them"} in place first, or wedge ${one ? "it" : "them"} there with props cut to length.`,
        ]
      : []),
    `For those from ${series(sides.map(([side]) => side))} turn the work: the side that is nailed lies uppermost, and the one across from it on the bench. Then lay it as it was.`,
    ...backedInTurn(
      work,
      moves,
      sides.map(([, way]) => [downTo(way), way] as const),
    ),
  ]);
}

/** Work that is struck level from one side slides away from the hammer. */
function againstText(
  { fastener: { direction } }: JointWork["drives"][number],
  sides: ReturnType<typeof sidesOf>,
): string {
  const axis = INDICES.find((i) => Math.abs(direction[i]) > STEEP) ?? 1;
  const from = series(sides.map(([side]) => side));
  return `Set the work with its ${faceOf(axis, direction[axis] > 0)} against a wall, a blanket between, or have a second person press a heavy block against it there: the blows come level from ${from}, and push it away.`;
}

/** Whether a frame can be proved with one fastener in each joint. */
const isProvedFirst = (moves: readonly Move[]): boolean => {
  const works = moves.flatMap(({ work }) => work).filter(({ drives }) => drives.length > 0);
  return (
    works.length > 0 &&
    works.every(({ drives }) => drives.length > 1 && drives.every(({ fastener }) => fastener.kind.endsWith("screw")))
  );
};

/** The end of a frame that is proved in a later step, and that step. */
export interface Closes {
  readonly moves: readonly Move[];
  /** Ids of the parts at its corners, where others reach past those. */
  readonly corners: readonly string[];
}

/** Whether what these moves screw on is shifted yet when a later step has proved the frame that it is an end of. */
export function waitsForProof(moves: readonly Move[], closes: Closes): boolean {
  const own = new Set(moves.flatMap(({ arriving }) => arriving));
  const meets = closes.moves.some(({ arriving, work }) =>
    work.some(({ joint: { parts } }) => parts.some((id) => own.has(id)) && parts.some((id) => arriving.includes(id))),
  );
  return (
    (closes.corners.length > 0 ? closes.corners.some((id) => own.has(id)) : meets) &&
    isProvedFirst(closes.moves) &&
    isProvedFirst(moves) &&
    moves.every(({ work }) => work.every(({ joint }) => !joint.glue))
  );
}

/** After the sentence that drives; before the first of several, or all would be in when it is read. */
const afterDrives = (texts: readonly Sentence[], own: (these: string) => string): readonly Sentence[] => {
  const at = texts.flatMap((text, i) => (isDriven(text) ? [i] : []));
  const [first, ...more] = at;
  if (first === undefined) return texts;
  if (more.length > 0) return before(texts, [own("Of the screws below")]);
  return [...texts.slice(0, first + 1), own("Of these"), ...texts.slice(first + 1)];
};

/** One in each joint is in until a later step has proved it. */
export const oneForNow = (texts: readonly Sentence[]): readonly Sentence[] =>
  afterDrives(
    texts,
    (these) =>
      `${these} drive one in each joint for now; the others are driven when a later step has closed the frame and proved it square.`,
  );

/** ", and those that were left out ...": where their heads look down as the work lies, it is turned for them. */
function owedText(work: Work, owed: readonly Move[], up: Direction): string {
  const left = owed.flatMap((move) => move.work.flatMap(({ drives }) => drives.map(({ fastener }) => fastener)));
  const heads = [...new Set(left.flatMap(({ through: [part] }) => part ?? []))];
  return left.some(({ direction }) => dot(direction, up) > STEEP)
    ? `, then turn the work so that the heads in ${definite(work, heads)} look up, and drive those that were left out there`
    : `, and those that were left out of ${definite(
        work,
        owed.flatMap(({ arriving }) => arriving),
      )}`;
}

/**
 * One in each joint, the proof, then the others: driven all, they hold it as it is. `owed`: what came before with one in each joint. As they
 * are where nothing is proved.
 */
export function oneFirst(
  texts: readonly Sentence[],
  work: Work,
  moves: readonly Move[],
  { proof, owed, up }: { readonly proof: string | null; readonly owed: readonly Move[]; readonly up: Direction },
): readonly Sentence[] {
  if (!proof || !isProvedFirst(moves)) return texts;
  const too = owed.length > 0 ? owedText(work, owed, up) : "";
  return afterDrives(
    texts.filter((text) => wordsOf(text) !== proof),
    (these) =>
      `${these} drive one in each joint first. ${proof} Then drive the others${too}: with all of them in nothing can be shifted.`,
  );
}
