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
  /** Its rags heat by themselves. */
  readonly heats?: true;
}

const DAY = 24 * 60;
const OIL = "Rub it on thin, and wipe off all that the wood has not taken after a quarter of an hour";

const PRODUCTS: readonly Product[] = [
  {
    ...{ says: /hard ?wax|wax oil/iu, dries: 12 * 60, handled: DAY, between: 320, heats: true },
    how: "Rub it on very thin, and wipe off the rest before it gets tacky",
  },
  { says: /(?<!water.?borne.*)oil/iu, dries: DAY, handled: 3 * DAY, between: 320, heats: true, how: OIL },
  {
    ...{ says: /shellac/iu, dries: 60, handled: DAY, between: 320 },
    how: "Brush or pad it on quickly, and do not go back over it",
  },
  {
    ...{ says: /wax|soap/iu, dries: 60, handled: 60 },
    how: "Rub it in, and polish it with a clean cloth when it is dull",
  },
  { says: /paint|primer/iu, dries: 4 * 60, handled: DAY, between: 220, how: "Brush or roll it on thin and even" },
];
const VARNISH: Product = {
  ...{ says: /./u, dries: 3 * 60, handled: DAY, between: 320 },
  how: "Brush it on thin and even with the grain, and do not go back over it",
};

export const productOf = (name: string): Product => PRODUCTS.find(({ says }) => says.test(name)) ?? VARNISH;

/** Oxidation of drying oils gives off heat: the warning on the cans of all of them. */
export const RAGS =
  "Rags with oil heat by themselves and can set fire to a house. Lay them out flat outdoors to dry, or put them under water in a closed metal can, at once.";
export const FUMES = "Follow the can: open windows, wear gloves, and keep away flames and sparks.";
