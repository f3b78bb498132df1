import { cutterDoesNotExist } from "../../../findings/rules/cutter-does-not-exist.ts";
import { inches, type Length, millimetres, TOLERANCE, toMillimetres } from "../../../units/length.ts";
import { absolute, compare, less, min, rational, subtract } from "../../../units/rational.ts";
import type { Feature, Units } from "../../design.ts";
import type { Rule, Verdict } from "./check.ts";

const sixteenths = (...list: readonly number[]): readonly Length[] => list.map((n) => inches(n, 16));
const whole = (...list: readonly number[]): readonly Length[] => list.map((n) => millimetres(n));

/** Bits that are commonly sold; the odd ones are for sheets of those thicknesses. Common practice, no source. */
const SOLD: Readonly<Record<"mortise" | "groove", Readonly<Record<Units, readonly Length[]>>>> = {
  mortise: {
    inch: sixteenths(2, 3, 4, 5, 6, 7, 8, 10, 12),
    mm: whole(4, 5, 6, 8, 10, 12, 14, 15, 16, 18, 20),
  },
  groove: {
    inch: [...sixteenths(1, 2, 3, 4, 5, 6, 7, 8, 10, 12, 14, 16), inches(7, 32), inches(15, 32), inches(23, 32)],
    mm: whole(2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 15, 16, 18, 19, 20, 22, 24),
  },
};

/** Whether there is a usual router bit as wide as a slot. */
export const isSoldForGrooves = (width: Length, units: Units): boolean =>
  SOLD.groove[units].some((bit) => compare(absolute(subtract(bit, width)), rational(TOLERANCE)) <= 0);

type BoxFeature = Extract<Feature, { readonly size: unknown }>;
const CUT: readonly BoxFeature["kind"][] = ["mortise", "groove", "dado"];

/** The narrow side of a cut, which its bit makes. */
const widthOf = ({ size }: BoxFeature): Length => min(size[0], size[1]);

/** Mortises, grooves and dados are as wide as a bit; what is wider than the widest is cut in passes, and always holds. */
export const cutterDoesNotExistRule: Rule = ({ design, print }) => {
  const sheets = design.stock.flatMap(({ form, thickness }) => (form === "sheet" && thickness ? [thickness] : []));
  return design.parts.flatMap((part) => {
    const cuts = part.features.filter((each): each is BoxFeature => "size" in each && CUT.includes(each.kind));
    const seen = new Set<string>();
    return cuts.flatMap((cut): readonly Verdict[] => {
      const wide = widthOf(cut);
      const mark = `${cut.kind} ${wide.n} ${wide.d}`;
      if (seen.has(mark)) return [];
      seen.add(mark);
      const mortise = cut.kind === "mortise";
      const owned = mortise ? design.tools?.mortiseBits : design.tools?.routerBits;
      const bits = [...(owned ?? SOLD[mortise ? "mortise" : "groove"][design.units])].sort(compare);
      const off = (bit: Length): Length => absolute(subtract(bit, wide));
      const [first, ...others] = bits;
      if (first === undefined) return [];
      const nearest = others.reduce((best, bit) => (less(off(bit), off(best)) ? bit : best), first);
      const fits = bits.some((bit) => compare(off(bit), rational(TOLERANCE)) <= 0) || less(bits.at(-1) as Length, wide);
      const check = {
        rule: "cutter-does-not-exist",
        subject: part.id,
        value: toMillimetres(wide),
        limit: toMillimetres(fits && less(bits.at(-1) as Length, wide) ? wide : nearest),
        unit: "mm",
        basis: owned ? "the plan's tools" : "common practice, no source",
      };
      if (fits) return [{ check: { ...check, verdict: "holds" } }];
      const below = bits.filter((bit) => less(bit, wide)).at(-1);
      const above = bits.find((bit) => less(wide, bit));
      const near = [below, above].flatMap((bit) => (bit ? [print(bit)] : []));
      const sheet = sheets.some((thick) => compare(absolute(subtract(thick, wide)), rational(TOLERANCE)) <= 0);
      const args = { part: part.id, cut: cut.kind, wide: print(wide), near, owned: owned !== undefined, sheet };
      const severity = mortise ? "warning" : "advice";
      return [{ check: { ...check, verdict: "warns" }, finding: cutterDoesNotExist(part.at, args, { severity }) }];
    });
  });
};
