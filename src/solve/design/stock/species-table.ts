/** Where the figures come from. */
const MEMORY = "from memory";
const T13 = "Wood Handbook FPL-GTR-190, Table 13-5";
const T13_BY_T4 = "from memory; agrees with the shrinkage of Table 4-3 by C = S / (3000 - 20 S)";
const T13_CEDAR = "from memory; agrees with the shrinkage of Table 4-3 from 22 % moisture down";
const FLOORING = "a list of the flooring trade";
const FLOORING_TWICE = "two lists of the flooring trade; one of them ends in 5";
const T4 = "Wood Handbook FPL-GTR-190, Table 4-3";
const T4_BY_T13 = "from memory; gives the coefficient of Table 13-5 by C = S / (3000 - 20 S)";
const T4_ORDER = "Wood Handbook FPL-GTR-190, Table 4-4; columns scrambled in the copy read";
const T5 = "Wood Handbook FPL-GTR-190, Table 5-3b";
const T5_COPY = "Wood Handbook FPL-GTR-190, Table 5-3b, from a reproduction";
const OREGON = "Oregon State University, table of western softwoods";
const AWS = "Architectural Woodwork Standards 2009";
const GREEN = "Wood Handbook FPL-GTR-190, Table 5-5b, green, from memory";

/** A published number and where it was taken from. Null where none is at hand. */
export type Cell = readonly [value: number, source: string] | null;

/** A wood: its names; change of size for 1 % of moisture; total shrinkage in %; specific gravity; modulus in million psi. */
export type Row = readonly [
  name: string,
  synonyms: readonly string[],
  radial: Cell,
  tangential: Cell,
  shrinkageRadial: Cell,
  shrinkageTangential: Cell,
  specificGravity: Cell,
  modulus: Cell,
];

// biome-ignore format: one line for each wood
export const HARDWOODS: readonly Row[] = [
  ["red oak", ["northern red oak", "oak"], [0.00158, T13], [0.00369, T13], [4.0, MEMORY], [8.6, MEMORY], [0.63, T5_COPY], [1.82, AWS]],
  ["white oak", [], [0.00180, T13], [0.00365, T13], [5.6, T4], [10.5, T4], [0.68, T5_COPY], [1.78, T5_COPY]],
  ["hard maple", ["sugar maple", "rock maple", "black maple", "maple"], [0.00165, T13], [0.00353, T13], [4.8, T4_BY_T13], [9.9, T4_BY_T13], [0.63, T5_COPY], [1.83, T5_COPY]],
  ["soft maple", ["red maple"], [0.00137, T13], [0.00289, T13], [4.0, T4_BY_T13], [8.2, T4_BY_T13], [0.54, T5_COPY], [1.64, T5_COPY]],
  ["silver maple", [], [0.00102, T13], [0.00252, T13], [3.0, T4_BY_T13], [7.2, T4_BY_T13], [0.47, MEMORY], [1.14, MEMORY]],
  ["bigleaf maple", ["western maple"], [0.00126, T13], [0.00248, T13], null, null, [0.48, MEMORY], [1.45, MEMORY]],
  ["cherry", ["black cherry", "American cherry"], [0.00126, T13], [0.00248, T13], [3.7, T4], [7.1, T4], [0.50, T5_COPY], [1.49, T5_COPY]],
  ["walnut", ["black walnut", "American walnut"], [0.00190, T13], [0.00274, T13], [5.5, T4], [7.8, T4], [0.55, T5_COPY], [1.68, T5_COPY]],
  ["white ash", ["ash", "green ash"], [0.00169, T13], [0.00274, T13], [4.9, T4], [7.8, T4], [0.60, T5_COPY], [1.74, T5_COPY]],
  ["yellow birch", ["birch", "sweet birch"], [0.00256, T13], [0.00338, T13], [7.3, T4], [9.5, T4], [0.62, T5_COPY], [2.01, T5_COPY]],
  ["paper birch", ["white birch"], [0.00219, T13], [0.00304, T13], [6.3, T4], [8.6, T4], [0.55, T5_COPY], [1.59, T5_COPY]],
  ["beech", ["American beech"], [0.00190, T13], [0.00431, T13], [5.5, T4], [11.9, T4], [0.64, T5_COPY], [1.72, T5_COPY]],
  ["alder", ["red alder"], [0.00151, T13], [0.00256, T13], [4.4, T4], [7.3, T4], [0.41, T5_COPY], [1.38, T5_COPY]],
  ["basswood", ["American basswood", "linden"], [0.00230, T13], [0.00330, T13], [6.6, T4], [9.3, T4], [0.37, T5_COPY], [1.46, T5_COPY]],
  ["aspen", ["quaking aspen"], [0.00119, T13], [0.00234, T13], null, null, [0.38, T5_COPY], [1.18, T5_COPY]],
  ["hickory", ["shagbark hickory"], null, null, null, null, [0.72, T5_COPY], [2.16, T5_COPY]],
  ["pecan", ["pecan hickory"], [0.00169, T13], [0.00315, T13], null, null, [0.66, MEMORY], [1.73, MEMORY]],
  ["elm", ["American elm"], [0.00144, T13], [0.00338, T13], null, null, [0.50, MEMORY], [1.34, MEMORY]],
  ["sycamore", ["American sycamore"], [0.00172, T13], [0.00296, T13], [5.0, T4], [8.4, T4], [0.49, MEMORY], [1.42, MEMORY]],
  ["sweetgum", ["gum"], [0.00183, T13], [0.00365, T13], null, null, [0.52, MEMORY], [1.64, MEMORY]],
  ["cottonwood", ["eastern cottonwood"], [0.00133, T13], [0.00327, T13], null, null, [0.40, MEMORY], [1.37, MEMORY]],
  ["butternut", [], [0.00116, T13], [0.00223, T13], null, null, [0.38, MEMORY], [1.18, MEMORY]],
  ["yellow-poplar", ["poplar", "tulipwood", "tulip poplar"], [0.00158, T13_BY_T4], [0.00289, T13_BY_T4], [4.6, T4], [8.2, T4], [0.42, T5_COPY], [1.58, T5_COPY]],
  ["mahogany", ["true mahogany", "Honduran mahogany"], [0.00172, MEMORY], [0.00238, MEMORY], [3.0, T4_ORDER], [4.1, T4_ORDER], [0.45, GREEN], [1.50, MEMORY]],
  ["African mahogany", ["khaya"], null, null, [2.5, T4_ORDER], [4.5, T4_ORDER], null, null],
  ["teak", [], [0.00101, MEMORY], [0.00186, FLOORING_TWICE], [2.5, MEMORY], [5.8, MEMORY], [0.55, GREEN], [1.55, MEMORY]],
];

