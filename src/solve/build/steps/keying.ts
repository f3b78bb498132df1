/** Keys are let in when the glue of their corners is hard, in steps of their own. */
import type { Action } from "../../build.ts";
import { isInPlace } from "../../design/shapes/in-place.ts";
import { listed, numberWord, type StepDraft, type Work } from "./draft.ts";
import { drivings } from "./driving.ts";
import { step } from "./making-step.ts";
import { type Move, unitsOf } from "./moves.ts";
import { keyTexts } from "./words/keys.ts";

/** Minutes for each key (common practice, no source): to saw it out, to saw its slot and glue it in, to trim it. */
const MINUTES = { saw: 2, slot: 4, trim: 2 } as const;
const DRY = { for: "glue", minutes: 60 } as const;
const CAUTION =
  "Clamp the work before you saw across its corners. Wear eye protection; hold a strip, never a short piece, while you saw keys off it.";

/** After a step that glues corners with keys: slots and keys, then the trimming. */
export function keyingSteps(work: Work, put: StepDraft): readonly StepDraft[] {
  // What was built before comes on as a whole: its keys are in it already.
  const added = new Set(put.actions.flatMap((each) => (each.do === "add" ? [each.parts.join()] : [])));
  const every = unitsOf(work.plan)
    .flatMap(({ moves }) => moves)
    .filter(({ keys, arriving }) => keys.length > 0 && added.has(arriving.join()));
  if (every.length === 0) return [];
  const around = [...put.shows.present, ...put.shows.fresh];
  const own = every.filter(({ arriving }) => arriving.every((id) => around.includes(id)));
  const keys = own.flatMap((move) => move.keys);
  const count = every.reduce((so, move) => so + move.keys.length, 0);
  const fresh = keyed(work, own);
  const shown = { fresh, present: around.filter((id) => !fresh.includes(id)), up: put.up };
  const what = put.title.startsWith(BUILD) ? put.title.slice(BUILD.length) : listed(work, fresh);
  const again = put.copies > 1 ? [`Do the same with all ${numberWord(put.copies)}.`] : [];
  const slots = step(
    "fit",
    `Key the corners of ${what}`,
    [...keyTexts(work, own, put.copies), ...again],
    [...slotting(work, every), ...drivings(every.flatMap((move) => move.keys))],
    {
      ...{ unit: `keys ${put.unit}`, bench: count * (MINUTES.saw + MINUTES.slot), waits: [DRY], ...shown },
      // Sawn across while glue alone holds them, corners need its full strength.
      ...{ strains: true, cautions: [CAUTION] },
      reminders: ["Leave the glue of the keys for an hour before you trim them."],
    },
  );
  const trimmed = step(
    "fit",
    `Trim the keys of ${what} flush`,
    [
      "When the glue is dry, saw off what stands out of the keys just above the wood, and pare it flush with a sharp chisel, from the corner inwards: the other way the tip would break out.",
      ...again,
    ],
    [],
    { unit: `trim keys ${put.unit}`, bench: count * MINUTES.trim, cautions: [], ...shown },
  );
  const fasteners = keys.map(({ fastener }) => fastener.id);
  return [
    { ...slots, copies: put.copies, shows: { ...slots.shows, fasteners } },
    { ...trimmed, copies: put.copies },
  ];
}

const BUILD = "Build ";

const jointsOf = (moves: readonly Move[]): ReadonlySet<string> =>
  new Set(moves.flatMap(({ keys }) => keys.map(({ fastener }) => fastener.joint)));

/** The parts that have slots for keys. */
function keyed({ design }: Work, moves: readonly Move[]): readonly string[] {
  const joints = jointsOf(moves);
  return [...new Set(design.joints.flatMap(({ id, parts }) => (joints.has(id) ? parts : [])))];
}

/** The slots of keys, sawn through both parts at once. */
function slotting(work: Work, moves: readonly Move[]): readonly Action[] {
  const joints = jointsOf(moves);
  return work.design.parts.flatMap(({ id, features }): readonly Action[] => {
    const own = features.flatMap((each, i) =>
      isInPlace(each) && each.for !== null && joints.has(each.for) ? [i] : [],
    );
    return own.length > 0 ? [{ do: "machine", part: id, features: own, holes: [] }] : [];
  });
}
