import { shelfExample } from "../example.ts";
import { rule } from "../finding.ts";
import { nameSome } from "../name-some.ts";

export const stripNotInARow = rule<{ readonly strip: string; readonly parts: readonly string[] }>({
  name: "strip-not-in-a-row",
  severity: "error",
  message: (a) => `${nameSome(a.parts)} cannot be cut in a row from one strip (\`${a.strip}\`)`,
  label: (a) => (a.parts.length === 1 ? "alone in its strip" : "the first of them"),
  why: (a) =>
    a.parts.length === 1
      ? "a strip is shared by two parts or more"
      : "they must be of one stock and thickness, have their grain the same way, and lie in a row across or along it",
  help: () => "give the same strip to parts that stand in a row, and to no others",
  explain:
    "Drawer fronts beside or above each other look like one board when they are cut from one strip, in their order. That can only be done with parts of one stock and thickness, turned the same way, that stand in a row.",
  wrong: shelfExample(["bottom: 4 }", "bottom: 4, from one strip: front }"]),
  right: shelfExample(
    [
      "bottom: 4 }",
      "back: 1 1/2, bottom: 4, from one strip: front }\n  back-shelf: { like: shelf, front: 2, back: 3 1/2 }",
    ],
    ["front: 0, back: 3 1/2, back", "front: 0, back"],
    ["to: shelf,", "to: [shelf, back-shelf],"],
  ),
  basis: "the language",
});
