import type { Length } from "../../../units/length.ts";
import type { Blank, CutLine, Finishing, Step } from "../../build.ts";
import type { Design, Part, Stock } from "../../design.ts";
import type { Jig } from "../model/jig.ts";
import type { BuiltMotion } from "../model/motion.ts";
import type { Pattern } from "../model/pattern.ts";
import type { Plan } from "../order/index.ts";
import type { Sentence } from "./sentence.ts";

/** What a finished step has from its sentences. */
type FromText = "uses" | "brings" | "leaves" | "forNow";

/** A step before it has its number and knows what it comes after. */
export interface StepDraft extends Omit<Step, "number" | "after" | "afterWait" | "start" | "end" | "text" | FromText> {
  readonly text: readonly Sentence[];
  /** Planes, cuts, sands or strikes what was glued, or turns it over where it is heavy: the glue must have its full strength. */
  readonly strains?: true;
  /** What of its time goes into further coats: how many, minutes of each, and minutes of rest before each. */
  readonly again?: { readonly count: number; readonly minutes: number; readonly rest: number };
  /** Cautions of lifting that hold only where the work is turned, and those that hold where it lies already as it must. */
  readonly lifts?: { readonly turned: readonly string[]; readonly lying: readonly string[] };
  /** A check before the work is turned, across a side that is hidden where it lies already as it must: what is told then; null: none can be. `next`: told in a step before. */
  readonly proof?: { readonly turned: string; readonly next: string; readonly lying: string | null };
  /** Of its text, what the work is laid on before anything is put on: told where the work is laid down. */
  readonly laidOn?: readonly Sentence[];
  /** Parts that have to stand together, because they are measured. */
  readonly measures?: readonly string[];
  /** The parts of a case or frame that this step keeps square. */
  readonly keeps?: readonly string[];
  /** Parts that are planed or glued up, where no action tells them. */
  readonly of?: readonly string[];
  /** Units whose work was wished into the same step. */
  readonly also?: readonly string[];
  /** What is said where the work stands on its head already, and stays so. */
  readonly onHead?: readonly string[];
  /** What is cut to fit is tried in its place, as the work lies when it is put there. */
  readonly tried?: true;
  /** What is said of holes that are bored on the bench for what is done at the wall: in that step, and instead before the finish. */
  readonly ahead?: { readonly now: string; readonly before: string };
  /** Done where the piece will stand, when all else is done. */
  readonly inTheRoom?: true;
}

/** Something to have at hand, and what for. */
export interface Need {
  readonly tool: string;
  readonly why: string;
}

/** What the steps are written from. */
export interface Work {
  readonly design: Design;
  readonly plan: Plan;
  /** What opens, and what goes with it. */
  readonly motions: readonly BuiltMotion[];
  readonly cutList: readonly CutLine[];
  readonly blanks: readonly Blank[];
  readonly part: (id: string) => Part;
  readonly stock: (name: string) => Stock;
  readonly line: (partId: string) => CutLine;
  /** kg */
  readonly mass: (id: string) => number;
  /** A part's size without the bands that are put on afterwards. */
  readonly bare: (id: string) => Pick<Blank, "width" | "length">;
  /** Made from offcuts before they are used. */
  readonly jigs: readonly Jig[];
  /** Traced, or pricked through, from the plan. */
  readonly patterns: readonly Pattern[];
  /** None where the plan says nothing of finish. */
  readonly finishing: readonly Finishing[];
  /** "12 3/4 in", with true fractions. */
  readonly print: (length: Length) => string;
  /** A drill by its diameter, as it is sold: "11/64 in", "35 mm". */
  readonly drill: (diameter: Length) => string;
  /** Where a hole is, to what a rule has marks for. */
  readonly place: (length: Length) => string;
}

/** "top rail (C)": a part as the text calls it. */
export const called = (work: Work, id: string): string => {
  const { name, mark } = work.line(id);
  return `${lower(name)} (${mark})`;
};

const lower = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

/** "the top rail (C)", "the legs (A)", "both legs (A) and the stretcher (D)": parts that are alike are counted. */
export const listed = (work: Work, ids: readonly string[]): string => series(namesOf(work, ids));

/** The same one by one: "the top rail (C)", "both legs (A)". */
export function namesOf(work: Work, ids: readonly string[]): readonly string[] {
  const counts = new Map<string, { id: string; n: number }>();
  for (const id of ids) {
    const { mark } = work.line(id);
    const before = counts.get(mark);
    counts.set(mark, { id, n: (before?.n ?? 0) + 1 });
  }
  return [...counts.values()].map(({ id, n }) =>
    n === 1 ? `the ${called(work, id)}` : `${numberWord(n)} ${plural(work, id)}`,
  );
}

/** "the two legs (A)": in the middle of a sentence, of what was told before. */
export const definite = (work: Work, ids: readonly string[]): string =>
  series(namesOf(work, ids).map((name) => (/^(?:the|both) /u.test(name) ? name : `the ${name}`)));

/** "legs (A)" */
export const plural = (work: Work, id: string): string => {
  const { name, mark } = work.line(id);
  return `${pluralOf(lower(name))} (${mark})`;
};

/** The first that a name matches tells its plural. */
const PLURALS: readonly (readonly [ends: RegExp, plural: (name: string) => string])[] = [
  [/ and others$/, (name) => name],
  [/ and /, (name) => name.split(" and ").map(pluralOf).join(" and ")],
  [/ for /, (name) => name.replace(/^.*?(?= for )/, pluralOf)],
  [/\bfoot$/, (name) => name.replace(/foot$/, "feet")],
  [/(s|x|ch|sh)$/, (name) => `${name}es`],
  [/shelf$/, (name) => name.replace(/shelf$/, "shelves")],
];

export const pluralOf = (name: string): string => PLURALS.find(([ends]) => ends.test(name))?.[1](name) ?? `${name}s`;

/** "a", "a and b", "a, b and c" */
export const series = (items: readonly string[]): string =>
  items.length < 2 ? (items[0] ?? "") : `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;

const NUMBERS = [
  "no",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];
export const numberWord = (n: number): string => NUMBERS[n] ?? String(n);
/** "an 11/64 in", "a 3/8 in": as it is read aloud. */
export const withArticle = (text: string): string => `${/^(8|11|18)\b/u.test(text) ? "an" : "a"} ${text}`;
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Begins what has to be done before anything else of a step: a sentence that came after the act would come too late. */
export const FIRST = "First: ";

/** Of several things that come first, those after the first one follow it. */
export const inOneList = (texts: readonly string[]): readonly string[] => {
  const first = texts.findIndex((text) => text.startsWith(FIRST));
  return texts.map((text, i) => (i > first && text.startsWith(FIRST) ? `Then ${text.slice(FIRST.length)}` : text));
};

/** Stands for "step 12" until the steps have their numbers. */
export const stepToken = (unit: string): string => `{step of ${unit}}`;
