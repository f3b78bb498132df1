import type { Action, CutLine } from "../../build.ts";
import { inRuns } from "../../design/shapes/runs.ts";
import { holeOnBench, onBench } from "../../design/turning.ts";
import type { Feature, Hole, Part } from "../../design.ts";
import { cutsIn, isEnd, isShape } from "./cuts.ts";
import { markingOrder } from "./dowelled.ts";
import { called, listed, plural, pluralOf, type StepDraft, type Work } from "./draft.ts";
import { ROUTER_CAUTION, SAW_CAUTION, step } from "./making-step.ts";
import { isSawnToFit } from "./sawn-to-fit.ts";
import { sentence, wordsOf } from "./sentence.ts";
import { type Cutting, cuttings, groupedBy, ownKey } from "./wishes/own-key.ts";
import { holeTexts } from "./words/dowels.ts";
import { featureText } from "./words/features.ts";
import { turnedNote } from "./words/turned.ts";

/** Minutes of work, rough (common practice, no source): for each feature, bench-bored hole. */
const MINUTES = { feature: 8, shape: 10, hole: 1 } as const;

/** The order in which joints are cut while the stock is square: mortises before the tenons that are fitted to them. */
const FIRST: readonly Feature["kind"][] = [
  ...([
    "mortise",
    "groove",
    "dado",
    "dovetail housing",
    "rabbet",
    "half lap",
    "bridle",
    "cheek",
    "socket",
    "notch",
  ] as const),
  ...(["tenon", "haunch", "tongue", "tail", "mitre", "slot"] as const),
];

/** Work on parts that have their size: joints and holes, one step for each kind of part; shapes last. */
export const machiningSteps = (work: Work, lines: readonly CutLine[]): readonly StepDraft[] => [
  // Ends that are not square are what joints and holes are set out from.
  ...shaping(work, lines, isEnd),
  ...markingOrder(work, lines).flatMap((line) => [...machining(work, [line]), ...boring(work, [line])]),
  ...shaping(work, lines, (feature) => !isEnd(feature)),
];

/** Whether a part gets the shape after which nothing more can be set out on it. */
export const givesShape = (work: Work, { part, features }: Extract<Action, { do: "machine" }>): boolean =>
  features.some((i) => {
    const own = work.part(part);
    const feature = own.features[i];
    return feature !== undefined && isShape(feature, own) && !isEnd(feature);
  });

/** Which of a part's features and holes a step makes. */
const machine = (part: Part, features: readonly number[], holes: readonly number[]): Action => ({
  do: "machine",
  part: part.id,
  features,
  holes,
});

const benchHoles = (work: Work, id: string): readonly number[] =>
  work.plan.holes.flatMap((hole, i) => (hole.part === id && hole.atBench ? [i] : []));

const HOLE = "hole";

/** Cuts and holes at the bench, together but for what is wished apart. */
function machining(work: Work, lines: readonly CutLine[]): readonly StepDraft[] {
  return lines.flatMap((line) => {
    const first = onBench(work.part(line.parts[0] as string));
    const cuts = cutsIn(first).flatMap((i) => first.features[i]?.kind ?? []);
    if (cuts.length === 0) return [];
    const drilled = benchHoles(work, first.id).length > 0;
    return cuttings(work, line, [...new Set(cuts), ...(drilled ? [HOLE] : [])]).map((own) =>
      own.kinds.every((kind) => kind === HOLE) ? boringStep(work, own.line) : machiningStep(work, own),
    );
  });
}

function machiningStep(work: Work, { line, kinds: wanted }: Cutting): StepDraft {
  const parts = line.parts.map((id) => onBench(work.part(id)));
  const first = parts[0] as Part;
  const cut = (part: Part) => cutsIn(part).filter((i) => wanted.includes(part.features[i]?.kind ?? ""));
  const kinds = FIRST.filter((kind) => wanted.includes(kind));
  const order = (part: Part) =>
    cut(part).toSorted((a, b) => rank(part.features[a] as Feature) - rank(part.features[b] as Feature) || a - b);
  const drills = wanted.includes(HOLE);
  const holes = drills ? holesOf(work, first.id) : [];
  const runs = inRuns(cut(first).map((i) => first.features[i] as Feature));
  const which = line.parts.length === 1 ? `the ${called(work, first.id)}` : `the ${plural(work, first.id)}`;
  return step(
    "make",
    `Cut the ${titleOf(kinds, runs.length * parts.length)} in ${which}`,
    [
      ...turnedNote(work, [line]),
      ...(line.mirrorOf
        ? [
            sentence(`These are mirror images of ${line.mirrorOf}: set the cuts out the other way round.`, {
              mirrored: true,
            }),
          ]
        : []),
      ...kinds.flatMap((kind) => featureText(work, first, kind)),
      ...holeTexts(work, first, holes),
      ...(line.parts.length > 1
        ? [`Make ${line.parts.length === 2 ? "both" : `all ${line.parts.length}`} alike: set them out side by side.`]
        : []),
    ],
    parts.map((part) => machine(part, order(part), drills ? benchHoles(work, part.id) : [])),
    {
      unit: line.mark,
      bench: parts.length * (runs.length * MINUTES.feature + holes.length * MINUTES.hole),
      cautions: [ROUTER_CAUTION],
      ...{ fresh: [first.id], as: "worked" },
    },
  );
}

