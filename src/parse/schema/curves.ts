import { missingKey } from "../../findings/rules/missing-key.ts";
import type { Face, ShapeDraft } from "../draft.ts";
import { made, oneOrList } from "../kinds/combine.ts";
import { type Kind, tell, tellWrong } from "../kinds/kind.ts";
import { edge, FACES, face, tellPiece } from "../kinds/places.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { formula, formulaIn } from "../kinds/simple.ts";
import { slice, wholePlace } from "../yaml/nodes.ts";
import { depth } from "./hole.ts";

const arch = made(
  settings("an arch", {
    in: need(face, "The edge that it is cut into."),
    deep: need(formula, "How far it rises in its middle.", "depth"),
    from: may(formula, "Where it begins along the edge; without it, at the end of the part."),
    to: may(formula, "Where it ends; `right - 3` is 3 before the part's own right face."),
  }),
  ({ at, said }): ShapeDraft => ({
    shape: "arch",
    at,
    in: said.in.value,
    deep: said.deep.value,
    ...(said.from && { from: said.from.value }),
    ...(said.to && { to: said.to.value }),
  }),
);

const roundOver = made(
  settings("a round-over", {
    along: need(edge, "The edge that is rounded."),
    radius: need(formula, "The radius."),
  }),
  ({ at, said }): ShapeDraft => ({ shape: "round-over", at, along: said.along.value, radius: said.radius.value }),
);

const cornerRadius = made(
  settings("rounded corners", {
    at: need(oneOrList(edge), "The corners, each by the two faces that meet there: [left front, right front]."),
    radius: need(formula, "The radius."),
  }),
  ({ at, said }): ShapeDraft => ({ shape: "corner radius", at, corners: said.at.value, radius: said.radius.value }),
);

const fromKey = (side: Face) => may(formula, `From the ${side} face to the nearer side of the opening.`);

const cutOut = made(
  settings("a cut-out", {
    in: need(face, "The face that it goes through."),
    wide: need(formula, "Its size across, in a left or right face from front to back.", "width"),
    high: need(formula, "Its size up, in a top or bottom face from front to back.", "height"),
    "from left": fromKey("left"),
    "from right": fromKey("right"),
    "from front": fromKey("front"),
    "from back": fromKey("back"),
    "from bottom": fromKey("bottom"),
    "from top": fromKey("top"),
    radius: may(formula, "The radius of its corners; without it they are square."),
  }),
  ({ at, said }): ShapeDraft => ({
    shape: "cut-out",
    at,
    in: said.in.value,
    wide: said.wide.value,
    high: said.high.value,
    placed: FACES.flatMap((from) => {
      const distance = said[`from ${from}`]?.value;
      return distance === undefined ? [] : [{ from, distance }];
    }),
    ...(said.radius && { radius: said.radius.value }),
  }),
);

const slot = made(
  settings("a slot", {
    in: need(face, "The face that it is cut into."),
    near: need(face, "The face that it is measured from."),
    "in from": need(formula, "From that face to its nearer side."),
    wide: need(formula, "Its width; its ends are half circles of that width.", "width"),
    deep: may(depth, "Its depth; without it, right through.", "depth"),
    from: may(formula, "Where it begins along its run, its round end included."),
    to: may(formula, "Where it ends."),
  }),
  ({ at, said }, node, where): ShapeDraft | undefined => {
    const { from, to, deep } = said;
    if (from === undefined || to === undefined) {
      const key = from === undefined ? "from" : "to";
      return tell(where, node, missingKey(where.at, { what: "a slot", key }));
    }
    return {
      shape: "slot",
      at,
      in: said.in.value,
      near: said.near.value,
      inFrom: said["in from"].value,
      wide: said.wide.value,
      ...(deep !== undefined && deep.value !== "through" && { deep: deep.value }),
      from: from.value,
      to: to.value,
    };
  },
);

/** `edges: chamfer 1/8`, `edges: round-over 4 except back` */
const edges: Kind<ShapeDraft> = {
  words: "`chamfer` or `round-over` and a measure, such as chamfer 1/8, or chamfer 1/8 except back",
  json: { type: "string" },
  read(node, where) {
    if (node.kind !== "text") return tellWrong(where, node, edges.words);
    const words = slice(node, 0);
    const found = /^(chamfer|round[ _-]?over)\s+/i.exec(words.text);
    if (found === null) return tellPiece(where, words, edges.words);
    const but = /\s+except\s+(left|right|front|back|bottom|top)\s*$/i.exec(words.text);
    const by = formulaIn(slice(words, found[0].length, but?.index), where);
    const how = found[1]?.toLowerCase() === "chamfer" ? "chamfer" : "round-over";
    const except = but?.[1]?.toLowerCase() as Face | undefined;
    return by && { shape: "edges", at: wholePlace(words), how, by, ...(except && { except }) };
  },
};

/** Shapes with curves, by the setting that makes them. */
export const curves = {
  "round-over": may(oneOrList(roundOver), "An edge rounded to a quarter circle."),
  "corner radius": may(
    oneOrList(cornerRadius),
    "Corners of a panel rounded to quarter circles. All four by half its width make a square panel round: { at: [left front, right front, left back, right back], radius: 9 }.",
  ),
  arch: may(oneOrList(arch), "An arc of a circle cut out of an edge."),
  "cut-out": may(oneOrList(cutOut), "An opening right through, such as a hand-hold, in the middle unless said."),
  slot: may(oneOrList(slot), "A long hole with round ends."),
  edges: may(
    edges,
    "All edges of the broad face that is seen, or the long edges of a square part: chamfer 1/8; chamfer 1/8 except back.",
  ),
};
