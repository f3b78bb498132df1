/** A part to scale with all its measures, and in words how it lies and what its holes are. */
import { type PartInWork, partInWork, workIn } from "../../solve/build/part-after.ts";
import type { Build, BuiltPart, CutLine, Step } from "../../solve/build.ts";
import { placeStep } from "../../solve/design/boring/marks.ts";
import type { Hole } from "../../solve/design.ts";
import { inches, type Length, millimetres, printLength, subtract, toNumber } from "../../units/index.ts";
import { roundTo } from "../../units/round.ts";
import type { Item } from "../document.ts";
import { needsDrawing } from "../drawing/part/lying.ts";
import { type PartDrawing, partDrawing } from "../drawing/part/part-drawing.ts";
import { onGrid, TYPE } from "../style.ts";
import { type Atom, paragraph } from "../typeset/atom.ts";
import type { Rich } from "../typeset/lines.ts";
import { paintStack, stack } from "../typeset/stack.ts";
import { holeSize } from "./holes.ts";
import { picture } from "./pictures.ts";
import { asTold } from "./places-told.ts";
import { capital, type Plan } from "./plan.ts";

export interface Drawn {
  readonly height: number;
  /** It tells every measure of what it shows. */
  readonly measured?: boolean;
  /** Points on paper for each unit; and whether it is drawn with a gap. Of a part to scale. */
  readonly scale?: {
    readonly points: number;
    readonly broken: boolean;
    readonly bent: number;
    readonly near: number;
    readonly tells: number;
  };
  /** How many of the small letters it takes. */
  readonly lettered?: number;
  /** What its letters stand for, below it. */
  readonly key?: readonly Atom[];
  /** What is drawn among the text, above the sentence that begins so. */
  readonly among?: readonly { readonly above: string; readonly atom: Atom }[];
  readonly paint: (x: number, y: number) => readonly Item[];
}

/** Of the section with the parts that are not drawn beside a step. */
export const PART_DRAWINGS = "Part drawings";

/** Name for links to the drawing of a part there. */
export const drawingOf = (mark: string): string => `drawing-${mark}`;

export const HOW_TO_READ =
  "Numbers run from the end and from the edge marked 0: lay one rule there for all of them. A row of holes has a line of its own between its first and its last: “a: 4 × 2” is four spaces of 2, “a: 4 equal” four that are stepped off with dividers. Broken lines lie behind or inside. Long parts are drawn with a gap where nothing changes. Holes have letters; only those bored before assembly are drawn.";

/** The part that a step works on, where that is one part, several alike, or they and their mirror images in one, and there is something to measure: as it is by then, with the holes that the step bores. */
export function partInStep(
  { build }: Plan,
  step: Step,
): { readonly part: PartInWork; readonly holes: Build["holes"] } | null {
  // What is cut to fit is sawn out and worked in one step.
  const ids = step.actions
    .filter((action) => step.kind !== "fit" || action.do !== "make")
    .map((action) => (action.do === "machine" ? action.part : null));
  const parts = build.parts.filter(({ id }) => ids.includes(id));
  const [first] = parts;
  const mirrors = build.cutList.filter(({ mirrorOf }) => mirrorOf === first?.mark).map(({ mark }) => mark);
  const isAlike = ({ mark }: BuiltPart): boolean => mark === first?.mark || mirrors.includes(mark);
  if (!first || ids.includes(null) || !parts.every(isAlike)) return null;
  const { number } = step;
  const work = workIn(build, first.id, number, number);
  const features = first.features.filter((_, i) => work.features.has(i));
  const holes = [...work.holes];
  return needsDrawing({ ...first, features }, holes) ? { part: partInWork(build, first, number), holes } : null;
}

/** Shares of the page's height that a drawing may take: more only where its numbers do not go in, or it is much larger then. */
const HEIGHTS = [0.38, 0.5, 0.8] as const;
/** No more than this where it is drawn so many times as large by it. */
const ENOUGH = 0.5;
const WORTH = 1.3;
/** The shares of one that is set closer, the first in which it goes, and the scale below which its holes would crowd. */
const LOW = [0.27, 0.34] as const;
const LEAST = 1 / 16.5;

/** From the words above a drawing to its highest number. */
const BELOW_WORDS = 4;

