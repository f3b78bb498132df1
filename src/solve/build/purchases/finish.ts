/** Finish, from the areas it goes on and what a litre covers. */
import type { Units } from "../../../parse/draft.ts";
import type { Finishing } from "../../build.ts";
import type { Design, Part } from "../../design.ts";
import { type Bare, bareUnder, insideUnder } from "../finishing/bare.ts";
import { productKind } from "../finishing/products.ts";
import { hungLeaves } from "../finishing/shut-in.ts";
import { panelsThatComeOff } from "../order/removable.ts";
import { series } from "../steps/draft.ts";
import type { Need } from "./need.ts";
import { SQUARE_METRE, surface } from "./supplies.ts";

/** Left in brush, rag and can. Common practice, no source. */
const LOST = 1.1;

/** For each finish: on what, and how large that is. */
export const finishingOf = (
  design: Pick<Design, "finishes" | "parts" | "joints" | "fittings" | "stock">,
): readonly Finishing[] => {
  const { finishes = [], parts, joints } = design;
  const hidden = new Map<string, number>();
  for (const { parts: pair, contact } of joints)
    for (const id of pair)
      hidden.set(
        id,
        contact.reduce((so, { area }) => so + area / SQUARE_METRE, hidden.get(id) ?? 0),
      );
  return finishes.map((finish) => {
    const bare = bareUnder(finish, design);
    const seen = (part: Part): number =>
      Math.max(0, surface(part) - (hidden.get(part.id) ?? 0) - (bare.faces.get(part.id)?.area ?? 0) / SQUARE_METRE);
    const own = finish.parts.filter((id) => !bare.parts.has(id));
    const bareFaces = facesOf({ parts: new Set(bare.wholly), faces: bare.faces }, [...own, ...bare.wholly]);
    const inside = insideUnder(finish, design);
    const insideFaces = inside ? facesOf(inside, own) : [];
    const insideArea = parts
      .filter(({ id }) => own.includes(id))
      .reduce(
        (so, part) =>
          so + (inside?.parts.has(part.id) ? seen(part) : (inside?.faces.get(part.id)?.area ?? 0) / SQUARE_METRE),
        0,
      );
    const slabs = panelsThatComeOff(design);
    const leaves = hungLeaves(design).filter((ids) => ids.some((id) => own.includes(id)));
    const bothFaces = own.filter((id) => slabs.has(id) && !leaves.flat().includes(id));
    return {
      ...finish,
      ...(own.length < finish.parts.length && { parts: own, bare: [...bare.parts] }),
      ...(bare.what.length > 0 && { bareWhat: bare.what, surface: `${finish.surface} but ${series(bare.what)}` }),
      ...(bareFaces.length > 0 && {
        bareFaces,
        ...(bothFaces.length > 0 && { bothFaces }),
        ...(leaves.length > 0 && { leaves }),
      }),
      ...(insideFaces.length > 0 && { insideFaces, insideArea }),
      area: parts.filter(({ id }) => own.includes(id)).reduce((so, part) => so + seen(part), 0),
    };
  });
};

/** Of some parts: faces that are named, and parts that are in it with all of theirs, which name none. */
function facesOf({ parts, faces }: Pick<Bare, "parts" | "faces">, own: readonly string[]) {
  return [
    ...[...faces].flatMap(([part, { sides }]) => (own.includes(part) && sides.length > 0 ? [{ part, sides }] : [])),
    ...[...parts].flatMap((part) => (own.includes(part) ? [{ part, sides: [] }] : [])),
  ];
}

const PINT = (231 * 16.387064) / 8;
/** Cans of the shops, in ml. Common practice, no source. */
const CANS: Record<Units, readonly { readonly name: string; readonly ml: number }[]> = {
  inch: [
    { name: "half-pint can", ml: PINT / 2 },
    { name: "pint can", ml: PINT },
    { name: "quart can", ml: 2 * PINT },
    { name: "gallon can", ml: 8 * PINT },
  ],
  mm: [250, 500, 1000, 2500].map((ml) => ({ name: `${ml} ml can`, ml })),
};
const OUNCE = PINT / 16;

/** What all coats take, with what is lost. */
const millilitres = (own: readonly Finishing[]): number =>
  own.reduce(
    (so, { area, coats, inside = coats, insideArea = 0, covers, product }) =>
      so + ((area * coats - insideArea * (coats - inside)) / (covers ?? productKind(product).covers)) * 1000,
    0,
  ) * LOST;

/** Of one product, as printed: "12 oz". */
export function amountOf(own: readonly Finishing[], units: Units): string {
  const ml = millilitres(own);
  return units === "inch" ? `${Math.max(1, Math.ceil(ml / OUNCE))} oz` : `${Math.max(10, 10 * Math.ceil(ml / 10))} ml`;
}

/** One line for each product, whatever surfaces it goes on. */
export function finishNeeds(finishing: readonly Finishing[], units: Units): readonly Need[] {
  const products = [...new Set(finishing.filter(({ area }) => area > 0).map(({ product }) => product))];
  return products.map((product): Need => {
    const own = finishing.filter((each) => each.product === product);
    const ml = millilitres(own);
    const cans = CANS[units];
    const can = cans.find((each) => each.ml >= ml) ?? (cans.at(-1) as (typeof cans)[number]);
    const amount = amountOf(own, units);
    const where = own.map(
      ({ surface: on, coats, inside, insideFaces }) =>
        `${coats} ${coats === 1 ? "coat" : "coats"}${insideFaces ? `, ${inside} inside,` : ""} on ${on}`,
    );
    return {
      ...{ section: "supplies", item: product, used: Math.ceil(ml / can.ml), spare: 0, price: null },
      sold: { unit: can.name, boxes: [], of: "can" },
      notes: [`about ${amount} for ${where.join(", ")}`],
    };
  });
}
