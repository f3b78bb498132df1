import { inches } from "../../../units/length.ts";
import { less } from "../../../units/rational.ts";
import type { CutLine } from "../../build.ts";
import { isCutLater, isGluedUp } from "../../design/making/plain.ts";
import type { Stock } from "../../design.ts";
import { capital, listed, type StepDraft, series, type Work } from "./draft.ts";
import { laterToken } from "./later.ts";
import { MILL_CAUTION, step } from "./making-step.ts";
import { isMuchOff } from "./much-off.ts";
import { isPlanedWhole, keptWhole, leftWhole, partedTexts } from "./whole-pieces.ts";
import { groupedBy, linesApart, ownKey, partsIn } from "./wishes/own-key.ts";
import { cutSize } from "./words/cutting.ts";
import { isAsListed } from "./words/measuring.ts";
import { woodOf } from "./words/wood.ts";

/** Minutes for each part (common practice, no source): to flatten and rip it, to bring it to its size. */
const MINUTES = { rough: 7, size: 5 } as const;
/** Wood moves when it is planed: it rests before the last pass. Common practice, no source. */
const REST = { for: "wood to rest", minutes: 12 * 60 } as const;
/** Common practice, no source; nearly every planer's instructions name a length. */
const LEAST = inches(12);
const SHORT =
  "Pieces under 12 in (300 mm) are too short to plane by machine: they are planed and ripped in the longer pieces that they are sawn in, and cut to length last.";

interface Lot {
  readonly stock: Stock;
  readonly lines: readonly CutLine[];
}

/** Rough pieces planed, all that rest together in one step, and those of each stock cut to their sizes when they have rested. */
export function millingSteps(work: Work): readonly StepDraft[] {
  const lots = work.design.stock.flatMap((stock): readonly Lot[] => {
    const rough = new Set(
      work.blanks
        .filter(({ stock: name, why }) => name === stock.name && why === "rough")
        .flatMap((blank) => [blank.part, ...(blank.alsoParts ?? [])]),
    );
    const lines = work.cutList.filter((line) => {
      const part = work.part(line.parts[0] as string);
      return rough.has(part.id) && !isGluedUp(part);
    });
    return linesApart(work, { verb: "plane" }, lines).flatMap((own) => (own.length > 0 ? [{ stock, lines: own }] : []));
  });
  const together = groupedBy(lots, ({ lines }) => ownKey(work, { verb: "plane" }, partsOf(lines)));
  return together.flatMap((own) => [roughly(work, own), ...own.map((lot) => toSize(work, lot))]);
}

const partsOf = (lines: readonly CutLine[]): readonly string[] => lines.flatMap(({ parts }) => parts);
const firstsOf = (lines: readonly CutLine[]): readonly string[] => lines.flatMap(({ parts: [first] }) => first ?? []);
const cautionsFor = (lines: readonly CutLine[]): readonly string[] => [
  MILL_CAUTION,
  ...(lines.some(({ length }) => less(length, LEAST)) ? [SHORT] : []),
];

/** More woods are not named in a title. */
const MOST = 2;

function roughly(work: Work, lots: readonly Lot[]): StepDraft {
  const lines = lots.flatMap((lot) => lot.lines);
  // It is rough by the title.
  const woods = [...new Set(lots.map(({ stock }) => woodOf(work, stock)))];
  const parts = partsOf(lines);
  return step(
    "mill",
    `Plane the rough pieces${woods.length <= MOST ? ` of ${series(woods)}` : ""}`,
    [
      "Flatten a face of each piece, plane the other parallel to it but a little over thickness, straighten an edge, and rip a little over width.",
      ...leftWhole(work, parts),
      ...(lots.length > 1 ? [`A little over ${series(lots.map((lot) => thicknessText(work, lot)))}.`] : []),
      ...muchText(work, lots),
      "Let the pieces rest overnight with sticks between them: wood moves when it is planed.",
    ],
    [],
    {
      ...{ unit: `${lots[0]?.stock.name} roughly`, bench: parts.length * MINUTES.rough, waits: [REST] },
      ...{ fresh: firstsOf(lines), of: parts, cautions: cautionsFor(lines), as: "sawn" as const },
    },
  );
}

