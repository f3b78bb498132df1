import { rule } from "../finding.ts";
import { topExample } from "../top-example.ts";

export const fastenerNeedsRoom = rule<{
  readonly part: string;
  readonly what: string;
  readonly why: string;
  readonly remedy: string;
}>({
  name: "fastener-needs-room",
  severity: "error",
  message: (a) => `${a.part} has no room for ${a.what}: ${a.why.startsWith("it") ? a.why : `it is ${a.why}`}`,
  help: (a) => a.remedy,
  explain: `Fastenings that let a top move need wood of their own: a groove beside the edge for a button or clip, a recess in the edge for a figure-eight fastener, a slot that a bit reaches through. The message tells what there is and what it needs.`,
  wrong: topExample(["with: slotted screws", "with: buttons in a groove"]),
  right: topExample(),
  basis: "the sizes of what is sold; common practice, no source",
});
