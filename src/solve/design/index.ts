import type { Finding } from "../../findings/finding.ts";
import { andThen, hasErrors, type Outcome } from "../../findings/outcome.ts";
import { unknownStock } from "../../findings/rules/unknown-stock.ts";
import { nearest } from "../../findings/suggest.ts";
import { isEmpty } from "../../geometry/index.ts";
import type { BoardSize, Draft, Formula } from "../../parse/draft.ts";
import { type Length, UNITS_PER_INCH, UNITS_PER_MM } from "../../units/length.ts";
import { printLength } from "../../units/print-length.ts";
import { max, rational, ZERO } from "../../units/rational.ts";
import { tellLength } from "../../units/tell-length.ts";
import type { Box, Choice, Design, Part, Stock } from "../design.ts";
import { createDirectory, type Directory } from "./expand/directory.ts";
import type { Entry } from "./expand/entry.ts";
import { expand } from "./expand/expand.ts";
import { finishFittings } from "./hardware/fit.ts";
import { createItems } from "./hardware/items.ts";
import { boxMass, hanging } from "./hinges/hanging.ts";
import { cutJoints } from "./joinery/join.ts";
import { slantingOn } from "./joinery/slanting.ts";
import { Bench } from "./joinery/work.ts";
import { finishJoints } from "./joints.ts";
import { judge, vanished } from "./judge.ts";
import { blankBox } from "./lengthening.ts";
import { makingContext } from "./making/context.ts";
import { withMaking } from "./making/making.ts";
import { roughOf } from "./making/rough.ts";
import { applyMeasured } from "./measured.ts";
import { isMirrored, mirrorDesign } from "./mirrored.ts";
import { onePerPlace } from "./one-per-place.ts";
import { finishPart, middleOf, shapedPiece } from "./parts.ts";
import { createPlaces, type Places } from "./placing/places.ts";
import { applySettings } from "./settings.ts";
import { allSizes, reportRanges } from "./sizes/all-sizes.ts";
import { createCells } from "./sizes/cells.ts";
import { evaluateLength, evaluateNumber } from "./sizes/evaluate.ts";
import { createNames } from "./sizes/names.ts";
import { extent, triple } from "./space.ts";
import { resolveStock } from "./stock/resolve.ts";
import { useOf } from "./use/use-of.ts";

export interface DesignOptions {
  /** Sizes that replace the plan's own, as written: "42", "3 1/2 in". */
  readonly sizes: ReadonlyMap<string, string>;
  /** Thicknesses that the reader measured, by stock, as written: "0.703", "45/64", "17.9 mm", "7.03 for 10". */
  readonly measured?: ReadonlyMap<string, string>;
}

const NONE: ReadonlyMap<string, string> = new Map();

/** Draft to Design: sizes worked out, parts placed, shaped and joined; and all of it mirrored where an option says so. */
export function design(draft: Draft, options: DesignOptions): Outcome<Design> {
  const set = andThen(applySettings(draft, options.sizes), (sized) => applyMeasured(sized, options.measured ?? NONE));
  const solved = andThen(set, solve);
  const findings = onePerPlace(solved.findings);
  return solved.value && isMirrored(draft) ? { value: mirrorDesign(solved.value), findings } : { ...solved, findings };
}

