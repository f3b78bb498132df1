import type { Action, Clamping } from "../../build.ts";
import type { Direction } from "../../design.ts";
import { panesOf } from "../order/glazing.ts";
import { clampEnds } from "./clamp-ends.ts";
import { clampPlaces, manyDowels, setBackTexts, togetherTexts } from "./clamp-places.ts";
import { clampingOf, dryText, placesOfClamps } from "./clamping.ts";
import { againLying, againText, keepsSquare, newlySquare, squareText } from "./closing.ts";
import { type Copies, copiesOf } from "./copies.ts";
import { FIRST, type StepDraft, type Work } from "./draft.ts";
import { rowsTried } from "./dry-fit.ts";
import { whenItHangs } from "./finishing/in-its-room.ts";
import { grouped } from "./grouped.ts";
import { inFront } from "./in-front.ts";
import { heldWhileDriven, oneFirst, oneForNow } from "./in-turn.ts";
import { actionsOf } from "./join-actions.ts";
import { type LaidOut, laidOut } from "./laid.ts";
import { comesFrom, flatUp, isLowered, isUnderneath, layTexts, turning } from "./lying.ts";
import { hangs, isStruck, type Move, togetherAfter, type Unit, unitsOf } from "./moves.ts";
import { mitreBlocks } from "./open-mitres.ts";
import { closingMinutes, heldOpen, slowText } from "./open-time.ts";
import { underTexts } from "./packing.ts";
import { tells, wordsOf } from "./sentence.ts";
import { sinkTexts } from "./sinking.ts";
import { slenderCautions } from "./slender.ts";
import { blockText } from "./standing-out.ts";
import { builtNames, standingName, titleOf } from "./titles.ts";
import { travelOf } from "./travelling.ts";
import { theBody } from "./words/bodies.ts";
import { clearText, sticksFor, sticksText } from "./words/clear-between.ts";
import { withClampPlaces } from "./words/closed-at-once.ts";
import { copiesText } from "./words/copies.ts";
import { boxTexts, roomTexts } from "./words/drawer-room.ts";
import { WALL_CAUTION } from "./words/fitted.ts";
import { laysDown } from "./words/glazed.ts";
import { cornerTexts, insideText, shutIn } from "./words/inside.ts";
import { joiningText, WIPED } from "./words/joining.ts";
import { drivingCautions, GLASS_CAUTION, OPEN_CAUTION } from "./words/joining-cautions.ts";
import { liftCaution } from "./words/lifting.ts";
import { markedTexts } from "./words/marked-places.ts";
import { narrowTexts } from "./words/narrow.ts";
import { inLineTexts, squareTexts } from "./words/true.ts";

/** Glue: clamps off after 45 minutes, no strain before the next day (label instructions of PVA glues, 30 to 60 min and 24 h). */
const CLAMPED = { for: "clamps", minutes: 45 } as const;
const CURED = { for: "glue to harden", minutes: 24 * 60, binds: "strain" } as const;
const hardens = (clamped: boolean): string =>
  `${clamped ? "Leave it clamped for 45 minutes." : "Leave the glue alone for 45 minutes: what was driven or put in holds it meanwhile."} Until the next day it may be handled and added to with care, screws driven too, but not planed, sanded, hammered at or loaded.`;

/** Minutes (common practice, no source): to place a part, to drive a fastener, to spread glue on a joint. */
const MINUTES = { part: 4, fastener: 1, glue: 3 } as const;

export function joiningSteps(work: Work): readonly StepDraft[] {
  const units = unitsOf(work.plan);
  return copiesOf(work, units).flatMap((copies) => unitSteps(work, copies, units));
}

function unitSteps(work: Work, copies: Copies, units: readonly Unit[]): readonly StepDraft[] {
  const groups = copies.all.map((unit) => grouped(work, unit));
  const own = groups[0] as (typeof groups)[number];
  return laidOut(work, copies.unit, own).map((laid, i) =>
    joiningStep(
      work,
      copies,
      laid.moves,
      groups.map((all) => all[i] as readonly Move[]),
      { ...laid, units },
    ),
  );
}

interface Place extends LaidOut {
  readonly units: readonly Unit[];
}

