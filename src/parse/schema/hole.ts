import { missingKey } from "../../findings/rules/missing-key.ts";
import type { Face, Formula, ShapeDraft } from "../draft.ts";
import { made } from "../kinds/combine.ts";
import { type Kind, tell } from "../kinds/kind.ts";
import { FACES, face } from "../kinds/places.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { formula } from "../kinds/simple.ts";

/** A depth, or right through. */
export const depth: Kind<Formula | "through"> = {
  words: "a measure, or `through`",
  json: { anyOf: [formula.json, { const: "through" }] },
  read: (node, where) =>
    node.kind === "text" && node.text.trim().toLowerCase() === "through" ? "through" : formula.read(node, where),
};

const counterbore = settings("a counterbore", {
  diameter: need(formula, "Its diameter."),
  deep: need(formula, "Its depth.", "depth"),
});

const fromKey = (side: Face) => may(formula, `From the ${side} face to the centre of the hole.`);

const hole_ = settings("a hole", {
  in: need(face, "The face that it is bored into."),
  "from left": fromKey("left"),
  "from right": fromKey("right"),
  "from front": fromKey("front"),
  "from back": fromKey("back"),
  "from bottom": fromKey("bottom"),
  "from top": fromKey("top"),
  diameter: need(formula, "Its diameter."),
  deep: may(depth, "Its depth; without it, right through.", "depth"),
  counterbore: may(counterbore, "A wider hole at its mouth."),
});

const pairOf = (side: Face): number => Math.floor(FACES.indexOf(side) / 2);

/** The centre is measured once in each of the two directions of the face. */
export const hole = made(hole_, ({ at, said }, node, where): ShapeDraft | undefined => {
  const measured = FACES.flatMap((from) => {
    const distance = said[`from ${from}`]?.value;
    return distance === undefined ? [] : [{ from, distance }];
  });
  const bored = pairOf(said.in.value);
  const wanted = [0, 1, 2].filter((direction) => direction !== bored);
  const [first, second] = wanted.map((direction) => measured.find(({ from }) => pairOf(from) === direction));
  const missing = wanted.find((direction) => !measured.some(({ from }) => pairOf(from) === direction));
  if (missing !== undefined || first === undefined || second === undefined) {
    const key = `from ${FACES[2 * (missing ?? 0)]}`;
    return tell(where, node, missingKey(where.at, { what: `a hole in the ${said.in.value} face`, key }));
  }
  const deep = said.deep?.value;
  const bore = said.counterbore?.value.said;
  return {
    shape: "hole",
    at,
    in: said.in.value,
    centre: [first, second],
    diameter: said.diameter.value,
    ...(deep !== undefined && deep !== "through" && { deep }),
    ...(bore && { counterbore: { diameter: bore.diameter.value, deep: bore.deep.value } }),
  };
});
