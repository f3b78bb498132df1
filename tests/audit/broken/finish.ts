import { finished } from "../sample/finished.ts";
import { at, type Row, the } from "./row.ts";

export const finish: readonly Row[] = [
  [
    "the second coat before the first",
    finished,
    (r) => {
      at(r.steps, -1).actions.reverse();
    },
    "coats go on in order",
  ],
  [
    "a panel that is finished in its groove",
    finished,
    (r) => {
      Object.assign(the(r.joints, "j1"), { method: "groove", glue: false });
      for (const { actions } of r.steps) for (const action of actions) if (action.do === "glue") action.joints = ["j2"];
    },
    "panels are finished first",
  ],
  [
    "a step that begins while another is done",
    finished,
    (r) => {
      Object.assign(at(r.steps, 1), { start: 10, end: 30 });
    },
    "times hold",
  ],
  [
    "a step that does not wait for the glue",
    finished,
    (r) => {
      Object.assign(at(r.steps, 2), { start: 130, end: 150 });
      r.timeline.elapsed = 210;
    },
    "times hold",
  ],
  [
    "days that leave work out",
    finished,
    (r) => {
      at(r.timeline.days, 0).bench = 40;
    },
    "times hold",
  ],
  [
    "days that end before the last step",
    finished,
    (r) => {
      at(r.timeline.days, 0).steps = [1, 2];
    },
    "times hold",
  ],
  [
    "a timeline that leaves a step out",
    finished,
    (r) => {
      r.timeline.bench = 40;
    },
    "times hold",
  ],
  [
    "a bound beyond what is done",
    finished,
    (r) => {
      r.timeline.lowerBound = 300;
    },
    "times hold",
  ],
];
