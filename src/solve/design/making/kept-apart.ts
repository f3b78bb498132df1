/** What the maker lets in between two parts of a door that wait for its opening waits with them: a bar between the stiles of its frame. */
import { equal } from "../../../units/rational.ts";
import type { Part } from "../../design.ts";
import { faceOf, facePosition, type INDICES, indexOf } from "../space.ts";
import { partsAt } from "./neighbours.ts";
import { makingOf } from "./plain.ts";

/**
 * Ids of parts that touch, at both ends or edges, two parts which the opening sets apart: parts of one group that are cut to it, with
 * another such part from the one to the other.
 */
export function betweenWaiting(parts: readonly Part[]): ReadonlySet<string> {
  const waiting = parts.filter((part) => makingOf(part).cut === "opening");
  if (waiting.length < 3) return new Set();
  const own = new Set(waiting);
  return new Set(parts.flatMap((part) => (!own.has(part) && pairsAt(part, waiting).length > 0 ? [part.id] : [])));
}

type Pair = readonly [Part, Part];

function pairsAt(part: Part, waiting: readonly Part[]): readonly Pair[] {
  return [part.axes.length, part.axes.width].map(indexOf).flatMap((axis) =>
    endsAt(part, axis, waiting).filter((pair) =>
      // What is as long as they are apart.
      waiting.some(
        (other) =>
          !pair.includes(other) &&
          groupOf(other) === groupOf(pair[0]) &&
          endsAt(other, axis, waiting).some((ends) => ends.every((end) => pair.includes(end))),
      ),
    ),
  );
}

/** Pairs of one group that a part touches at its two sides along an axis. */
function endsAt(part: Part, axis: (typeof INDICES)[number], waiting: readonly Part[]): readonly Pair[] {
  const [lows = [], highs = []] = [false, true].map((high) => {
    const face = faceOf(axis, high);
    const at = facePosition(part.body, face);
    return partsAt(face, part, waiting).filter((other) => equal(facePosition(other.body, faceOf(axis, !high)), at));
  });
  return lows.flatMap((low) =>
    highs.flatMap((high): readonly Pair[] => (low !== high && groupOf(low) === groupOf(high) ? [[low, high]] : [])),
  );
}

const groupOf = ({ id }: Part): string => id.slice(0, id.lastIndexOf(".") + 1);
