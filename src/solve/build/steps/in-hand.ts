/** Hardware that decides sizes, and what is bored ahead for it: looked at before anything is sawn. */
import { inches, type Length } from "../../../units/length.ts";
import { absolute, equal, less, max, subtract } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { SCREW_HOLES } from "../../design/slides/run.ts";
import { INDICES } from "../../design/space.ts";
import { pluralOf, type StepDraft, series, type Work } from "./draft.ts";
import { step } from "./making-step.ts";

/** Minutes to measure it (common practice, no source). */
const MINUTES = 5;

/** Hinges and slides decide sizes, and holes are bored ahead for what is screwed on: that is looked at before anything is sawn. Empty where there is none. */
export function inHandStep(work: Work): readonly StepDraft[] {
  const { plan } = work;
  const items = plan.hardware.flatMap(({ joint, item, halfOf }) => (joint !== null && !halfOf ? [item] : []));
  const measured = [...new Map(items.map((item) => [item.label, item])).values()];
  const bored = boredAhead(work, new Set(measured.map(({ label }) => label)));
  if (measured.length + bored.length === 0) return [];
  const lines = measured.map(
    ({ kind, decides, ranges }) =>
      `– ${kind}: ${decides.map(({ name, value }) => `${name} ${value}${markIn(work, ranges.get(name))}`).join("; ")}.`,
  );
  const holed = [
    ...measured.filter(({ decides }) => decides.some(({ name }) => name === SCREW_HOLES)).map(({ kind }) => kind),
    ...bored.map(({ kind }) => kind),
  ];
  return [
    step(
      "buy",
      "Have the hardware in your hand before you cut",
      [
        ...(measured.length > 0
          ? [
              "Sizes of parts follow from this hardware. Measure what you bought:",
              ...lines,
              "If a measure differs, get a copy of this plan for it before you cut.",
            ]
          : []),
        ...(bored.length > 0 ? ["Holes are bored ahead for the screws of:", ...bored.map(({ text }) => text)] : []),
        ...elsewhereTexts(work, [...new Set(holed)]),
      ],
      [],
      { unit: "hardware in hand", bench: MINUTES, cautions: [], fresh: [] },
    ),
  ];
}

/** Where only the holes of what was bought lie elsewhere: a sentence for what comes in halves, and one for the rest. */
function elsewhereTexts({ plan }: Work, kinds: readonly string[]): readonly string[] {
  const inHalves = (kind: string): boolean =>
    plan.hardware.some(({ item, halfOf }) => halfOf !== undefined && item.kind === kind);
  return [true, false].flatMap((halves) => {
    const own = kinds.filter((kind) => inHalves(kind) === halves).map(pluralOf);
    return own.length === 0
      ? []
      : [
          `If only the screw holes of the ${series(own)} lie elsewhere, do not bore for ${own.length === 1 ? "these" : "any of these"} ahead: hold each ${halves ? "half" : "of them"} in its place and mark through its own holes.`,
        ];
  });
}

/** " (33/64 in)": the marks of a rule that lie between two measures in millimetres; empty where there are none, or none are wanted. */
function markIn({ design, print }: Work, range: { readonly low: Length; readonly high: Length } | undefined): string {
  if (!range || design.units === "mm") return "";
  const [low, high] = [roundTo(range.low, inches(1, 64), "up"), roundTo(range.high, inches(1, 64), "down")];
  if (less(high, low) || equal(low, range.low)) return "";
  return equal(low, high) ? ` (${print(low)})` : ` (${print(low)} to ${print(high)})`;
}

/** What is screwed on by more than one hole, bored before it is at hand: how far apart two of them are. */
function boredAhead(
  { plan, print }: Work,
  known: ReadonlySet<string>,
): readonly { readonly kind: string; readonly text: string }[] {
  const own = plan.hardware.filter(({ joint, item, halfOf }) => joint === null && !halfOf && !known.has(item.label));
  return [...new Map(own.map((each) => [each.item.label, each])).values()].flatMap(({ id, item }) => {
    const [a, b, ...more] = plan.holes.filter((hole) => hole.for === id && hole.atBench && hole.kind === "pilot");
    if (!a || !b) return [];
    const apart = INDICES.map((i) => absolute(subtract(a.at[i], b.at[i]))).reduce(max);
    const text = `– ${item.kind}: ${more.length === 0 ? "two holes" : "the first two"} ${print(apart)} apart.`;
    return [{ kind: item.kind, text }];
  });
}
