/** What is sanded before a part is glued in, because no block is moved there when all that is glued to each other is together. */

import { once } from "../../../../geometry/index.ts";
import { gritWords } from "../../finishing/abrasives.ts";
import { panesOf } from "../../order/glazing.ts";
import { components, linksOf } from "../../order/links.ts";
import { FIRST, listed, type Work } from "../draft.ts";
import { type NarrowSide, narrowSides } from "../narrow-openings.ts";

/** `fresh`: parts that are glued to something for the first time; `inside`: panels whose faces inside are told already. */
export function narrowTexts(work: Work, fresh: readonly string[], inside: readonly string[]): readonly string[] {
  const own = narrowIn(work).filter(({ id }) => fresh.includes(id) && !inside.includes(id));
  if (own.length === 0) return [];
  const words = new Set(own.map(({ word }) => word));
  const what = words.size > 1 ? "sides" : words.has("edge") ? "edges" : "faces";
  const those = listed(
    work,
    fresh.filter((each) => own.some(({ id }) => id === each)),
  );
  return [
    `${FIRST}sand the ${what} of ${those} that will look into narrow openings with ${gritWords}: no hand with a block gets in there later.`,
  ];
}

/** Of each body that glue holds together. */
const narrowIn = once((work: Work): readonly NarrowSide[] => {
  const { parts, joints } = work.design;
  const panes = panesOf(work.design);
  const links = linksOf({ parts, joints: joints.filter(({ glue }) => glue) });
  const places = parts.flatMap(({ id }, i) => (panes.has(id) ? [] : [i]));
  return components(places, links).flatMap((body) => narrowSides(body.map((i) => work.part(parts[i]?.id ?? ""))));
});
