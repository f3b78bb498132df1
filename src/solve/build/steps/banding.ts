import { type Length, roundTo } from "../../../units/index.ts";
import type { Action, CutLine } from "../../build.ts";
import { sayBand } from "../../design/making/banding.ts";
import { makingOf } from "../../design/making/plain.ts";
import { bandedLength, isIronedOn, OVER_EACH_END } from "../banding/strips.ts";
import { capital, listed, type StepDraft, series, type Work } from "./draft.ts";
import { step } from "./making-step.ts";
import { linesApart } from "./wishes/own-key.ts";

/** Minutes for each band (common practice, no source). */
const BAND = 6;

/** How a strip is put on. Common practice, no source. */
const IRONED =
  "Lay it on its edge with the glue down, move a household iron, hot and without steam, slowly along it until the glue melts, and rub it down at once with a block of wood until it is cool and holds everywhere.";
const GLUED =
  "Spread glue on the edge, lay it on, and hold it with masking tape drawn tight over it, a hand's breadth from one piece to the next, until the glue holds.";
const HOLDS = { for: "glue to hold", minutes: 60 } as const;

/** One step for all bands of these lines, but for those that are wished apart; none where nothing is banded. */
export function bandingSteps(work: Work, lines: readonly CutLine[]): readonly StepDraft[] {
  const banded = lines.filter((line) => makingOf(work.part(line.parts[0] as string)).banding.length > 0);
  return linesApart(work, { verb: "band" }, banded).map((own) => bandingStep(work, own));
}

function bandingStep(work: Work, banded: readonly CutLine[]): StepDraft {
  const parts = banded.flatMap((line) => line.parts).map(work.part);
  const actions = parts.map(
    (part): Action => ({ do: "band", part: part.id, edges: makingOf(part).banding.map(({ edge }) => edge) }),
  );
  const bands = parts.reduce((so, part) => so + makingOf(part).banding.length, 0);
  const ironed = parts.filter((part) => makingOf(part).banding.every(isIronedOn));
  const over = work.print(OVER_EACH_END[work.design.units]);
  return step(
    "make",
    `Band the edges of ${listed(
      work,
      parts.map(({ id }) => id),
    )}`,
    [
      ...banded.map((line) => bandText(work, line)),
      `Cut each strip so long that it stands ${over} over at either end, ends of parts first, long edges over them. ${
        ironed.length === parts.length
          ? IRONED
          : ironed.length === 0
            ? GLUED
            : `Of what comes in rolls: ${IRONED} Of strips of wood: ${GLUED}`
      } Then trim ends and edges flush with a sharp chisel.`,
    ],
    actions,
    {
      unit: `bands ${(banded[0] as CutLine).mark}`,
      bench: bands * BAND,
      ...(ironed.length < parts.length && { waits: [HOLDS] }),
      cautions: [],
      fresh: banded.map((line) => line.parts[0] as string),
      as: "sized",
    },
  );
}

const marked = (work: Work, length: Length): Length => roundTo(length, work.design.precision, "up");

function bandText(work: Work, line: CutLine): string {
  const part = work.part(line.parts[0] as string);
  const { banding } = makingOf(part);
  const [first] = banding as [(typeof banding)[number]];
  const edges = series(
    banding.map((band) => `the ${band.edge} (${work.print(marked(work, bandedLength(part, line, band)))})`),
  );
  const deducted = banding.some((band) => band.deducted)
    ? ` The part was cut smaller by ${sayBand(first.thickness, work.design.units)} for each band, and has its size now.`
    : "";
  return `${capital(listed(work, line.parts))}: ${edges}, with ${first.item}.${deducted}`;
}
