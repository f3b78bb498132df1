import { inches, type Length } from "../../../units/length.ts";
import { compare, type Rational, rational } from "../../../units/rational.ts";
import { readLength } from "../../../units/read-measure.ts";
import { scanNumber } from "../../../units/scan-number.ts";
import { dressedSize } from "./lumber.ts";
import { PANELS, type Panel, type PanelKind, type PanelSize, panelSize } from "./panels.ts";
import { QUARTERS } from "./rough.ts";
import { type SheetSize, sheetCalled } from "./sheets.ts";
import { readWords, type Words } from "./words.ts";

/** What the words of the shop mean. Words that the catalogue does not know are in `unknown`: with them the size is not certain. */
export type SoldAs = Words &
  (
    | {
        readonly kind: "dressed";
        readonly thickness: Length;
        readonly width: Length;
        /** Where the text gives one: `2x4x8`. */
        readonly length: Length | null;
      }
    | {
        readonly kind: "rough";
        readonly thickness: Length;
        /** What it is commonly planed to; null where there is no custom. */
        readonly finished: Length | null;
      }
    | {
        readonly kind: "panel";
        readonly panel: Panel;
        /** Thickness in its name; null where none is given. */
        readonly named: Length | null;
        readonly size: PanelSize | null;
        /** Sheet size in the text; null where none is given. */
        readonly sheet: SheetSize | null;
        /** The plywood of birch right through that is sold in square sheets. */
        readonly baltic: boolean;
      }
  );

const NUMBER = "(?:\\d+[ -])?\\d+/\\d+|\\d+(?:\\.\\d+)?";
const BY = "\\s*(?:x|by)\\s*";
const UNIT = '\\s*(?:mm|cm|inches|inch|in\\b|["″”])?';

const DRESSED = new RegExp(
  `^(${NUMBER})${UNIT}${BY}(${NUMBER})${UNIT}(?:${BY}(\\d+)\\s*(ft\\b|feet\\b|')?)?(?=[\\s,]|$)`,
);
const IN_QUARTERS = /^(\d+)\/4(?=[\s,]|$)/;
const ROUGH = new RegExp(`(${NUMBER})(${UNIT})[\\s,]+rough(?:[ -]sawn)?(?=[\\s,]|$)`);
/** "35 mm ash": a board by its thickness, as wood is sold where it is measured in millimetres. */
const BOARD = /^(\d+(?:\.\d+)?)(\s*(?:mm|cm))(?=[\s,]|$)(?!\s*x)/;
const SHEET = new RegExp(`(\\d+)\\s*(?:mm|in\\b|ft\\b|['"])?${BY}(\\d+)\\s*(?:mm|in\\b|ft\\b|['"])?(?=[\\s,]|$)`);
const THICKNESS = new RegExp(`(?<![\\w/.])(${NUMBER})(${UNIT})(?![\\w/.])`);

/** What makes a text the name of a panel. The longer words stand before their own beginnings. */
const PANEL_WORDS: readonly (readonly [RegExp, PanelKind])[] = [
  [/\bmdf\b|\bmedium[ -]density fib(?:re|er) ?board\b/, "MDF"],
  [/\bparticle ?board\b|\bchip ?board\b|\bmelamine\b/, "particleboard"],
  [/\bhard ?board\b/, "hardboard"],
  [/\bosb\b|\boriented strand board\b/, "OSB"],
  [/\bply ?wood\b|\bply\b|\bbaltic(?= birch\b)/, "plywood"],
];

const number = (text: string): Rational => {
  const found = scanNumber(text.replace("-", " "), 0);
  return found === undefined || found === "zero" ? rational(0) : found.value;
};

/**
 * Reads what a maker says in a shop: `2x4`, `2 by 4 pine`, `4/4`, `8/4 white oak`, `26 rough`, `3/4 birch plywood`, `18 mm MDF`.
 * A bare number is in the plan's units; a fraction is inches. Null where none of the three kinds can be made out.
 */
export function readSoldAs(text: string, units: "inch" | "mm" = "inch"): SoldAs | null {
  const plain = text.toLowerCase().replaceAll("×", "x").replaceAll("⁄", "/").replace(/\s+/g, " ").trim();
  return readPanel(plain, units) ?? readDressed(plain) ?? readRough(plain, units);
}

function readPanel(text: string, units: "inch" | "mm"): SoldAs | null {
  const word = PANEL_WORDS.find(([pattern]) => pattern.test(text));
  const panel = word && PANELS.get(word[1]);
  if (word === undefined || panel === undefined) return null;
  let rest = text.replace(word[0], " ");
  const [sheetText, wide, long] = SHEET.exec(rest) ?? [];
  const sheet = (sheetText !== undefined && sheetCalled(number(wide ?? ""), number(long ?? ""))) || null;
  if (sheet !== null && sheetText !== undefined) rest = rest.replace(sheetText, " ");
  const [thickText, value, unit] = THICKNESS.exec(rest) ?? [];
  if (thickText !== undefined) rest = rest.replace(thickText, " ");
  const named = value === undefined ? null : measure(value, unit ?? "", units);
  const size = (named && panelSize(panel.kind, named)) ?? null;
  return { kind: "panel", panel, named, size, sheet, baltic: /\bbaltic\b/.test(text), ...readWords(rest) };
}

function readDressed(text: string): SoldAs | null {
  const [all, a, b, long, feet] = DRESSED.exec(text) ?? [];
  if (all === undefined || a === undefined || b === undefined || /mm|cm/.test(all)) return null;
  const size = dressedSize(number(a), number(b));
  if (size === undefined) return null;
  const length = long === undefined ? null : soldLength(number(long), feet !== undefined);
  return { kind: "dressed", ...size, length, ...readWords(text.slice(all.length)) };
}

/** The third number of `2x4x8`: feet up to 24, inches above. */
const soldLength = (value: Rational, feet: boolean): Length =>
  inches(feet || compare(value, rational(24)) <= 0 ? value.n * 12n : value.n);

function readRough(text: string, units: "inch" | "mm"): SoldAs | null {
  const [all, quarters] = IN_QUARTERS.exec(text) ?? [];
  if (all !== undefined) {
    const row = QUARTERS.find((q) => q.quarters === Number(quarters));
    if (row === undefined) return null;
    return { kind: "rough", thickness: row.rough, finished: row.finished, ...readWords(text.slice(all.length)) };
  }
  const [said, value, unit] = ROUGH.exec(text) ?? BOARD.exec(text) ?? [];
  if (said === undefined || value === undefined) return null;
  const thickness = measure(value, unit ?? "", units);
  return thickness && { kind: "rough", thickness, finished: null, ...readWords(text.replace(said, " ")) };
}

/** A thickness as written; a bare fraction is inches whatever the plan's units. */
const measure = (value: string, unit: string, units: "inch" | "mm"): Length | null =>
  readLength(`${value}${unit}`, value.includes("/") ? "inch" : units) ?? null;