function joiningStep(
  work: Work,
  copies: Copies,
  moves: readonly Move[],
  everyCopy: readonly (readonly Move[])[],
  place: Place,
): StepDraft {
  const [first] = moves as readonly [Move];
  const joints = moves.flatMap((move) => move.work.map(({ joint }) => joint));
  const drives = moves.flatMap((move) => move.work.flatMap((w) => w.drives));
  const glued = joints.some((joint) => joint.glue);
  const arriving = moves.flatMap((move) => move.arriving);
  const started = first.starts ? first.present : [];
  const fresh = [...started, ...arriving];
  // Of bodies in a row that go in for good only what is in front is marked.
  const inRow = moves.length > 1 && first.arrivesBuilt && joints.every(({ kind }) => kind !== "resting");
  const fronts = inRow ? moves.map((move) => inFront(work, move.arriving)) : null;
  // What is hung on the wall was square, sanded and closed before.
  const hung = moves.some(hangs);
  const closing = hung ? null : newlySquare(work, moves, place.up);
  const proof = closing && { text: squareText(work, closing), filler: closing.filler };
  const told = joiningText(work, moves, place.up, {
    built: first.arrivesBuilt ? theBody(builtNames(work, moves, place.units)) : null,
    stands: standingName(first, place.units),
    proof,
  });
  // What goes on before the parts meet is done while its place is still open.
  const early = told.filter((each) => wordsOf(each).startsWith(FIRST));
  const then = told.filter((each) => !early.includes(each));
  const held = heldWhileDriven(then, work, moves, place.up);
  const proved = oneFirst(held, work, moves, { proof: proof?.text ?? null, owed: place.owed, up: place.up });
  const shown = place.waits ? oneForNow(proved) : proved;
  const again = hung ? [] : againText(work, moves, place.units, place.before);
  const lyingAgain = hung ? null : againLying(work, moves, place.units, { ...place, again });
  const n = copies.all.length;
  const clamps = glued ? mostClamps(everyCopy.map((copy) => clampingOf(work, copy))) : [];
  const minutes = glued ? closingMinutes(work, joints, fresh, clamps) : 0;
  // The work comes to what lies still under it.
  const lowered = isLowered(work, moves, place.up) || comesFrom(work, moves, place.up) === "below";
  const fromAbove = !hung && !isUnderneath(work, moves, place.up) && comesFrom(work, moves, place.up) !== "below";
  const under = fromAbove ? underTexts(work, moves, place) : [];
  const lain = under.filter((each) => tells(each, "under"));
  const flat = flatUp(work, moves, place);
  const turned = lowered || (turning(work, moves, place).length > 0 && !first.starts) || laysDown(work, moves);
  const lying = liftCaution(work, first.arriving);
  const lift = turned ? [...liftCaution(work, first.present), ...slenderCautions(work, first.present)] : lying;
  const panes = panesOf(work.design);
  const glass = !first.arrivesBuilt && fresh.some((id) => panes.has(id));
  const struck = drives.some(isStruck);
  const single = [...started, ...moves.flatMap((move) => (move.arrivesBuilt ? [] : move.arriving))];
  const inside = hung ? [] : insideText(work, first.present, togetherAfter(moves));
  const corners = hung ? [] : cornerTexts(work, single, first.present, togetherAfter(moves));
  const narrow = glued ? narrowTexts(work, single, shutIn(work, first.present, togetherAfter(moves))) : [];
  // What rubs is planed off at once, and a door hangs by its joints.
  const planed = first.arrivesBuilt && joints.some(({ kind }) => kind === "hinged");
  const strained = struck || (turned && lift.length > 0) || (inside.length > 0 && !first.starts) || planed;
  const sticks = closing || hung ? [] : sticksFor(work, joints, togetherAfter(moves));
  return {
    kind: glued ? "glue-up" : "join",
    title: titleOf(work, copies, moves, place.units),
    unit: copies.unit.name,
    copies: n,
    up: place.up,
    bench:
      n *
      ((hung ? 1 : fresh.length) * MINUTES.part +
        drives.length * MINUTES.fastener +
        (glued ? joints.length * MINUTES.glue : 0)),
    waits: glued ? [CLAMPED, CURED] : [],
    ...(clamps.length > 0 && { clamps }),
    ...(sticks.length > 0 && { sticks }),
    ...((lift.length > 0 || manyDowels(work, moves)) && { hands: 2 }),
    ...(strained && { strains: true as const }),
    ...(turned && lift.length > 0 && { lifts: { turned: lift, lying } }),
    ...(hung && { inTheRoom: true as const }),
    ...(lyingAgain && { proof: lyingAgain }),
    ...(lain.length > 0 && { laidOn: lain }),
    ...(!hung && keepsSquare(work, moves, again) && { keeps: first.present }),
    text: [
      ...inside,
      ...corners,
      ...narrow,
      ...again,
      ...(glued
        ? dryText(work, clamps, [
            ...slowText(minutes),
            ...rowsTried(work, moves),
            ...blockText(
              work,
              moves,
              placesOfClamps(work, moves).flatMap((each) => clampEnds(work, moves, each)),
            ),
            ...setBackTexts(work, moves),
            ...mitreBlocks(work, moves),
            ...sticks.map((each) => sticksText(work, each)),
          ])
        : []),
      ...early,
      ...layTexts(work, moves, { ...place, stands: standingName(first, place.units) }),
      ...under,
      ...(glued ? sinkTexts(work, moves, place.up) : []),
      ...(n === 1 && !first.arrivesBuilt ? markedTexts(work, fresh, joints) : []),
      ...togetherTexts(work, moves),
      ...(glued ? withClampPlaces(shown, clampPlaces(work, moves)) : shown),
      ...(proof && !shown.some((each) => wordsOf(each).includes(proof.text)) ? [proof.text] : []),
      ...(hung ? [...whenItHangs(work), "Load it little by little."] : []),
      ...(closing || hung || !glued ? [] : squareTexts(work, joints)),
      ...sticks.flatMap((each) => clearText(work, each)),
      ...(glued ? [...inLineTexts(work, joints), WIPED] : []),
      ...(first.arrivesBuilt ? [] : boxTexts(work, everyCopy.map(beforeAndAfter))),
      ...roomTexts(work, first.present, togetherAfter(moves), glued),
      ...copiesText(work, copies),
      ...(n > 1 && clamps.length > 0
        ? [
            "With one set of clamps the next one waits 45 minutes, until those are free: put the others together dry meanwhile.",
          ]
        : []),
    ],
    cautions: [
      ...lift,
      ...(hung ? [WALL_CAUTION] : []),
      ...(joints.some(({ kind, method }) => kind === "running" && method.endsWith("slides")) ? [OPEN_CAUTION] : []),
      ...(glass ? [GLASS_CAUTION] : []),
      ...drivingCautions(drives, glass),
    ],
    reminders: glued ? [hardens(clamps.length > 0)] : [],
    actions: everyCopy.flatMap((copy) => [
      ...heldOpen(
        copy.flatMap((move) => actionsOf(work, move)),
        minutes,
      ),
      ...measuring(work, copy, place.up),
    ]),
    shows: {
      // Of a piece that is hung only what it hangs by is marked.
      fresh: hung ? joints.flatMap(({ parts }) => parts) : (fronts ?? fresh),
      present: hung
        ? fresh.filter((id) => !joints.some(({ parts }) => parts.includes(id)))
        : first.starts
          ? []
          : fronts
            ? [...first.present, ...fresh.filter((id) => !fronts.includes(id))]
            : first.present,
      travel: travelOf(work, moves, place, { lowered, glued }),
      fasteners: drives.map(({ fastener }) => fastener.id),
      ...(flat && { up: flat }),
    },
  };
}

/** Of copies that differ in height: what the highest needs. */
const mostClamps = (all: readonly (readonly Clamping[])[]): readonly Clamping[] => {
  const count = (clamps: readonly Clamping[]): number => clamps.reduce((so, each) => so + each.count, 0);
  return all.reduce((so, one) => (count(one) > count(so) ? one : so));
};

const beforeAndAfter = (moves: readonly Move[]) => ({
  before: (moves[0] as Move).present,
  after: togetherAfter(moves),
});

function measuring(work: Work, moves: readonly Move[], up: Direction): readonly Action[] {
  const closing = moves.some(hangs) ? null : newlySquare(work, moves, up);
  return (closing ? [closing.square, ...closing.ends] : []).map(({ value, within }) => ({
    do: "measure",
    what: "diagonals",
    value,
    within,
  }));
}
