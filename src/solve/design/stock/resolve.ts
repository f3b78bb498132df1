import type { Finding } from "../../../findings/finding.ts";
import { failed, type Outcome, outcome } from "../../../findings/outcome.ts";
import { planedThickerThanSold } from "../../../findings/rules/planed-thicker-than-sold.ts";
import type { StockDraft, Units } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { less, multiply, ZERO } from "../../../units/rational.ts";
import type { Stock } from "../../design.ts";
import { movementOf, panelStiffness, stiffnessOf } from "./behaviour.ts";
import { resolveBoards } from "./boards.ts";
import { type Evaluate, evaluateStock, type StockMeasures } from "./evaluated.ts";
import { paneLabel, planedTo, stockLabel } from "./label.ts";
import { PANELS, type Panel, panelDensity } from "./panels.ts";
import { usualSheet } from "./sheets.ts";
import { readSoldAs } from "./sold-as.ts";
import { density } from "./species.ts";
import { resolveThickness } from "./thickness.ts";
import { resolveWood } from "./wood.ts";

/**
 * A stock as this plan uses it. Formulas are worked out by `evaluate`, which tells the maker itself where it cannot.
 * No value where the thickness is not known or a measure makes no sense.
 */
export function resolveStock(draft: StockDraft, evaluate: Evaluate, units: Units): Outcome<Stock> {
  const { measures, findings } = evaluateStock(draft, evaluate);
  if (measures === undefined) return failed(findings);
  const glass = draft.material !== undefined;
  const sold = draft.soldAs === undefined || glass ? null : readSoldAs(draft.soldAs.value, units);
  const { wood, findings: ofWood } = resolveWood(draft, sold);
  const { thickness, bought, findings: ofThickness } = resolveThickness(draft, measures, sold, units);
  const all = [...findings, ...ofWood, ...ofThickness];
  if (thickness === undefined) return failed(all);
  const panel = sold?.kind === "panel" ? sold : null;
  const softwood = wood.species?.softwood ?? sold?.kind === "dressed";
  const common = {
    name: draft.name,
    at: draft.at,
    label: glass
      ? paneLabel(draft, thickness, units)
      : stockLabel(draft, wood, sold?.kind === "rough" ? planedTo(thickness, measures, units) : null),
    softwood,
    thickness,
    price: draft.price?.value ?? null,
    ...(draft.waste && { waste: draft.waste.value / 100 }),
    ...(measures.between && { between: measures.between }),
    ...(measures.measured && { measured: true as const }),
    ...(bought && { bought }),
    ...(draft.moisture && { moisture: draft.moisture.value }),
    ...(draft.goodFaces && { goodFaces: draft.goodFaces.value }),
  };
  if (glass) return outcome({ ...common, ...PANE }, all);
  if (panel !== null || draft.sheet !== undefined || draft.sheets !== undefined) {
    const usual = measures.sheet ?? panel?.sheet ?? usualSheet(units, panel?.baltic ?? false);
    const sizes = measures.sheets?.map(({ wide, long, price }) => ({ width: wide, length: long, price }));
    const largest = sizes?.reduce((a, b) => (less(area(a), area(b)) ? b : a));
    const size = largest ? { wide: largest.width, long: largest.length } : usual;
    return outcome(
      {
        ...common,
        form: "sheet",
        species: wood.called,
        width: null,
        soldWidth: size.wide,
        soldLengths: [size.long],
        ...(sizes && { sold: sizes }),
        ...onHandOf(draft, size.wide),
        assumed: false,
        density: panelDensity(
          panel?.panel.kind ?? "plywood",
          wood.called,
          panel?.named ?? null,
          panel?.baltic ?? false,
        ),
        roughThickness: null,
        stiffness: panelStiffness(panel?.panel ?? (PANELS.get("plywood") as Panel)),
        ...(panel?.panel.grained === false ? { grainless: true } : {}),
      },
      all,
    );
  }
  const boards = resolveBoards(measures, sold, softwood, units);
  const priced = measures.soldIn?.some(({ price }) => price !== null) ? measures.soldIn : null;
  return outcome(
    {
      ...common,
      ...boards,
      ...(priced && { sold: priced.map(({ long, price }) => ({ width: boards.soldWidth, length: long, price })) }),
      ...onHandOf(draft, boards.soldWidth),
      form: "board",
      species: wood.species?.name ?? null,
      density: density(wood.species, softwood),
      movement: movementOf(wood.species, softwood, wood.quartered),
      stiffness: stiffnessOf(wood.species, softwood),
      roughThickness: sold?.kind === "rough" ? sold.thickness : null,
    },
    [...all, ...tooWide(draft, measures, boards.soldWidth, units)],
  );
}

/** kg/m³: soda-lime glass, EN 572-1. It is neither turned by a grain nor cut from anything that has a size here. */
const PANE = {
  form: "pane",
  species: null,
  softwood: false,
  grainless: true,
  width: null,
  soldWidth: ZERO,
  soldLengths: [],
  assumed: false,
  density: 2500,
  roughThickness: null,
} as const;

const area = ({ width, length }: { readonly width: Length; readonly length: Length }): Length =>
  multiply(width, length);

/** What lies in the workshop: where it does not say how wide, as wide as it is sold. */
const onHandOf = ({ onHand }: StockDraft, width: Length): Pick<Stock, "onHand"> =>
  onHand === undefined
    ? {}
    : { onHand: onHand.map(({ at, wide, long, count }) => ({ at, width: wide ?? width, length: long, count })) };

function tooWide(draft: StockDraft, { planedWide }: StockMeasures, sold: Length, units: Units): readonly Finding[] {
  if (planedWide === null || !less(sold, planedWide)) return [];
  return [planedThickerThanSold(draft.planedWide?.at ?? draft.at, { planed: planedWide, sold, way: "wide", units })];
}
