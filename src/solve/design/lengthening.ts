import type { JointDraft } from "../../parse/draft.ts";
import type { Box } from "../design.ts";
import type { Directory } from "./expand/directory.ts";
import type { Entry } from "./expand/entry.ts";
import { CRAFTS } from "./joinery/crafts.ts";
import { pairsOf } from "./joinery/pairs.ts";
import { Bench, type JoineryContext } from "./joinery/work.ts";
import type { Places } from "./placing/places.ts";
import { isTurned } from "./placing/slants.ts";
import { blankOf, type Workpiece } from "./shapes/workpiece.ts";

/** A part's body with nothing cut yet; null when it could not be placed. */
export function plainPiece(entry: Entry, places: Places): Workpiece | null {
  const body = places.box(entry);
  const frame = places.frame(entry);
  const placement = places.slants.placement(entry);
  if (!body || !frame || placement === null) return null;
  return {
    entry,
    frame,
    placement: placement ?? null,
    body,
    grown: body,
    tongues: [],
    cuts: [],
    drawn: 0,
    features: [],
    holes: [],
  };
}

/**
 * The box that a part's blank fills, tongues and tenons included, for formulas that ask for its length before the joints are made: its
 * joints are tried on a bench of their own. Null when a place that it needs could not be found.
 */
export function blankBox(
  entry: Entry,
  joints: readonly JointDraft[],
  directory: Directory,
  places: Places,
  context: JoineryContext,
): Box | null {
  const quiet = { ...context, report: () => undefined };
  const pairs = joints
    .filter((draft) => CRAFTS[draft.with.value].lengthens)
    .filter((draft) => draft.join.some((name) => directory.find(name)?.includes(entry)))
    .flatMap((draft) =>
      pairsOf(draft, {
        directory,
        bodyOf: (e) => places.box(e),
        leftOver: places.leftOver,
        // Turned parts have no joints that lengthen them.
        slanting: (a, b) => (isTurned(a) || isTurned(b) ? { kind: "edge" } : null),
        loose: () => false,
        report: quiet.report,
        print: context.print,
      }),
    )
    .filter((pair) => pair.join === entry);
  const pieces = [entry, ...new Set(pairs.map((pair) => pair.to))].map((e) => plainPiece(e, places));
  if (pieces.some((piece) => piece === null)) return null;
  const bench = new Bench(pieces as Workpiece[]);
  for (const pair of pairs) CRAFTS[pair.draft.with.value].begin({ ...pair, id: "" }, bench, quiet, []);
  return blankOf(bench.piece(entry.id));
}
