/** Ways to take a body apart into two, judged. */
import { dot } from "../../../geometry/vec.ts";
import { toMillimetres, UNITS_PER_MM } from "../../../units/index.ts";
import type { Leg, Tool } from "../../build.ts";
import { indexOf } from "../../design/space.ts";
import type { Design, Direction, Part } from "../../design.ts";
import type { Blocking } from "./blocking.ts";
import type { Choices, Made, Refusal, Taken } from "./choices.ts";
import { type Filler, shuts } from "./fillers.ts";
import { type Halves, hangsOn, hangsTogether, type Link, LOOSE } from "./links.ts";

import { reversed } from "./pegs.ts";
import { wayThrough } from "./way-through.ts";
import { breaks, type Sequence } from "./wishes.ts";

/** What never changes while an order is looked for. */
export interface Piece {
  readonly parts: readonly Part[];
  readonly links: readonly Link[];
  readonly blocking: Blocking;
  readonly choices: Choices;
  /** Parts that are set in their places when all else stands. */
  readonly set: ReadonlySet<number>;
  /** Panes and what holds them: they go in when all around them is together. */
  readonly glazing: ReadonlySet<number>;
  /** Parts that are cut when the piece tells their size. */
  readonly waiting: ReadonlySet<number>;
  /** Parts that fill a room which is there without them, with what they are between. */
  readonly fillers: readonly Filler[];
  /** What the maker wishes to be joined first. */
  readonly wishes: readonly Sequence[];
  /** The way in with one tilt of parts that lie loose; null where there is none. */
  readonly tilt: (moving: readonly number[], staying: readonly number[]) => readonly Leg[] | null;
  /** mm³ of each part's blank, rounded, so that sums do not depend on their order. */
  readonly volumes: readonly number[];
}

export const volumesOf = ({ parts }: Pick<Design, "parts">): readonly number[] =>
  parts.map(({ thickness, width, length }) =>
    Math.round(toMillimetres(thickness) * toMillimetres(width) * toMillimetres(length)),
  );

/** A way to part a body in which nothing is in the way of the moving half. */
export interface Parting {
  readonly halves: Halves;
  /** How the moving half travels to its place. */
  readonly along: Direction;
  /** How many parts or units move. */
  readonly nodes: number;
  /** The place of the direction in which the moving half leaves. */
  readonly direction: number;
  /** Its way in, where that is not straight. */
  readonly legs?: readonly Leg[];
}

export interface Split extends Made {
  readonly halves: Halves;
  readonly along: Direction;
  readonly legs?: readonly Leg[];
  readonly sliding: readonly string[];
  /** What leaves only hangs, runs or lies loose. */
  readonly light: boolean;
  /** Compared from the first number on; less is better. */
  readonly cost: readonly number[];
}

/** The joints that close when the halves come together. */
export function closingOf({ parts, links }: Piece, { moving, staying }: Halves): readonly Link[] {
  const half = new Uint8Array(parts.length);
  for (const part of staying) half[part] = STAYS;
  for (const part of moving) half[part] = MOVES;
  return links.filter(({ members }) => {
    const here = members.reduce((so, part) => so | (half[part] ?? 0), 0);
    return here === (STAYS | MOVES) && members.every((part) => half[part] !== 0);
  });
}
const STAYS = 1;
const MOVES = 2;

/** The whole body. */
export const bodyOf = ({ parts }: Piece, { moving, staying }: Halves): readonly Part[] =>
  [...moving, ...staying].sort((a, b) => a - b).flatMap((part) => parts[part] ?? []);

/** What does not depend on the way that the halves come together. */
export interface Closed extends Made {
  readonly closing: readonly Link[];
}

/** Makes the joints between the halves; null when either half would fall apart. */
export function close(piece: Piece, halves: Halves, taken: Taken): Closed | Refusal | null {
  if (piece.wishes.some((wish) => breaks(wish, halves))) return null;
  if (!hangsTogether(halves.moving, piece.links) || !hangsTogether(halves.staying, piece.links)) return null;
  const closing = closingOf(piece, halves);
  const made = piece.choices.make(closing, bodyOf(piece, halves), taken);
  return "why" in made ? made : { ...made, closing };
}

