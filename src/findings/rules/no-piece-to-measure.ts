import { shelfExample, stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { nameSome } from "../name-some.ts";

export const noPieceToMeasure = rule<{ readonly part: string; readonly bounds: readonly string[] }>({
  name: "no-piece-to-measure",
  severity: "warning",
  message: (a) =>
    `${a.part} is to be cut when the piece tells its size, and ${a.bounds.length === 0 ? "it is the first in its place" : `${nameSome(a.bounds)} are not there before it`}`,
  label: () => "nothing to measure yet",
  why: () => "what bounds it is joined only by it, or after it",
  help: () => "cut it from the list, or join the parts around it some other way first",
  explain:
    "A part that is cut to an opening is measured where it will go, so the parts around it have to stand before. Here the order of work needs this part first; it is cut just before it is used, from the expected size.",
  wrong: stepExample(["lying flat, left: 0", "lying flat, cut: to the piece, left: 0"]),
  right: shelfExample(["bottom: 4 }", "bottom: 4, cut: to the opening }"]),
  basis: "common practice, no source",
});
