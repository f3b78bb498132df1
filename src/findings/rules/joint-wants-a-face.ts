import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const jointWantsAFace = rule<{ readonly join: string; readonly to: string; readonly method: string }>({
  name: "joint-wants-a-face",
  severity: "error",
  message: (a) =>
    `${a.join} and ${a.to} reach into each other's room, and this version cuts a ${a.method} only between faces of whole parts`,
  help: (a) =>
    `where a notch or a cut-out makes the room, join this pair with screws, dowels or glue; else end ${a.join} at the face of ${a.to}: the joint adds what goes in`,
  explain: `For a dado, rabbet, groove, tenon, tongue or loose tenon one part ends at a face of the other, and the joint lengthens it by what is let in. Parts that reach into each other, and parts of which one stands in a notch, on its ledge or against its floor, do not meet so. What stands in a notch is held with screws, dowels, nails or glue.`,
  wrong: stepExample(
    ["bottom: 0, under: tread }", "bottom: 0, top: 12, notch: { at: top left, wide: 1 1/2, deep: 3 1/2 } }"],
    ["join: tread, to: [left-leg, right-leg], with: screws", "join: [left-leg, right-leg], to: tread, with: dado"],
  ),
  right: stepExample([
    "bottom: 0, under: tread }",
    "bottom: 0, top: 12, notch: { at: top left, wide: 1 1/2, deep: 3 1/2 } }",
  ]),
  basis: "this version",
});
