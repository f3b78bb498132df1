/** Slabs and built-up panels: glued up first of all, flattened the day after, then cut to size. */
import {
  add,
  half,
  inches,
  type Length,
  less,
  millimetres,
  min,
  multiply,
  rational,
  subtract,
  toNumber,
  ZERO,
} from "../../../units/index.ts";
import type { Blank, Clamping, CutLine } from "../../build.ts";
import { isCutLater, isGluedUp, makingOf } from "../../design/making/plain.ts";
import type { Part } from "../../design.ts";
import { SQUARE_METRE } from "../purchases/supplies.ts";
import { clampsOver } from "./clamp-points.ts";
import { dryText, roundedUp } from "./clamping.ts";
import { capital, listed, numberWord, type StepDraft, type Work } from "./draft.ts";
import { laterToken } from "./later.ts";
import { BOARDS, MILL_CAUTION, step } from "./making-step.ts";
import { isMuchOff } from "./much-off.ts";
import { layingMinutes, OPEN, slowText } from "./open-time.ts";
import { linesApart } from "./wishes/own-key.ts";
import { cutSize } from "./words/cutting.ts";
import { liftCaution } from "./words/lifting.ts";

/** Label instructions of PVA glues: clamped 30 to 60 minutes, no stress for 24 hours. */
const CLAMPED = { for: "clamps", minutes: 45 } as const;
const FLAT = { for: "glue before flattening", minutes: 24 * 60, binds: "strain" } as const;
/** Minutes (common practice, no source): to plane a board, to joint and glue a board or a layer, to trim a slab, to plane both its faces flat by hand. */
const MINUTES = { board: 7, glue: 15, flatten: 45, squareMetre: 120 } as const;

const gluedLines = (work: Work, verb: "glue" | "plane"): readonly CutLine[] =>
  linesApart(
    work,
    { verb },
    work.cutList.filter((line) => isGluedUp(work.part(line.parts[0] as string))),
  ).flat();
const blankOf = (work: Work, id: string): Blank => work.blanks.find(({ part }) => part === id) as Blank;

/** Wood moves when it is planed. Common practice, no source. */
const REST = { for: "wood to rest", minutes: 12 * 60 } as const;

/** So much thicker than what they make boards are glued up at most: it is planed flat afterwards. Common practice, no source. */
const FLATTENED = { inch: inches(3, 16), mm: millimetres(5) } as const;

/** Boards of slabs that are bought rough: planed a bit over and rested before they are jointed, where that can be done by machine. */
export function boardSteps(work: Work): readonly StepDraft[] {
  return gluedLines(work, "glue").flatMap((line) => {
    const [first] = line.parts as [string, ...string[]];
    const { boards } = makingOf(work.part(first));
    const blank = blankOf(work, first);
    if (!blank.jointed || work.stock(line.stock).bought?.rough !== true) return [];
    const over = work.print(
      min(half(add(blank.thickness, line.thickness)), add(line.thickness, FLATTENED[work.design.units])),
    );
    return step(
      "mill",
      `Plane the boards for ${listed(work, line.parts)}`,
      [
        "Flatten a face of each board.",
        `With a planer bring the other face parallel to it, all at one setting, to ${over}: what is left comes off when they are glued up. ${
          isMuchOff(work, blank.thickness, line.thickness)
            ? `Without one have them resawn with a band saw to a little more than that, or planed to it in a shop: ${work.print(subtract(blank.thickness, line.thickness))} of wood are too much to take off by hand.`
            : "With hand planes leave that face as it is."
        }`,
        "Let the boards rest overnight with sticks between them: wood moves when it is planed.",
      ],
      [],
      {
        ...{ unit: `${line.mark}${BOARDS}`, bench: line.parts.length * boards * MINUTES.board, waits: [REST] },
        ...{ cautions: [MILL_CAUTION], fresh: [first], of: line.parts, as: "sawn" as const },
      },
    );
  });
}

export function gluingUpSteps(work: Work): readonly StepDraft[] {
  return gluedLines(work, "glue").map((line) => {
    const [first] = line.parts as [string, ...string[]];
    const { boards, layers } = makingOf(work.part(first));
    const blank = blankOf(work, first);
    const clamps = [
      ...(blank.jointed ? [slabClamps(work, blank, boards)] : []),
      ...(layers > 1 ? [layerClamps(work, blank, layers)] : []),
    ];
    const lift = liftCaution(work, line.parts.slice(0, 1));
    const minutes = layers > 1 ? layingMinutes(blank, layers, clamps) : 0;
    return step(
      "glue-up",
      `Glue up ${listed(work, line.parts)}`,
      [
        ...dryText(work, clamps, slowText(minutes)),
        ...(blank.jointed ? edgeText(work, blank, boards) : []),
        ...(layers > 1 ? faceText(layers) : []),
        ...(line.parts.length > 1 ? ["Glue up one after another."] : []),
      ],
      minutes > OPEN.usual ? [{ do: "glue", joints: [], openMinutes: OPEN.slow }] : [],
      {
        unit: line.mark,
        bench: line.parts.length * boards * layers * MINUTES.glue,
        cautions: lift,
        waits: [CLAMPED, FLAT],
        ...(clamps.length > 0 && { clamps }),
        ...(lift.length > 0 && { hands: 2 }),
        reminders: [
          `Take the clamps off after 45 minutes, and leave the work until the next day${blank.jointed ? ": flattened sooner, the joints sink later and show as lines" : ""}.`,
        ],
        ...{ fresh: [first], as: "glued" },
        of: line.parts,
      },
    );
  });
}

