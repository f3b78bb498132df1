import { subtract, toNumber } from "../../../../units/rational.ts";
import type { CutLine } from "../../../build.ts";
import { onBench } from "../../../design/turning.ts";
import type { Part, Point } from "../../../design.ts";
import type { Work } from "../draft.ts";
import { placeWords } from "./by-place.ts";

/**
 * Left, right, front and back are told of the first of several parts. Where another of them stands turned round in the piece, its cuts lie on other
 * sides of it, though it is the same part: that is said once.
 */
export function turnedNote(work: Work, line: CutLine): readonly string[] {
  const [first, ...others] = line.parts.map((id) => work.part(id));
  if (!first || others.every((part) => cutsOf(work, part) === cutsOf(work, first))) return [];
  const name = placeWords(work, first.id);
  return [
    `Left, right, front, back, top and bottom are those of the ${name} as it stands in the piece. ${line.parts.length === 2 ? "Both are the same part: the other is" : `All ${line.parts.length} are the same part: the others are`} turned round.`,
  ];
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
