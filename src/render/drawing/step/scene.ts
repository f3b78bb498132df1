/** What a step's picture consists of: the unit in hand, what is new pulled off along its way where it slides into something. */
import { isEmpty } from "../../../geometry/solid.ts";
import type { Vec } from "../../../geometry/types.ts";
import { minus, norm, plus, times } from "../../../geometry/vec.ts";
import { sitsAt } from "../../../solve/build/drilling/sits-at.ts";
import { mountedAt } from "../../../solve/build/mounted.ts";
import { partAfter } from "../../../solve/build/part-after.ts";
import type { Build, BuiltPart, Step } from "../../../solve/build.ts";
import { isInPlace } from "../../../solve/design/shapes/in-place.ts";
import { toNumber } from "../../../units/index.ts";
import { shown } from "../exploded/moves.ts";
import { reach, type Shifts, spread } from "../exploded/spread.ts";
import type { Marked } from "../labels.ts";
import { besideYet, goingsOf, inHand } from "./goings.ts";
import { type Group, together } from "./groups.ts";
import { type Laid, laidOnBench } from "./on-bench.ts";
import { oneOpen } from "./one-open.ts";
import { opened } from "./opened.ts";
import { type Driven, driven, manyNails, sunkIn } from "./screws.ts";
import { slips } from "./slips.ts";
import { tiltedIn } from "./tilted.ts";

export interface Scene {
  /** New parts first, so that where edges coincide theirs are drawn. */
  readonly items: readonly Marked[];
  readonly fresh: ReadonlySet<string>;
  /** Of what is new, the hardware, by what is bought as one: its halves. */
  readonly hardware: ReadonlyMap<string, string>;
  /** Ids of what only tells the place of what is new; absent: none. */
  readonly beside?: ReadonlySet<string>;
  /** Names of what is drawn open, so that what is new can be seen. */
  readonly open: readonly string[];
  readonly shifts: Shifts;
  readonly screws: readonly Driven[];
  readonly groups: readonly Group[];
  /** Ids of what comes off the finished piece, or goes on again. */
  readonly goes: ReadonlySet<string>;
  /** The arms of lid supports, from the middle of one half to that of the other. */
  readonly arms: readonly (readonly [Vec, Vec])[];
  /** Pencil lines on the wood. */
  readonly pencil: readonly (readonly [Vec, Vec])[];
  /** What is done to edges on the bench, item by item. */
  readonly done?: NonNullable<Laid["done"]>;
}

/** Clear space between what slides in and where it goes, and between a screw and its hole, as a share of the unit's size. */
const GAP = 0.05;
/** The same as a share of the longest dowel, half of which stands out. */
const CLEAR = 1.5;
/** How far off a body is drawn that comes off or goes on again, as a share of the unit's size. */
const OFF = 0.2;

/** Which way of the finished piece points up in the picture. */
export const ceilingOf = ({ up, shows }: Step): Vec => shows.up ?? up;

export const sceneOf = (build: Build, step: Step): Scene =>
  step.shows.as ? benchScene(build, step) : pieceScene(build, step);

const NOTHING: ReadonlySet<string> = new Set();

function benchScene(build: Build, step: Step): Scene {
  const { items, pencil, done = [] } = laidOnBench(build, step);
  const fresh = new Set(items.map(({ id }) => id));
  return {
    items,
    pencil,
    done,
    fresh,
    hardware: new Map(),
    open: [],
    shifts: new Map(),
    screws: [],
    groups: [],
    goes: NOTHING,
    arms: [],
  };
}

