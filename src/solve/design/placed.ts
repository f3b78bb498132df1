import type { Finding } from "../../findings/finding.ts";
import { unknownStock } from "../../findings/rules/unknown-stock.ts";
import { nearest } from "../../findings/suggest.ts";
import type { BoardSize, Draft, Formula } from "../../parse/draft.ts";
import { type Length, UNITS_PER_INCH, UNITS_PER_MM } from "../../units/length.ts";
import { type Rational, rational } from "../../units/rational.ts";
import { sayMade } from "../../units/say-made.ts";
import { tellLength } from "../../units/tell-length.ts";
import type { Box, Stock } from "../design.ts";
import { createDirectory, type Directory } from "./expand/directory.ts";
import type { Entry } from "./expand/entry.ts";
import { expand } from "./expand/expand.ts";
import { createItems } from "./hardware/items.ts";
import { boxMass, hanging, reaching } from "./hinges/hanging.ts";
import { blankBox } from "./lengthening.ts";
import { createPlaces, type Places } from "./placing/places.ts";
import { createCells } from "./sizes/cells.ts";
import { evaluateLength, evaluateNumber } from "./sizes/evaluate.ts";
import { createNames } from "./sizes/names.ts";
import { extent } from "./space.ts";
import { resolveStock } from "./stock/resolve.ts";
import { shareOfMovement } from "./use/seasons.ts";
import { siteOf } from "./use/site.ts";

/** A plan as places: its names, stock and parts, and where each part is once somebody asks. */
export type Placing = ReturnType<typeof placing>;

/** What cannot be read of stock and counts is told at once, what is wrong with a place when it is asked for. `unrounded`: formulas do not round measures. */
export function placing(draft: Draft, report: (finding: Finding) => void, unrounded = false) {
  const unit = rational(draft.units === "inch" ? UNITS_PER_INCH : UNITS_PER_MM);
  const print = (length: Length): string => tellLength(length, draft.units);
  const printItem = (length: Length): string => sayMade(length, draft.units);
  const cells = createCells(report);
  let parts: { directory: Directory; places: Places; boardSize: (e: Entry, size: BoardSize) => Length | null } | null =
    null;
  const stock = new Map<string, Stock | null>();
  const names = createNames({
    ...{ draft, unit, unrounded, cells, report },
    ofStock: (name, size) => stock.get(name)?.[size] ?? null,
    parts: () => parts,
  });
  const measure = (formula: Formula): Length | null => evaluateLength(formula, names.scope(null));

  for (const [name, each] of draft.stock) {
    const resolved = resolveStock(each, measure, draft.units);
    for (const finding of resolved.findings) report(finding);
    stock.set(name, resolved.value ?? null);
  }
  const expansion = expand(draft, (formula) => evaluateNumber(formula, names.scope(null)), report);
  const directory = createDirectory(expansion, report);
  const stockOf = (entry: Entry): Stock | null =>
    cells.get(`stock ${entry.id}`, entry.id, entry.at, () => {
      const { madeOf } = entry.draft;
      if (!madeOf) return null;
      const found = stock.get(madeOf.value);
      if (found === undefined)
        report(
          unknownStock(madeOf.at, {
            name: madeOf.value,
            nearest: nearest(madeOf.value, [...stock.keys()]),
            known: [...stock.keys()],
          }),
        );
      return found ?? null;
    });
  const places = createPlaces({
    draft,
    directory,
    cells,
    stockOf,
    outside: names.outside,
    scope: names.scope,
    report,
    print,
  });
  const count = (formula: Formula): number | null => wholeNumber(evaluateNumber(formula, names.scope(null)));
  const site = siteOf(draft.site);
  const movesBy = (id: string): Rational | null => {
    const entry = directory.byId.get(id);
    const own = entry && stockOf(entry);
    return own ? shareOfMovement(own, site) : null;
  };
  const items = createItems({ units: draft.units, hardware: draft.hardware, measure, report, printItem });
  /** kg, before anything is cut out of it. */
  const mass = (id: string): number => {
    const entry = directory.byId.get(id);
    const [box, own] = [entry && places.box(entry), entry && stockOf(entry)];
    return box && own ? boxMass(box, own.density) : 0;
  };
  const hangsWith = hanging(draft.joints, directory);
  const boxOf = (id: string): Box | null => {
    const entry = directory.byId.get(id);
    return entry ? places.box(entry) : null;
  };
  const joinery = {
    items,
    hangsWith,
    hangs: (id: string): number => hangsWith(id).reduce((so, each) => so + mass(each), 0),
    reaches: reaching(hangsWith, boxOf),
    movesBy,
    units: draft.units,
    precision: draft.precision.value,
    measure,
    count,
    report,
    print,
    printItem,
  };
  const boardSize = (entry: Entry, size: BoardSize): Length | null =>
    cells.get(`board ${entry.id} ${size}`, `${entry.id}.${size}`, entry.at, () => {
      const frame = places.frame(entry);
      const box = frame && blankBox(entry, draft.joints, directory, places, joinery);
      return frame && box && extent(box, frame[size]);
    });
  parts = { directory, places, boardSize };
  return {
    unit,
    print,
    printItem,
    names,
    measure,
    count,
    stock,
    stockOf,
    directory,
    places,
    joinery,
    expansion,
    movesBy,
    items,
  };
}

const wholeNumber = (value: { n: bigint; d: bigint } | null): number | null =>
  value && value.d === 1n && value.n > 0n && value.n <= 1000n ? Number(value.n) : null;
