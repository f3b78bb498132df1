/** In a row of clamps one that would press on the end of a post on the joint stands beside that. */
import { inches, type Length } from "../../../units/length.ts";
import { add, equal, less, subtract } from "../../../units/rational.ts";
import type { Part } from "../../design.ts";
import { reachOf } from "./clamp-ends.ts";
import type { ClampLine } from "./clamp-reach.ts";

/** So far along the joint a place is looked for. Common practice, no source. */
const SHIFTS: readonly Length[] = [1, 2, 3].flatMap((by) => [inches(-by), inches(by)]);

/** The same clamps, each over no more than the others where there is a place for it. */
export function besidePosts(parts: readonly Part[], line: ClampLine): ClampLine {
  const spanAt = (at: readonly Length[]): Length | null => {
    const reach = reachOf(parts, { ...line, at, whole: false });
    return reach && subtract(reach.high.at, reach.low.at);
  };
  const spans = line.points.map(spanAt);
  const least = spans.reduce<Length | null>((so, each) => (each && (!so || less(each, so)) ? each : so), null);
  if (!least) return line;
  return {
    ...line,
    points: line.points.map((at, i) => {
      const span = spans[i];
      if (!span || equal(span, least)) return at;
      const others = SHIFTS.map((by) => at.map((value, k) => (k === line.long ? add(value, by) : value)));
      return (
        others.find((other) => {
          const own = spanAt(other);
          return own !== null && equal(own, least);
        }) ?? at
      );
    }),
  };
}
