import { inches, type Length, millimetres } from "../../../units/length.ts";
import { divide, equal, subtract } from "../../../units/rational.ts";

export type PanelKind = "plywood" | "MDF" | "particleboard" | "hardboard" | "OSB";

/** A panel product, whatever its thickness. */
export interface Panel {
  readonly kind: PanelKind;
  /** Whether the grain of its faces matters. */
  readonly grained: boolean;
  /** kg/m³ */
  readonly density: number;
  /** Where the density comes from. */
  readonly source: string;
  /** Modulus of elasticity along the grain of the faces, and across it, GPa. */
  readonly modulus: number;
  readonly across: number;
  readonly stiffnessSource: string;
}

/** Middle of the range given in the source. */
const middle = (low: number, high: number): number => (low + high) / 2;
const BOOK = "Wood Handbook FPL-GTR-190, Table 12-1, middle of the range, from memory";
const STRANDS = "Wood Handbook FPL-GTR-190, Table 12-3, middle of the range";
const LAY_UPS =
  "five lay-ups measured, J. Korean Wood Sci. Tech. 53(4), Table 3, middle; across the faces 0.4 of it, from memory";
const FIBRES = "for the design of shelves, European MDF association, section 11";
const CHIPS = "ANSI A208.1-1999, grade M-2, from memory";

export const PANELS: ReadonlyMap<PanelKind, Panel> = new Map(
  (
    [
      ["plywood", true, middle(400, 600), BOOK, middle(6.86, 8.98), 0.4 * middle(6.86, 8.98), LAY_UPS],
      ["MDF", false, middle(700, 900), BOOK, 2.5, 2.5, FIBRES],
      ["particleboard", false, middle(600, 800), BOOK, 2.25, 2.25, CHIPS],
      ["hardboard", false, middle(900, 1000), BOOK, middle(3.1, 5.52), middle(3.1, 5.52), BOOK],
      ["OSB", true, middle(510, 800), STRANDS, middle(4.41, 6.31), middle(1.92, 3.17), STRANDS],
    ] as const
  ).map(([kind, grained, density, source, modulus, across, stiffnessSource]) => [
    kind,
    { kind, grained, density, source, modulus, across, stiffnessSource },
  ]),
);

/** Plywood that is birch right through, kg/m³. From memory of mills' data sheets. */
const BIRCH_PLYWOOD_DENSITY = 680;

/** kg/m³ of a panel. Birch plywood sold in millimetres, or as Baltic, is birch right through; in inches only its faces are. */
export function panelDensity(kind: PanelKind, wood: string | null, named: Length | null, baltic: boolean): number {
  const metric = named !== null && divide(named, millimetres(1, 2)).d === 1n;
  if (kind === "plywood" && (baltic || metric) && wood?.includes("birch") === true) return BIRCH_PLYWOOD_DENSITY;
  return PANELS.get(kind)?.density ?? 0;
}

/** What a panel is called, what it measures, and on whose word. */
export interface PanelSize {
  readonly named: Length;
  readonly measures: Length;
  readonly source: string;
}

const THIN = "common practice: a plywood sheet is about 1/32 in thinner than its name, as PS 1 allows it to be";
const LABEL = "PS 1 performance category";
const AS_NAMED = "sold by its measure";

const mm = (tenths: number): Length => millimetres(tenths, 10);
const asNamed = (named: Length, source = AS_NAMED): PanelSize => ({ named, measures: named, source });
const thinner = (named: Length): PanelSize => ({ named, measures: subtract(named, inches(1, 32)), source: THIN });

const INCH_NAMES = [inches(1, 4), inches(3, 8), inches(1, 2), inches(5, 8), inches(3, 4), inches(1)];
const PLYWOOD: readonly PanelSize[] = [
  ...INCH_NAMES.map(thinner),
  ...[inches(11, 32), inches(15, 32), inches(19, 32), inches(23, 32)].map((name) => asNamed(name, LABEL)),
  ...[30, 40, 60, 65, 90, 120, 150, 180, 210, 240].map((t) => asNamed(mm(t))),
];
const COMPOSITE: readonly PanelSize[] = [
  ...[...INCH_NAMES, inches(1, 8)].map((name) => asNamed(name)),
  ...[25, 30, 32, 40, 60, 80, 90, 100, 120, 150, 160, 180, 190, 220, 250, 280, 300].map((t) => asNamed(mm(t))),
];
const STRAND: readonly PanelSize[] = [
  ...[inches(7, 16), inches(15, 32), inches(19, 32), inches(23, 32)].map((name) => asNamed(name)),
  ...[60, 80, 90, 110, 120, 150, 180, 220].map((t) => asNamed(mm(t))),
];

const sizesOf = (kind: PanelKind): readonly PanelSize[] =>
  kind === "plywood" ? PLYWOOD : kind === "OSB" ? STRAND : COMPOSITE;

/** The catalogue's entry for a panel of this name; undefined where it has none. */
export const panelSize = (kind: PanelKind, named: Length): PanelSize | undefined =>
  sizesOf(kind).find((size) => equal(size.named, named));
