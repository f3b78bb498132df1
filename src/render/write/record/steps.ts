/** The steps and their actions, as the record has them. */
import type { Action, Leg, Step } from "../../../solve/build.ts";
import type { Frame } from "./frame.ts";
import type { Json } from "./json.ts";
import { millimetres } from "./number.ts";

export const stepRecord = (step: Step, frame: Frame): Json => ({
  number: step.number,
  title: step.title,
  kind: step.kind,
  unit: step.unit,
  up: step.up,
  after: step.after,
  afterWait: step.afterWait,
  start: step.start,
  end: step.end,
  bench: step.bench,
  waits: step.waits.map((wait) => ({ for: wait.for, minutes: wait.minutes })),
  clamps: (step.clamps ?? []).map(({ count, opening }) => ({ count, opening: millimetres(opening) })),
  jigs: step.jigs ?? [],
  hands: step.hands ?? 1,
  text: step.text,
  cautions: step.cautions,
  reminders: step.reminders,
  actions: step.actions.map((action) => actionRecord(action, frame)),
});

/** Field by field, so that the order of keys is this file's and not that of who made the action. */
function actionRecord(action: Action, frame: Frame): Json {
  switch (action.do) {
    case "make":
      return { do: action.do, blanks: action.blanks };
    case "machine":
      return { do: action.do, part: action.part, features: action.features, holes: action.holes };
    case "band":
      return { do: action.do, part: action.part, edges: action.edges };
    case "add":
      return {
        do: action.do,
        parts: action.parts,
        to: action.to,
        how: action.how,
        legs: action.legs.map((leg) => legRecord(leg, frame)),
      };
    case "glue":
      return { do: action.do, joints: action.joints, openMinutes: action.openMinutes };
    case "clamp":
    case "release":
      return { do: action.do, joints: action.joints };
    case "drive":
      return { do: action.do, fasteners: action.fasteners, tool: action.tool, axis: action.axis };
    case "remove":
      return {
        do: action.do,
        parts: action.parts,
        from: action.from,
        legs: action.legs.map((leg) => legRecord(leg, frame)),
        undrives: action.undrives,
      };
    case "pull":
    case "push":
      return { do: action.do, fasteners: action.fasteners };
    case "finish":
      return { do: action.do, parts: action.parts, coat: action.coat };
    case "fit":
      return { do: action.do, hardware: action.hardware, to: action.to };
    case "measure":
      return {
        do: action.do,
        what: action.what,
        value: millimetres(action.value),
        within: millimetres(action.within),
      };
  }
}

const legRecord = (leg: Leg, frame: Frame): Json =>
  "about" in leg
    ? { about: [frame.vec(leg.about[0]), leg.about[1]], degrees: leg.degrees }
    : { along: leg.along, distance: leg.distance === null ? null : millimetres(leg.distance) };
