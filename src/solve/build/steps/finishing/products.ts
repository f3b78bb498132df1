/** How finishes are put on. Common practice, no source, times from memory; the label of the can comes before all of it. */

interface Product {
  readonly says: RegExp;
  /** Minutes between two coats. */
  readonly dries: number;
  /** Minutes until it bears handling. */
  readonly handled: number;
  readonly how: string;
  /** The grit between two coats; absent: none. */
  readonly between?: number;
  /** It smells for weeks where no air comes to it. */
  readonly smells?: true;
}

const DAY = 24 * 60;
const OIL = "Rub it on thin, and wipe off all that the wood has not taken after a quarter of an hour";

const PRODUCTS: readonly Product[] = [
  {
    ...{ says: /hard ?wax|wax oil/iu, dries: 12 * 60, handled: DAY, between: 320, smells: true },
    how: "Rub it on very thin, and wipe off the rest before it gets tacky",
  },
  {
    says: /^(?!.*(?:water|varnish|paint|primer|enamel)).*oil/iu,
    dries: DAY,
    handled: 3 * DAY,
    between: 320,
    smells: true,
    how: OIL,
  },
  {
    ...{ says: /shellac/iu, dries: 60, handled: DAY, between: 320 },
    how: "Brush or pad it on quickly, and do not go back over it",
  },
  {
    ...{ says: /wax|soap/iu, dries: 60, handled: 60 },
    how: "Rub it in, and polish it with a clean cloth when it is dull",
  },
  {
    ...{ says: /(?:oil|alkyd).*(?:paint|primer|enamel)/iu, dries: DAY, handled: 2 * DAY, between: 220 },
    how: "Brush or roll it on thin and even",
  },
  { says: /paint|primer/iu, dries: 4 * 60, handled: DAY, between: 220, how: "Brush or roll it on thin and even" },
];
const BRUSHED = "Brush it on thin and even with the grain, and do not go back over it";
/** Drying oils cure by the air's oxygen, over night; what is thinned with water or a solvent dries as that leaves. */
const QUICK: Product = {
  says: /water|acrylic|latex|lacquer/iu,
  dries: 3 * 60,
  handled: DAY,
  between: 320,
  how: BRUSHED,
};
const VARNISH: Product = { says: /./u, dries: DAY, handled: 2 * DAY, between: 320, how: BRUSHED };

export const productOf = (name: string): Product => [...PRODUCTS, QUICK].find(({ says }) => says.test(name)) ?? VARNISH;

/** Oxidation of drying oils gives off heat: the warning on the cans of all of them. */
export const RAGS =
  "Rags wet with a finish that holds drying oil heat by themselves and can set fire to a house. Lay them out flat outdoors to dry, or put them under water in a closed metal can, at once.";
export const FUMES = "Follow the can: open windows, wear gloves, and keep away flames and sparks.";
