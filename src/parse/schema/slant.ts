import { missingKey } from "../../findings/rules/missing-key.ts";
import type { Span } from "../../findings/span.ts";
import type { EdgeDraft, Face, PartDraft, PlaneDraft, PointDraft, TurnDraft } from "../draft.ts";
import { byForm, made, oneOrList } from "../kinds/combine.ts";
import { type Kind, tellWrong, type Where } from "../kinds/kind.ts";
import { axis, FACES, faceReferenceIn, referenceIn, tellPiece } from "../kinds/places.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { formula } from "../kinds/simple.ts";
import { slice, type Words, wholePlace } from "../yaml/nodes.ts";

const isFace = (word: string): word is Face => (FACES as readonly string[]).includes(word);
const directionOf = (face: Face): number => Math.floor(FACES.indexOf(face) / 2);

/** `bottom back edge`, `the bottom back edge`: an edge, where the order of its faces means nothing. */
const turningEdge: Kind<EdgeDraft> = {
  words: "an edge, such as bottom back edge",
  json: { type: "string" },
  read(node, where) {
    if (node.kind !== "text") return tellWrong(where, node, turningEdge.words);
    const words = slice(node, 0);
    const named = words.text
      .toLowerCase()
      .replace(/^the\s+/, "")
      .replace(/\s+edge$/, "")
      .split(/[\s-]+/);
    const [first = "", second = ""] = named;
    if (named.length !== 2 || !isFace(first) || !isFace(second) || directionOf(first) === directionOf(second))
      return tellPiece(where, words, turningEdge.words);
    return { faces: [first, second], at: wholePlace(words) };
  },
};

const turn = made(
  settings("a turn", {
    about: need(
      axis,
      "The direction that it turns about, right-handed: with the thumb that way, the fingers point along.",
    ),
    by: need(formula, "The angle, in degrees: 8 or 8 deg."),
    at: may(turningEdge, "The edge that stays where it is, along that direction; without it, the middle of the part."),
  }),
  ({ at, said }): TurnDraft => ({
    at,
    about: said.about,
    by: said.by.value,
    ...(said.at && { edge: said.at.value }),
  }),
);

const POINT = "a point, such as leg.top (the middle of a face) or rail.bottom-front.left (a corner)";

/** `leg.top`, `rail.bottom front.left` */
function pointIn(words: Words, where: Where): PointDraft | undefined {
  const reference = referenceIn(words, where);
  if (reference === undefined) return undefined;
  const path = [...reference.path];
  const faces: Face[] = [];
  while (path.length > 1) {
    const last = (path.at(-1) ?? "").split("-");
    if (!last.every(isFace) || faces.length + last.length > 3) break;
    faces.push(...(last as Face[]));
    path.pop();
  }
  const directions = new Set(faces.map(directionOf));
  if (faces.length === 0 || directions.size < faces.length) return tellPiece(where, words, POINT);
  return { kind: "named", of: { path, at: reference.at }, faces, at: reference.at };
}

const place = settings("a point", {
  across: need(formula, "How far from the left of the piece."),
  deep: need(formula, "How far from the front."),
  up: need(formula, "How far above the floor."),
});

const point: Kind<PointDraft> = byForm({
  text: {
    words: POINT,
    json: { type: "string" },
    read: (node, where) => (node.kind === "text" ? pointIn(slice(node, 0), where) : tellWrong(where, node, POINT)),
  } as Kind<PointDraft>,
  map: made(
    place,
    ({ at, said }): PointDraft => ({
      kind: "place",
      place: [said.across.value, said.deep.value, said.up.value],
      at,
    }),
  ),
});

const PLANE = "a face of a part, such as seat.bottom, or floor";

const plane: Kind<PlaneDraft> = {
  words: PLANE,
  json: { type: "string" },
  read(node, where) {
    if (node.kind !== "text") return tellWrong(where, node, PLANE);
    const words = slice(node, 0);
    if (/^(?:the\s+)?floor$/i.test(words.text))
      return { path: ["outside"], face: "bottom", at: wholePlace(words), tapered: false };
    const tapered = /\s+taper$/i.exec(words.text);
    const found = faceReferenceIn(tapered ? slice(words, 0, tapered.index) : words, where);
    return found && { ...found, tapered: tapered !== null };
  },
};

/** Settings of a part that is not square to the room. */
export const slant = {
  turn: may(oneOrList(turn), "Turned by an angle after it has been placed square; a list: one after another."),
  from: may(point, "The point where its middle line begins: it lies along the line to the other point."),
  to: may(point, "The point where its middle line ends."),
  "ends on": may(oneOrList(plane), "It ends on the plane of this face, cut to its slope; a list: at both ends."),
};

type Said = {
  readonly [N in keyof typeof slant]?: {
    readonly value: (typeof slant)[N] extends { readonly kind: Kind<infer T> } ? T : never;
    readonly at: Span;
  };
};

/** What was said of it, for the draft; a line needs both of its points. */
export function slantOf(said: Said, where: Where): Pick<PartDraft, "turn" | "line" | "endsOn"> {
  const { turn, from, to } = said;
  const missing = from && !to ? "to" : to && !from ? "from" : null;
  if (missing) where.findings.push(missingKey(where.at, { what: "a part along a line", key: missing }));
  return {
    ...(turn && { turn: turn.value }),
    ...(from && to && { line: { from: from.value, to: to.value, at: from.at } }),
    ...(said["ends on"] && { endsOn: said["ends on"].value }),
  };
}
