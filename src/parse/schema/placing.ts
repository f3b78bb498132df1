import type { Axis, BoardSize, Face, FaceReference, Formula, PlaceDraft, Reference } from "../draft.ts";
import { byForm, made, oneOrList } from "../kinds/combine.ts";
import type { Kind } from "../kinds/kind.ts";
import {
  AXES,
  faceReference,
  type Offset,
  offset,
  type Pair,
  pair,
  pairIn,
  reference,
  referenceIn,
} from "../kinds/places.ts";
import { may, settings } from "../kinds/settings.ts";
import { extent as bigness, formula, sizeIn, word } from "../kinds/simple.ts";
import { slice } from "../yaml/nodes.ts";

/** A statement of place before its key is known. */
type Statement = PlaceDraft extends infer P ? (P extends PlaceDraft ? Omit<P, "key" | "at"> : never) : never;
type Statements = readonly Statement[];

const face = (name: Face) => made(formula, (value): Statements => [{ word: "face", face: name, value }]);
const board = (size: BoardSize) => made(bigness, (value): Statements => [{ word: "board", size, value }]);

const between = ({ first, second, axis }: Pair): Statement => ({
  word: "between",
  first,
  second,
  ...(axis === undefined ? {} : { axis }),
});

/** `across: 24`, `across: between a and b`, `across: centred on a`, `across: middle`. */
const extent = (axis: Axis): Kind<Statements> => ({
  words: "a measure, `between a and b`, `centred on a` or `middle`",
  json: formula.json,
  read(node, where) {
    if (node.kind !== "text") {
      const value = bigness.read(node, where);
      return value === undefined ? undefined : [{ word: "extent", axis, value }];
    }
    const words = slice(node, 0);
    if (/^middle$/i.test(words.text)) return [{ word: "middle", axis }];
    if (/^between\s/i.test(words.text)) {
      const found = pairIn(words, where);
      return found === undefined ? undefined : [between({ ...found, axis })];
    }
    const centred = /^(?:centred|centered)\s+on\s+/i.exec(words.text);
    if (centred !== null) {
      const on = referenceIn(slice(words, centred[0].length), where);
      return on === undefined ? undefined : [{ word: "centred", axis, on }];
    }
    const value = sizeIn(words, where);
    return value === undefined ? undefined : [{ word: "extent", axis, value }];
  },
});

/** My `mine` lies at the face `theirs` of something named. */
const meets = (mine: Face, theirs: Face): Kind<Statements> =>
  made(reference, (thing): Statements => {
    const target: FaceReference = { ...thing, face: theirs };
    return [{ word: "against", face: mine, target }];
  });

const flush = made(
  oneOrList(faceReference),
  (targets): Statements => targets.map((target) => ({ word: "against", face: target.face, target })),
);
const moved = (toward: "inwards" | "outwards"): Kind<Statements> =>
  made(oneOrList(offset), (offsets: readonly Offset[]) =>
    offsets.map((each): Statement => ({ word: "against", face: each.target.face, ...each, toward })),
  );

const perDirection = <T>(kind: Kind<T>, meaning: string) =>
  settings("directions", {
    across: may(kind, `${meaning} from left to right.`),
    deep: may(kind, `${meaning} from front to back.`),
    up: may(kind, `${meaning} up and down.`),
  });
const eachDirection = <T>(kind: Kind<T>, meaning: string, make: (axis: Axis, value: T) => Statement) =>
  made(
    perDirection(kind, meaning),
    ({ said }): Statements =>
      AXES.flatMap((axis) => {
        const found = said[axis];
        return found === undefined ? [] : [make(axis, found.value as T)];
      }),
  );

const centredOn = byForm({
  text: made(reference, (on: Reference): Statements => [{ word: "centred", on }]),
  map: eachDirection(reference, "Centred on this", (axis, on) => ({ word: "centred", axis, on })),
});
const middle = word(["middle"], { center: "middle", centre: "middle" });
const atMiddle = byForm({
  text: made(middle, (): Statements => [{ word: "middle" }]),
  map: eachDirection(middle, "In the middle", (axis) => ({ word: "middle", axis })),
});

const floor = made(formula, (value: Formula): Statements => [{ word: "face", face: "bottom", value }]);

/** Every setting that says where a part is or how big. */
export const placing = {
  left: may(face("left"), "Where its left face is, from the left of the piece."),
  right: may(face("right"), "Where its right face is, from the left of the piece."),
  front: may(face("front"), "Where its front face is, from the front of the piece."),
  back: may(face("back"), "Where its back face is, from the front of the piece."),
  bottom: may(face("bottom"), "Where its bottom face is, from the floor."),
  top: may(face("top"), "Where its top face is, from the floor."),
  across: may(extent("across"), "How far it reaches from left to right, or between what."),
  deep: may(extent("deep"), "How far it reaches from front to back, or between what."),
  up: may(extent("up"), "How far it reaches up, or between what.", "high"),
  thickness: may(board("thickness"), "Its thickness as a board.", "thick"),
  width: may(board("width"), "Its width as a board, across the grain.", "wide"),
  length: may(board("length"), "Its length as a board, along the grain, tongues and tenons included.", "long"),
  on: may(meets("bottom", "top"), "It stands on this."),
  under: may(meets("top", "bottom"), "It is right under this.", "below"),
  behind: may(meets("front", "back"), "It is right behind this."),
  "in front of": may(meets("back", "front"), "It is right in front of this."),
  "right of": may(meets("left", "right"), "It is right beside this, to the right."),
  "left of": may(meets("right", "left"), "It is right beside this, to the left."),
  "up from floor": may(floor, "How high its bottom face is above the floor.", "up from the floor"),
  "flush with": may(flush, "The same face lies in one plane with this one."),
  "set back": may(moved("inwards"), "The same face lies so far inwards from this one: 1/8 from leg.front."),
  proud: may(moved("outwards"), "The same face stands out so far from this one: 1/16 from side.front."),
  between: may(
    made(pair, (found): Statements => [between(found)]),
    "It reaches from one to the other, in the direction in which they lie apart.",
  ),
  "centred on": may(centredOn, "Its middle is at the middle of this.", "centered on"),
  at: may(atMiddle, "In the middle of the piece."),
};

/** Keys and spans put to the statements, in the order of the source. */
export function placesOf(
  said: {
    readonly [N in keyof typeof placing]?: {
      readonly value: Statements;
      readonly at: PlaceDraft["at"];
      readonly key: PlaceDraft["at"];
    };
  },
): readonly PlaceDraft[] {
  const all = Object.entries(said).flatMap(([key, field]) =>
    Object.hasOwn(placing, key)
      ? field.value.map((statement) => ({ key, at: field.at, ...statement }) as PlaceDraft)
      : [],
  );
  return all;
}
