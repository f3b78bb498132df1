import { type Length, roundTo } from "../../../units/index.ts";
import type { Action, CutLine } from "../../build.ts";
import { sayBand } from "../../design/making/banding.ts";
import { makingOf } from "../../design/making/plain.ts";
import { bandedLength, OVER_EACH_END } from "../banding/strips.ts";
import { capital, listed, type StepDraft, series, type Work } from "./draft.ts";
import { step } from "./making-step.ts";
import { linesApart } from "./wishes/own-key.ts";

/** Minutes for each band (common practice, no source). */
const BAND = 6;

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
  const over = work.print(OVER_EACH_END[work.design.units]);
  return step(
    "make",
    `Band the edges of ${listed(
      work,
      parts.map(({ id }) => id),
    )}`,
    [
      ...banded.map((line) => bandText(work, line)),
      `Leave each strip ${over} long at both ends, press it down until it holds everywhere, then trim it flush with a sharp chisel. Ends first, long edges over them.`,
    ],
    actions,
    {
      unit: `bands ${(banded[0] as CutLine).mark}`,
      bench: bands * BAND,
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
