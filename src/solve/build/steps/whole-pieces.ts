/** What is told of pieces that are planed whole because what they give is too small for a machine. Common practice, no source. */
import { equal } from "../../../units/rational.ts";
import type { Blank, CutLine } from "../../build.ts";
import { tooSmall } from "../cut-list/planed-whole.ts";
import { series, type Work } from "./draft.ts";
import { partsIn } from "./wishes/own-key.ts";
import { sized } from "./words/cutting.ts";

/** Blanks of some parts that are planed whole. */
const wholesOf = (work: Work, parts: readonly string[]): readonly Blank[] =>
  work.blanks.filter((blank) => blank.planedWhole && partsIn(blank).some((id) => parts.includes(id)));

const marksOf = (work: Work, blanks: readonly Blank[]): readonly string[] => [
  ...new Set(blanks.map(({ part }) => work.line(part).mark)),
];

export const isPlanedWhole = (work: Work, parts: readonly string[]): boolean => wholesOf(work, parts).length > 0;

/** "in one piece 2 3/8 in wide, 40 1/2 in long"; "in two pieces, ... each"; null for what is sawn one by one. */
export function sawnTogether(work: Work, parts: readonly string[]): string | null {
  const pieces = wholesOf(work, parts);
  const [first] = pieces;
  if (!first || pieces.every((piece) => partsIn(piece).length === 1)) return null;
  if (pieces.length === 1) return `in one piece ${sized(work, first)}`;
  const kinds: { readonly piece: Blank; count: number }[] = [];
  for (const piece of pieces) {
    const same = kinds.find((kind) => equal(kind.piece.width, piece.width) && equal(kind.piece.length, piece.length));
    if (same) same.count += 1;
    else kinds.push({ piece, count: 1 });
  }
  const [only] = kinds;
  const many = pieces.length;
  if (only && kinds.length === 1)
    return `in ${many} pieces, each for ${partsIn(only.piece).length} of them, ${sized(work, only.piece)}`;
  const each = kinds.map(
    ({ piece, count }) =>
      `${count} for ${partsIn(piece).length} of them${count > 1 ? " each" : ""}, ${sized(work, piece)}`,
  );
  return `in ${many} pieces: ${each.join("; ")}`;
}

const are = (marks: readonly string[]): string => `${series(marks)} ${marks.length === 1 ? "is" : "are"}`;

/** Why some pieces are larger than what they give, and what becomes of them; and what no board gives a larger piece for. */
export function wholeTexts(work: Work, blanks: readonly Blank[]): readonly string[] {
  const { units } = work.design;
  const rough = blanks.filter(({ why }) => why === "rough");
  const narrow = rough.filter(({ planedWhole }) => planedWhole && tooSmall(planedWhole, units).narrow);
  const short = rough.filter(({ planedWhole }) => planedWhole && tooSmall(planedWhole, units).short);
  const alone = rough.filter((blank) => {
    const small = tooSmall(blank, units);
    return !blank.planedWhole && (small.narrow || small.short);
  });
  const [narrows, shorts, hand] = [narrow, short, alone].map((some) => marksOf(work, some)) as [
    readonly string[],
    readonly string[],
    readonly string[],
  ];
  return [
    ...(shorts.length > 0
      ? [
          `${are(shorts)} shorter than 12 in (300 mm): the layouts have ${shorts.length === 1 ? "it" : "them"} in ${countWords(short)} as long as that at least, ${arranged(short, "in line")}. Saw no more off: such a piece is planed and ripped whole, and parted when it is brought to size.`,
        ]
      : []),
    ...(narrows.length > 0
      ? [
          `${are(narrows)} narrower than 1 1/2 in (40 mm): the layouts have ${narrows.length === 1 ? "it" : "them"} in ${countWords(narrow)} as wide as that at least, ${arranged(narrow, "side by side")}. Saw no more off: such a piece is flattened and planed whole, and its sticks are ripped off when it has its thickness.`,
        ]
      : []),
    ...(hand.length > 0
      ? [`${are(hand)} too small for a jointer or a planer, and the boards give no larger piece: plane by hand.`]
      : []),
  ];
}

const countWords = (blanks: readonly Blank[]): string => (blanks.length === 1 ? "a piece" : "pieces");

/** Several lie in a row, or there is wood to spare. */
const arranged = (blanks: readonly Blank[], how: "in line" | "side by side"): string => {
  const several = blanks.filter(({ planedWhole }) => {
    const { beside = 1, inLine = 1 } = planedWhole ?? {};
    return (how === "in line" ? inLine : beside) > 1;
  });
  return several.length === blanks.length
    ? how
    : several.length === 0
      ? "with wood to spare"
      : `${how} or with wood to spare`;
};

/** What is not yet ripped and cut when the rough pieces are planed the first time. */
export function leftWhole(work: Work, parts: readonly string[]): readonly string[] {
  const pieces = wholesOf(work, parts);
  if (pieces.length === 0) return [];
  const [head, verb] = pieces.length === 1 ? ["The piece", "is"] : ["The pieces", "are"];
  return [`${head} for ${series(marksOf(work, pieces))} ${verb} not parted yet.`];
}

/** How what was planed whole is parted. */
export function partedTexts(work: Work, parts: readonly string[]): readonly string[] {
  const pieces = wholesOf(work, parts).map((blank) => ({
    blank,
    ...tooSmall(blank.planedWhole ?? blank, work.design.units),
  }));
  const blanks = (some: typeof pieces): readonly Blank[] => some.map(({ blank }) => blank);
  const narrow = pieces.filter((each) => each.narrow);
  const isBeside = ({ blank }: (typeof pieces)[number]): boolean => (blank.planedWhole?.beside ?? 1) > 1;
  const ripped = blanks(narrow.filter(isBeside));
  const both = blanks(narrow.filter((each) => isBeside(each) && each.short));
  const strips = blanks(narrow.filter((each) => !isBeside(each)));
  const short = blanks(pieces.filter((each) => each.short && !each.narrow));
  const piece = (some: readonly Blank[]): string => (some.length === 1 ? "piece" : "pieces");
  const marks = marksOf(work, ripped);
  return [
    ...(ripped.length > 0
      ? [
          `Rip ${series(marks)} off ${marks.length === 1 ? "its" : "their"} ${piece(ripped)} one after another, and straighten the edge of the piece before each.${both.length > 0 ? ` Then cut ${series(marksOf(work, both))} to length.` : ""}`,
        ]
      : []),
    ...(strips.length > 0
      ? [
          `Straighten an edge of the ${piece(strips)} for ${series(marksOf(work, strips))}, rip one strip off ${strips.length === 1 ? "it" : "each"}, and cut ${series(marksOf(work, strips))} off that to length.`,
        ]
      : []),
    ...(short.length > 0
      ? [`Bring the ${piece(short)} for ${series(marksOf(work, short))} to width whole, and cut to length last.`]
      : []),
  ];
}

/** "in their piece, with one edge of it straight" */
export const keptWhole = (work: Work, line: CutLine): string => {
  const pieces = wholesOf(work, line.parts);
  const own = line.parts.length === 1 ? "its" : "their";
  return `in ${own} ${pieces.length === 1 ? "piece, one edge of it" : "pieces, one edge of each"} straight`;
};
