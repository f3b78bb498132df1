/** What is done to the edges of what lies on the bench; which of them are banded. */
import type { Edge, Vec } from "../../../geometry/types.ts";
import { times } from "../../../geometry/vec.ts";
import type { Build, CutLine, Step } from "../../../solve/build.ts";
import { faceAxis, indexOf } from "../../../solve/design/space.ts";

export interface Done {
  readonly id: string;
  readonly edges: readonly Edge[];
  readonly banded: readonly Vec[];
  /** How the part lies, or what the tone of its edges is; empty where its words tell. */
  readonly says: string;
}

/** Which sides of a box, its length to the right and its width from front to back, are banded; the one that is seen where it is one of two. */
export function bandedIn(
  build: Build,
  { actions }: Step,
  { parts: ids }: CutLine,
): { readonly done?: Omit<Done, "id"> } {
  const part = build.parts.find(({ id }) => id === ids[0]);
  const edges = actions.flatMap((action) => (action.do === "band" && action.part === part?.id ? action.edges : []));
  if (!part || edges.length === 0) return {};
  const axes = [part.axes.length, part.axes.width, part.axes.thickness].map(indexOf);
  const counts = axes.map((axis) => edges.filter((edge) => faceAxis(edge) === axis).length);
  const banded = SEEN.flatMap((side, i) =>
    (counts[i] ?? 0) === 0 ? [] : (counts[i] ?? 0) === 1 ? [side] : [side, times(side, -1)],
  );
  return { done: { edges: [], banded, says: "What is banded is tinted" } };
}

/** From the front right and above. */
const SEEN: readonly Vec[] = [
  [1, 0, 0],
  [0, -1, 0],
  [0, 0, 1],
];