function pieceScene(build: Build, step: Step): Scene {
  const { shows } = step;
  const goings = goingsOf(build, step);
  const tilted = tiltedIn(step);
  // Where the first goes in at a slope the others are not there yet, or it had no room for that.
  const later = new Set(tilted ? step.actions.flatMap((action) => (action.do === "add" ? action.parts : [])) : []);
  for (const id of tilted?.parts ?? []) later.delete(id);
  const fresh = new Set([...shows.fresh, ...goings.flatMap(({ parts }) => parts)].filter((id) => !later.has(id)));
  const wanted = new Set([...fresh, ...shows.present]);
  // What is sawn across a joint later is still wood.
  const all = build.parts
    .filter(({ id }) => wanted.has(id))
    .map((part) => (part.features.some(isInPlace) ? partAfter(build, part, step.number) : part))
    .map((part) => (tilted?.parts.includes(part.id) ? { ...part, solid: tilted.slope(part.solid) } : part));
  const parts = [...all.filter(({ id }) => fresh.has(id)), ...all.filter(({ id }) => !fresh.has(id))];
  const size = Math.max(1, ...parts.map(({ solid }) => norm(minus(solid.high, solid.low))));
  const fitted = hardwareOn(build, step, wanted);
  const screwedOn = new Set(fitted.now.flatMap(({ joint }) => joint ?? []));
  const sliding = shown(shows).filter(({ parts: moving, into }) => slidesIn(build, moving, into, screwedOn));
  const moves = oneOpen(build, sliding);
  const pegs = new Set([...pegsIn(build, shown(shows)), ...(step.kind === "glue-up" ? freePegs(build, wanted) : [])]);
  const long = build.fasteners.flatMap(({ id, length, body }) => (pegs.has(id) && !body ? [toNumber(length)] : []));
  const shifts = new Map(spread(parts, moves, Math.max(GAP * size, CLEAR * Math.max(0, ...long))));
  const runners = build.joints.filter(({ kind }) => kind === "running");
  for (const { parts: ids, along } of moves) {
    const by = outOf(parts, ids, along, runners);
    if (by > 0) for (const id of ids) shifts.set(id, plus(shifts.get(id) ?? [0, 0, 0], times(along, -by)));
  }
  for (const { parts: ids, out } of oneOpen(build, goings))
    for (const id of ids) shifts.set(id, times(out, OFF * size));
  for (const id of tilted?.parts ?? []) shifts.set(id, times(tilted?.out ?? [0, 0, 0], OFF * size));
  const beside = besideYet(build, step);
  if (beside) for (const id of shows.fresh) shifts.set(id, times(beside, OFF * size));
  const shiftOf = (id: string): Vec => shifts.get(id) ?? [0, 0, 0];
  const solids = new Map(build.parts.map(({ id, solid }) => [id, solid]));
  const many = manyNails(build.fasteners.filter(({ id }) => shows.fasteners.includes(id)));
  const screws = build.fasteners
    .filter(({ id, body }) => shows.fasteners.includes(id) || (pegs.has(id) && !body))
    .map((fastener) => ({
      ...driven(fastener, (id) => solids.get(id), shiftOf, GAP * 0.6 * size),
      isOneOfMany: many.has(fastener.id),
    }));
  const sunk = fitted.sunk.flatMap(({ id, carriedBy }) =>
    build.holes
      .filter((hole) => hole.for === id && hole.part === carriedBy && hole.kind !== "cup")
      .map((hole) => sunkIn(hole, shiftOf(carriedBy), GAP * 0.6 * size)),
  );
  const shut = [
    ...parts.map(({ id, mark, solid }): Marked => ({ id, mark, solid, shift: shiftOf(id) })),
    ...fitted.now.map(
      ({ id, item, solid, carriedBy }): Marked => ({
        id,
        mark: shortName(item.kind),
        solid,
        shift: shiftOf(carriedBy),
      }),
    ),
    ...build.fasteners.flatMap(({ id, body, travelsWith }): readonly Marked[] =>
      body && travelsWith !== null && pegs.has(id) ? [{ id, mark: "", solid: body, shift: shiftOf(travelsWith) }] : [],
    ),
    ...slips(build, step, wanted, screws),
    ...build.fasteners.flatMap((fastener): readonly Marked[] => {
      const { id, button } = fastener;
      if (!button || !shows.fasteners.includes(id)) return [];
      return sitsAt(build.joints, fastener).map((rail) => ({
        ...{ id, mark: "", solid: button.solid, shift: shiftOf(rail) },
      }));
    }),
    ...fitted.before.map(({ id, solid, carriedBy }): Marked => ({ id, mark: "", solid, shift: shiftOf(carriedBy) })),
  ];
  const slipped = screws.flatMap(({ id, off }) => (off ? [id] : []));
  const seen = new Set([...fresh, ...fitted.now.map(({ id }) => id), ...slipped]);
  const still = shows.travel.length === 0 && goings.length === 0 && fitted.now.length > 0;
  const { items, motions } = opened(shut, seen, still ? build.motions : [], ceilingOf(step));
  return {
    items,
    open: motions.map(({ name }) => name),
    fresh: seen,
    hardware: new Map(fitted.now.map(({ id, halfOf = id }) => [id, halfOf])),
    shifts,
    screws: [...screws, ...sunk],
    pencil: [],
    arms: armsOf(build, items),
    groups: together(
      oneOpen(build, [...shows.travel.map((each) => ({ ...each, leaves: false })), ...goings]).map((each) =>
        inHand(each, [...wanted], ceilingOf(step)),
      ),
    ),
    goes: new Set(goings.flatMap(({ parts }) => parts)),
  };
}

