import { bandIsDeducted } from "../../../findings/rules/band-is-deducted.ts";
import { bandNotOnEdge } from "../../../findings/rules/band-not-on-edge.ts";
import type { BandingDraft, Face } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { printDecimal, sayLength } from "../../../units/print-length.ts";
import { divide, less } from "../../../units/rational.ts";
import type { Band, Part } from "../../design.ts";
import { faceAxis, indexOf } from "../space.ts";
import type { MakingContext } from "./context.ts";
import { partsAt } from "./neighbours.ts";

/** A band is this thick where nothing is said. Common practice, no source. */
const USUAL = { inch: inches(2, 100), mm: millimetres(5, 10) } as const;
/** A thicker band is always deducted. Common practice, no source. */
const THIN = inches(1, 32);

/**
 * The bands of a part, ends before long edges: the order in which they are put on. A band is deducted from what is sawn where its
 * edge bounds a fit, where it is thick, or where the maker says so.
 */
export function bandsOf(
  part: Part,
  draft: BandingDraft,
  faces: readonly Face[],
  fitted: boolean,
  all: readonly Part[],
  context: MakingContext,
): readonly Band[] {
  const thickness = draft.thick ? context.positive(draft.thick, "the band") : USUAL[context.units];
  if (thickness === null) return [];
  const broad = faces.find((face) => faceAxis(face) === indexOf(part.axes.thickness));
  if (broad) {
    context.report(bandNotOnEdge(draft.at, { part: part.id, face: broad }));
    return [];
  }
  const item = `${draft.item ?? `${context.speciesOf(part) ?? "matching"} edging`}, ${sayBand(thickness, context.units)} thick`;
  const bands = [...new Set(faces)].map((edge): Band => {
    const fit = fitted || partsAt(edge, part, all).length > 0;
    const needed = fit || less(THIN, thickness);
    if (needed && draft.deducted?.value === false)
      context.report(
        bandIsDeducted(draft.deducted.at, { part: part.id, face: edge, thick: fit ? null : context.print(thickness) }),
      );
    return { edge, item, thickness, deducted: needed || draft.deducted?.value === true };
  });
  const isEnd = ({ edge }: Band): boolean => faceAxis(edge) === indexOf(part.axes.length);
  return [...bands.filter(isEnd), ...bands.filter((band) => !isEnd(band))];
}

/** Bands are sold by decimals: "0.02 in" rather than a fiftieth. */
export function sayBand(thickness: Length, units: "inch" | "mm"): string {
  const value = divide(thickness, units === "inch" ? inches(1) : millimetres(1));
  const decimal = printDecimal(value);
  const binary = units === "inch" && 64n % value.d === 0n;
  return binary || decimal === undefined
    ? sayLength(thickness, { units })
    : `${decimal} ${units === "inch" ? "in" : "mm"}`;
}
