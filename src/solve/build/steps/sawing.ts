import type { Blank, CutLine } from "../../build.ts";
import { makingOf } from "../../design/making/plain.ts";
import { unplaned } from "../../design/stock/label.ts";
import type { Part, Stock } from "../../design.ts";
import { sameBoards, sharersOf } from "../cut-list/same-boards.ts";
import { capital, type StepDraft, series, type Work } from "./draft.ts";
import { laterToken, waits, waitsInWood } from "./later.ts";
import { SAW_CAUTION, step } from "./making-step.ts";
import { sawnTogether, wholeTexts } from "./whole-pieces.ts";
import { groupedBy, ownKey, partsIn } from "./wishes/own-key.ts";
import { counted, cutSize, sized } from "./words/cutting.ts";
import { woodOf } from "./words/wood.ts";

/** Minutes for each blank (common practice, no source). */
const BLANK = 4;

const MARK = {
  part: "Write its mark on each part as soon as it is cut. Cut parts of one length against one stop.",
  piece: "Write its mark on each piece as soon as it is cut. Cut parts of one length against one stop.",
} as const;
const RESERVED =
  "The layout keeps room for the largest size that a part comes to with stock of another thickness: measure yours first, set fence and stop to the sizes for it, and the rest is offcut.";

/** Common practice, no source. */
const ACROSS =
  "Where a cut across parts pieces that lie one after another over the whole width of a rough board, make it first, whatever its number, a little over: a long rough board pinches the saw when it is ripped, and a short one is flat sooner.";
const STRAIGHT =
  "A rough board has no straight edge yet: before the first cut along it straighten one edge, with a jointer or a plane, or along a straightedge that is screwed or clamped on. Rip no rough edge against a fence.";

/** What holds for all sawing: it need not be said again in the next step. */
export const ONCE: ReadonlySet<string> = new Set([RESERVED, STRAIGHT, ACROSS, ...Object.values(MARK)]);

/**
 * Sawing from boards and sheets, a step for each stock or those that share its boards, but for what is wished apart. What the piece has yet
 * to tell is left as the layout has it.
 */
export function sawingSteps(work: Work): readonly StepDraft[] {
  const boards = sameBoards(work.design);
  return work.design.stock.flatMap((stock) => {
    const sharers = sharersOf(work.design, boards, stock);
    const blanks = work.blanks.filter((blank) => boards.get(blank.stock) === stock.name);
    const used = sharers.filter(({ name }) => blanks.some((blank) => blank.stock === name));
    const key = (blank: Blank): string => (waits(work, blank) ? "" : ownKey(work, { verb: "cut" }, partsIn(blank)));
    return groupedBy(blanks, key).flatMap((own, i) => sawingStep(work, { stock, used }, own, i === 0));
  });
}

/** A stock of which boards are sawn, and all that parts are made of from them. */
interface Source {
  readonly stock: Stock;
  readonly used: readonly Stock[];
}

/** Some of the blanks of a stock; what is left for later is told with the first of them. */
function sawingStep(work: Work, source: Source, blanks: readonly Blank[], isFirst: boolean): readonly StepDraft[] {
  const { stock, used } = source;
  const own = new Set(blanks.flatMap(partsIn));
  const now = blanks.filter((blank) => !waits(work, blank));
  const lines = work.cutList.flatMap((line) => {
    const parts = line.parts.filter((id) => (waitsInWood(work, id) ? isFirst : own.has(id)));
    return used.some(({ name }) => name === line.stock) && parts.length > 0 ? [{ ...line, parts }] : [];
  });
  if (now.length === 0) return [];
  const rough = stock.form === "board" && now.some(({ why }) => why === "rough" || why === "glue-up");
  const fresh = lines.map((line) => line.parts[0] as string).filter((id) => !waitsInWood(work, id));
  return [
    step(
      "make",
      rough
        ? `Saw the rough ${now.length === 1 ? "piece" : "pieces"} from ${sourceWords(work, source)}`
        : `Cut the parts from ${stock.label}`,
      sawingText(work, source, lines, blanks),
      [{ do: "make", blanks: now.map((blank) => blank.id) }],
      { unit: stock.name, bench: piecesIn(now) * BLANK, cautions: [SAW_CAUTION], fresh, as: "sawn" },
    ),
  ];
}

/** What is parted after it is planed takes its time at the saw too. */
const piecesIn = (blanks: readonly Blank[]): number =>
  blanks.reduce((so, blank) => so + (blank.planedWhole ? partsIn(blank).length : 1), 0);

/** What is planed to several thicknesses is told as it is bought. */
const sourceWords = (work: Work, { stock, used }: Source): string =>
  used.length > 1 ? unplaned(stock.label) : woodOf(work, stock);

