import { subtract, toNumber } from "../../../../units/rational.ts";
import type { CutLine } from "../../../build.ts";
import { onBench } from "../../../design/turning.ts";
import type { Part, Point } from "../../../design.ts";
import { numberWord, type Work } from "../draft.ts";
import { placeWords } from "./by-place.ts";

/**
 * Left, right, front and back are told of the first of several parts. Where another of them stands turned round in the piece, its cuts lie on other
 * sides of it, though it is the same part: that is said once. `lines`: all that is worked in the same words.
 */
export function turnedNote(work: Work, lines: readonly CutLine[]): readonly string[] {
  const turned = lines.find((line) => standsTurned(work, line));
  if (!turned) return [];
  const count = lines.reduce((so, { parts }) => so + parts.length, 0);
  const others =
    lines.length > 1
      ? `All ${numberWord(count)} are worked alike; those that stand the other way in the piece are turned round.`
      : count === 2
        ? "Both are the same part: the other is turned round."
        : `All ${numberWord(count)} are the same part: the others are turned round.`;
  return [
    `Left, right, front, back, top and bottom are those of the ${placeWords(work, turned.parts[0] as string)} as it stands in the piece. ${others}`,
  ];
}

function standsTurned(work: Work, line: CutLine): boolean {
  const [first, ...others] = line.parts.map((id) => work.part(id));
  return first !== undefined && others.some((part) => cutsOf(work, part) !== cutsOf(work, first));
}

/** What is cut and bored, by where it lies in the part as that stands in the piece; equal for parts that are only moved. */
function cutsOf(work: Work, part: Part): string {
  const { features, body } = onBench(part);
  const place = (at: Point): string =>
    at.map((value, i) => Math.round(toNumber(subtract(value, body.low[i as 0 | 1 | 2])) / 160)).join();
  const cuts = features.map((each) =>
    "normal" in each ? `${each.kind} ${each.normal.join()}` : `${each.kind} ${place(each.origin)} ${each.into.join()}`,
  );
  const bores = work.plan.holes.flatMap((hole) =>
    hole.part === part.id && hole.atBench && !part.turned ? [`${hole.kind} ${place(hole.at)}`] : [],
  );
  return [...cuts, ...bores].sort().join("; ");
}
