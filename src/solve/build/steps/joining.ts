import type { Action } from "../../build.ts";
import type { Direction, Joint } from "../../design.ts";
import { LOOSE } from "../order/links.ts";
import type { Drive } from "../order/plan.ts";
import { boredThrough } from "./bored-through.ts";
import { clampingOf, clampText } from "./clamping.ts";
import { type Copies, copiesOf } from "./copies.ts";
import { numberWord, type StepDraft, type Work } from "./draft.ts";
import { drivings } from "./driving.ts";
import { fitActions } from "./hardware.ts";
import { grouped, hangs, type Move, type Unit, unitsOf } from "./moves.ts";
import { squareOf } from "./square.ts";
import { builtNames, titleOf } from "./titles.ts";
import { WALL_CAUTION } from "./words/fitted.ts";
import { insideText } from "./words/inside.ts";
import { joiningText } from "./words/joining.ts";
import { liftCaution } from "./words/lifting.ts";

/** Glue: clamps off after 45 minutes, no strain before the next day (label instructions of PVA glues, 30 to 60 min and 24 h). */
const CLAMPED = { for: "clamps", minutes: 45 } as const;
const CURED = { for: "glue before planing", minutes: 24 * 60, binds: "strain" } as const;
const OPEN_MINUTES = 8;
const GLUE_CAUTION = "Have the clamps set and try everything dry before you spread glue: it grabs within minutes.";
const SCREW_CAUTION = "Wear eye protection, and keep your free hand away from where the point would come out.";

/** Minutes (common practice, no source): to place a part, to drive a fastener, to spread glue on a joint. */
const MINUTES = { part: 4, fastener: 1, glue: 3 } as const;

export function joiningSteps(work: Work): readonly StepDraft[] {
  const units = unitsOf(work.plan);
  return copiesOf(work, units).flatMap((copies) => unitSteps(work, copies, units));
}

function unitSteps(work: Work, copies: Copies, units: readonly Unit[]): readonly StepDraft[] {
  const groups = copies.all.map((unit) => grouped(work, unit));
  const own = groups[0] as (typeof groups)[number];
  let up: Direction = [0, 0, 1];
  return own.map((moves, i) => {
    const everyCopy = groups.map((all) => all[i] as readonly Move[]);
    const before = up;
    up = upFor(moves, copies.unit, work, before);
    return joiningStep(work, copies, moves, everyCopy, {
      up,
      before,
      first: i === 0,
      last: i === own.length - 1,
      units,
    });
  });
}

interface Place {
  readonly up: Direction;
  readonly before: Direction;
  readonly first: boolean;
  readonly last: boolean;
  readonly units: readonly Unit[];
}

function joiningStep(
  work: Work,
  copies: Copies,
  moves: readonly Move[],
  everyCopy: readonly (readonly Move[])[],
  place: Place,
): StepDraft {
  const [first, last] = [moves[0] as Move, moves.at(-1) as Move];
  const joints = moves.flatMap((move) => move.work.map(({ joint }) => joint));
  const drives = moves.flatMap((move) => move.work.flatMap((w) => w.drives));
  const glued = joints.some((joint) => joint.glue);
  const arriving = moves.flatMap((move) => move.arriving);
  const started = first.starts ? first.present : [];
  const fresh = [...started, ...arriving];
  // What is hung on the wall was square, sanded and closed before.
  const hung = moves.some(hangs);
  const square = hung ? null : newlySquare(work, moves);
  const n = copies.all.length;
  const clamps = glued ? clampingOf(work, moves) : [];
  const lift = liftCaution(work, first.arriving);
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
    ...(lift.length > 0 && { hands: 2 }),
    ...(hung && { inTheRoom: true as const }),
    text: [
      ...turning(place),
      ...clampText(work, clamps),
      ...joiningText(work, moves, place.up, first.arrivesBuilt ? `the ${builtNames(moves, place.units)}` : null),
      ...(square
        ? [
            `Check that it is square: the diagonals${square.on ? ` across its ${square.on}` : ""} measure ${work.print(square.value)} each, equal within ${work.print(square.within)}.`,
          ]
        : []),
      ...(n > 1 ? [`Make ${n === 2 ? "two" : numberWord(n)} of these.`] : []),
    ],
    cautions: [
      ...lift,
      ...(hung ? [WALL_CAUTION] : []),
      ...(glued ? [GLUE_CAUTION] : []),
      ...(drives.some(({ tool }) => tool !== "hand") ? [SCREW_CAUTION] : []),
    ],
    reminders: [
      ...(hung ? [] : insideText(work, first.present, [...last.present, ...last.arriving])),
      ...(glued ? ["Leave it clamped for 45 minutes, and do not strain it before the next day."] : []),
    ],
    actions: everyCopy.flatMap((copy) => [...copy.flatMap((move) => actionsOf(work, move)), ...measuring(work, copy)]),
    shows: {
      // Of a piece that is hung only what it hangs by is marked.
      fresh: hung ? joints.flatMap(({ parts }) => parts) : fresh,
      present: hung
        ? fresh.filter((id) => !joints.some(({ parts }) => parts.includes(id)))
        : first.starts
          ? []
          : first.present,
      travel: moves.map((move) => ({ parts: move.arriving, along: move.along })),
      fasteners: drives.map(({ fastener }) => fastener.id),
    },
  };
}

