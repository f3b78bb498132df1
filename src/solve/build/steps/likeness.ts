/** How one step's sentences follow from those of another: each part in place of another, as there or mirrored. */
import type { CutLine } from "../../build.ts";
import { pluralOf, stepToken } from "./draft.ts";
import { type Sentence, tells, wordsOf } from "./sentence.ts";
import { MIDWAY } from "./words/measured.ts";

/** Sides that change places, in words of the finished piece; null where none do. */
export type Mirror = readonly [string, string] | null;
export const MIRRORS: readonly Mirror[] = [null, ["left", "right"], ["front", "back"]];

export interface Likeness {
  readonly mirror: Mirror;
  /** Marks of the earlier step's parts, each with that of the part in its place. */
  readonly pairs: ReadonlyMap<string, string>;
  /** What does not follow, a list with the sentence above it. */
  readonly own: readonly (readonly Sentence[])[];
  /** Whether any of that is another thing than there, and not only counted anew. */
  readonly differs: boolean;
  /** Share of the sentences that follow, 0 to 1, and letters that need not be read again. */
  readonly share: number;
  readonly saved: number;
}

/** Counts are told in each, and where what comes is from. */
const isToldAnew = ({ texts, words }: Bare): boolean =>
  texts.some((text) => tells(text, "counts")) || words.includes(stepToken("").slice(0, -1));

/** A sentence without the names of its parts, and their marks. */
interface Bare {
  readonly texts: readonly Sentence[];
  readonly words: string;
  readonly marks: readonly string[];
}

interface Told {
  readonly title: string;
  readonly text: readonly Sentence[];
}

/** Of the sentences of two steps. Null where the earlier step has something that this one leaves out. */
export function likenessOf(
  before: Told,
  now: Told,
  mirror: Mirror,
  bare: (text: string) => Omit<Bare, "texts">,
): Likeness | null {
  const blocks = (texts: readonly Sentence[]): readonly Bare[] =>
    inBlocks(texts.filter((text) => mirror === null || !tells(text, "mirrored"))).map((block) => ({
      texts: block,
      ...bare(block.map(wordsOf).join("\n")),
    }));
  const pairs = new Map<string, string>();
  const taken = new Map<string, string>();
  const left = blocks(before.text).map((block) => ({ ...block, words: mirrored(block.words, mirror), open: true }));
  const own: (readonly Sentence[])[] = [];
  const follows = (words: string, marks: readonly string[], block: Bare | Omit<Bare, "texts">): boolean =>
    (words === block.words || inOrder(words) === inOrder(block.words)) && matches(marks, block.marks, pairs, taken);
  const pair = (marks: readonly string[], others: readonly string[]): void => {
    marks.forEach((mark, i) => {
      pairs.set(mark, others[i] as string);
      taken.set(others[i] as string, mark);
    });
  };
  const [title, other] = [bare(before.title), bare(now.title)];
  if (follows(mirrored(title.words, mirror), title.marks, other)) pair(title.marks, other.marks);
  let from = 0;
  let [followed, saved, differs] = [0, 0, false];
  const all = blocks(now.text);
  for (const block of all) {
    const found = left.findIndex(({ words, marks }, i) => i >= from && follows(words, marks, block));
    const like = left[found];
    if (like) {
      followed++;
      like.open = false;
      from = found + 1;
      pair(like.marks, block.marks);
    }
    if (!like) differs = true;
    if (like && !isToldAnew(block)) saved += block.texts.map(wordsOf).join(" ").length;
    else own.push(block.texts);
  }
  const instead = new Set(own.map(beginning));
  return left.some(({ open, texts }) => open && !instead.has(beginning(texts)))
    ? null
    : { mirror, pairs, own, differs, share: followed / all.length, saved };
}

/** Told by its first two words. */
const beginning = ([first = ""]: readonly Sentence[]): string => wordsOf(first).split(" ").slice(0, 2).join(" ");

const matches = (
  before: readonly string[],
  now: readonly string[],
  pairs: ReadonlyMap<string, string>,
  taken: ReadonlyMap<string, string>,
): boolean =>
  before.every((mark, i) => {
    const other = now[i] as string;
    return (pairs.get(mark) ?? other) === other && (taken.get(other) ?? mark) === mark;
  });

/** Places in a list, where they name no part, in an order of their own: in the mirror they come the other way round. */
function inOrder(block: string): string {
  const [head, ...items] = block.split("\n");
  if (/[\ue003\ue004]/u.test(items.join())) return block;
  const sorted = items.map((item) => {
    const [at = "", across] = item.replace(/\.$/u, "").split(": ");
    return across === undefined
      ? at
      : `${at}: ${across
          .split(/, | and /u)
          .toSorted()
          .join()}`;
  });
  return [head, ...sorted.toSorted()].join("\n");
}

/** A sentence with the items of its list. */
function inBlocks(texts: readonly Sentence[]): readonly (readonly Sentence[])[] {
  const blocks: Sentence[][] = [];
  for (const text of texts)
    if (wordsOf(text).startsWith("– ") && blocks.length > 0) blocks.at(-1)?.push(text);
    else blocks.push([text]);
  return blocks;
}

/** "what is left standing", "right through": no sides; "3/4 in from the left face" of what lies midway: the same from the right one; "the left and the right": both. */
const NO_SIDE = new RegExp(
  `\\b(?:(?:the )?(?:left and (?:the )?right|front and (?:the )?back)|(?:is|are|be) left|left over|right (?:through|way|angles?)|right-angle|(?:left|right|front|back) (?:face|edge|end)(?=${MIDWAY}))(?![\\w-])`,
  "gu",
);

function mirrored(text: string, mirror: Mirror): string {
  if (mirror === null) return text;
  const [a, b] = mirror;
  const kept: string[] = [];
  return text
    .replace(NO_SIDE, (words) => `\ue001${kept.push(words) - 1}\ue002`)
    .replace(new RegExp(`\\b(?:${a}|${b})\\b`, "gu"), (side) => (side === a ? b : a))
    .replace(/\ue001(\d+)\ue002/gu, (_, i) => kept[Number(i)] as string);
}

/** Whether words mean the same in the mirror: they name neither side, or each as often. */
export const isEven = (text: string, mirror: Mirror): boolean =>
  inAlphabet(mirrored(text, mirror)) === inAlphabet(text);

const inAlphabet = (text: string): string => text.split(" ").toSorted().join(" ");

/** Takes the names of parts with their marks out of a text. */
export function withoutNames(lines: readonly Pick<CutLine, "mark" | "name">[]): (text: string) => Omit<Bare, "texts"> {
  const [one, many] = ["\ue003", "\ue004"];
  const known = new Map<string, { readonly mark: string; readonly sign: string }>(
    lines.flatMap(({ mark, name }) => {
      const lower = name.charAt(0).toLowerCase() + name.slice(1);
      return [
        [`${pluralOf(lower)} (${mark})`, { mark, sign: many }],
        [`${lower} (${mark})`, { mark, sign: one }],
      ] as const;
    }),
  );
  if (known.size === 0) return (text) => ({ words: text, marks: [] });
  const names = [...known.keys()].sort((a, b) => b.length - a.length || (a < b ? -1 : 1));
  const any = new RegExp(
    `(?<![\\w-])(?:${names.map((name) => name.replace(/[.*+?^${}()|[\]\\]/gu, "\\$&")).join("|")})`,
    "gu",
  );
  return (text) => {
    const marks: string[] = [];
    const words = text.replace(any, (name) => {
      const { mark, sign } = known.get(name) as { mark: string; sign: string };
      marks.push(mark);
      return sign;
    });
    return { words, marks };
  };
}
