/** What stays together when the piece is carried to its place. */
import type { Method } from "../../parse/draft.ts";
import type { Design, Part } from "../design.ts";
import { around } from "./checks/standing/weight-and-feet.ts";
import { components, linksOf, onPins } from "./order/links.ts";

/** Joints that are undone for the move. */
const COMES_APART: ReadonlySet<Method> = new Set([
  ...(["bolts", "bolts and cross dowels", "lag screws", "loose", "shelf pins", "runs on", "hangs on"] as const),
  ...(["slotted screws", "buttons in a groove", "buttons in mortises", "clips", "figure-eight fasteners"] as const),
  ...(["cup hinges", "butt hinges", "continuous hinge", "slides", "undermount slides"] as const),
]);

/** What comes off without a tool, or for the finish: the rest is one when the plan is done. */
const HANGS_OR_LIES: ReadonlySet<Method> = new Set([
  ...(["loose", "shelf pins", "runs on", "hangs on"] as const),
  ...(["cup hinges", "butt hinges", "continuous hinge", "slides", "undermount slides"] as const),
]);

export interface Moved {
  readonly parts: readonly Part[];
  /** mm over everything, across, deep and up. */
  readonly sizes: readonly [number, number, number];
}

/** Everything that cannot be taken apart, in the order of the source. */
export const movedAsOne = (design: Pick<Design, "parts" | "joints">): readonly Moved[] => bodies(design, COMES_APART);

/** Everything that is together when the plan is done and doors, drawers and shelves are out. */
export const leftTogether = (design: Pick<Design, "parts" | "joints">): readonly Moved[] =>
  bodies(design, HANGS_OR_LIES);

/** What lies in it on pins and does not come out once it is closed: it is carried along. `removable`: the bodies that come out. */
export function liesIn(
  design: Pick<Design, "parts" | "joints">,
  removable: readonly { readonly parts: readonly string[] }[],
): readonly string[] {
  const off = new Set(removable.flatMap(({ parts }) => parts));
  return [...onPins(design)].filter((id) => !off.has(id));
}

function bodies({ parts, joints }: Pick<Design, "parts" | "joints">, apart: ReadonlySet<Method>): readonly Moved[] {
  const lasting = joints.filter(({ method }) => !apart.has(method));
  const found = components(
    parts.map((_, i) => i),
    linksOf({ parts, joints: lasting }),
  );
  return found.map((places) => {
    const body = places.flatMap((place): Part | readonly Part[] => parts[place] ?? []);
    const { low, high } = around(body.map(({ solid }) => solid));
    return { parts: body, sizes: [high[0] - low[0], high[1] - low[1], high[2] - low[2]] };
  });
}
