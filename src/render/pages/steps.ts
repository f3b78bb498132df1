/** The steps, in two columns: each a title, a picture, and the text below it; none is on another page than its picture. */

import type { Step } from "../../solve/build.ts";
import { once } from "../once.ts";
import { decoration, line } from "../shapes.ts";
import { BLACK, COLUMN_GAP, onGrid, TYPE } from "../style.ts";
import { type Atom, baseline, block } from "../typeset/atom.ts";
import { columnWidth, type Tightness, type Unit, type Wide } from "../typeset/columns.ts";
import type { Section } from "../typeset/flow.ts";
import { label } from "../typeset/lines.ts";
import { closely, stack } from "../typeset/stack.ts";
import type { Drawn } from "./drawn-part.ts";
import { type Plan, sectionHeading } from "./plan.ts";
import { type Shown, shownInSteps } from "./step-drawn.ts";
import { named, textUnder } from "./step-text.ts";
import { stepTitle, TITLE_SPACE } from "./step-title.ts";
import { BELOW, CLOSE, overPages, stepUnits, type Under } from "./step-units.ts";

const BETWEEN = 14;
/** What lines that keep together can leave empty at the foot of a column. */
const SLACK = 96;

export function stepPages(plan: Plan): Section | null {
  const { build, frame } = plan;
  if (build.steps.length === 0) return null;
  const width = columnWidth(frame.width, COLUMN_GAP);
  const pictures = shownInSteps(plan, width);
  const most = 2 * frame.height - SLACK;
  const units = build.steps.flatMap((step, i) => {
    const { picture, lower, wide, crowded, tells, like, most: taller, taller: higher } = pictures[i] as Shown;
    const under: Under = { text: textUnder(step, width), width, most };
    const set = stepUnits(step, picture, under);
    return set.map((unit, n) => ({
      ...{ unit, of: i, goesOn: n > 0 && unit[0]?.of === undefined, like: set.length === 1 ? like : null },
      again: again(step, width),
      wide: once(() =>
        set.length === 1
          ? wide().flatMap(({ drawn, larger }) => {
              const usual = { ...wideOf(step, drawn, under, frame.width), larger };
              return crowded() > 0 ? [usual, { ...usual, below: closely(usual.below, CLOSE) }] : [usual];
            })
          : [],
      ),
      crowded: once(() => (set.length === 1 ? crowded() : 0)),
      tells,
      taller: set.length === 1 ? { most: taller, by: (more: number) => withPicture(step, higher(more), under) } : null,
      parted: (most: number) => {
        // All measures of a part are seen at once, where that can be.
        if (n > 0 || (picture.measured && set.length === 1)) return null;
        const again = picture.measured ? { ...picture, key: [] } : (lower("least") ?? lower("less") ?? picture);
        const pieces = overPages(step, picture, again, under, most);
        return pieces && { pieces, instead: set.length };
      },
      tight: {
        less: once(() => tightened(step, set, lower("less"), "less", under)),
        least: once(() => tightened(step, set, lower("least") ?? lower("less") ?? picture, "least", under)),
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
      ...{ gap: COLUMN_GAP, between: BETWEEN, tie, tied: TITLE_SPACE },
      units: units.map(({ unit }) => unit),
      again: (i) => units[i]?.again as Atom,
      goesOn: (i) => units[i]?.goesOn ?? false,
      wide: (i) => units[i]?.wide() ?? [],
      crowded: (i) => units[i]?.crowded() ?? 0,
      tells: (i) => units[i]?.tells ?? 1,
      like: (i) => {
        const like = units[i]?.like ?? null;
        return like === null ? null : units.findIndex(({ of }) => of === like);
      },
      taller: (i) => units[i]?.taller ?? null,
      parted: (i, most) => units[i]?.parted(most) ?? null,
      tighter: (i, how) => units[i]?.tight[how]() ?? null,
    },
  };
}

/** The step with its picture over both columns. */
function wideOf(step: Step, picture: Drawn, { text }: Under, whole: number): Omit<Wide, "larger"> {
  const title = stepTitle(step, true, whole);
  const head = block(title.height + picture.height + BELOW, (x, y) => [
    ...title.paint(x, y),
    ...named(picture.paint(x, y + title.height), step),
  ]);
  return {
    head: { ...head, of: `step ${step.number}` },
    below: stack([...(picture.key ?? []), ...text(picture).flat()]).atoms,
  };
}

/** The step with its lower picture, where it is one unit; else null. At the least its paragraphs stand closer. */
function tightened(step: Step, set: readonly Unit[], lower: Drawn | null, how: Tightness, under: Under): Unit | null {
  const unit = set.length === 1 ? withPicture(step, lower, under) : null;
  if (unit === null) return null;
  return how === "less" ? unit : closely(unit, CLOSE);
}

/** The step with another picture, where it is one unit then; else null. */
function withPicture(step: Step, picture: Drawn | null, under: Under): Unit | null {
  const [unit, more] = picture === null ? [] : stepUnits(step, picture, under);
  return unit !== undefined && more === undefined ? unit : null;
}

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