const rank = (feature: Feature): number => FIRST.indexOf(feature.kind);
/** "rabbet": one cut; "joints" for mortises and for cuts of several kinds. */
function titleOf([kind, ...more]: readonly Feature["kind"][], many: number): string {
  if (kind === undefined || kind === "mortise" || more.length > 0) return "joints";
  return many === 1 ? kind : pluralOf(kind);
}

const holesOf = (work: Work, id: string): readonly Hole[] =>
  benchHoles(work, id).map((i) => holeOnBench(work.part(id), work.plan.holes[i] as Hole));

/** Parts that have holes but nothing else to cut. */
const boring = (work: Work, lines: readonly CutLine[]): readonly StepDraft[] =>
  lines.flatMap((line) => {
    const first = onBench(work.part(line.parts[0] as string));
    if (benchHoles(work, first.id).length === 0 || first.features.some((feature) => !isShape(feature, first)))
      return [];
    return cuttings(work, line, [HOLE]).map((own) => boringStep(work, own.line));
  });

function boringStep(work: Work, line: CutLine): StepDraft {
  const parts = line.parts.map((id) => onBench(work.part(id)));
  const first = parts[0] as Part;
  const holes = holesOf(work, first.id);
  const which = line.parts.length === 1 ? called(work, first.id) : plural(work, first.id);
  return step(
    "drill",
    `Drill the ${which}`,
    [
      ...turnedNote(work, [line]),
      ...holeTexts(work, first, holes),
      ...(parts.length > 1 ? [`Drill ${parts.length === 2 ? "both" : `all ${parts.length}`} alike.`] : []),
    ],
    parts.map((part) => machine(part, [], benchHoles(work, part.id))),
    {
      unit: line.mark,
      bench: parts.length * holes.length * MINUTES.hole + 5,
      cautions: [ROUTER_CAUTION],
      ...{ fresh: [first.id], as: "worked" },
    },
  );
}

/** Shapes that are sawn first; the others are planed, or cut with a router. */
const SAWN: ReadonlySet<Feature["kind"]> = new Set<Feature["kind"]>([
  ...(["angled end", "arch", "cut-out", "rounded corner", "notch"] as const),
]);

/** Ends at an angle, or tapers, chamfers and bevels; kinds of part that are shaped in the same words, such as mirror images, share a step. */
function shaping(work: Work, lines: readonly CutLine[], wanted: (feature: Feature) => boolean): readonly StepDraft[] {
  const isLeft = (each: Feature, part: Part): boolean =>
    isShape(each, part) && wanted(each) && !isSawnToFit(each, part);
  const kindsOf = (line: CutLine): readonly Feature["kind"][] => {
    const part = onBench(work.part(line.parts[0] as string));
    return [...new Set(part.features.filter((each) => isLeft(each, part)).map(({ kind }) => kind))];
  };
  const told = lines
    .flatMap((line) => cuttings(work, line, kindsOf(line)))
    .map(({ line, kinds }) => {
      const first = onBench(work.part(line.parts[0] as string));
      const own = kindsOf(line).filter((kind) => kinds.includes(kind));
      const apart = own.map((kind) => ownKey(work, { cuts: kind }, line.parts)).join("|");
      return { line, own, apart, texts: own.flatMap((kind) => featureText(work, first, kind)) };
    })
    .filter(({ texts }) => texts.length > 0);
  return groupedBy(told, ({ apart, texts }) => `${apart}|${texts.map(wordsOf).join("\n")}`).map((group) => {
    const [{ own, texts }] = group as readonly [(typeof told)[number]];
    const alike = group.map(({ line }) => line);
    const parts = alike.flatMap((line) => line.parts).map(work.part);
    const shapes = (part: Part) =>
      part.features.flatMap((feature, i) => (isLeft(feature, part) && own.includes(feature.kind) ? [i] : []));
    return step(
      "make",
      `${wanted === isEnd ? "Cut the ends of" : "Shape"} ${listed(
        work,
        parts.map((part) => part.id),
      )}`,
      [...turnedNote(work, alike), ...texts],
      parts.map((part) => machine(part, shapes(part), [])),
      {
        unit: (alike[0] as CutLine).mark,
        bench: parts.length * MINUTES.shape,
        cautions: [own.some((kind) => SAWN.has(kind)) ? SAW_CAUTION : ROUTER_CAUTION],
        fresh: alike.map((line) => line.parts[0] as string),
        as: "worked",
      },
    );
  });
}
