/** What stays bare under a finish that smells, in words: the same in a step and on the page of finishing. */
import { faceAxis } from "../../design/space.ts";
import type { Part } from "../../design.ts";
import type { Finishing } from "../model/purchase.ts";
import { series } from "../steps/draft.ts";
import { groupedBy } from "../steps/wishes/own-key.ts";
import { bodyWords, theBody } from "../steps/words/bodies.ts";
import { sideWord } from "../steps/words/measured.ts";

type Said = Pick<Finishing, "bareWhat" | "bareFaces" | "bothFaces" | "leaves">;

/** `mark`: of a part, by its id. */
export function bareTexts(
  { bareWhat, bareFaces = [], bothFaces = [], leaves = [] }: Said,
  parts: readonly Part[],
  mark: (id: string) => string,
): readonly string[] {
  if (!bareWhat) return [];
  const marks = [...new Set(bothFaces.map(mark))].toSorted();
  return [
    `Leave ${series(bareWhat)} bare, or wax them: oil smells for months where little air moves.`,
    ...(bareFaces.length > 0 ? [`Bare inside, as far as they are shut in: ${facesText(bareFaces, parts, mark)}.`] : []),
    ...(bareFaces.length > 0 && marks.length > 0
      ? [
          `${series(marks)} ${marks.length === 1 ? "has its" : "have their"} coats on both faces all the same, or it cups.`,
        ]
      : []),
    ...(bareFaces.length > 0 ? leavesText(leaves, mark) : []),
  ];
}

/** One that hangs apart from the piece dries on both faces, and is aired by being opened. */
function leavesText(leaves: NonNullable<Said["leaves"]>, mark: (id: string) => string): readonly string[] {
  if (leaves.length === 0) return [];
  const nameOf = (ids: readonly string[]): string => {
    const words = bodyWords(ids);
    return words === null ? listOf(ids, mark) : theBody(words);
  };
  const named = [...new Set(leaves.map(nameOf))];
  const one = leaves.length === 1;
  const told = series(named);
  return [
    `${told.charAt(0).toUpperCase()}${told.slice(1)} ${one ? "has its" : "have their"} coats on both faces all the same, also on the ${one ? "one that looks" : "ones that look"} inside, or ${one ? "it warps" : "they warp"}: leave ${one ? "it" : "them"} open until nothing smells any more.`,
  ];
}

const listOf = (ids: readonly string[], mark: (id: string) => string): string =>
  series([...new Set(ids.map(mark))].toSorted());

/** Of parts of one mark that stand each its own way. */
const INWARDS = "inwards";

/** "the right face of A; the left face of B; the faces of J that look inwards" */
function facesText(
  faces: NonNullable<Said["bareFaces"]>,
  parts: readonly Part[],
  mark: (id: string) => string,
): string {
  const byId = new Map(parts.map((part) => [part.id, part]));
  const words = ({ part: id, sides }: (typeof faces)[number]): string => {
    const part = byId.get(id);
    if (sides.length === 0 || !part) return "all of";
    return `the ${series(sides.map((side) => `${side} ${sideWord(part, faceAxis(side))}`))} of`;
  };
  const lines = groupedBy(faces, ({ part }) => mark(part)).map((own) => {
    const told = new Set(own.map(words));
    const [one = ""] = told;
    return { mark: mark(own[0]?.part ?? ""), words: told.size === 1 ? one : INWARDS };
  });
  return groupedBy(
    lines.toSorted((a, b) => (a.mark < b.mark ? -1 : 1)),
    (line) => line.words,
  )
    .map((own) => {
      const marks = series(own.map((line) => line.mark));
      const [{ words: faces } = { words: "" }] = own;
      return faces === INWARDS ? `the faces of ${marks} that look inwards` : `${faces} ${marks}`;
    })
    .join("; ");
}
