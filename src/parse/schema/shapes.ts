import type { ShapeDraft } from "../draft.ts";
import { made, oneOrList } from "../kinds/combine.ts";
import type { Kind } from "../kinds/kind.ts";
import { edge, face, faces } from "../kinds/places.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { formula } from "../kinds/simple.ts";
import { curves } from "./curves.ts";
import { hole } from "./hole.ts";

const taper = made(
  settings("a taper", {
    faces: need(faces, "The faces that are cut.", "face"),
    at: need(face, "The end that gets thin."),
    to: need(formula, "What the part measures at that end."),
    over: need(formula, "How far above the end the taper begins."),
  }),
  ({ at, said }): ShapeDraft => ({
    shape: "taper",
    at,
    faces: said.faces.value,
    end: said.at,
    to: said.to.value,
    over: said.over.value,
  }),
);

const chamfer = made(
  settings("a chamfer", {
    along: need(edge, "The edge that is cut."),
    by: need(formula, "How much is taken off both faces."),
  }),
  ({ at, said }): ShapeDraft => ({ shape: "chamfer", at, along: said.along.value, by: said.by.value }),
);

const edgeKeys = {
  along: need(edge, "The edge that is cut, the face that it is cut into first.", "at"),
  wide: need(formula, "How far the cut reaches in from one face.", "width"),
  deep: need(formula, "How far it reaches in from the other.", "depth"),
};
const alongEdge = (shape: "bevel" | "notch"): Kind<ShapeDraft> =>
  made(settings(`a ${shape}`, edgeKeys), ({ at, said }) => ({
    shape,
    at,
    along: said.along.value,
    wide: said.wide.value,
    deep: said.deep.value,
  }));

const ends = {
  from: may(formula, "Where it begins along its run; without it, at the end of the part."),
  to: may(formula, "Where it ends; `right - 1` is 1 before the part's own right face."),
};
const rabbet = made(
  settings("a rabbet", { ...edgeKeys, ...ends }),
  ({ at, said }): ShapeDraft => ({
    shape: "rabbet",
    at,
    along: said.along.value,
    wide: said.wide.value,
    deep: said.deep.value,
    ...(said.from && { from: said.from.value }),
    ...(said.to && { to: said.to.value }),
  }),
);

const channelKeys = {
  in: need(face, "The face that it is cut into."),
  near: need(face, "The face that it is measured from."),
  "in from": need(formula, "From that face to its nearer side."),
  wide: need(formula, "Its width.", "width"),
  deep: need(formula, "Its depth.", "depth"),
  ...ends,
};
const channel = (shape: "groove" | "dado" | "mortise"): Kind<ShapeDraft> =>
  made(settings(`a ${shape}`, channelKeys), ({ at, said }) => ({
    shape,
    at,
    in: said.in.value,
    near: said.near.value,
    inFrom: said["in from"].value,
    wide: said.wide.value,
    deep: said.deep.value,
    ...(said.from && { from: said.from.value }),
    ...(said.to && { to: said.to.value }),
  }));

const tenon = made(
  settings("a tenon", {
    on: need(face, "The end that it stands out of."),
    long: need(formula, "How far it stands out.", "length"),
    thick: need(formula, "Its thickness.", "thickness"),
    wide: may(formula, "Its width; without it, that of the part.", "width"),
  }),
  ({ at, said }): ShapeDraft => ({
    shape: "tenon",
    at,
    on: said.on.value,
    long: said.long.value,
    thick: said.thick.value,
    ...(said.wide && { wide: said.wide.value }),
  }),
);

/** Shapes of a part, by the setting that makes them: one, or a list. */
export const shapes = {
  taper: may(oneOrList(taper), "A face that runs in towards one end."),
  chamfer: may(oneOrList(chamfer), "An edge cut off at 45 degrees."),
  bevel: may(oneOrList(alongEdge("bevel")), "An edge cut off at any slope."),
  notch: may(oneOrList(alongEdge("notch")), "A corner cut out along the whole third direction."),
  rabbet: may(oneOrList(rabbet), "A step cut along an edge, right through or between two places.", "rebate"),
  groove: may(oneOrList(channel("groove")), "A channel along the grain, right through or between two places."),
  dado: may(oneOrList(channel("dado")), "A channel across the grain.", "housing", "trench"),
  mortise: may(oneOrList(channel("mortise")), "A pocket that a tenon goes into.", "mortice"),
  tenon: may(oneOrList(tenon), "A tongue standing out of an end."),
  hole: may(oneOrList(hole), "A round hole."),
  ...curves,
};
