import { boltTooShort } from "../../../findings/rules/bolt-too-short.ts";
import { screwSizeUnknown } from "../../../findings/rules/screw-size-unknown.ts";
import { inches, type Length } from "../../../units/length.ts";
import { compare, less, min } from "../../../units/rational.ts";
import { BOLT_LENGTHS, type BoltSize, INCH_BOLTS, METRIC_BOLTS } from "./hardware.ts";
import { type FasteningContext, options, type Site } from "./site.ts";

/** The diameter asked for, or by the thinner wood: 1/4 in under 1 1/4, 5/16 under 2, 3/8 above (common practice, no source). Null: reported. */
export function boltSizeFor({ draft, head, hold }: Site, context: FasteningContext): BoltSize | null {
  const sizes = context.units === "inch" ? INCH_BOLTS : METRIC_BOLTS;
  const said = options(draft);
  const diameter = said.diameter ? context.measure(said.diameter) : undefined;
  if (diameter === null) return null;
  const thin = [head, hold].map(({ body, frame: { thickness: i } }) => {
    const [low, high] = [body.low[i], body.high[i]];
    return { n: high.n * low.d - low.n * high.d, d: low.d * high.d };
  });
  const least = thin.reduce(min);
  const usual = less(least, inches(5, 4)) ? 0 : less(least, inches(2)) ? 1 : 2;
  const found = diameter ? sizes.find(({ rod }) => compare(rod, diameter) === 0) : sizes[usual];
  if (found) return found;
  context.report(
    screwSizeUnknown(said.at ?? draft.at, { sold: sizes.map(({ name }) => name), metric: context.units === "mm" }),
  );
  return null;
}

/** The length asked for, or the shortest sold from `least` on. Null where it is shorter than `least`: reported, with what the bolt goes through. */
export function boltLengthFor(site: Site, least: Length, passes: string, context: FasteningContext): Length | null {
  const { draft } = site;
  const said = options(draft);
  const sold = BOLT_LENGTHS[context.units === "inch" ? "inch" : "mm"];
  const asked = said.length ? context.measure(said.length) : undefined;
  if (asked === null) return null;
  const length = asked ?? sold.find((each) => compare(least, each) <= 0) ?? null;
  if (length && compare(least, length) <= 0) return length;
  context.report(
    boltTooShort(said.at ?? draft.at, {
      length: context.print(length ?? (sold.at(-1) as Length)),
      needs: context.print(least),
      passes,
      asked: asked !== undefined,
    }),
  );
  return null;
}