function solve(draft: Draft): Outcome<Design> {
  const findings: Finding[] = [];
  const report = (finding: Finding): void => {
    findings.push(finding);
  };
  const unit = rational(draft.units === "inch" ? UNITS_PER_INCH : UNITS_PER_MM);
  const print = (length: Length): string => tellLength(length, draft.units);
  const printItem = (length: Length): string => {
    const { text } = printLength(length, { units: draft.units, style: "typographic" });
    return draft.units === "inch" ? `${text} in` : `${text} mm`;
  };
  const cells = createCells(report);
  let parts: { directory: Directory; places: Places; boardSize: (e: Entry, size: BoardSize) => Length | null } | null =
    null;
  const names = createNames({ draft, unit, cells, report, parts: () => parts });
  const measure = (formula: Formula): Length | null => evaluateLength(formula, names.scope(null));

  const stock = new Map<string, Stock | null>();
  for (const [name, each] of draft.stock) {
    const resolved = resolveStock(each, measure, draft.units);
    findings.push(...resolved.findings);
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
  const items = createItems({ units: draft.units, hardware: draft.hardware, measure, report, printItem });
  const joinery = {
    items,
    hangs: hanging(draft.joints, directory, (id) => bodyMass(id)),
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

  const outside = outsideBox(draft, names.outside);
  const sizes = allSizes(draft, names.size, names.outside, unit);
  reportRanges(draft, sizes, measure, report, print);

  const context = {
    directory,
    places,
    outside,
    measure: (entry: Entry, formula: Formula) => evaluateLength(formula, names.scope(entry)),
    report,
    print,
  };
  const wood = expansion.entries.filter((entry) => !entry.draft.space);
  const pieces = wood.flatMap((entry) => shapedPiece(entry, context) ?? []);
  // A space that nothing lies in is looked at all the same: what is said of it may be wrong.
  for (const entry of expansion.entries) if (entry.draft.space) places.box(entry);
  const bench = new Bench(pieces);
  /** kg, before anything is cut out of it. */
  const bodyMass = (id: string): number => {
    const piece = bench.pieces.get(id);
    return piece ? boxMass(piece.body, stockOf(piece.entry)?.density ?? 0) : 0;
  };
  const bodyOf = (entry: Entry): Box | null => bench.pieces.get(entry.id)?.body ?? null;
  // A part that was rounded takes with it what lies against it: the gap may show between others.
  const leftOpen = triple((axis) => wood.map((entry) => places.leftOver(entry, axis)).reduce(max, ZERO));
  const jointed = cutJoints(draft.joints, bench, joinery, {
    directory,
    bodyOf,
    leftOver: (_, axis) => leftOpen[axis],
    slanting: slantingOn(bench),
    report,
    print,
  });

  const shaped = [...bench.pieces.values()].flatMap((piece): readonly Part[] => {
    const own = stockOf(piece.entry);
    return own ? [finishPart(piece, own, places, report, print)] : [];
  });
  const making = makingContext(stock, measure, { units: draft.units, directory, print, report });
  const finished = withMaking(shaped, making);
  findings.push(...vanished(finished));
  if (finished.some((part) => isEmpty(part.solid))) return { findings };
  const byId = new Map(finished.map((part) => [part.id, part]));
  const centre = middleOf(finished);
  const joints = finishJoints(jointed, byId, {
    items,
    hangs: joinery.hangs,
    units: draft.units,
    measure,
    count,
    directory,
    report,
    print,
    printItem,
    centre,
    member: (id) => {
      const part = byId.get(id) as Part;
      const piece = bench.piece(id);
      const wood = stock.get(part.stock);
      const { solid, body, features } = part;
      const { frame, placement } = piece;
      return { id, solid, body, features, frame, placement, softwood: wood?.softwood ?? true };
    },
  });
  const fittings = finishFittings(draft.fittings, {
    ...{ directory, items, measure, report, print, printItem },
    part: (id) => byId.get(id),
  });
  const result: Design = {
    title: draft.title.value,
    subtitle: draft.subtitle?.value ?? "",
    by: draft.by?.value ?? "",
    summary: draft.summary?.value ?? "",
    edition: draft.edition?.value ?? "",
    units: draft.units,
    precision: draft.precision.value,
    fits: (draft.fits ?? draft.precision).value,
    kerf: draft.kerf,
    ...(draft.choices.length > 0 && { choices: choicesOf(draft) }),
    sizes,
    stock: [...stock.values()].flatMap((each) => each ?? []),
    parts: finished,
    joints,
    fittings,
    groups: expansion.groups,
    ...useOf(draft, { directory, measure, report }),
    rough: roughOf(draft.rough, making),
  };
  if (!hasErrors(findings)) findings.push(...judge(result, outside, draft, print));
  return hasErrors(findings) ? { findings } : { value: result, findings };
}

const wholeNumber = (value: { n: bigint; d: bigint } | null): number | null =>
  value && value.d === 1n && value.n > 0n && value.n <= 1000n ? Number(value.n) : null;

const choicesOf = ({ choices, chosen }: Draft): readonly Choice[] =>
  choices.map(({ name, ask, options, default: usual }) => ({
    name,
    ask: ask?.value ?? "",
    option: chosen.get(name) ?? usual,
    options,
  }));

/** The outside as a box, where all three of its sizes are given. */
function outsideBox(draft: Draft, outside: (face: "right" | "back" | "top") => Length | null): Box | null {
  if (!draft.outside.width || !draft.outside.depth || !draft.outside.height) return null;
  const [x, y, z] = [outside("right"), outside("back"), outside("top")];
  const zero = rational(0);
  return x && y && z && { low: [zero, zero, zero], high: [x, y, z] };
}