/** Over the length of a slab, every other one above; they open over all its boards and two cauls. */
const slabClamps = (work: Work, { length, jointed = ZERO }: Blank, boards: number): Clamping => ({
  count: clampsOver(length),
  opening: roundedUp(work, add(multiply(jointed, rational(boards)), inches(1))),
});

/** Round all edges, and over all layers and two cauls. */
const layerClamps = (work: Work, { width, length, thickness }: Blank, layers: number): Clamping => ({
  count: 2 * (clampsOver(width) + clampsOver(length)) - 4,
  opening: roundedUp(work, add(multiply(thickness, rational(layers)), inches(4))),
});

function edgeText(work: Work, blank: Blank, boards: number): readonly string[] {
  const rough = work.stock(blank.stock).bought?.rough === true;
  return [
    `Lay the ${boards} boards side by side as they look best, the bark side of every other one down, the grain of all of them rising one way for the plane, and mark a triangle over all of them. ${rough ? "" : "Plane one face of each until it lies flat. "}Plane the edges square to the flat face until they close without light between them; each is about ${work.print(blank.jointed as Blank["length"])} wide then.`,
    ...closingText(clampsOver(blank.length)),
  ];
}

/** What holds the boards below lies ready before there is glue; what holds them above comes when they lie together. */
function closingText(count: number): readonly string[] {
  const below = Math.ceil(count / 2);
  const above = count - below;
  return [
    `Set ${numberWord(below)} ${below === 1 ? "clamp" : "clamps"} open on the bench, evenly over the length, and lay waxed cauls, ${numberWord(above)} ${above === 1 ? "clamp" : "clamps"} and four small ones beside it.`,
    "Stand the boards on edge and spread glue on one edge of each joint. Lay them down together on the clamps as the triangle has them, and draw the clamps just tight.",
    `Lay a caul above and below across each end, hold each pair with two small clamps, and press the boards level. ${above === 1 ? "Then put the last clamp on from above, between those below" : "Then put the others on from above, between those below"}, and tighten all by turns, from the middle outwards.`,
  ];
}

const faceText = (layers: number): readonly string[] => [
  `Spread glue evenly over the whole face between the ${layers} layers, lay them together, and hold two corners that lie across with a clamp each, so that they do not slide. Press the middle first, with stiff cauls from edge to edge, above and below; then clamp all round.`,
];

/** As it is before its edges are cut. */
const gluedWidth = ({ width, jointed }: Blank, boards: number): Length =>
  jointed ? multiply(jointed, rational(boards)) : width;

/** A circular saw with the usual blade, 7 1/4 in (184 mm), does not go through this. Common practice, no source. */
const SAWN_AT_ONCE = inches(2);

const planing = ({ width, length }: Part): number =>
  Math.round((2 * MINUTES.squareMetre * toNumber(width) * toNumber(length)) / SQUARE_METRE);

/** Kind by kind: flat and to thickness, and to size where it need not wait for the piece. */
export function flatteningSteps(work: Work): readonly StepDraft[] {
  return gluedLines(work, "plane").map((line) => {
    const [first] = line.parts as [string, ...string[]];
    const part = work.part(first);
    const later = isCutLater(part);
    const slab = work.stock(line.stock).form === "board";
    const what = listed(work, line.parts);
    const size = `${slab ? `${work.print(line.thickness)} thick, ` : ""}${cutSize(work, first)}`;
    return step(
      "mill",
      slab ? `Flatten ${what}${later ? "" : ", then cut to size"}` : `Trim ${what}${later ? " straight" : " to size"}`,
      [
        ...(slab
          ? [
              `Scrape off the glue, plane one face flat across the joints, and work the other parallel to it, ${work.print(line.thickness)} thick: with a hand plane, first across the grain, then along it, or with a router on a sled that runs on two straight rails. Or have it planed or sanded to thickness in a shop whose machine takes ${work.print(gluedWidth(blankOf(work, first), makingOf(part).boards))}.`,
            ]
          : []),
        later
          ? `Straighten one edge${line.parts.length === 1 ? ". It is" : " of each. They are"} cut to size in ${laterToken(line.mark)}.`
          : slab
            ? `Straighten one edge${line.parts.length === 1 ? "" : " of each"}, cut the ends square to it, and cut the other edge parallel to it last: ${size}.`
            : capital(`cut ${line.parts.length === 1 ? "it" : "each"} square: ${size}.`),
        ...(later || less(line.thickness, SAWN_AT_ONCE)
          ? []
          : [
              "It is thicker than a usual saw cuts: carry each line round with a square, cut from both faces a little outside it, so that the cuts meet in the middle, and plane to the line.",
            ]),
      ],
      [],
      {
        ...{
          unit: line.mark,
          bench: line.parts.length * (MINUTES.flatten + (slab ? planing(part) : 0)),
          strains: true,
        },
        ...{ cautions: [MILL_CAUTION], fresh: [first], of: line.parts, as: later ? "glued" : "sized" },
      },
    );
  });
}
