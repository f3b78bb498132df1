import fc from "fast-check";
import type { Draft, Formula, SizeDraft } from "../../src/parse/draft.ts";
import { parse } from "../../src/parse/index.ts";
import { UNITS_PER_INCH, UNITS_PER_MM } from "../../src/units/length.ts";
import { toNumber } from "../../src/units/rational.ts";
import { type Solved, solveText } from "./compiled.ts";

/** One copy of a plan that a reader might ask for. */
export interface Draw {
  readonly sizes: Readonly<Record<string, string>>;
  readonly choose: Readonly<Record<string, string>>;
  readonly measured: Readonly<Record<string, string>>;
}

export const solveDraw = (text: string, { sizes, choose, measured }: Draw): Solved =>
  solveText(text, sizes, choose, measured);

export const draftOf = (text: string, choose: Readonly<Record<string, string>> = {}): Draft => {
  const source = { name: "plan.yaml", bytes: new TextEncoder().encode(text) };
  const { value, findings } = parse(source, { choose: new Map(Object.entries(choose)) });
  if (!value) throw new Error(findings.map(({ message }) => message).join("\n"));
  return value;
};

/** A formula that is a bare number or a measure, in the plan's units; else undefined. */
function written(formula: Formula, { units }: Draft): number | undefined {
  if (formula.kind === "number") return toNumber(formula.value);
  if (formula.kind !== "measure") return undefined;
  return toNumber(formula.value) / (units === "inch" ? UNITS_PER_INCH : UNITS_PER_MM);
}

/** Sizes that are not meant to be changed are drawn within a fifth of what they are, if they are this many units: lengths, not gaps. */
const LONG = { inch: 6, mm: 150 };

/**
 * Copies of a plan: every size within the range that it states, on marks of the tape; where the plan states no range at all, its outside measures
 * within a fifth; every option; every thickness within the range of its stock, to a sixty-fourth or a tenth of a millimetre.
 */
export function drawsOf(text: string): fc.Arbitrary<Draw> {
  const draft = draftOf(text);
  const all: readonly (readonly [string, SizeDraft])[] = [
    ...Object.entries(draft.outside as Readonly<Record<string, SizeDraft>>),
    ...draft.sizes,
  ];
  const steps = draft.units === "inch" ? 16 : 1;
  const mark = (n: number): string => (draft.units === "inch" ? `${n}/16` : `${n}`);
  const between = (low: number, high: number): fc.Arbitrary<string> =>
    fc.integer({ min: Math.ceil(low * steps), max: Math.floor(high * steps) }).map(mark);
  const ranged = all.flatMap(([name, { from, to }]) => {
    const [low, high] = [from && written(from, draft), to && written(to, draft)];
    return low === undefined || high === undefined ? [] : [[name, between(low, high)] as const];
  });
  const free = Object.entries(draft.outside as Readonly<Record<string, SizeDraft>>).flatMap(([name, { value }]) => {
    const size = written(value, draft);
    return size === undefined || size < LONG[draft.units] ? [] : [[name, between(0.8 * size, 1.2 * size)] as const];
  });
  const stocks = [...draft.stock.values()].flatMap(({ name, between: range }) => {
    const [low, high] = [range && written(range.low, draft), range && written(range.high, draft)];
    if (low === undefined || high === undefined) return [];
    const fine = draft.units === "inch" ? 64 : 10;
    const marks = fc.integer({ min: Math.ceil(low * fine), max: Math.floor(high * fine) });
    return [[name, marks.map((n) => (draft.units === "inch" ? `${n}/64` : `${n / fine}`))] as const];
  });
  return fc.record({
    sizes: fc.record(Object.fromEntries(ranged.length > 0 ? ranged : free)),
    choose: fc.record(
      Object.fromEntries(
        draft.choices.map(({ name, options }) => [name, fc.constantFrom(...options.map((each) => each.name))]),
      ),
    ),
    measured: fc.record(Object.fromEntries(stocks)),
  });
}

/** Every combination of options, the usual ones first. */
export function choicesOf(text: string): readonly Readonly<Record<string, string>>[] {
  return draftOf(text).choices.reduce<readonly Readonly<Record<string, string>>[]>(
    (so, { name, options, default: usual }) => {
      const all = options.toSorted((a, b) => Number(b.name === usual) - Number(a.name === usual));
      return so.flatMap((each) => all.map((option) => ({ ...each, [name]: option.name })));
    },
    [{}],
  );
}

/** The ends and corners of the ranges of thickness, of the stock that is used. */
export function cornersOf(text: string): readonly Readonly<Record<string, string>>[] {
  const draft = draftOf(text);
  return [...draft.stock.values()].reduce<readonly Readonly<Record<string, string>>[]>(
    (so, { name, between }) => {
      const [low, high] = [between && written(between.low, draft), between && written(between.high, draft)];
      if (low === undefined || high === undefined) return so;
      return so.flatMap((each) => [low, high].map((end) => ({ ...each, [name]: String(end) })));
    },
    [{}],
  );
}
