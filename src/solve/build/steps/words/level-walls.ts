/** What both walls of one drawer are measured from: from two parts every error of the case would be a difference of their heights. */
import type { Length } from "../../../../units/length.ts";
import { add, compare, equal, less, subtract } from "../../../../units/rational.ts";
import type { Box, Part } from "../../../design.ts";
import type { Work } from "../draft.ts";
import { calledAmong } from "./by-place.ts";
import { type Run, runsOf } from "./drawer-runs.ts";
import type { Seen } from "./seen.ts";

const UP = 2;

/** Heights that all of them are told from, with the part that each is of. */
export interface SharedLevel {
  readonly low: Length;
  readonly high: Length;
  readonly inside: Seen["inside"];
}

/** Null where it is no wall of a drawer, or nothing lies over or under all of them. */
export function sharedLevel(work: Work, id: string, there: readonly string[]): SharedLevel | null {
  const walls = besides(runsOf(work), id).map(work.part);
  const [own] = walls.filter((each) => each.id === id);
  const level = walls.every(
    ({ body }) => own && equal(body.low[UP], own.body.low[UP]) && equal(body.high[UP], own.body.high[UP]),
  );
  if (!own || walls.length < 2 || !level) return null;
  const stands = there.map(work.part).filter((each) => !each.turned && !walls.includes(each));
  const [under, over] = [nearest(walls, stands, false), nearest(walls, stands, true)];
  if (!under && !over) return null;
  const { low, high } = own.body;
  // Farther than the other, so that it is not told.
  const beyond = (gap: Length): Length => add(add(gap, gap), subtract(high[UP], low[UP]));
  const below = under?.body.high[UP] ?? subtract(low[UP], beyond(subtract(over?.body.low[UP] as Length, high[UP])));
  const above = over?.body.low[UP] ?? add(high[UP], beyond(subtract(low[UP], below)));
  return {
    ...{ low: below, high: above },
    inside: new Map([
      ...(under ? [["bottom", calledAmong(work, under.id, there)] as const] : []),
      ...(over ? [["top", calledAmong(work, over.id, there)] as const] : []),
    ]),
  };
}

/** One spacer sets both walls: a rule is read twice. Empty where they lie on what they are measured from. */
export function spacerTexts(work: Work, id: string, there: readonly string[], which: "it" | "each"): readonly string[] {
  const level = sharedLevel(work, id, there);
  const { body } = work.part(id);
  if (!level) return [];
  const [under, over] = [subtract(body.low[UP], level.low), subtract(level.high, body.high[UP])];
  const by = level.inside.has("bottom") && !less(over, under) ? under : over;
  const what = by === under ? `Stand ${which} on` : `Push ${which} up against`;
  return by.n > 0n
    ? [
        `${what} a spacer ${work.print(by)} wide while it is fixed, and keep that one for all of these: both sides of a drawer have to lie level.`,
      ]
    : [];
}

/** The walls of all drawers that a wall belongs to: one between two of them carries both. */
const besides = (runs: readonly Run[], id: string): readonly string[] => [
  ...new Set(runs.filter(({ walls }) => walls.includes(id)).flatMap(({ walls }) => walls)),
];

/** What lies next over all of them, or under all of them; null where something else is next of one. */
function nearest(walls: readonly Part[], stands: readonly Part[], over: boolean): Part | null {
  const next = walls.map(({ body }) => {
    const beyond = stands.filter(
      (each) =>
        meets(each.body, body) &&
        (over ? !less(each.body.low[UP], body.high[UP]) : !less(body.low[UP], each.body.high[UP])),
    );
    return beyond.toSorted((a, b) =>
      over ? compare(a.body.low[UP], b.body.low[UP]) : compare(b.body.high[UP], a.body.high[UP]),
    )[0];
  });
  const [first] = next;
  return first && next.every((each) => each === first) ? first : null;
}

/** Seen from above one covers all of the other. */
const meets = (a: Box, b: Box): boolean =>
  ([0, 1] as const).every((i) => !less(b.low[i], a.low[i]) && !less(a.high[i], b.high[i]));
