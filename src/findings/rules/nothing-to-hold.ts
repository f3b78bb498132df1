import { shelfExample } from "../example.ts";
import { rule } from "../finding.ts";

export const nothingToHold = rule<{
  readonly name: string;
  /** Something is called that. */
  readonly known: boolean;
  readonly spaces: readonly string[];
}>({
  name: "nothing-to-hold",
  severity: "error",
  message: (a) => (a.known ? `${a.name} is no opening that could be held` : `the piece has no ${a.name} to hold`),
  why: () => "only room without wood keeps its size while the wood around it gets thicker",
  help: (a) =>
    a.spaces.length === 0
      ? "hold outside, or make a space of the opening (kind: space) and hold that"
      : `hold outside, or one of these: ${a.spaces.join(", ")}`,
  explain:
    "`hold: inside` keeps the inside of the main case as it was drawn when the stock measures otherwise, and `hold:` with the name of an opening or a space keeps that; the outside moves.",
  wrong: shelfExample(["stock:", "hold: tread\nstock:"]),
  right: shelfExample(["stock:", "hold: outside\nstock:"]),
  basis: "the language",
});
