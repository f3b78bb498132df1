/** Hardware that decides sizes, and what is bored ahead for it: looked at before anything is sawn. */
import { inches, type Length } from "../../../units/length.ts";
import { compare, equal, less, max, min, subtract } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { SCREW_HOLES } from "../../design/slides/run.ts";
import { type AxisIndex, INDICES } from "../../design/space.ts";
import type { Hole } from "../../design.ts";
import { numberWord, pluralOf, type StepDraft, series, type Work } from "./draft.ts";
import { step } from "./making-step.ts";
import { groupedBy } from "./wishes/own-key.ts";
import { lidSupportTexts } from "./words/lid-support.ts";
import { slideHoles } from "./words/slide-holes.ts";

/** Minutes to measure it (common practice, no source). */
const MINUTES = 5;

/** Hinges and slides decide sizes, and holes are bored ahead for what is screwed on: that is looked at before anything is sawn. Empty where there is none. */
export function inHandStep(work: Work): readonly StepDraft[] {
  const { plan } = work;
  const items = plan.hardware.flatMap(({ joint, item, halfOf }) => (joint !== null && !halfOf ? [item] : []));
  const measured = [...new Map(items.map((item) => [item.label, item])).values()];
  const bored = boredAhead(work);
  if (measured.length + bored.length === 0) return [];
  const lines = measured.map(({ kind, label, decides, ranges }) => {
    const holes = slideHoles(
      work,
      plan.hardware.filter(({ item }) => item.label === label),
    );
    const told = decides.map(({ name, value }) => `${name} ${value}${markIn(work, ranges.get(name))}`);
    return `– ${kind}: ${told.join("; ")}${holes === "" ? "" : `, ${holes}`}.`;
  });
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
        ...lidSupportTexts(work),
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

/** What is screwed on by more than one hole, bored before it is at hand: how far apart they are, in each of its halves. */
function boredAhead({ plan, print }: Work): readonly { readonly kind: string; readonly text: string }[] {
  const told = plan.hardware.filter(({ item }) => !item.decides.some(({ name }) => name === SCREW_HOLES));
  return groupedBy(told, ({ item }) => item.label).flatMap((own) => {
    const rows = (half: boolean): readonly string[] =>
      own.flatMap(({ id, halfOf }) => {
        if ((halfOf !== undefined) !== half) return [];
        const pilots = plan.holes.filter((hole) => hole.for === id && hole.atBench && hole.kind === "pilot");
        return groupedBy(pilots, ({ part }) => part).flatMap((row) => rowText(row, print));
      });
    const [first, second] = [rows(false), rows(true)].map((texts) => [...new Set(texts)].join(" or ")) as [
      string,
      string,
    ];
    const kind = own[0]?.item.kind ?? "";
    const other = second ? `; in its other half ${second}` : "";
    const text = `– ${kind}: ${first || "one hole"}${first === second ? ", in either half" : other}.`;
    return first || second ? [{ kind, text }] : [];
  });
}

/** "three holes 43/64 in apart", of those of one piece in one part; empty for one alone. */
function rowText(holes: readonly Hole[], print: Work["print"]): readonly string[] {
  const [first, ...more] = holes;
  if (!first || more.length === 0) return [];
  const spans = INDICES.map((i) => {
    const at = holes.map((hole) => hole.at[i]);
    return subtract(at.reduce(max), at.reduce(min));
  });
  const along = INDICES.reduce<AxisIndex>((best, i) => (less(spans[best] as Length, spans[i] as Length) ? i : best), 0);
  const at = holes.map((hole) => hole.at[along]).toSorted(compare);
  const gaps = at.slice(1).map((each, i) => subtract(each, at[i] as Length));
  const even = gaps.every((gap) => equal(gap, gaps[0] as Length));
  return [
    even
      ? `${numberWord(holes.length)} holes ${print(gaps[0] as Length)} apart`
      : `${numberWord(holes.length)} holes over ${print(spans[along] as Length)}`,
  ];
}
