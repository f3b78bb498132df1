/** A step as units of columns: its title, what is drawn of it, and the words below that. */
import type { Step } from "../../solve/build.ts";
import { block } from "../typeset/atom.ts";
import type { Unit } from "../typeset/columns.ts";
import type { FlowAtom } from "../typeset/sheet.ts";
import { cutClosely, type Stack, stack } from "../typeset/stack.ts";
import type { Drawn } from "./drawn-part.ts";
import { named, type textUnder } from "./step-text.ts";
import { stepTitle } from "./step-title.ts";

/** What stands below a picture, how wide, and how high a unit may be. */
export interface Under {
  readonly text: ReturnType<typeof textUnder>;
  readonly width: number;
  readonly most: number;
}

/** Between paragraphs that stand close. */
export const CLOSE = 3;
/** From a picture to the text. */
export const BELOW = 8;

/** One unit; more where the text is longer than a page, each with the picture, and where more is drawn among it. */
export function stepUnits(step: Step, picture: Drawn, { text, width, most }: Under): Unit[] {
  const [first = [], ...pieces] = text(picture);
  const pages = { step, picture, again: { ...picture, key: [] }, width, first: most, most };
  return [...onPages(wordsOf(picture, first), pages), ...pieces];
}

/** No less of a step's words than this stands on either of two pages, in points: about six lines. */
const LEAST_WORDS = 96;

/**
 * A step that begins on a page with room for no more than `first` points, and goes on on further ones, each with what is drawn of
 * it; null where that leaves few words to one of them, or more is drawn among its words.
 */
export function overPages(
  step: Step,
  picture: Drawn,
  again: Drawn,
  { text, width, most }: Under,
  first: number,
): readonly Unit[] | null {
  const [words = [], ...among] = text(picture);
  if (among.length > 0) return null;
  const all = wordsOf(picture, words);
  const top = topOf(step, picture, width, true).height;
  const key = stack(picture.key ?? []).height;
  const room = Math.min(first - top, all.height - LEAST_WORDS);
  const now = wholeParagraphs(all, room);
  if (now - key < LEAST_WORDS || all.height - now < LEAST_WORDS) return null;
  const pieces = onPages(all, { step, picture, again, width, first: top + now, most });
  return pieces.length > 1 ? pieces : null;
}

/** How high are the paragraphs that go in whole, which end where nothing keeps them with the next. */
function wholeParagraphs({ atoms }: Stack, room: number): number {
  let [used, ended] = [0, 0];
  for (const [i, atom] of atoms.entries()) {
    if (i > 0 && atom.above > 0 && atoms[i - 1]?.keep === false) ended = used;
    used += (i === 0 ? 0 : atom.above) + atom.height;
    if (used > room) break;
  }
  return ended;
}

interface OnPages {
  readonly step: Step;
  /** What is drawn on the first page, and on further ones. */
  readonly picture: Drawn;
  readonly again: Drawn;
  readonly width: number;
  /** How high it may be on the first page, and on a further one. */
  readonly first: number;
  readonly most: number;
}

/** So short a rest, in points, is read with the picture before it: about ten lines. */
const SHORT = 160;
const NONE: Drawn = { height: 0, paint: () => [] };

function onPages(words: Stack, { step, picture, again, width, first, most }: OnPages): Unit[] {
  const units: Unit[] = [];
  for (let rest: Stack | null = words; rest !== null; ) {
    const begins = units.length === 0;
    const drawn = begins ? picture : stack(rest.atoms).height <= SHORT ? NONE : again;
    const top = topOf(step, drawn, width, begins);
    const whole: Stack = begins ? rest : wordsOf(drawn, rest.atoms);
    const [now, later]: readonly [Stack, Stack | null] = cutClosely(whole, (begins ? first : most) - top.height, CLOSE);
    units.push([top, ...now.atoms]);
    rest = later;
  }
  return units;
}

/** Below what is drawn, with its key first. */
function wordsOf({ key = [] }: Drawn, text: Unit): Stack {
  const [first, ...rest] = text;
  return stack(key.length > 0 || !first ? [...key, ...text] : [{ ...first, above: 0 }, ...rest]);
}

/** The step's title and what is drawn below it. */
function topOf(step: Step, { height, paint, key = [] }: Drawn, width: number, first: boolean): FlowAtom {
  const title = stepTitle(step, first, width);
  const below = height > 0 && key.length === 0 ? BELOW : 0;
  return {
    ...block(
      title.height + height + below,
      (x, y) => [...title.paint(x, y), ...named(paint(x, y + title.height), step)],
      { keep: height === 0 || key.length > 0 },
    ),
    of: `step ${step.number}`,
  };
}
