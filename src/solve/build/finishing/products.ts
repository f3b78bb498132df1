/**
 * Kinds of finish, told by what a product's name says: what they cover, and when they have cured. Usual figures of makers' labels, from memory; the label
 * counts before any of them. How they are put on is in `steps/finishing/products.ts`.
 */

export interface ProductKind {
  readonly kind: "paint" | "shellac" | "wax oil" | "oil" | "wax" | "varnish";
  /** m² that a litre covers in one coat. */
  readonly covers: number;
  /** Days until it takes knocks. */
  readonly cure: number;
}

const KINDS: readonly (ProductKind & { readonly says: RegExp })[] = [
  { says: /paint|primer|enamel/iu, kind: "paint", covers: 10, cure: 14 },
  { says: /shellac/iu, kind: "shellac", covers: 9, cure: 7 },
  { says: /wax oil|hard ?wax/iu, kind: "wax oil", covers: 24, cure: 14 },
  { says: /^(?!.*varnish).*oil/iu, kind: "oil", covers: 14, cure: 30 },
  { says: /wax|soap/iu, kind: "wax", covers: 20, cure: 1 },
];
const VARNISH: ProductKind = { kind: "varnish", covers: 12, cure: 7 };

/** What is not known by its name is taken for a varnish. */
export const productKind = (product: string): ProductKind => KINDS.find(({ says }) => says.test(product)) ?? VARNISH;

/** It raises the grain. */
export const waterborne = (product: string): boolean => /water|acrylic|latex|milk|chalk/iu.test(product);

/** Rags that are wet with it may heat by themselves: drying oils, and what may be made with them. */
export function smoulders(product: string): boolean {
  return !waterborne(product) && !/shellac|lacquer/iu.test(product) && productKind(product).kind !== "wax";
}

/** What stays on the wood as a film; others soak in, and are wiped off. */
const FILMS: ReadonlySet<ProductKind["kind"]> = new Set(["paint", "shellac", "varnish"]);
/** Of one brushed coat, mm: three of them are about as thick as a sheet of paper. Common practice, no source. */
const COAT = 0.1 / 3;

/** How thick all coats together lie on a face, mm. */
export const filmOf = ({ product, coats }: { readonly product: string; readonly coats: number }): number =>
  FILMS.has(productKind(product).kind) ? coats * COAT : 0;
