/** Which tool can drive a fastener where it sits, among the parts that are there. */
import { type Hull, hullHits } from "../../../geometry/index.ts";
import type { Tool } from "../../build.ts";
import type { Direction, Fastener, FastenerKind, Part } from "../../design.ts";
import { envelope } from "./envelopes.ts";
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

/** Easiest first. Dowels are not driven: they travel in their part. */
export const toolsFor = (kind: FastenerKind): readonly Tool[] =>
  kind === "dowel" ? [] : kind === "nail" || kind === "brad" ? ["hammer"] : ["straight", "long", "angle", "stubby"];

/** One way to hold one tool, and what it has been found to run into. */
interface Attempt extends Reached {
  /** Made when first needed. */
  hulls: readonly Hull[] | null;
  readonly hits: Map<Part, boolean>;
}

/** Judges many bodies of the same parts: what stands in the way of a tool is worked out once for each part. */
export function reach(): Reach {
  const known = new Map<Fastener, readonly Attempt[]>();
  const attemptsAt = (fastener: Fastener): readonly Attempt[] => {
    const attempts = known.get(fastener) ?? everyAttempt(fastener);
    known.set(fastener, attempts);
    return attempts;
  };
  const hits = (fastener: Fastener, attempt: Attempt, part: Part): boolean => {
    let hit = attempt.hits.get(part);
    if (hit === undefined) {
      attempt.hulls ??= envelope(fastener, attempt.tool, attempt.axis ?? fastener.direction);
      hit = attempt.hulls.some((hull) => hullHits(hull, part.solid));
      attempt.hits.set(part, hit);
    }
    return hit;
  };
  const around = (fastener: Fastener, body: readonly Part[]): readonly Part[] =>
    body.filter((part) => part.id !== fastener.into && !fastener.through.includes(part.id));
  return {
    toolFor(fastener, body) {
      const parts = around(fastener, body);
      const free = attemptsAt(fastener).find((attempt) => !parts.some((part) => hits(fastener, attempt, part)));
      return free ? { tool: free.tool, axis: free.axis } : null;
    },
    inTheWay(fastener, body) {
      const [first] = attemptsAt(fastener);
      return first ? around(fastener, body).filter((part) => hits(fastener, first, part)) : [];
    },
  };
}

/** For a single question. */
export const toolFor = (fastener: Fastener, body: readonly Part[]): Reached | null => reach().toolFor(fastener, body);

/** Each tool in line, then leaning; a hammer is swung in line only. */
function everyAttempt(fastener: Fastener): readonly Attempt[] {
  return toolsFor(fastener.kind).flatMap((tool) => {
    const axes: readonly (Direction | null)[] = tool === "hammer" ? [null] : [null, ...leaning(fastener.direction)];
    return axes.map((axis): Attempt => ({ tool, axis, hulls: null, hits: new Map() }));
  });
}
