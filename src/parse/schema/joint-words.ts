import { wrongValue } from "../../findings/rules/wrong-value.ts";
import { shorten } from "../../findings/shorten.ts";
import type { Formula, Method } from "../draft.ts";
import { type Kind, tell, tellWrong } from "../kinds/kind.ts";
import { type FromFace, fromFace } from "../kinds/places.ts";
import { formula, formulaIn, word } from "../kinds/simple.ts";
import { slice } from "../yaml/nodes.ts";

const METHODS = [
  ...["pocket screws", "screws", "dowels", "dado", "rabbet", "groove"],
  ...["mortise and tenon", "through tenon", "haunched tenon", "drawbored tenon", "loose tenon", "half lap", "bridle"],
  ...["mitre", "splined mitre", "keyed mitre", "box joint", "dovetail", "tongue and groove", "spline", "biscuits"],
  ...["sliding dovetail", "breadboard end", "glue", "nails", "brads", "staples", "cleats"],
  ...["slotted screws", "oversized holes with washers", "buttons in a groove", "buttons in mortises", "clips"],
  ...["figure-eight fasteners", "bolts", "bolts and cross dowels", "lag screws", "shelf pins", "glazed", "loose"],
  ...["runs on", "hangs on", "cup hinges", "butt hinges", "continuous hinge", "slides", "undermount slides"],
] as readonly Method[];

const OTHER_WORDS: Readonly<Record<string, Method>> = {
  "pocket screw": "pocket screws",
  "pocket holes": "pocket screws",
  screw: "screws",
  "wood screws": "screws",
  dowel: "dowels",
  housing: "dado",
  trench: "dado",
  rebate: "rabbet",
  "mortice and tenon": "mortise and tenon",
  "mortises and tenons": "mortise and tenon",
  "through mortise and tenon": "through tenon",
  "wedged tenon": "through tenon",
  "haunched mortise and tenon": "haunched tenon",
  drawbored: "drawbored tenon",
  "drawbored mortise and tenon": "drawbored tenon",
  "loose mortise and tenon": "loose tenon",
  "bridle joint": "bridle",
  miter: "mitre",
  "splined miter": "splined mitre",
  "keyed miter": "keyed mitre",
  "finger joint": "box joint",
  "box joints": "box joint",
  dovetails: "dovetail",
  "sliding dovetails": "sliding dovetail",
  "housed dovetail": "sliding dovetail",
  "dovetailed housing": "sliding dovetail",
  "splined edge": "spline",
  biscuit: "biscuits",
  "breadboard ends": "breadboard end",
  "halving joint": "half lap",
  halving: "half lap",
  "lap joint": "half lap",
  "glue alone": "glue",
  nail: "nails",
  brad: "brads",
  "panel pins": "brads",
  staple: "staples",
  cleat: "cleats",
  "slotted screw": "slotted screws",
  "screws in slots": "slotted screws",
  "oversized holes": "oversized holes with washers",
  buttons: "buttons in a groove",
  "wooden buttons": "buttons in a groove",
  "table-top clips": "clips",
  "figure-eights": "figure-eight fasteners",
  bolt: "bolts",
  "bolts and nuts": "bolts",
  "cross dowels": "bolts and cross dowels",
  "barrel nuts": "bolts and cross dowels",
  "lag screw": "lag screws",
  "coach screws": "lag screws",
  pins: "shelf pins",
  "lies in a rabbet": "glazed",
  "stands on": "loose",
  "lies on": "loose",
  "slides on": "runs on",
  "hangs from": "hangs on",
  "bevelled cleats": "hangs on",
  "beveled cleats": "hangs on",
  "wooden runners": "runs on",
  "cup hinge": "cup hinges",
  "concealed hinges": "cup hinges",
  "butt hinge": "butt hinges",
  butts: "butt hinges",
  "piano hinge": "continuous hinge",
  slide: "slides",
  "side slides": "slides",
  "drawer slides": "slides",
  "undermount slide": "undermount slides",
  "shelf supports": "shelf pins",
};

const known = word(METHODS, OTHER_WORDS);
export const method: Kind<Method> = { ...known, json: { ...known.json, title: "a kind of joint" } };

/** `1/16 deeper`, also `1/16 deeper than the tenon`. */
export const deeper: Kind<Formula> = {
  words: "a measure and `deeper`, such as 1/16 deeper",
  json: { type: "string" },
  read(node, where) {
    if (node.kind !== "text") return tellWrong(where, node, this.words);
    const words = slice(node, 0);
    const tail = /\s+deeper(?:\s+than\s+the\s+tenon)?$/i.exec(words.text);
    if (tail === null)
      return tell(
        where,
        node,
        wrongValue(node.at, { key: where.key, wanted: this.words, found: `\`${shorten(node.text)}\`` }),
      );
    return formulaIn(slice(words, 0, tail.index), where);
  },
};

/** `1/4 from front`, or `centred`. */
export const inFrom: Kind<FromFace | "centred"> = {
  words: "a measure from a face, such as 1/4 from front, or centred",
  json: formula.json,
  read(node, where) {
    if (node.kind === "text" && /^cent(?:re|er)e?d$/i.test(node.text.trim())) return "centred";
    return fromFace.read(node, where);
  },
};
