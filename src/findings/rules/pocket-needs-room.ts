import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const pocketNeedsRoom = rule<{ readonly part: string; readonly why: string }>({
  name: "pocket-needs-room",
  severity: "error",
  message: (a) => `${a.part} has no room for a pocket: ${a.why}`,
  help: () => "put the part whose end meets the other after join:, or choose another joint",
  explain: `A pocket hole starts in the broad side of a part near its end and leaves that end at mid-thickness. It needs an end that meets the other part, and wood thick enough for the screw's length.`,
  wrong: stepExample(["with: screws", "with: pocket screws"]),
  right: stepExample([
    "join: tread, to: [left-leg, right-leg], with: screws",
    "join: [left-leg, right-leg], to: tread, with: pocket screws, screw: { length: 2 }",
  ]),
  basis: "common practice, no source",
});
