/** The steps, in two columns: each a title, a picture, and the text below it; none is on another page than its picture. */

import { FIRST } from "../../solve/build/steps/draft.ts";
import type { Step } from "../../solve/build.ts";
import type { Item } from "../document.ts";
import { decoration, line } from "../shapes.ts";
import { BLACK, GREY, onGrid, TYPE } from "../style.ts";
import { type Atom, baseline, block, list, paragraph } from "../typeset/atom.ts";
import { columnWidth, type Tightness, type Unit, type Wide } from "../typeset/columns.ts";
import type { Section } from "../typeset/flow.ts";
import { label, type Rich } from "../typeset/lines.ts";
import type { FlowAtom } from "../typeset/sheet.ts";
import { cutStack, type Stack, stack } from "../typeset/stack.ts";
import type { Drawn } from "./drawn-part.ts";
import { once } from "./once.ts";
import { capital, type Plan, sectionHeading } from "./plan.ts";
import { type Shown, shownInSteps } from "./step-drawn.ts";
import { stepTitle, TITLE_SPACE } from "./step-title.ts";

const GAP = 24;
const BETWEEN = 14;

export function stepPages(plan: Plan): Section | null {
  const { build, frame } = plan;
  if (build.steps.length === 0) return null;
  const width = columnWidth(frame.width, GAP);
  const pictures = shownInSteps(plan, width);
  const most = 2 * frame.height - SLACK;
  const units = build.steps.flatMap((step, i) => {
    const { picture, lower, wide } = pictures[i] as Shown;
    const set = stepUnits(step, picture, width, most);
    return set.map((unit) => ({
      unit,
      again: again(step, width),
      wide: once(() => (set.length === 1 ? wideOf(step, wide(), width, frame.width) : null)),
      tight: {
        less: once(() => tightened(step, set, lower("less"), "less", width, most)),
        least: once(() => tightened(step, set, lower("least") ?? lower("less") ?? picture, "least", width, most)),
      },
    }));
  });
  return {
    name: "steps",
    title: "Step by step",
    kind: "steps",
    start: "fits",
    atoms: sectionHeading("steps", "Step by step", frame.width),
    columns: {
      ...{ gap: GAP, between: BETWEEN, tie, tied: TITLE_SPACE },
      units: units.map(({ unit }) => unit),
      again: (i) => units[i]?.again as Atom,
      wide: (i) => units[i]?.wide() ?? null,
      tighter: (i, how) => units[i]?.tight[how]() ?? null,
    },
  };
}

/** The step with its picture over both columns. */
function wideOf(step: Step, picture: Drawn | null, width: number, whole: number): Wide | null {
  if (picture === null) return null;
  const title = stepTitle(step, true, whole);
  const head = block(title.height + picture.height + BELOW, (x, y) => [
    ...title.paint(x, y),
    ...named(picture.paint(x, y + title.height), step),
  ]);
  const text = [...(picture.key ?? []), ...stepText(step, picture, width)];
  return { head: { ...head, of: `step ${step.number}` }, below: stack(text).atoms };
}

/** The step with its lower picture, where it is one unit; else null. At the least its paragraphs stand closer. */
function tightened(
  step: Step,
  set: readonly Unit[],
  lower: Drawn | null,
  how: Tightness,
  width: number,
  most: number,
): Unit | null {
  const [unit] = set.length === 1 && lower !== null ? stepUnits(step, lower, width, most) : [];
  if (unit === undefined) return null;
  return how === "less" ? unit : unit.map((atom) => ({ ...atom, above: Math.min(atom.above, CLOSE) }));
}

/** Between paragraphs that stand close. */
const CLOSE = 3;

/** The line above a step that goes over into the right column. */
const tie = (width: number): Atom =>
  block(0, (x, y) => [decoration(line(x, y, x + width, y, { width: 1, ink: BLACK }))]);

/** Above what goes on in the right column below the left one's first step: "17, continued". */
const again = ({ number }: Step, width: number): Atom => {
  const text = `${number}, continued`;
  const height = onGrid(TITLE_SPACE + TYPE.caption.leading + BELOW);
  return block(height, (x, y) => [
    decoration(line(x, y, x + width, y, { width: 1, ink: BLACK })),
    { kind: "group", role: "paragraph", items: [label(text, TYPE.caption, x, y + 4 + baseline(TYPE.caption))] },
  ]);
};

/** What lines that keep together can leave empty at the foot of a column. */
const SLACK = 96;