/** Ids of the dowels, pins and splines that go from one part into the other in these moves. */
const pegsIn = ({ joints, fasteners }: Build, moves: ReturnType<typeof shown>): readonly string[] => {
  const made = new Set(
    moves.flatMap(({ parts, into }) =>
      joints.flatMap(({ id, parts: [a, b] }) =>
        (parts.includes(a) && into.includes(b)) || (parts.includes(b) && into.includes(a)) ? [id] : [],
      ),
    ),
  );
  return fasteners.flatMap(({ id, joint, travelsWith }) => (travelsWith !== null && made.has(joint) ? [id] : []));
};

/** Ids of the dowels that stand free until a later step: all of a part are put in when the first of its joints is closed, or it is glued. */
const freePegs = ({ joints, fasteners }: Build, body: ReadonlySet<string>): readonly string[] => {
  const doweled = new Map(
    joints.flatMap(({ id, method, parts }) => (method === "dowels" ? [[id, parts] as const] : [])),
  );
  const closed = (joint: string): boolean => doweled.get(joint)?.every((id) => body.has(id)) ?? false;
  const carriers = new Set([
    ...fasteners.flatMap(({ joint, travelsWith }) => (closed(joint) ? (travelsWith ?? []) : [])),
    ...joints.flatMap(({ glue, parts }) => (glue && parts.every((id) => body.has(id)) ? parts : [])),
  ]);
  return fasteners.flatMap(({ id, joint, travelsWith }) =>
    travelsWith !== null && carriers.has(travelsWith) && doweled.has(joint) && !closed(joint) ? [id] : [],
  );
};

/** Without what it is for: "cup hinge". */
const shortName = (kind: string): string => kind.replace(/ for .*/u, "");

/** What holds a lid reaches from its half on the case to its half on the lid, however far that is open. */
function armsOf({ hardware }: Build, items: readonly Marked[]): Scene["arms"] {
  const inPlace = items.filter(({ shift }) => !shift || norm(shift) === 0);
  const middles = new Map(inPlace.map(({ id, solid }) => [id, times(plus(solid.low, solid.high), 0.5)]));
  return hardware.flatMap(({ id, item, halfOf }): Scene["arms"] => {
    const [own, other] = [middles.get(id), middles.get(halfOf ?? "")];
    return item.kind === "lid support" && own && other ? [[own, other]] : [];
  });
}

/** What hardware stands on the parts that are shown: put on in this step, or before; what is taken off in it comes off with its part. */
function hardwareOn(build: Build, step: Step, parts: ReadonlySet<string>) {
  const { before, after } = mountedAt(build, step);
  const here = build.hardware.filter(({ carriedBy }) => parts.has(carriedBy));
  const now = here.filter(({ id }) => after.has(id) && !before.has(id));
  return {
    now: now.filter(({ solid }) => !isEmpty(solid)),
    /** What sits in a bored hole is drawn as it goes in. */
    sunk: now.filter(({ solid }) => isEmpty(solid)),
    before: here.filter(({ id, solid }) => before.has(id) && !isEmpty(solid)),
  };
}

/** How far it is from its place until it stands before what it runs on, so that its slides, or what it runs on, are seen; 0 for what runs on nothing. */
function outOf(parts: readonly BuiltPart[], moving: readonly string[], along: Vec, runners: Build["joints"]): number {
  const ends = runners.flatMap(({ parts: [a, b] }): readonly number[] => {
    const [mover, stays] = moving.includes(a) ? [a, b] : [b, a];
    const [m, s] = [mover, stays].map((id) => parts.find((part) => part.id === id)?.solid);
    return moving.includes(mover) && !moving.includes(stays) && m && s
      ? [reach(m, along, 1) - reach(s, along, -1)]
      : [];
  });
  return Math.max(0, ...ends);
}

/** Whether a joint lets something of one side into or under the other, or has hardware between them, so that they show more when they stand apart. */
const slidesIn = (
  { joints }: Build,
  moving: readonly string[],
  into: readonly string[],
  screwedOn: ReadonlySet<string>,
): boolean =>
  joints.some(
    ({ id, parts: [a, b], insertion, kind, method }) =>
      (insertion !== null || kind === "running" || method === "dowels" || screwedOn.has(id)) &&
      ((moving.includes(a) && into.includes(b)) || (moving.includes(b) && into.includes(a))),
  );
