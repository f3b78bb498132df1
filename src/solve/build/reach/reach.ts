/** Which tool can drive a fastener where it sits, among the parts that are there. */
import { type Hull, hullHits } from "../../../geometry/index.ts";
import type { Tool } from "../../build.ts";
import type { Direction, Fastener, FastenerKind, Part } from "../../design.ts";
import { core, envelope, roomsOf } from "./envelopes.ts";
import { leaning } from "./leaning.ts";

export interface Reached {
  readonly tool: Tool;
  /** The driver's axis, head to point, where it leans from the fastener's; null: in line. */
  readonly axis: Direction | null;
}

export interface Reach {
  /** The easiest tool that fits behind the head among the parts of `body`; null when none does. */
  toolFor(fastener: Fastener, body: readonly Part[]): Reached | null;
  /** The parts of `body` that the first tool, held in line, would run into. */
  inTheWay(fastener: Fastener, body: readonly Part[]): readonly Part[];
}

const DRIVERS: readonly Tool[] = ["straight", "long", "angle", "stubby"];
/** So many rooms of a tool, the shaft, are free in line also where its hand has to lean: a long one bores askew where it begins beside its line. */
const SHAFT: Partial<Readonly<Record<Tool, number>>> = { long: 2 };
/** Easiest first. */
const TOOLS: Readonly<Record<FastenerKind, readonly Tool[]>> = {
  "pocket screw": DRIVERS,
  "wood screw": DRIVERS,
  "lag screw": ["wrench"],
  bolt: ["wrench"],
  nail: ["hammer"],
  brad: ["hammer"],
  staple: ["stapler"],
  peg: ["hammer"],
  key: ["hand"],
  // These are not driven: they travel in their part.
  dowel: [],
  "shelf pin": [],
  spline: [],
  "loose tenon": [],
  biscuit: [],
};
export const toolsFor = (kind: FastenerKind): readonly Tool[] => TOOLS[kind];

/** One way to hold one tool, and what it has been found to run into. */
interface Attempt extends Reached {
  /** Made when first needed; those of the shaft in line come last. */
  readonly rooms: (Hull | null)[];
  /** How many of them are those of the tool itself. */
  readonly own: number;
  readonly hits: Map<Part, boolean>;
}

/** What stands so close behind a head that no tool gets there. */
interface Cover {
  readonly hull: Hull;
  readonly hits: Map<Part, boolean>;
}

/** Judges many bodies of the same parts: what stands in the way of a tool is worked out once for each part. */
export function reach(): Reach {
  const known = new Map<Fastener, { readonly attempts: readonly Attempt[]; readonly cover: Cover }>();
  const at = (fastener: Fastener) =>
    kept(known, fastener, () => ({
      attempts: everyAttempt(fastener),
      cover: { hull: core(fastener), hits: new Map<Part, boolean>() },
    }));
  const covers = ({ hull, hits }: Cover, part: Part) => kept(hits, part, () => hullHits(hull, part.solid));
  const hits = (fastener: Fastener, attempt: Attempt, part: Part): boolean =>
    kept(attempt.hits, part, () =>
      attempt.rooms.some((_, which) => {
        attempt.rooms[which] ??=
          which < attempt.own
            ? envelope(fastener, attempt.tool, attempt.axis ?? fastener.direction, which)
            : envelope(fastener, attempt.tool, fastener.direction, which - attempt.own);
        const hull = attempt.rooms[which];
        return hull !== null && hull !== undefined && hullHits(hull, part.solid);
      }),
    );
  const around = (fastener: Fastener, body: readonly Part[]): readonly Part[] =>
    body.filter((part) => part.id !== fastener.into && !fastener.through.includes(part.id));
  return {
    toolFor(fastener, body) {
      const parts = around(fastener, body);
      const { attempts, cover } = at(fastener);
      if (parts.some((part) => covers(cover, part))) return null;
      const free = attempts.find((attempt) => !parts.some((part) => hits(fastener, attempt, part)));
      return free ? { tool: free.tool, axis: free.axis } : null;
    },
    inTheWay(fastener, body) {
      const [first] = at(fastener).attempts;
      return first ? around(fastener, body).filter((part) => hits(fastener, first, part)) : [];
    },
  };
}

function kept<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  let value = map.get(key);
  if (value === undefined) {
    value = make();
    map.set(key, value);
  }
  return value;
}

/** For a single question. */
export const toolFor = (fastener: Fastener, body: readonly Part[]): Reached | null => reach().toolFor(fastener, body);

/**
 * Each screwdriver in line, then leaning, but what a long one does leaning a right-angle one does better in line; hammers, staplers and wrenches in
 * line only. The last room is that of the nut, if there is one.
 */
const waysOf = (kind: FastenerKind): readonly (readonly [tool: Tool, leans: boolean])[] =>
  toolsFor(kind).flatMap((tool): readonly (readonly [Tool, boolean])[] => {
    if (!DRIVERS.includes(tool) || tool === "long") return [[tool, false]];
    return [[tool, false], ...(tool === "angle" ? [["long", true] as const] : []), [tool, true]];
  });

function everyAttempt(fastener: Fastener): readonly Attempt[] {
  return waysOf(fastener.kind).flatMap(([tool, leans]) => {
    const axes: readonly (Direction | null)[] = leans ? leaning(fastener.direction) : [null];
    const rooms = roomsOf(tool) + (fastener.nut ? 1 : 0);
    return axes.map((axis): Attempt => {
      const all = rooms + (axis ? (SHAFT[tool] ?? 0) : 0);
      return { tool, axis, rooms: Array<null>(all).fill(null), own: rooms, hits: new Map() };
    });
  });
}
