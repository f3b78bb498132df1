/** Parts that are cut when the piece tells their size, right before they are used; and those that are trimmed flush afterwards. */

import type { Length } from "../../../units/length.ts";
import { equal, min, subtract } from "../../../units/rational.ts";
import type { Action, Blank, CutLine } from "../../build.ts";
import { idsBetween, isCutLater, makingOf } from "../../design/making/plain.ts";
import { onBench } from "../../design/turning.ts";
import type { Between, Part } from "../../design.ts";
import { boundsOf, cutWith, type Group, type Ordered } from "./after-openings.ts";
import { bandingSteps } from "./banding.ts";
import { capital, listed, numberWord, type StepDraft, type Work } from "./draft.ts";
import { unitOf, waits } from "./later.ts";
import { machiningSteps } from "./machining.ts";
import { SAW_CAUTION, step } from "./making-step.ts";
import type { Opening } from "./openings.ts";
import { sawnToFit } from "./sawn-to-fit.ts";
import { addedIn, afterAction, type Bodies } from "./touched.ts";
import { partedTexts } from "./whole-pieces.ts";
import { linesApart, partsIn } from "./wishes/own-key.ts";
import { cutSize } from "./words/cutting.ts";
import { notchTexts } from "./words/marked-notches.ts";
import { isCutAlike, leavesRoomToSwell, measureTexts } from "./words/measuring.ts";
import { flushUp, mitreTried } from "./words/mitred.ts";
import { fittedMitres } from "./words/mitres.ts";
import { KINDS, openingTexts } from "./words/opening.ts";
import { turnedNote } from "./words/turned.ts";

/** Minutes (common practice, no source): to measure and cut a part, to trim it; to measure an opening, to cut a part for it. */
const MINUTES = { cut: 15, trim: 10, measure: 5, saw: 4 } as const;

