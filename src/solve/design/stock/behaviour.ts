/** How a stock moves and bends. */
import type { Movement, Stiffness } from "../../design.ts";
import type { Panel } from "./panels.ts";
import type { Figure, Species } from "./species.ts";

/** 1,000,000 psi in GPa. */
export const GPA_PER_MILLION_PSI = 6.894757;

/** A wood of which the tables have no figure. Common practice, no source. */
const USUAL = "a usual figure for a wood that the tables do not have; common practice, no source";
const USUAL_FIGURES = {
  softwood: { radial: 0.0014, tangential: 0.0026, modulus: 1.2 },
  hardwood: { radial: 0.0017, tangential: 0.0035, modulus: 1.5 },
} as const;

/** Stiffness across the grain as a share of that along it: Wood Handbook FPL-GTR-190, Table 5-1, low among its woods, from memory. */
const CROSS_SHARE = 0.05;

/** C = S / (3000 - 20 S): Wood Handbook FPL-GTR-190, note to Table 13-5, from memory; it gives the table from Table 4-3. */
const fromShrinkage = (shrinkage: Figure | null): Figure | null =>
  shrinkage && {
    value: shrinkage.value / (3000 - 20 * shrinkage.value),
    source: `${shrinkage.source}, by C = S / (3000 - 20 S)`,
  };

/** Change of size of solid wood. Growth rings stand upright in the thickness of a board that is quarter-sawn. */
export function movementOf(species: Species | null, softwood: boolean, quartered: boolean): Movement {
  const usual = USUAL_FIGURES[softwood ? "softwood" : "hardwood"];
  const tangential = species?.tangential ?? fromShrinkage(species?.shrinkageTangential ?? null);
  const radial = species?.radial ?? fromShrinkage(species?.shrinkageRadial ?? null);
  const flat = { value: tangential?.value ?? usual.tangential, source: tangential?.source ?? USUAL };
  const upright = { value: radial?.value ?? usual.radial, source: radial?.source ?? USUAL };
  const [wide, thick] = quartered ? [upright, flat] : [flat, upright];
  const shrinkage = quartered ? species?.shrinkageRadial : species?.shrinkageTangential;
  return { wide: wide.value, thick: thick.value, shrinkage: shrinkage?.value ?? null, basis: wide.source };
}

/** Bending of solid wood. */
export function stiffnessOf(species: Species | null, softwood: boolean): Stiffness {
  const million = species?.modulus?.value ?? USUAL_FIGURES[softwood ? "softwood" : "hardwood"].modulus;
  const along = million * GPA_PER_MILLION_PSI;
  return { along, across: along * CROSS_SHARE, basis: species?.modulus?.source ?? USUAL };
}

/** Bending of a panel. */
export const panelStiffness = ({ modulus, across, stiffnessSource }: Panel): Stiffness => ({
  along: modulus,
  across,
  basis: stiffnessSource,
});
