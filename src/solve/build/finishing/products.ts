/**
 * Kinds of finish, told by what a product's name says. Usual figures of makers' labels, from memory, but for the grits: common practice, no source.
 * The label of the tin counts before any of them.
 */
export interface ProductKind {
  readonly kind: "paint" | "shellac" | "wax oil" | "oil" | "wax" | "varnish";
  /** m² that a litre covers in one coat. */
  readonly covers: number;
  /** Grits on bare wood, in turn, and between coats; null where coats are not sanded. */
  readonly grits: readonly number[];
  readonly between: number | null;
  /** Hours from a coat to the next, and days until it takes knocks. */
  readonly recoat: number;
  readonly cure: number;
  /** How it is put on. */
  readonly how: string;
}

const KINDS: readonly (ProductKind & { readonly says: RegExp })[] = [
  {
    ...{
      says: /paint|primer|enamel/iu,
      kind: "paint",
      covers: 10,
      grits: [120, 150],
      between: 220,
      recoat: 4,
      cure: 14,
    },
    how: "Brush or roll it thin, edges first, and let no run dry: it shows through every later coat.",
  },
  {
    ...{ says: /shellac/iu, kind: "shellac", covers: 9, grits: [120, 150, 180], between: 320, recoat: 2, cure: 7 },
    how: "Brush it on quickly with a full brush, and do not go back over it.",
  },
  {
    ...{
      says: /wax oil|hard ?wax/iu,
      kind: "wax oil",
      covers: 24,
      grits: [120, 150],
      between: null,
      recoat: 12,
      cure: 14,
    },
    how: "Spread it as thin as it will go with a pad or a short brush. What stands on the wood after a quarter of an hour is wiped off.",
  },
  {
    ...{ says: /oil/iu, kind: "oil", covers: 14, grits: [120, 150, 180], between: null, recoat: 24, cure: 30 },
    how: "Flood it, wait a quarter of an hour, and wipe off all that stands on the wood: what stays becomes sticky.",
  },
  {
    ...{ says: /wax|soap/iu, kind: "wax", covers: 20, grits: [120, 150, 180, 220], between: null, recoat: 2, cure: 1 },
    how: "Rub it in thinly with a cloth and polish it when it has dulled.",
  },
];
const VARNISH: ProductKind = {
  ...{ kind: "varnish", covers: 12, grits: [120, 150, 180], between: 320, recoat: 8, cure: 7 },
  how: "Brush it along the grain in thin coats, and pull every end off once with an almost dry brush.",
};

/** What is not known by its name is taken for a varnish. */
export const productKind = (product: string): ProductKind => KINDS.find(({ says }) => says.test(product)) ?? VARNISH;

/** It raises the grain. */
export const waterborne = (product: string): boolean => /water|acrylic|latex|milk|chalk/iu.test(product);

/** Rags that are wet with it may heat by themselves: drying oils, and what may be made with them. */
export function smoulders(product: string): boolean {
  const { kind } = productKind(product);
  return !waterborne(product) && !/shellac|lacquer/iu.test(product) && kind !== "wax";
}