/** The lines that hold some of these parts, with those only. */
function linesOf(work: Work, all: Iterable<string>, which: (id: string) => boolean): readonly CutLine[] {
  const ids = new Set([...all].filter(which));
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

/**
 * What has to be made before a step that uses parts which were not cut before. What goes into an opening is cut with all that is put
 * together before it goes in. `made` grows.
 */
export function fittingSteps(
  work: Work,
  use: StepDraft,
  made: Made,
  { drafts, groups }: Ordered,
): readonly StepDraft[] {
  const needed = linesOf(work, addedIn(use.actions), (id) => isCutLater(work.part(id)) && !made.parts.has(id));
  const ids = needed.flatMap(({ parts }) => parts);
  const together = cutWith(ids, groups, drafts.slice(0, drafts.indexOf(use))).filter(
    ({ parts }) => !parts.some(({ id }) => made.parts.has(id)),
  );
  const own = new Set(together.flatMap(({ parts }) => parts.map(({ id }) => id)));
  const fitted = linesOf(work, own, () => true);
  const each = linesOf(work, ids, (id) => !own.has(id));
  for (const id of [...own, ...ids]) made.parts.add(id);
  const lines = [...fitted, ...each];
  return [
    ...linesApart(work, { verb: "cut" }, fitted).map((some) => openingStep(work, some, together, made)),
    ...linesApart(work, { verb: "cut" }, each)
      .flat()
      .map((line) => cutStep(work, line, { use, before: drafts.slice(0, drafts.indexOf(use)) }, made)),
    ...bandingSteps(work, lines),
    ...machiningSteps(work, lines),
  ];
}

/** The parts of doors or drawers that go together in the next step: all of them when their openings can be measured. */
function openingStep(work: Work, lines: readonly CutLine[], groups: readonly Group[], made: Made): StepDraft {
  const ids = new Set(lines.flatMap(({ parts }) => parts));
  const all = groups.filter(({ parts }) => parts.some(({ id }) => ids.has(id)));
  const kind = all[0]?.kind ?? "rests";
  const single = all.every(({ parts }) => parts.length === 1);
  const bodies = `${all.length === 1 ? "the" : numberWord(all.length)} ${KINDS[kind]}${all.length === 1 ? "" : "s"}`;
  const fitted = step(
    "fit",
    `Cut ${single ? listed(work, [...ids]) : `the parts of ${bodies}`} to fit`,
    [
      ...openingTexts(work, all),
      ...sawnOutText(work, ids, made),
      ...lines.map(({ parts }) => `${capital(listed(work, parts))}: ${cutSize(work, parts[0] as string)}.`),
      ...partedTexts(work, [...ids]),
      ...(single ? ["Cut a little long and wide at first; plane until it goes in with its play."] : []),
    ],
    makes(work, ids, made),
    {
      unit: unitOf((lines[0] as CutLine).mark),
      bench: all.length * MINUTES.measure + ids.size * (single ? MINUTES.cut : MINUTES.saw),
      cautions: [SAW_CAUTION],
      ...{ fresh: lines.map(({ parts }) => parts[0] as string), as: "sized" },
      measures: standingFor(all.flatMap(({ openings }) => openings)),
    },
  );
  return { ...fitted, also: lines.slice(1).map(({ mark }) => unitOf(mark)) };
}

/** What stands before some openings are measured. */
const standingFor = (openings: readonly Opening[]): readonly string[] => [
  ...new Set([...boundsOf(openings), ...openings.flatMap(({ runsOn }) => runsOn)]),
];

/** Blanks that wait in their sheet or board, hold some parts, and were not cut before. */
const waitingFor = (work: Work, ids: ReadonlySet<string>, made: Made): readonly Blank[] =>
  work.blanks.filter(
    (blank) => !made.blanks.has(blank.id) && waits(work, blank) && partsIn(blank).some((each) => ids.has(each)),
  );

/** What waits in a sheet or board is larger there, by what the layouts leave for stock of other thicknesses too. */
function sawnOutText(work: Work, ids: ReadonlySet<string>, made: Made, then = true): readonly string[] {
  const blanks = waitingFor(work, ids, made);
  if (blanks.length === 0) return [];
  const sawn = new Set(blanks.flatMap(partsIn));
  const all = [...ids].every((id) => sawn.has(id));
  const waiting = [...ids].filter((id) => sawn.has(id));
  const them = ids.size === 1 ? "it" : "them";
  const what = all ? them : listed(work, waiting);
  return [
    `Saw ${what} out by the layouts first: there ${waiting.length === 1 ? "it is" : "they are"} ${overText(work, blanks)}.${then ? ` Then bring ${all ? them : "all"} to size.` : ""}`,
  ];
}

/** "3/16 in over in length and width"; of several that are not alike, the least. Of a strip the ends of its parts are not known apart. */
function overText(work: Work, blanks: readonly Blank[]): string {
  const [wide, long] = (["width", "length"] as const).map((size) =>
    blanks.map((blank) =>
      blank.alsoParts ? makingOf(work.part(blank.part)).over : subtract(blank[size], work.line(blank.part)[size]),
    ),
  ) as [Length[], Length[]];
  const every = [...wide, ...long];
  const [w, l] = [wide.reduce(min), long.reduce(min)];
  const same = (some: readonly Length[]): boolean => some.every((each) => equal(each, some[0] as Length));
  // What is bought in its section is only cut to length.
  if (wide.every((each) => each.n === 0n)) return `${work.print(l)} over in length`;
  if (same(every)) return `${work.print(w)} over in length and width`;
  return same(wide) && same(long)
    ? `${work.print(l)} over in length and ${work.print(w)} in width`
    : `at least ${work.print(min(w, l))} over in length and width`;
}

/** A strip is made with the first of its parts that is used. */
function makes(work: Work, ids: ReadonlySet<string>, made: Made): readonly Action[] {
  const blanks = waitingFor(work, ids, made).map(({ id }) => id);
  for (const id of blanks) made.blanks.add(id);
  return blanks.length > 0 ? [{ do: "make", blanks }] : [];
}

const isNotched = ({ features }: Part): boolean => features.some(({ kind }) => kind === "notch");

/** The step that uses what is cut, and those of joining before it. */
interface Use {
  readonly use: StepDraft;
  readonly before: readonly StepDraft[];
}

/** What stands elsewhere than the body in hand, between parts of which a part is measured; null: it is that body. */
function elsewhere({ use, before }: Use, between: readonly Between[] | undefined): readonly string[] | null {
  const ids = idsBetween(between);
  if (ids.every((id) => use.shows.present.includes(id))) return null;
  const bodies = before.flatMap(({ actions }) => actions).reduce<Bodies>(afterAction, []);
  return [...(bodies.find((body) => ids.every((id) => body.has(id))) ?? [])];
}

const EACH = "Measure for each of them: no two openings are quite the same.";
const EACH_ITS_OWN = "Cut each on the one that it comes to, and write on both which that is.";

function cutStep(work: Work, line: CutLine, place: Use, made: Made): StepDraft {
  const { use } = place;
  const [first] = line.parts as [string, ...string[]];
  const part = work.part(first);
  const what = listed(work, line.parts);
  const { cut, between, notchedRound } = makingOf(part);
  const opening = cut === "opening";
  const apart = elsewhere(place, between);
  const flush = flushUp(work, part, between);
  const over = between?.map(({ size }) => (size === "length" ? "long" : "wide")).join(" and ") ?? "long";
  const several = line.parts.length > 1;
  const alike = isCutAlike(work, line.parts);
  const [it, others] = alike ? ["one", " Cut the others like it."] : ["it", ""];
  const mitres = fittedMitres(work, onBench(part));
  const gap = leavesRoomToSwell(work, part) ? "" : ", and without a gap";
  const fitted = step(
    "fit",
    `Cut ${what} to fit`,
    [
      ...(mitres.length > 0 ? turnedNote(work, [line]) : []),
      ...sawnOutText(work, new Set(line.parts), made, false),
      ...mitres,
      ...measureTexts(work, line.parts),
      opening
        ? "Cut to the opening as it stands, a little long and wide at first; plane until it goes in with its play."
        : notchedRound && between?.length === 0
          ? "Cut it square; it is tried when it has its notches."
          : (mitreTried(between) ??
            // What needs notches to get to its place cannot be tried before it has them.
            (isNotched(part)
              ? `Cut it square to what you measured; it is tried when it has its notches: it should go in without force${gap}. Carry the measure over with a stick rather than by numbers.`
              : `Cut ${it} a little ${over} at first, try it, and take off what is left: it should go in without force${gap}. Carry the measure over with a stick rather than by numbers.${others}`)),
      ...notchTexts(work, part, false),
      ...(several && !alike ? [flush ? EACH_ITS_OWN : EACH] : []),
      ...partedTexts(work, line.parts),
    ],
    [...makes(work, new Set(line.parts), made), ...sawnToFit(work, line.parts)],
    {
      unit: unitOf(line.mark),
      bench: alike ? MINUTES.cut + (line.parts.length - 1) * MINUTES.saw : line.parts.length * MINUTES.cut,
      cautions: [SAW_CAUTION],
      fresh: line.parts.slice(0, 1),
      present: apart ?? use.shows.present,
      up: flush ?? use.up,
      ...(apart && { measures: idsBetween(between) }),
    },
  );
  return (apart && !flush) || isNotched(part) ? fitted : { ...fitted, tried: true };
}

/** After a step that puts on parts cut over their size: they are trimmed. */
export function flushSteps(work: Work, put: StepDraft): readonly StepDraft[] {
  const lines = linesOf(work, addedIn(put.actions), (id) => makingOf(work.part(id)).cut === "over");
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