/** One unit; more where the text is longer than a page, each with the picture. */
function stepUnits(step: Step, picture: Drawn, width: number, most: number): Unit[] {
  const key = picture.key ?? [];
  const text = stepText(step, picture, width);
  const units: Unit[] = [];
  let rest: Stack | null = stack(
    key.length > 0 ? [...key, ...text] : text.map((a, i) => (i === 0 ? { ...a, above: 0 } : a)),
  );
  while (rest !== null) {
    const title = stepTitle(step, units.length === 0, width);
    const below = picture.height > 0 && key.length === 0 ? BELOW : 0;
    const height = title.height + picture.height + below;
    const [now, later]: readonly [Stack, Stack | null] = cutStack(rest, most - height);
    const top: FlowAtom = {
      ...block(height, (x, y) => [...title.paint(x, y), ...named(picture.paint(x, y + title.height), step)], {
        keep: picture.height === 0 || key.length > 0,
      }),
      of: `step ${step.number}`,
    };
    units.push([top, ...now.atoms]);
    rest = later;
  }
  return units;
}

const named = (items: readonly Item[], { number }: Step): readonly Item[] =>
  items.map((item) => (item.kind === "group" && item.role === "figure" ? { ...item, about: `step ${number}` } : item));

/** From a picture to the text. */
const BELOW = 8;

/** Without the places of the holes where a drawing beside it has them all. */
function stepText(step: Step, { measured = false, among = [] }: Drawn, width: number): Atom[] {
  const aside = (head: string, texts: readonly string[]): readonly Atom[] =>
    texts.length === 0
      ? []
      : whole(barred(paragraph(run(head, texts.join(" ")), TYPE.step, width, { above: 8, indent: 10 })));
  return [
    // Who reads of a danger after the act has read of it too late.
    ...aside("Caution", step.cautions),
    ...told(step, measured ? withoutPlaces(step.text) : step.text, among, width),
    ...aside("Remember", step.reminders),
  ];
}

/** The sentences, each with what is drawn of it above. */
function told(step: Step, texts: readonly string[], among: NonNullable<Drawn["among"]>, width: number): Atom[] {
  const starts = texts.flatMap((text, i) => {
    const drawn = among.find(({ above }) => text.startsWith(above));
    return drawn ? [{ i, atom: drawn.atom }] : [];
  });
  const pieces = starts.map(({ i, atom }, n) => [
    { ...atom, keep: true, paint: (x: number, y: number) => named(atom.paint(x, y), step) },
    ...sentences(texts.slice(i, starts[n + 1]?.i), width),
  ]);
  return [...sentences(texts.slice(0, starts[0]?.i), width), ...pieces.flat()];
}

/** Without the lists that only add to a sentence which is whole before them: where it bores. */
function withoutPlaces(texts: readonly string[]): readonly string[] {
  let whole = false;
  return texts.filter((text) => {
    if (isItem(text)) return !whole;
    whole = text.endsWith(".");
    return true;
  });
}

const isItem = (text: string): boolean => text.startsWith("– ");

/** Paragraphs; neighbours that begin with a dash are a list. */
function sentences(texts: readonly string[], width: number): Atom[] {
  const atoms: Atom[] = [];
  for (let i = 0; i < texts.length; ) {
    let end = i;
    while (isItem(texts[end] ?? "")) end++;
    if (end > i) {
      const items = texts.slice(i, end).map((text) => text.slice(2));
      atoms.push(...list(items, TYPE.step, width, { above: 3, between: 3 }));
      i = end;
    } else {
      const text = texts[i] ?? "";
      const rich = text.startsWith(FIRST) ? run(FIRST.trim().slice(0, -1), capital(text.slice(FIRST.length))) : text;
      atoms.push(...paragraph(rich, TYPE.step, width, { above: 5, keep: isItem(texts[i + 1] ?? "") }));
      i++;
    }
  }
  return atoms;
}

const run = (head: string, text: string): Rich => [
  { text: `${head}: `, font: "bold" },
  { text, font: "regular" },
];

/** A bar in the margin of a paragraph. */
const barred = (atoms: readonly Atom[]): Atom[] =>
  atoms.map((atom) => ({
    ...atom,
    paint: (x, y) => [decoration(line(x + 1, y, x + 1, y + atom.height, { width: 2, ink: GREY })), ...atom.paint(x, y)],
  }));

/** A caution of no more lines is on one page and in one column. */
const SHORT = 9;
const whole = (atoms: readonly Atom[]): readonly Atom[] =>
  atoms.length > SHORT ? atoms : atoms.map((atom, i) => ({ ...atom, keep: i < atoms.length - 1 }));