function sawingText(
  work: Work,
  source: Source,
  lines: readonly CutLine[],
  blanks: readonly Blank[],
): readonly string[] {
  const { stock, used } = source;
  const strips = blanks.filter((blank) => blank.alsoParts && !blank.planedWhole && !waits(work, blank));
  const inStrips = new Set(strips.flatMap((blank) => [blank.part, ...(blank.alsoParts ?? [])]));
  const cuts = lines.flatMap((line) => {
    const [first] = line.parts as [string, ...string[]];
    if (waitsInWood(work, first)) return [];
    const parts = line.parts.filter((id) => !inStrips.has(id));
    const blank = blanks.find(({ part }) => part === parts[0]);
    return blank ? [lineText(work, line, parts, blank)] : [];
  });
  const later = lines.filter((line) => waitsInWood(work, line.parts[0] as string));
  return [
    ...(stock.form === "board" && cuts.length > 0 && blanks.some(({ why }) => why === "rough" || why === "glue-up")
      ? [STRAIGHT, ACROSS]
      : []),
    `Saw by the layouts of ${used.length > 1 ? unplaned(stock.label) : stock.label}, ${stock.form} by ${stock.form}.`,
    ...cuts,
    ...strips.map((blank) => stripText(work, blank)),
    ...thickText(work, source, blanks),
    ...wholeTexts(work, blanks),
    ...later.map(
      (line) =>
        `Leave the wood for ${counted(work, line.parts)} as large as the layout has it: ${line.parts.length === 1 ? "it is" : "they are"} cut to size in ${laterToken(line.mark)}.`,
    ),
    ...(blanks.some(({ why }) => why === "largest") ? [RESERVED] : []),
    MARK[
      stock.form === "board" && blanks.some(({ why }) => why !== "as finished" && why !== "largest") ? "piece" : "part"
    ],
  ];
}

/** What thickness they have now, and when they get theirs. */
function thickText(work: Work, { stock, used }: Source, blanks: readonly Blank[]): readonly string[] {
  const rough = stock.roughThickness;
  if (rough === null) return [];
  const [glued, single] = [blanks.some(({ why }) => why === "glue-up"), blanks.some(({ why }) => why === "rough")];
  const what = !glued
    ? "they are"
    : `${used.length > 1 && single ? "they, and " : ""}what they make when they are glued up${used.length > 1 && single ? ", are" : " is"}`;
  if (single && !glued && blanks.length === 1)
    return [
      `It stays ${work.print(rough)} thick, as it is bought; it is planed to ${planedTo(work, used, blanks)} later.`,
    ];
  if (single || glued)
    return [
      `They stay ${work.print(rough)} thick, as they are bought; ${what} planed to ${planedTo(work, used, blanks)} later.`,
    ];
  return [`The boards are planed to ${work.print(stock.thickness)} before anything is cut from them.`];
}

/** "3/4 in", or "3/4 in (A, B) and 1/4 in (C)". */
function planedTo(work: Work, used: readonly Stock[], blanks: readonly Blank[]): string {
  const sizes = used.flatMap(({ name, thickness }) => {
    const marks = [...new Set(blanks.filter(({ stock }) => stock === name).map(({ mark }) => mark))];
    return marks.length > 0 ? [{ size: work.print(thickness), marks }] : [];
  });
  const [only] = sizes;
  return only && sizes.length === 1 ? only.size : series(sizes.map(({ size, marks }) => `${size} (${series(marks)})`));
}

function lineText(work: Work, line: CutLine, parts: readonly string[], blank: Blank): string {
  const part = work.part(parts[0] as string);
  if (blank.why === "glue-up")
    return `${capital(piecesOf(part, parts.length))} for ${counted(work, parts)}: ${sized(work, blank)}.`;
  const over = makingOf(part).cut === "over" ? `, ${work.print(makingOf(part).over)} over its size` : "";
  const together = sawnTogether(work, parts);
  if (together !== null) return `${parts.length} ${counted(work, line.parts, false)}: ${together}.`;
  const size = blank.why === "as finished" || blank.why === "largest" ? cutSize(work, part.id) : sized(work, blank);
  return `${parts.length} ${counted(work, line.parts, false)}: ${size}${over}.`;
}

function piecesOf(part: Part, copies: number): string {
  const { boards, layers } = makingOf(part);
  const n = boards * layers * copies;
  return `${n} ${boards > 1 ? "boards" : "layers"}`;
}

function stripText(work: Work, blank: Blank): string {
  const ids = [blank.part, ...(blank.alsoParts ?? [])];
  const order = ids.map((id) => work.line(id).mark).join(", ");
  return `One strip for ${counted(work, ids)}: ${sized(work, blank)}. Mark a triangle over the whole strip, then cut the parts from it in the order ${order}.`;
}
