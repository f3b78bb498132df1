import { rule } from "../finding.ts";
import { topExample } from "../top-example.ts";

export const holdStillAlongGrain = rule<{ readonly part: string; readonly side: string; readonly across: string }>({
  name: "hold-still-along-grain",
  severity: "error",
  message: (a) =>
    `${a.part} cannot be held still at its ${a.side}: its grain runs that way, and it moves ${WAYS[a.across]}`,
  help: (a) => `write hold still: ${SIDES[a.across]}`,
  explain: `Wood swells and shrinks across its grain, hardly along it. A board that is fastened so that it can move is held along one line, with the grain: at its middle, or near one long edge.`,
  wrong: topExample(["slotted screws }", "slotted screws, hold still: left }"]),
  right: topExample(["slotted screws }", "slotted screws, hold still: front }"]),
  basis: "wood moves across the grain; common practice, no source",
});

const WAYS: Readonly<Record<string, string>> = {
  across: "from left to right",
  deep: "from front to back",
  up: "up and down",
};
const SIDES: Readonly<Record<string, string>> = {
  across: "middle, left or right",
  deep: "middle, front or back",
  up: "middle, bottom or top",
};