/** Judges a way to part a body. */
export function splitOf(piece: Piece, parting: Parting, { closing, ...made }: Closed): Split {
  const { halves, along, nodes, direction, legs } = parting;
  const { moving } = halves;
  const inMotion = new Set(moving);
  const sliding = closing.filter((link) => slides(link, inMotion, along));
  const drives = made.work.flatMap((work) => work.drives);
  const [only] = moving;
  const waits = only !== undefined && moving.length === 1 && piece.waiting.has(only);
  const all = [...moving, ...halves.staying];
  const light = closing.every(({ joint }) => LOOSE.includes(joint.kind));
  const cost = [
    // The piece is hung on its wall when nothing else is left to do.
    closing.some(({ joint }) => hangsOn(joint)) ? 0 : 1,
    // What is cut to the piece goes on last: the piece has to stand before it is measured.
    waits ? 0 : 1,
    // Fronts are set when the drawers run.
    all.some((part) => piece.set.has(part)) && !moving.every((part) => piece.set.has(part)) ? 1 : 0,
    // What hangs, runs or lies loose goes in when all else stands: it has to come out again. Glass goes in before: the piece is laid down for it.
    light ? 0 : 1,
    all.some((part) => piece.glazing.has(part)) && !moving.every((part) => piece.glazing.has(part)) ? 1 : 0,
    legs ? 1 : 0,
    // From the bottom up: off comes first what is highest.
    isStacked(piece, moving, closing) ? -heightOf(piece, moving) : 0,
    // What is only screwed or nailed goes on after what is glued: a frame is glued up before a top is screwed to it.
    closing.some(({ joint }) => joint.glue) ? 1 : 0,
    // What fills a room goes in when both sides of it stand: then all that do are measured alike, and none keeps a side from its seat.
    piece.fillers.filter((filler) => shuts(filler, halves)).length,
    drives.reduce((so, { tool, axis }) => so + EFFORT[tool] + (axis ? 1 : 0), 0),
    sliding.reduce((so, { joint }) => so + (joint.glue ? 2 : 1), 0),
    closing.filter((link) => isAwkward(piece, link, along)).length,
    // A rail that stands free with one end is bent by what is done at the other: frames come together before what joins them.
    nodes > 1 ? bareEnds(piece, halves, closing) : 0,
    // Single parts before units. Of units the one with fewer joints to close at once, then the smaller, then the lighter: the ends
    // of a frame before its long sides.
    nodes > 1 ? closing.length : 0,
    nodes,
    nodes > 1 ? moving.reduce((so, part) => so + (piece.volumes[part] ?? 0), 0) : 0,
    // Off comes first what is later in the source, so that assembly follows it.
    -(moving[0] ?? 0),
    rankOf(piece, halves, along, direction),
  ];
  return { ...made, halves, along, ...(legs && { legs }), sliding: sliding.map(({ joint }) => joint.id), light, cost };
}

/** The place of its direction; of a way and the same way backwards the much shorter one comes first: a bottom goes in from below, past its rails, and not through the case. */
function rankOf({ parts }: Piece, halves: Halves, along: Direction, direction: number): number {
  const [own, back] = [along, reversed(along)].map((way) => wayThrough(parts, halves, way)) as [number, number];
  return 2 * own < back ? direction - (direction % 2) : 2 * back < own ? direction + 1 - (direction % 2) : direction;
}

/** Drawers, their fronts, and shelves. */
const isStacked = ({ set }: Piece, moving: readonly number[], closing: readonly Link[]): boolean =>
  moving.every((part) => set.has(part)) ||
  closing.every(({ joint }) => joint.kind === "running" || joint.kind === "resting");

/** The highest point of parts, in whole mm. */
const heightOf = ({ parts }: Piece, places: readonly number[]): number =>
  Math.round(Math.max(...places.map((place) => parts[place]?.solid.high[2] ?? 0)) / UNITS_PER_MM);

/** A door or lid is held before its place, not pushed up or sideways into it. */
function isAwkward(
  { parts }: Piece,
  {
    joint: {
      kind,
      parts: [joined],
    },
  }: Link,
  along: Direction,
): boolean {
  const part = kind === "hinged" ? parts.find(({ id }) => id === joined) : undefined;
  return part !== undefined && Math.abs(along[indexOf(part.axes.thickness)]) < SQUARE;
}

/** How many of these joints close an end of a part of which the other end is fast in its half already. */
const bareEnds = ({ links, parts }: Piece, { moving, staying }: Halves, closing: readonly Link[]): number =>
  closing.filter((link) => {
    const [rail] = link.ends;
    const own = parts[rail];
    const end = own && endOf(own, link);
    if (!end) return false;
    const half = moving.includes(rail) ? moving : staying;
    return links.some(
      (other) =>
        other.ends[0] === rail &&
        other !== link &&
        other.members.every((member) => half.includes(member)) &&
        endOf(own, other) === -end,
    );
  }).length;

/** At which end of its first part, along its length, a fixed joint is; 0 at neither. */
function endOf({ axes }: Part, { joint: { kind, contact } }: Link): number {
  if (kind !== "fixed") return 0;
  const along = indexOf(axes.length);
  const [face] = contact.filter(({ normal }) => Math.abs(normal[along]) > SQUARE);
  return face ? Math.sign(face.normal[along]) : 0;
}

/** Common practice, no source: an easier tool first, and in line rather than leaning. */
const EFFORT: Readonly<Record<Tool, number>> = {
  straight: 0,
  hammer: 0,
  stapler: 0,
  hand: 0,
  long: 2,
  angle: 4,
  stubby: 6,
  wrench: 6,
};

/** A fixed joint that is not closed squarely: its faces are pushed along each other. */
function slides({ ends, joint }: Link, moving: ReadonlySet<number>, along: Direction): boolean {
  if (joint.kind !== "fixed") return false;
  const forward = moving.has(ends[0]) ? along : reversed(along);
  if (joint.insertion) return dot(joint.insertion, forward) < SQUARE;
  return joint.contact.length > 0 && !joint.contact.some(({ normal }) => dot(normal, forward) > SQUARE);
}

/** Cosine of the widest angle between travel and the normal of a face that still closes the joint: 45 degrees. */
const SQUARE = Math.SQRT1_2 - 1e-9;
