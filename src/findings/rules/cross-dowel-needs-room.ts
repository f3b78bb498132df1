import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const crossDowelNeedsRoom = rule<{ readonly part: string; readonly why: string }>({
  name: "cross-dowel-needs-room",
  severity: "error",
  message: (a) => `${a.part} has no room for a cross dowel: ${a.why}`,
  help: () => "use a thinner bolt (its cross dowel is smaller), move the bolts (count, in from ends), or use screws",
  explain: `A cross dowel is a barrel with a thread across it. It lies in a bore from the side, square to the bolt, which comes in through the end of the part. It needs wood round it on every side, and the bolt needs a bore that reaches past it.`,
  wrong: stepExample(["with: screws", "with: bolts and cross dowels, from: left-leg"]),
  right: stepExample(["with: screws", "with: bolts and cross dowels, from: tread, bolt: { diameter: 1/4 }"]),
  basis: "the sizes of what is sold; common practice, no source",
});
