/** Parts that are cut when the piece tells their size, right before they are used; and those that are trimmed flush afterwards. */

import type { Action, CutLine } from "../../build.ts";
import { isCutLater, isGluedUp, makingOf } from "../../design/making/plain.ts";
import { bandingSteps } from "./banding.ts";
import { capital, listed, type StepDraft, stepToken, type Work } from "./draft.ts";
import { machiningSteps } from "./machining.ts";
import { SAW_CAUTION, step } from "./making-step.ts";
import { linesApart } from "./wishes/own-key.ts";
import { measureTexts } from "./words/measuring.ts";

/** Minutes for each part (common practice, no source): to measure and cut it, to trim it. */
const MINUTES = { cut: 15, trim: 10 } as const;

/** The unit of the step in which a line of the cut list is cut to fit. */
export const unitOf = (mark: string): string => `cut ${mark}`;
/** Stands for the step in which a line of the cut list is cut to fit. */
export const laterToken = (mark: string): string => stepToken(unitOf(mark));

/** The lines that hold parts that some actions add for the first time, with those parts only. */
function linesOf(work: Work, actions: readonly Action[], which: (id: string) => boolean): readonly CutLine[] {
  const ids = new Set(actions.flatMap((action) => (action.do === "add" ? action.parts : [])).filter(which));
  return work.cutList.flatMap((line) => {
    const parts = line.parts.filter((id) => ids.has(id));
    return parts.length > 0 ? [{ ...line, parts }] : [];
  });
}

/** What has been cut to fit so far. */
export interface Made {
  readonly parts: Set<string>;
  readonly blanks: Set<string>;
}

/** What has to be made before a step that uses parts which were not cut before. `made` grows by them. */
export function fittingSteps(work: Work, use: StepDraft, made: Made): readonly StepDraft[] {
  const lines = linesOf(work, use.actions, (id) => isCutLater(work.part(id)) && !made.parts.has(id));
  for (const id of lines.flatMap(({ parts }) => parts)) made.parts.add(id);
  return [
    ...linesApart(work, { verb: "cut" }, lines)
      .flat()
      .map((line) => cutStep(work, line, use, made)),
    ...bandingSteps(work, lines),
    ...machiningSteps(work, lines),
  ];
}

function cutStep(work: Work, line: CutLine, use: StepDraft, made: Made): StepDraft {
  const [first] = line.parts as [string, ...string[]];
  const part = work.part(first);
  const what = listed(work, line.parts);
  const ids = new Set(line.parts);
  // A strip is made with the first of its parts that is used.
  const own = work.blanks.filter(
    ({ id, part: one, alsoParts }) => !made.blanks.has(id) && [one, ...(alsoParts ?? [])].some((each) => ids.has(each)),
  );
  const blanks = isGluedUp(part) ? [] : own.map(({ id }) => id);
  for (const id of blanks) made.blanks.add(id);
  const opening = makingOf(part).cut === "opening";
  return step(
    "fit",
    `Cut ${what} to fit`,
    [
      ...measureTexts(work, part),
      opening
        ? "Cut to the opening as it stands, a little long and wide at first; plane until it goes in with its play."
        : "Cut it a little long at first, try it, and take off what is left. Carry the measure over with a stick rather than by numbers.",
      ...(line.parts.length > 1 ? ["Measure for each of them: no two openings are quite the same."] : []),
    ],
    blanks.length > 0 ? [{ do: "make", blanks }] : [],
    {
      unit: unitOf(line.mark),
      bench: line.parts.length * MINUTES.cut,
      cautions: [SAW_CAUTION],
      fresh: line.parts.slice(0, 1),
      present: use.shows.present,
      up: use.up,
    },
  );
}

/** After a step that puts on parts cut over their size: they are trimmed. */
export function flushSteps(work: Work, put: StepDraft): readonly StepDraft[] {
  const lines = linesOf(work, put.actions, (id) => makingOf(work.part(id)).cut === "over");
  if (lines.length === 0) return [];
  const parts = lines.flatMap((line) => line.parts);
  const around = [...put.shows.present, ...put.shows.fresh].filter((id) => !parts.includes(id));
  const over = [...new Set(parts.map((id) => work.print(makingOf(work.part(id)).over)))].join(" and ");
  return [
    step(
      "fit",
      `Trim ${listed(work, parts)} flush`,
      [
        `${capital(listed(work, parts))} ${parts.length === 1 ? "was" : "were"} cut ${over} over in width and length. ${put.kind === "glue-up" ? "When the glue has set overnight, plane" : "Plane"} what stands over flush with what it lies against, and cut the ends square.`,
      ],
      [],
      {
        unit: `trim ${(lines[0] as CutLine).mark}`,
        ...{ bench: parts.length * MINUTES.trim, strains: true },
        cautions: [],
        fresh: parts,
        present: around,
        up: put.up,
      },
    ),
  ];
}