/** The diagonals, where these moves close a flat frame. */
function newlySquare(work: Work, moves: readonly Move[]): ReturnType<typeof squareOf> {
  const [first, last] = [moves[0] as Move, moves.at(-1) as Move];
  return squareOf(work, first.present) ? null : squareOf(work, [...last.present, ...last.arriving]);
}

function measuring(work: Work, moves: readonly Move[]): readonly Action[] {
  const square = newlySquare(work, moves);
  return square && !moves.some(hangs)
    ? [{ do: "measure", what: "diagonals", value: square.value, within: square.within }]
    : [];
}

/** What happens, in order: lay down, bring, glue, drill in place, drive, clamp. */
function actionsOf(work: Work, move: Move): readonly Action[] {
  const joints = move.work.map(({ joint }) => joint);
  const glued = joints.filter((joint) => joint.glue).map((joint) => joint.id);
  const drives = move.work.flatMap((w) => w.drives);
  // Keys are let in when the glue is dry.
  const keys = drives.filter(({ fastener }) => fastener.kind === "key");
  const driven = drives.filter(({ fastener }) => fastener.kind !== "key");
  const start: readonly Action[] = move.starts
    ? [{ do: "add", parts: move.present, to: [], how: "straight", legs: [] }]
    : [];
  const touched = joints.map((joint) => joint.parts.find((id) => move.present.includes(id)) as string);
  return [
    ...start,
    ...(glued.length > 0 ? [{ do: "glue", joints: glued, openMinutes: OPEN_MINUTES } as const] : []),
    {
      do: "add",
      parts: move.arriving,
      to: [...new Set(touched)],
      how: move.union.legs ? "tilted" : "straight",
      legs: move.union.legs ?? [{ along: move.along, distance: null }],
    },
    ...drillings(work, driven),
    ...drivings(driven),
    ...borings(
      work,
      joints.flatMap((joint) => boredThrough(work, joint)),
    ),
    ...(glued.length > 0 ? [{ do: "clamp", joints: glued } as const, { do: "release", joints: glued } as const] : []),
    ...slotting(work, keys),
    ...drivings(keys),
    ...fitActions(work.plan.hardware.filter(({ joint }) => joint !== null && joints.some(forGood(work, joint)))),
  ];
}

/** Hardware of what comes off again is only tried. */
const forGood =
  ({ plan }: Work, joint: string) =>
  ({ id }: Joint): boolean =>
    id === joint && !plan.removable.some(({ joints }) => joints.includes(joint));

/** The slots of keys, sawn through both parts at once. */
function slotting(work: Work, keys: readonly Drive[]): readonly Action[] {
  const joints = new Set(keys.map(({ fastener }) => fastener.joint));
  return work.design.parts.flatMap(({ id, features }): readonly Action[] => {
    const own = features.flatMap((each, i) =>
      "inPlace" in each && each.inPlace && each.for !== null && joints.has(each.for) ? [i] : [],
    );
    return own.length > 0 ? [{ do: "machine", part: id, features: own, holes: [] }] : [];
  });
}

/** Pilots that are drilled in place, part by part. */
function drillings(work: Work, drives: readonly Drive[]): readonly Action[] {
  const wanted = new Set(drives.map(({ fastener }) => fastener.id));
  return borings(
    work,
    work.plan.holes.flatMap((hole, i) => (!hole.atBench && hole.for !== null && wanted.has(hole.for) ? [i] : [])),
  );
}

function borings({ plan }: Work, holes: readonly number[]): readonly Action[] {
  const byPart = new Map<string, number[]>();
  for (const i of holes) {
    const part = plan.holes[i]?.part ?? "";
    byPart.set(part, [...(byPart.get(part) ?? []), i]);
  }
  return [...byPart].map(([part, own]) => ({ do: "machine", part, features: [], holes: own }));
}

/** Heads up: a unit on the bench is laid so that most fasteners are driven downwards; the whole piece is only turned over for those driven from below. */
function upFor(moves: readonly Move[], unit: Unit, work: Work, before: Direction): Direction {
  const drives = moves.flatMap((move) => move.work.flatMap((w) => w.drives));
  // What runs, hangs or lies loose would fall out of a piece that stands on its head.
  if (moves.every((move) => move.work.every(({ joint }) => LOOSE.includes(joint.kind)))) return [0, 0, 1];
  if (drives.length === 0) return before;
  const sum = [0, 1, 2].map((i) => drives.reduce((so, { fastener }) => so + (fastener.direction[i] as number), 0));
  const axis = sum.reduce((best, value, i) => (Math.abs(value) > Math.abs(sum[best] as number) + 1e-9 ? i : best), 2);
  const value = sum[axis] as number;
  if (Math.abs(value) < 1e-9) return before;
  const small = unit.parts.length * 2 <= work.design.parts.length;
  if (axis !== 2 && !small) return [0, 0, 1];
  return [0, 1, 2].map((i) => (i === axis ? (value > 0 ? -1 : 1) : 0)) as unknown as Direction;
}

function turning({ up, before, first }: Place): readonly string[] {
  if (up.every((c, i) => c === before[i])) return [];
  if (up[2] === -1) return ["Turn the work upside down."];
  if (up[2] === 1) return first ? [] : ["Turn the work the right way up."];
  return ["Lay the work flat on the bench, with the side that the heads go into uppermost."];
}
