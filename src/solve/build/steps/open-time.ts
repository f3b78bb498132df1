/** How long a glue-up takes from the first glue to the last clamp, against the time for which glue stays open. */
import { toNumber } from "../../../units/rational.ts";
import type { Action, Blank, Clamping } from "../../build.ts";
import type { Joint } from "../../design.ts";
import { SQUARE_METRE } from "../purchases/supplies.ts";
import type { Work } from "./draft.ts";

/** Minutes for which ordinary wood glue, and glue that is sold to set slowly, stay open. Labels of PVA glues, from memory. */
export const OPEN = { usual: 8, slow: 20 } as const;

/** Minutes to brush glue on a joint, on one finger or tail, and on a square metre; to bring a part; to set a clamp. Common practice, no source. */
const MINUTES = { joint: 0.75, finger: 0.1, squareMetre: 4, part: 0.5, clamp: 0.25 } as const;

const countOf = (clamps: readonly Clamping[]): number => clamps.reduce((so, each) => so + each.count, 0);

/** Of layers that are glued face to face. */
export const layingMinutes = ({ width, length }: Blank, layers: number, clamps: readonly Clamping[]): number =>
  Math.ceil(
    ((layers - 1) * MINUTES.squareMetre * toNumber(width) * toNumber(length)) / SQUARE_METRE +
      layers * MINUTES.part +
      countOf(clamps) * MINUTES.clamp,
  );

/** `fresh`: ids of the parts that come. */
export function closingMinutes(
  work: Pick<Work, "part">,
  joints: readonly Joint[],
  fresh: readonly string[],
  clamps: readonly Clamping[],
): number {
  const glued = joints.filter(({ glue }) => glue);
  const fingers = glued.flatMap(({ id, parts }) =>
    parts.flatMap((part) =>
      work.part(part).features.filter((each) => each.kind === "socket" && "for" in each && each.for === id),
    ),
  );
  // A finger stands beside each socket: two faces.
  return Math.ceil(
    glued.length * MINUTES.joint +
      2 * fingers.length * MINUTES.finger +
      fresh.length * MINUTES.part +
      countOf(clamps) * MINUTES.clamp,
  );
}

export const slowText = (minutes: number): readonly string[] =>
  minutes <= OPEN.usual
    ? []
    : [
        `From the first glue to the last clamp this takes about ${minutes} minutes, and ordinary wood glue grabs after ${OPEN.usual}: take glue that sets slowly, or spread it with a helper.`,
      ];

/** Actions with the time that the glue has to stay open. */
export const heldOpen = (actions: readonly Action[], minutes: number): readonly Action[] =>
  minutes <= OPEN.usual
    ? actions
    : actions.map((action) => (action.do === "glue" ? { ...action, openMinutes: OPEN.slow } : action));