// biome-ignore format: one line for each wood
export const SOFTWOODS: readonly Row[] = [
  ["Douglas-fir", ["fir", "coast Douglas-fir"], [0.00165, T13_BY_T4], [0.00267, T13_BY_T4], [4.8, T4], [7.6, T4], [0.48, OREGON], [1.95, OREGON]],
  ["white fir", ["hem fir"], [0.00112, T13], [0.00245, T13_BY_T4], [3.3, T4], [7.0, T4], [0.39, MEMORY], [1.50, MEMORY]],
  ["western hemlock", ["hemlock"], null, null, null, null, [0.45, OREGON], [1.63, OREGON]],
  ["western redcedar", ["cedar", "western red cedar"], [0.00111, T13_CEDAR], [0.00234, T13_CEDAR], [2.4, T4], [5.0, T4], [0.32, MEMORY], [1.11, MEMORY]],
  ["redwood", ["old growth redwood"], null, null, null, null, [0.40, T5], [1.34, T5]],
  ["young growth redwood", ["second growth redwood"], null, null, null, null, [0.35, T5], [1.10, T5]],
  ["eastern white pine", ["pine", "white pine"], [0.00071, MEMORY], [0.00212, MEMORY], [2.1, MEMORY], [6.1, MEMORY], [0.35, MEMORY], [1.24, MEMORY]],
  ["western white pine", [], null, null, null, null, [0.38, T5], [1.46, T5]],
  ["ponderosa pine", ["knotty pine"], [0.00133, MEMORY], [0.00216, MEMORY], [3.9, MEMORY], [6.2, MEMORY], [0.40, T5], [1.29, T5]],
  ["red pine", [], null, null, null, null, [0.46, T5], [1.63, T5]],
  ["sugar pine", [], null, null, null, null, [0.36, T5], [1.19, T5]],
  ["southern pine", ["southern yellow pine", "yellow pine"], null, [0.00265, FLOORING], null, null, [0.51, MEMORY], [1.79, MEMORY]],
  ["loblolly pine", [], [0.00165, MEMORY], [0.00259, MEMORY], [4.8, MEMORY], [7.4, MEMORY], [0.51, MEMORY], [1.79, MEMORY]],
  ["longleaf pine", [], [0.00176, MEMORY], [0.00263, MEMORY], [5.1, MEMORY], [7.5, MEMORY], [0.59, MEMORY], [1.98, MEMORY]],
  ["shortleaf pine", [], [0.00158, MEMORY], [0.00271, MEMORY], [4.6, MEMORY], [7.7, MEMORY], [0.51, T5], [1.75, T5]],
  ["slash pine", [], [0.00187, MEMORY], [0.00267, MEMORY], [5.4, MEMORY], [7.6, MEMORY], [0.59, T5], [1.98, T5]],
  ["spruce", ["white spruce", "spruce pine fir", "SPF", "whitewood"], [0.00130, MEMORY], [0.00274, MEMORY], null, null, [0.36, MEMORY], [1.43, MEMORY]],
  ["red spruce", [], [0.00130, MEMORY], [0.00274, MEMORY], null, null, [0.40, MEMORY], [1.61, MEMORY]],
  ["Engelmann spruce", [], [0.00130, MEMORY], [0.00248, MEMORY], null, null, [0.35, OREGON], [1.30, OREGON]],
  ["Sitka spruce", [], [0.00148, MEMORY], [0.00263, MEMORY], null, null, [0.40, MEMORY], [1.57, MEMORY]],
];
