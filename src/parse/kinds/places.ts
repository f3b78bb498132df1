import { wrongValue } from "../../findings/rules/wrong-value.ts";
import { shorten } from "../../findings/shorten.ts";
import type { Axis, EdgeDraft, Face, FaceReference, Formula, Reference } from "../draft.ts";
import { isUsableName, normaliseName } from "../names.ts";
import { slice, type Words, wholePlace } from "../yaml/nodes.ts";
import { list, oneOrList } from "./combine.ts";
import { type Kind, tellWrong, type Where } from "./kind.ts";
import { formulaIn, word } from "./simple.ts";

export const FACES = ["left", "right", "front", "back", "bottom", "top"] as const satisfies readonly Face[];
export const AXES = ["across", "deep", "up"] as const satisfies readonly Axis[];

export const face: Kind<Face> = word(FACES);
export const axis: Kind<Axis> = word(AXES);
export const faces: Kind<readonly Face[]> = oneOrList(face);

const isFace = (text: string): text is Face => (FACES as readonly string[]).includes(text);

/** Tells that a piece of a text is not what is wanted there. */
export function tellPiece(where: Where, words: Words, wanted: string): undefined {
  const found = words.text === "" ? "nothing" : `\`${shorten(words.text)}\``;
  where.findings.push(wrongValue(wholePlace(words), { key: where.key, wanted, found }));
  return undefined;
}

/** The name of a part or group in a piece of text: `back.top-rail`, `slat.1`. */
export function referenceIn(words: Words, where: Where): Reference | undefined {
  const path = words.text.split(".").map(normaliseName);
  const usable = path.every((name, index) => isUsableName(name) || (index > 0 && /^\d{1,4}$/.test(name)));
  return usable
    ? { path, ...(where.home && { home: where.home }), at: wholePlace(words) }
    : tellPiece(where, words, "the name of a part");
}

/** `post.left`: the last word is the face. */
export function faceReferenceIn(words: Words, where: Where): FaceReference | undefined {
  const reference = referenceIn(words, where);
  if (reference === undefined) return undefined;
  const last = reference.path.at(-1) ?? "";
  if (reference.path.length < 2 || !isFace(last)) return tellPiece(where, words, "a face of a part, such as leg.front");
  return { ...reference, path: reference.path.slice(0, -1), face: last };
}

const fromText = <T>(words: string, read: (text: Words, where: Where) => T | undefined): Kind<T> => ({
  words,
  json: { type: "string", title: words },
  read: (node, where) => (node.kind === "text" ? read(slice(node, 0), where) : tellWrong(where, node, words)),
});

export const reference: Kind<Reference> = fromText("the name of a part", referenceIn);
export const references: Kind<readonly Reference[]> = oneOrList(reference);
export const faceReference: Kind<FaceReference> = fromText("a face of a part, such as leg.front", faceReferenceIn);

/** `top front`: an edge, by its two faces. */
export const edge: Kind<EdgeDraft> = fromText("an edge, such as top front", (words, where) => {
  const [first = "", second = "", ...more] = words.text.toLowerCase().split(/[\s-]+/);
  const pair = (name: string) => Math.floor((FACES as readonly string[]).indexOf(name) / 2);
  if (more.length > 0 || !isFace(first) || !isFace(second) || pair(first) === pair(second))
    return tellPiece(where, words, "an edge of two faces, such as top front");
  return { faces: [first, second], at: wholePlace(words) };
});

/** The two sides of a joining word, or undefined where it is not in the text. */
export function parted(words: Words, joining: RegExp): readonly [Words, Words] | undefined {
  const found = joining.exec(words.text);
  if (found === null) return undefined;
  return [slice(words, 0, found.index), slice(words, found.index + found[0].length)];
}

export interface Pair {
  readonly first: Reference;
  readonly second: Reference;
  readonly axis?: Axis;
}

/** `a and b`, `between a and b`, `across between a and b`. */
export function pairIn(words: Words, where: Where): Pair | undefined {
  const wanted = "two names, such as between left-leg and right-leg";
  const lead = /^(?:(across|deep|up)\s+)?(?:between\s+)?/i.exec(words.text);
  const sides = parted(slice(words, lead?.[0].length ?? 0), /\s+and\s+/i);
  if (sides === undefined) return tellPiece(where, words, wanted);
  const [first, second] = sides.map((side) => referenceIn(side, where));
  if (first === undefined || second === undefined) return undefined;
  const named = lead?.[1]?.toLowerCase() as Axis | undefined;
  return { first, second, ...(named === undefined ? {} : { axis: named }) };
}

const two = list(reference, "two names");
export const pair: Kind<Pair> = {
  words: "two names, such as [left-leg, right-leg]",
  json: { anyOf: [{ type: "string" }, { ...two.json, minItems: 2, maxItems: 2 }] },
  read(node, where) {
    if (node.kind === "text") return pairIn(slice(node, 0), where);
    if (node.kind !== "list" || node.items.length !== 2) return tellWrong(where, node, pair.words);
    const [first, second] = two.read(node, where) ?? [];
    return first === undefined || second === undefined ? undefined : { first, second };
  },
};

export interface Offset {
  readonly offset: Formula;
  readonly target: FaceReference;
}
/** `1/8 from legs.front`. */
export const offset: Kind<Offset> = fromText("a measure from a face, such as 1/8 from leg.front", (words, where) => {
  const sides = parted(words, /\s+from\s+/i);
  if (sides === undefined) return tellPiece(where, words, offset.words);
  const distance = formulaIn(sides[0], where);
  const target = faceReferenceIn(sides[1], where);
  return distance === undefined || target === undefined ? undefined : { offset: distance, target };
});

export interface FromFace {
  readonly distance: Formula;
  readonly face: Face;
}
/** `1/2 from front`: measured from one of the part's own faces. */
export const fromFace: Kind<FromFace> = fromText("a measure from a face, such as 1/2 from front", (words, where) => {
  const sides = parted(words, /\s+from\s+/i);
  if (sides === undefined) return tellPiece(where, words, fromFace.words);
  const distance = formulaIn(sides[0], where);
  const side = sides[1].text.toLowerCase();
  if (!isFace(side)) return tellPiece(where, sides[1], "left, right, front, back, bottom or top");
  return distance === undefined ? undefined : { distance, face: side };
});

export interface Range {
  readonly low: Formula;
  readonly high: Formula;
}
/** `11/16 and 3/4`, `5 to 8`. */
export const range: Kind<Range> = fromText("two measures, such as 5 to 8", (words, where) => {
  const sides = parted(words, /\s+(?:to|and)\s+/i);
  if (sides === undefined) return tellPiece(where, words, range.words);
  const [low, high] = sides.map((side) => formulaIn(side, where));
  return low === undefined || high === undefined ? undefined : { low, high };
});
