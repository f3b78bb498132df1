/** A step as units of columns: its title, what is drawn of it, and the words below that. */
import type { Step } from "../../solve/build.ts";
import { block } from "../typeset/atom.ts";
import type { Unit } from "../typeset/columns.ts";
import type { FlowAtom } from "../typeset/sheet.ts";
import { cutClosely, cutStack, type Stack, stack } from "../typeset/stack.ts";
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
export function stepUnits(step: Step, picture: Drawn, { text: textOf, width, most }: Under): Unit[] {
  const [text = [], ...pieces] = textOf(picture);
  const units: Unit[] = [];
  for (let rest: Stack | null = wordsOf(picture, text); rest !== null; ) {
    const top = topOf(step, picture, width, units.length === 0);
    const [now, later]: readonly [Stack, Stack | null] = cutClosely(rest, most - top.height, CLOSE);
    units.push([top, ...now.atoms]);
    rest = later;
  }
  return [...units, ...pieces];
}

/** No less of a step's words than this stands on either of two pages, in points: about five lines. */
const LEAST_WORDS = 80;

/**
 * A step of one unit in two for two pages, each with what is drawn of it, the first no higher than `most` points; null where that
 * leaves few words to one of them.
 */
export function inTwo(step: Step, picture: Drawn, again: Drawn, { text, width }: Under, most: number) {
  // All measures of a part are seen at once.
  if (picture.key) return null;
  const top = topOf(step, picture, width, true);
  const words = wordsOf(picture, text(picture).flat());
  const [now, later] = cutStack(words, Math.min(most - top.height, words.height - LEAST_WORDS));
  if (later === null || Math.min(now.height, later.height) < LEAST_WORDS) return null;
  const rest = wordsOf(again, later.atoms);
  return [
    [top, ...now.atoms],
    [topOf(step, again, width, false), ...rest.atoms],
  ] as const;
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
