/** The words of a step: cautions, what is done, reminders. */
import { FIRST } from "../../solve/build/steps/draft.ts";
import type { Step } from "../../solve/build.ts";
import type { Item } from "../document.ts";
import { decoration, line } from "../shapes.ts";
import { GREY, TYPE } from "../style.ts";
import { type Atom, list, paragraph } from "../typeset/atom.ts";
import type { Rich } from "../typeset/lines.ts";
import type { Drawn } from "./drawn-part.ts";
import { capital } from "./plan.ts";

/** Figures say of which step they are. */
export const named = (items: readonly Item[], { number }: Step): readonly Item[] =>
  items.map((item) => (item.kind === "group" && item.role === "figure" ? { ...item, about: `step ${number}` } : item));

/** The text of a step below what is drawn of it, parted where more is drawn; set once for all drawings that tell as much. */
export function textUnder(step: Step, width: number): (drawn: Drawn) => readonly (readonly Atom[])[] {
  const known = new Map<boolean, readonly (readonly Atom[])[]>();
  return (drawn) => {
    const { measured = false, among = [] } = drawn;
    const found = known.get(measured) ?? stepText(step, drawn, width);
    if (among.length === 0) known.set(measured, found);
    return found;
  };
}

/** Without the places of the holes where a drawing beside it has them all. */
function stepText(step: Step, { measured = false, among = [] }: Drawn, width: number): Atom[][] {
  const aside = (head: string, texts: readonly string[]): readonly Atom[] =>
    texts.length === 0
      ? []
      : whole(barred(paragraph(run(head, texts.join(" ")), TYPE.step, width, { above: 8, indent: 10 })));
  const [first = [], ...others] = told(step, measured ? withoutPlaces(step.text) : step.text, among, width);
  // Who reads of a danger after the act has read of it too late.
  const pieces = [[...aside("Caution", step.cautions), ...first], ...others];
  return pieces.map((piece, i) => (i === pieces.length - 1 ? [...piece, ...aside("Remember", step.reminders)] : piece));
}

/** The sentences, each with what is drawn of it above; a piece for each that is drawn, the first with what is told before. */
function told(step: Step, texts: readonly string[], among: NonNullable<Drawn["among"]>, width: number): Atom[][] {
  const starts = texts.flatMap((text, i) => {
    const drawn = among.find(({ above }) => text.startsWith(above));
    return drawn ? [{ i, atom: drawn.atom }] : [];
  });
  const pieces = starts.map(({ i, atom }, n) => [
    { ...atom, keep: true, paint: (x: number, y: number) => named(atom.paint(x, y), step) },
    ...sentences(texts.slice(i, starts[n + 1]?.i), width),
  ]);
  const [first = [], ...others] = pieces;
  return [[...sentences(texts.slice(0, starts[0]?.i), width), ...first], ...others];
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