/** With what the cut list notes of it, where that is not told beside it, and its key as wide as a column; null where its numbers do not go in. */
export function drawnPart(
  plan: Plan,
  line: CutLine,
  part: BuiltPart,
  {
    width,
    column = width,
    noted,
    low = false,
    most,
    below,
  }: {
    readonly width: number;
    readonly column?: number;
    readonly noted: boolean;
    readonly low?: boolean;
    /** The share of the page's height that it takes at most, instead of the usual ones. */
    readonly most?: number;
    /** Smaller than so many points for each unit. */
    readonly below?: number;
  },
): Drawn | null {
  const { build, frame } = plan;
  const units = build.design.units;
  const step = placeStep(build.design);
  const told = asTold(build, part, line);
  const finest = units === "inch" ? inches(1, 128) : millimetres(1, 10);
  const print = (length: Length) => printLength(told(length), { units, precision: finest, style: "typographic" }).text;
  // Steps that are rounded one by one would end elsewhere than their row.
  const marked = (pitch: Length) => Math.abs(toNumber(subtract(roundTo(pitch, step), pitch))) <= 1;
  const shares = most !== undefined ? [most] : low ? LOW : HEIGHTS;
  const made = shares.reduce<PartDrawing | null>((found, share) => {
    if (found && (low || share > ENOUGH)) return found;
    const drawn = partDrawing(build, part, {
      frame: { x: 0, y: 0, width, height: Math.floor(frame.height * share) },
      pen: { ...plan.pen, print },
      marked,
      ...(low && { least: LEAST }),
      ...(below !== undefined && { below }),
    });
    return found && !(drawn && drawn.points > WORTH * found.points) ? found : drawn;
  }, null);
  if (made === null) return null;
  const shown = picture(made);
  // Its step may come before this drawing, or after.
  const later = build.later?.some(({ mark, ordered }) => mark === line.mark && !ordered)
    ? ["The piece tells its size: what is drawn is what to expect."]
    : [];
  const mirror = line.mirrorOf === null ? [] : [`Mirror image of ${line.mirrorOf}.`];
  const notes = noted ? line.notes.map((note) => `${capital(note)}.`) : [];
  const words = [...mirror, made.lies, ...later, ...notes].join(" ");
  const head = stack(paragraph(words, TYPE.caption, width));
  return {
    height: onGrid(head.height + BELOW_WORDS + shown.height + 4),
    measured: true,
    scale: { points: made.points, broken: made.broken, bent: made.bent, near: made.near, tells: made.tells },
    lettered: made.bores.length,
    key: keyOf(made.bores, plan).flatMap((rich, i, all) =>
      paragraph(rich, TYPE.caption, column, { keep: i < all.length - 1 }),
    ),
    paint: (x, y) => [...paintStack(head, x, y), shown.paint(x, y + head.height + BELOW_WORDS)],
  };
}

/** What goes into a hole as the steps call it, where its kind has another name. */
const CALLED: Readonly<Partial<Record<Hole["kind"], string>>> = { nut: "cross dowel" };

/** "a: 4 holes, Ø 11/64, through, clearance, into its left face"; letters of what is alike together, each with its number. */
export function keyOf(
  bores: PartDrawing["bores"],
  { build, printer }: Pick<Plan, "build" | "printer">,
): readonly Rich[] {
  const pegs = new Set(build.fasteners.flatMap(({ id, kind }) => (kind === "peg" ? [id] : [])));
  const alike = new Map<string, PartDrawing["bores"][number][]>();
  for (const bore of bores) {
    const [first] = bore.holes;
    if (!first) continue;
    const kind = first.for === null ? "" : `, ${pegs.has(first.for) ? "peg" : (CALLED[first.kind] ?? first.kind)}`;
    const words = `${holeSize(first, printer)}${kind}, into its ${bore.side}`;
    alike.set(words, [...(alike.get(words) ?? []), bore]);
  }
  return [...alike].map(([words, sets]): Rich => {
    const one = sets.length === 1;
    const count = sets.reduce((sum, { holes }) => sum + holes.length, 0);
    return [
      ...sets.flatMap(({ letter, holes }, i): Exclude<Rich, string>[number][] => [
        { text: letter, font: "italic" },
        { text: `${one ? "" : ` (${holes.length})`}${i === sets.length - 1 ? ":" : ","} `, font: "regular" },
      ]),
      { text: `${count} ${count === 1 ? "hole" : "holes"}, ${words}`, font: "regular" },
    ];
  });
}
