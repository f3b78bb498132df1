import { shelfExample } from "../example.ts";
import { rule } from "../finding.ts";

const faces = (good: number): string =>
  shelfExample(
    ["measures: 23/32", `measures: 23/32, good faces: ${good}`],
    ["bottom: 4 }", "bottom: 4, good face: both }"],
  );

export const oneGoodFaceSeenFromBoth = rule<{ readonly part: string; readonly good: number; readonly stock: string }>({
  name: "one-good-face-seen-from-both",
  severity: "warning",
  message: (a) =>
    `${a.part} is seen from both sides, and \`${a.stock}\` has ${a.good === 0 ? "no good face" : "one good face"}`,
  label: () => "seen from both sides",
  help: () => "make it of a sheet with two good faces, or say which side is to be seen",
  explain:
    "Many sheets have one face fit to be seen; the other has patches. A part that shows both, such as a door or a divider, wants a sheet with two.",
  wrong: faces(1),
  right: faces(2),
  basis: "common practice, no source",
});
