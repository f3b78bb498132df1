import type { Finding } from "../../findings/finding.ts";
import { andThen, hasErrors, type Outcome } from "../../findings/outcome.ts";
import { isEmpty } from "../../geometry/index.ts";
import type { Draft, Formula } from "../../parse/draft.ts";
import type { Length } from "../../units/length.ts";
import { max, rational, ZERO } from "../../units/rational.ts";
import type { Box, Choice, Design, Part } from "../design.ts";
import { withDrills } from "./boring/bored.ts";
import type { Entry } from "./expand/entry.ts";
import { lyingLoose } from "./expand/loose.ts";
import { withMirroredJoints } from "./expand/mirrored-joints.ts";
import { finishFittings } from "./hardware/fit.ts";
import { holding } from "./hold/holding.ts";
import { cutJoints } from "./joinery/join.ts";
import { slantingOn } from "./joinery/slanting.ts";
import { Bench } from "./joinery/work.ts";
import { finishJoints } from "./joints.ts";
import { judge, vanished } from "./judge.ts";
import { makingContext } from "./making/context.ts";
import { withMaking } from "./making/making.ts";
import { roughOf } from "./making/rough.ts";
import { applyMeasured } from "./measured.ts";
import { isMirrored, mirrorDesign } from "./mirrored.ts";
import { onePerPlace } from "./one-per-place.ts";
import { finishPart, middleOf, reshape, shapedPiece } from "./parts.ts";
import { placing } from "./placed.ts";
import { aboutMarks } from "./placing/between-marks.ts";
import { applySettings } from "./settings.ts";
import { allSizes, reportRanges } from "./sizes/all-sizes.ts";
import { evaluateLength } from "./sizes/evaluate.ts";
import { triple } from "./space.ts";
import { finishesOf } from "./use/finish.ts";
import { useOf } from "./use/use-of.ts";
import { wallOf } from "./use/wall.ts";
import { wishesOf } from "./use/wishes.ts";
import { workshopOf } from "./workshop.ts";

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
  const solved = andThen(andThen(set, holding), solve);
  const findings = onePerPlace(solved.findings);
  return solved.value && isMirrored(draft) ? { value: mirrorDesign(solved.value), findings } : { ...solved, findings };
}

function solve(written: Draft): Outcome<Design> {
  const draft = withMirroredJoints(written);
  const findings: Finding[] = [...aboutMarks(draft)];
  const report = (finding: Finding): void => {
    findings.push(finding);
  };
  const placed = placing(draft, report);
  const {
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
  } = placed;

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
  const bodyOf = (entry: Entry): Box | null => bench.pieces.get(entry.id)?.body ?? null;
  // A part that was rounded takes with it what lies against it: the gap may show between others.
  const leftOpen = triple((axis) => wood.map((entry) => places.leftOver(entry, axis)).reduce(max, ZERO));
  const loose = lyingLoose(draft.joints, directory);
  const jointed = cutJoints(
    draft.joints,
    bench,
    joinery,
    {
      directory,
      bodyOf,
      leftOver: (_, axis) => leftOpen[axis],
      slanting: slantingOn(bench),
      loose: (id) => loose.has(id),
      report,
      print,
    },
    () => reshape(bench, pieces, context),
  );

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
    ...{ items, movesBy },
    hangs: joinery.hangs,
    reaches: joinery.reaches,
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
  const wall = wallOf(draft.wall, draft.units, measure);
  const fittings = finishFittings(draft.fittings, {
    ...{ wall, directory, items, measure, count, report, print, printItem },
    part: (id) => byId.get(id),
  });
  const result: Design = {
    title: draft.title.value,
    subtitle: draft.subtitle?.value ?? "",
    by: draft.by?.value ?? "",
    summary: draft.summary?.value ?? "",
    edition: draft.edition?.value ?? "",
    ...(draft.credits && { credits: draft.credits.value }),
    ...(draft.rights && { rights: draft.rights.value }),
    ...(draft.support && { support: draft.support.value }),
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
    ...(expansion.apart.size > 0 && { apart: [...expansion.apart] }),
    ...(draft.wall && { wall }),
    ...useOf(draft, { directory, measure, report }),
    rough: roughOf(draft.rough, making),
    ...finishesOf(
      draft,
      directory,
      finished.filter((part) => stock.get(part.stock)?.form !== "pane").map(({ id }) => id),
    ),
    ...wishesOf(draft, directory, finished),
    ...workshopOf(draft),
  };
  const draftOf = (id: string) => directory.byId.get(id)?.draft;
  if (!hasErrors(findings)) findings.push(...judge(result, outside, draft, draftOf, print));
  return hasErrors(findings) ? { findings } : { value: withDrills(result), findings };
}

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
