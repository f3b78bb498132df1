import { type Cell, HARDWOODS, type Row, SOFTWOODS } from "./species-table.ts";

/** A published number and where it was taken from. */
export interface Figure {
  readonly value: number;
  readonly source: string;
}

/** A wood as the handbooks know it. Null where no figure is at hand. */
export interface Species {
  readonly name: string;
  readonly softwood: boolean;
  /** Other names, and the names of closely related woods that are sold together. */
  readonly synonyms: readonly string[];
  /** Change of size for 1 % of moisture, between 6 and 14 %: across the growth rings and along them. */
  readonly radial: Figure | null;
  readonly tangential: Figure | null;
  /** Shrinkage from green to oven-dry, %: radial, tangential. */
  readonly shrinkageRadial: Figure | null;
  readonly shrinkageTangential: Figure | null;
  /** At 12 % moisture; weight oven-dry. */
  readonly specificGravity: Figure | null;
  /** Modulus of elasticity at 12 % moisture, million psi. */
  readonly modulus: Figure | null;
}

const figure = (cell: Cell): Figure | null => cell && { value: cell[0], source: cell[1] };
const species =
  (softwood: boolean) =>
  ([name, synonyms, radial, tangential, shrinkageRadial, shrinkageTangential, gravity, modulus]: Row): Species => ({
    name,
    softwood,
    synonyms,
    radial: figure(radial),
    tangential: figure(tangential),
    shrinkageRadial: figure(shrinkageRadial),
    shrinkageTangential: figure(shrinkageTangential),
    specificGravity: figure(gravity),
    modulus: figure(modulus),
  });

/** Every wood that is known, hardwoods first. */
export const SPECIES: readonly Species[] = [...HARDWOODS.map(species(false)), ...SOFTWOODS.map(species(true))];

/** `White-Oak ` and `white oak` are one name. */
export const plainName = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[\s_-]+/g, " ")
    .trim();

const NAMES: ReadonlyMap<string, Species> = new Map(
  SPECIES.flatMap((species) => [species.name, ...species.synonyms].map((name) => [plainName(name), species] as const)),
);

/** Every name that is understood, in the order of the table. */
export const speciesNames: readonly string[] = [...NAMES.keys()];

/** The wood of that name; undefined where the table has none. */
export const findSpecies = (name: string): Species | undefined => NAMES.get(plainName(name));

/** Moisture at which furniture is weighed, %: that at which the specific gravities are published, so that no volume has to be corrected. */
const MOISTURE = 12;
/** kg/m³ of a wood that the table does not know. Common practice, no source. */
const UNKNOWN = { softwood: 450, hardwood: 650 } as const;

/**
 * kg/m³ at 12 % moisture: 1000 G (1 + moisture / 100). Wood Handbook FPL-GTR-190, chapter 4, from memory.
 * Without a species, a usual figure for soft or hard wood.
 */
export function density(species: Species | null, softwood: boolean): number {
  const g = species?.specificGravity?.value;
  if (g === undefined) return softwood ? UNKNOWN.softwood : UNKNOWN.hardwood;
  return Math.round(1000 * g * (100 + MOISTURE)) / 100;
}
