/** How the stand goes together. */
import type { Action, Step, StepKind } from "../../../src/solve/build.ts";
import { millimetres as mm } from "../../../src/units/index.ts";

const step = (number: number, kind: StepKind, bench: number, actions: readonly Action[]): Step => ({
  number,
  title: `Step ${number}`,
  kind,
  unit: "piece",
  copies: 1,
  up: [0, 0, 1],
  after: number === 1 ? [] : [number - 1],
  afterWait: [],
  ...{ start: 30 * (number - 1), end: 30 * (number - 1) + bench },
  bench,
  waits: kind === "glue-up" ? [{ for: "clamps", minutes: 45 }] : [],
  text: ["Do it."],
  cautions: [],
  reminders: [],
  actions,
  shows: { fresh: [], present: [], travel: [], fasteners: [] },
});

export const steps: readonly Step[] = [
  step(1, "make", 30, [
    { do: "make", blanks: ["blank-A", "blank-B", "blank-C"] },
    { do: "machine", part: "frame.post", features: [0, 1], holes: [] },
    { do: "machine", part: "rail", features: [0], holes: [] },
    { do: "machine", part: "cleat", features: [], holes: [0, 2] },
  ]),
  step(2, "glue-up", 15, [
    { do: "add", parts: ["rail"], to: [], how: "straight", legs: [] },
    { do: "glue", joints: ["j1"], openMinutes: 8 },
    { do: "add", parts: ["frame.post"], to: ["rail"], how: "straight", legs: [{ along: [1, 0, 0], distance: null }] },
    { do: "clamp", joints: ["j1"] },
    { do: "measure", what: "overall", value: mm(340), within: mm(1) },
  ]),
  step(3, "join", 10, [
    { do: "release", joints: ["j1"] },
    {
      do: "add",
      parts: ["cleat"],
      to: ["rail"],
      how: "straight",
      legs: [
        { along: [0, 0, -1], distance: null },
        { along: [0, -1, 0], distance: mm(100) },
      ],
    },
    { do: "machine", part: "rail", features: [], holes: [1, 3] },
    { do: "drive", fasteners: ["j2.1", "j2.2"], tool: "straight", axis: null },
  ]),
];