const thicknessText = (work: Work, { lines }: Lot): string =>
  `${work.print((lines[0] as CutLine).thickness)} for ${series([...new Set(lines.map(({ mark }) => mark))])}`;

/** Which pieces are not planed by hand from the thickness that they are sawn in. */
function muchText(work: Work, lots: readonly Lot[]): readonly string[] {
  const much = lots.flatMap((lot) =>
    lot.lines.filter(({ parts, thickness }) => {
      const blank = work.blanks.find((each) => partsIn(each).some((id) => parts.includes(id)));
      return blank !== undefined && isMuchOff(work, blank.thickness, thickness);
    }),
  );
  const marks = [...new Set(much.map(({ mark }) => mark))];
  return marks.length === 0
    ? []
    : [
        `More than a third of the thickness of ${series(marks)} goes off. Without a planer have ${marks.length === 1 && much[0]?.parts.length === 1 ? "it" : "them"} resawn with a band saw to a little more than the thickness, or planed in a shop, when a face is flat.`,
      ];
}

function toSize(work: Work, { stock, lines }: Lot): StepDraft {
  const parts = partsOf(lines);
  const isLater = (line: CutLine): boolean => isCutLater(work.part(line.parts[0] as string));
  const later = lines.filter(isLater);
  const now = lines.filter((line) => !isLater(line));
  const wood = woodOf(work, stock);
  const alone = parts.length === 1;
  const [what, them, their] = alone ? ["part", "it", "its"] : ["parts", "them", "their"];
  const sizes = `to width, and cut ${them} to length${alone ? "" : " against a stop"}`;
  return step(
    "mill",
    now.length > 0 ? `Bring the ${what} from ${wood} to size` : `Plane the ${what} from ${wood} to thickness`,
    [
      `Plane ${them} to ${their} thickness (${work.print((lines[0] as CutLine).thickness)})${alone ? "" : " all at one setting"}, and with ${them} what is left of the same boards, for trying cuts${now.length > 0 ? `; then ${sizes}` : ""}.`,
      ...now.map((line) => `${capital(listed(work, line.parts))}: ${cutSize(work, line.parts[0] as string)}.`),
      ...partedTexts(work, partsOf(now)),
      ...leftTexts(work, later),
    ],
    [],
    {
      ...{ unit: stock.name, bench: parts.length * MINUTES.size, cautions: cautionsFor(lines) },
      ...{ fresh: firstsOf(lines), of: parts, as: "sized" },
    },
  );
}

/** What is measured later in its length only is ripped with the rest, all of one width at one setting of the fence. */
function leftTexts(work: Work, later: readonly CutLine[]): readonly string[] {
  const isRipped = ({ parts }: CutLine): boolean =>
    !isPlanedWhole(work, parts) && parts.every((id) => isAsListed(work, id, "width"));
  const ripped = groupedBy(later.filter(isRipped), ({ width }) => work.print(width)).map((own) => {
    const parts = partsOf(own);
    const [setting, they, are] =
      parts.length === 1 ? ["", "it", "it is"] : [", all at one setting of the fence", "them", "they are"];
    const cut =
      own.length === 1
        ? `in ${laterToken((own[0] as CutLine).mark)}`
        : `later: ${own.map(({ mark }) => `${mark} in ${laterToken(mark)}`).join("; ")}`;
    return `Rip ${series(own.map((line) => listed(work, line.parts)))} to width now${setting}: ${work.print((own[0] as CutLine).width)}. Leave ${they} as long as ${are}, to be cut to length ${cut}.`;
  });
  const left = later
    .filter((line) => !isRipped(line))
    .map(
      (line) =>
        `Leave ${listed(work, line.parts)} ${isPlanedWhole(work, line.parts) ? keptWhole(work, line) : `as wide and long as ${line.parts.length === 1 ? "it is" : "they are"}, with one edge straight`}: cut to size in ${laterToken(line.mark)}.`,
    );
  return [...ripped, ...left];
}
