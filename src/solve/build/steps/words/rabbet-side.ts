/** Which way round a part lies that has a rabbet and could go in the other way as well. */
import { equal } from "../../../../units/rational.ts";
import { axisOf, faceOf, INDICES, indexOf } from "../../../design/space.ts";
import { series, type Work } from "../draft.ts";
import { spanOf } from "./boxes.ts";

/** "Its rabbet lies on the left, along its front edge."; null where they have none, lie apart, or have ends that fit one way only. */
export function rabbetSide(work: Work, ids: readonly string[]): string | null {
  const told = ids.map((id) => {
    const { body, axes, features, turned } = work.part(id);
    const [rabbet, ...more] = features.filter(({ kind }) => kind === "rabbet");
    if (!rabbet || !("size" in rabbet) || more.length > 0 || turned || features.some(({ kind }) => kind === "tenon"))
      return null;
    const into = axisOf(rabbet.into);
    const edges = INDICES.flatMap((i) => {
      if (i === into || i === indexOf(axes.length)) return [];
      const { low, high } = spanOf(rabbet, i);
      const flush = [equal(low, body.low[i]), equal(high, body.high[i])];
      return flush[0] === flush[1] ? [] : [faceOf(i, flush[1] === true)];
    });
    return edges.length === 1 ? `on the ${faceOf(into, rabbet.into[into] < 0)}, along its ${series(edges)} edge` : null;
  });
  const [first] = told;
  return first && told.every((each) => each === first)
    ? `${ids.length === 1 ? "Its rabbet lies" : "The rabbet of each lies"} ${first}.`
    : null;
}
