import { inches } from "../../../units/length.ts";
import { less } from "../../../units/rational.ts";
import type { CutLine } from "../../build.ts";
import { isCutLater, isGluedUp } from "../../design/making/plain.ts";
import { unplaned } from "../../design/stock/label.ts";
import type { Stock } from "../../design.ts";
import { capital, listed, type StepDraft, type Work } from "./draft.ts";
import { laterToken } from "./later.ts";
import { SAW_CAUTION, step } from "./making-step.ts";
import { linesApart } from "./wishes/own-key.ts";
import { cutSize } from "./words/cutting.ts";

/** Minutes for each part (common practice, no source): to flatten and rip it, to bring it to its size. */
const MINUTES = { rough: 7, size: 5 } as const;
/** Wood moves when it is planed: it rests before the last pass. Common practice, no source. */
const REST = { for: "wood to rest", minutes: 12 * 60 } as const;
/** Common practice, no source; nearly every planer's instructions name a length. */
const LEAST = inches(12);
const SHORT = "Pieces under 12 in (300 mm) are too short to plane by machine: plane two of them in one.";

/** Rough pieces planed, and cut to their sizes when they have rested: two steps for each stock. */
export function millingSteps(work: Work): readonly StepDraft[] {
  return work.design.stock.flatMap((stock) => {
    const rough = new Set(
      work.blanks
        .filter(({ stock: name, why }) => name === stock.name && why === "rough")
        .flatMap((blank) => [blank.part, ...(blank.alsoParts ?? [])]),
    );
    const lines = work.cutList.filter((line) => {
      const part = work.part(line.parts[0] as string);
      return rough.has(part.id) && !isGluedUp(part);
    });
    return linesApart(work, { verb: "plane" }, lines).flatMap((own) => planing(work, stock, own));
  });
}

function planing(work: Work, stock: Stock, lines: readonly CutLine[]): readonly StepDraft[] {
  const parts = lines.flatMap((line) => line.parts);
  const thickness = lines[0]?.thickness;
  if (thickness === undefined) return [];
  const fresh = lines.map((line) => line.parts[0] as string);
  const isLater = (line: CutLine): boolean => isCutLater(work.part(line.parts[0] as string));
  const later = lines.filter(isLater);
  const now = lines.filter((line) => !isLater(line));
  const cautions = [SAW_CAUTION, ...(lines.some(({ length }) => less(length, LEAST)) ? [SHORT] : [])];
  return [
    step(
      "mill",
      `Plane the rough pieces of ${unplaned(stock.label)}`,
      [
        "Flatten a face of each piece, plane the other parallel to it but a little over thickness, straighten an edge, and rip a little over width.",
        "Let the pieces rest overnight with sticks between them: wood moves when it is planed.",
      ],
      [],
      {
        ...{ unit: `${stock.name} roughly`, bench: parts.length * MINUTES.rough, waits: [REST], fresh, of: parts },
        ...{ cautions, as: "sawn" },
      },
    ),
    step(
      "mill",
      now.length > 0
        ? `Bring the parts from ${unplaned(stock.label)} to size`
        : `Plane the parts from ${unplaned(stock.label)} to thickness`,
      [
        `Plane them to their thickness (${work.print(thickness)}) all at one setting, with two spare pieces for trying cuts${now.length > 0 ? "; then to width, and cut them to length against a stop" : ""}.`,
        ...now.map((line) => `${capital(listed(work, line.parts))}: ${cutSize(work, line.parts[0] as string)}.`),
        ...later.map(
          (line) =>
            `Leave ${listed(work, line.parts)} as wide and long as ${line.parts.length === 1 ? "it is" : "they are"}, with one edge straight: cut to size in ${laterToken(line.mark)}.`,
        ),
      ],
      [],
      { unit: stock.name, bench: parts.length * MINUTES.size, cautions, fresh, of: parts, as: "sized" },
    ),
  ];
}
