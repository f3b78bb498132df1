import type { Action, CutLine } from "../../build.ts";
import { holeOnBench, onBench } from "../../design/turning.ts";
import type { Feature, Hole, Part } from "../../design.ts";
import { called, listed, plural, type StepDraft, type Work } from "./draft.ts";
import { cuttingText } from "./words/cutting.ts";
import { featureText } from "./words/features.ts";
import { boringText } from "./words/holes.ts";

const UP = [0, 0, 1] as const;
const SAW_CAUTION =
  "Wear eye and ear protection and a dust mask. Use the guards and follow the instructions of your saw; keep hands away from the blade.";
const ROUTER_CAUTION =
  "Clamp the work before you cut or bore it. Wear eye protection and follow the instructions of your tools.";

/** Minutes of work, rough (common practice, no source): for each blank, feature, bench-bored hole. */
const MINUTES = { blank: 4, feature: 8, shape: 10, hole: 1 } as const;

const isShape = (feature: Feature): boolean => "normal" in feature || "radius" in feature;

/** The order in which joints are cut while the stock is square: mortises before the tenons that are fitted to them. */
const FIRST: readonly Feature["kind"][] = ["mortise", "groove", "dado", "rabbet", "half lap", "notch", "tenon"];

/** Cutting to size, one step for each stock; then joints and holes, one for each kind of part; shapes last. */
export function makingSteps(work: Work): readonly StepDraft[] {
  return [...cutting(work), ...machining(work), ...boring(work), ...shaping(work)];
}

function step(
  kind: StepDraft["kind"],
  title: string,
  text: readonly string[],
  actions: readonly Action[],
  more: Pick<StepDraft, "bench" | "cautions" | "unit"> & { fresh: readonly string[] },
): StepDraft {
  return {
    kind,
    title,
    text,
    actions,
    unit: more.unit,
    bench: more.bench,
    cautions: more.cautions,
    copies: 1,
    up: UP,
    waits: [],
    reminders: [],
    shows: { fresh: more.fresh, present: [], travel: [], fasteners: [] },
  };
}

function cutting(work: Work): readonly StepDraft[] {
  return work.design.stock.flatMap((stock) => {
    const blanks = work.blanks.filter((blank) => blank.stock === stock.name);
    if (blanks.length === 0) return [];
    const lines = work.cutList.filter((line) => line.stock === stock.name);
    return step(
      "make",
      `Cut the parts from ${stock.label}`,
      cuttingText(work, lines),
      [{ do: "make", blanks: blanks.map((blank) => blank.id) }],
      {
        unit: stock.name,
        bench: blanks.length * MINUTES.blank,
        cautions: [SAW_CAUTION],
        fresh: lines.map((line) => line.parts[0] as string),
      },
    );
  });
}

/** Which of a part's features and holes a step makes. */
const machine = (part: Part, features: readonly number[], holes: readonly number[]): Action => ({
  do: "machine",
  part: part.id,
  features,
  holes,
});

const benchHoles = (work: Work, id: string): readonly number[] =>
  work.plan.holes.flatMap((hole, i) => (hole.part === id && hole.atBench ? [i] : []));

function machining(work: Work): readonly StepDraft[] {
  return work.cutList.flatMap((line) => {
    const parts = line.parts.map((id) => onBench(work.part(id)));
    const first = parts[0] as Part;
    const cut = (part: Part) => part.features.flatMap((feature, i) => (isShape(feature) ? [] : [i]));
    if (cut(first).length === 0) return [];
    const kinds = FIRST.filter((kind) => first.features.some((feature) => feature.kind === kind));
    const order = (part: Part) =>
      cut(part).toSorted((a, b) => rank(part.features[a] as Feature) - rank(part.features[b] as Feature) || a - b);
    const holes = holesOf(work, first.id);
    const which = line.parts.length === 1 ? `the ${called(work, first.id)}` : `the ${plural(work, first.id)}`;
    return step(
      "make",
      `${kinds.includes("mortise") || kinds.length > 1 ? "Cut the joints in" : `Cut the ${kindWord(kinds[0] as Feature["kind"])} in`} ${which}`,
      [
        ...(line.mirrorOf
          ? [`These are mirror images of ${line.mirrorOf}: set the cuts out the other way round.`]
          : []),
        ...kinds.flatMap((kind) => featureText(work, first, kind)),
        ...boringText(work, first, holes),
        ...(line.parts.length > 1 ? [`Make all ${line.parts.length} alike: set them out side by side.`] : []),
      ],
      parts.map((part) => machine(part, order(part), benchHoles(work, part.id))),
      {
        unit: line.mark,
        bench: parts.length * (cut(first).length * MINUTES.feature + holes.length * MINUTES.hole),
        cautions: [ROUTER_CAUTION],
        fresh: [first.id],
      },
    );
  });
}

const rank = (feature: Feature): number => FIRST.indexOf(feature.kind);
const kindWord = (kind: Feature["kind"]): string =>
  ({ dado: "dados", groove: "grooves", rabbet: "rabbets", notch: "notches", "half lap": "half laps", tenon: "tenons" })[
    kind as string
  ] ?? kind;

const holesOf = (work: Work, id: string): readonly Hole[] =>
  benchHoles(work, id).map((i) => holeOnBench(work.part(id), work.plan.holes[i] as Hole));

/** Parts that have holes but nothing else to cut. */
function boring(work: Work): readonly StepDraft[] {
  return work.cutList.flatMap((line) => {
    const parts = line.parts.map((id) => onBench(work.part(id)));
    const first = parts[0] as Part;
    const holes = holesOf(work, first.id);
    if (holes.length === 0 || first.features.some((feature) => !isShape(feature))) return [];
    const which = line.parts.length === 1 ? called(work, first.id) : plural(work, first.id);
    return step(
      "drill",
      `Drill the ${which}`,
      [...boringText(work, first, holes), ...(parts.length > 1 ? [`Drill all ${parts.length} alike.`] : [])],
      parts.map((part) => machine(part, [], benchHoles(work, part.id))),
      {
        unit: line.mark,
        bench: parts.length * holes.length * MINUTES.hole + 5,
        cautions: [ROUTER_CAUTION],
        fresh: [first.id],
      },
    );
  });
}

/** Tapers, chamfers and bevels; kinds of part that are shaped in the same words, such as mirror images, share a step. */
function shaping(work: Work): readonly StepDraft[] {
  const groups = new Map<string, CutLine[]>();
  for (const line of work.cutList) {
    const first = onBench(work.part(line.parts[0] as string));
    const kinds = [...new Set(first.features.filter(isShape).map((feature) => feature.kind))];
    const text = kinds.flatMap((kind) => featureText(work, first, kind)).join("\n");
    if (text !== "") groups.set(text, [...(groups.get(text) ?? []), line]);
  }
  return [...groups].map(([text, lines]) => {
    const parts = lines.flatMap((line) => line.parts).map(work.part);
    const shapes = (part: Part) => part.features.flatMap((feature, i) => (isShape(feature) ? [i] : []));
    return step(
      "make",
      `Shape ${listed(
        work,
        parts.map((part) => part.id),
      )}`,
      text.split("\n"),
      parts.map((part) => machine(part, shapes(part), [])),
      {
        unit: (lines[0] as CutLine).mark,
        bench: parts.length * MINUTES.shape,
        cautions: [SAW_CAUTION],
        fresh: lines.map((line) => line.parts[0] as string),
      },
    );
  });
}
