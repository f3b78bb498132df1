/** Where the hole in one part guides the bit through the next. */
import { ZERO } from "../../../../units/rational.ts";
import type { Joint } from "../../../design.ts";
import { boredThrough } from "../bored-through.ts";
import { listed, type Work, withArticle } from "../draft.ts";
import { type Sentence, sentence } from "../sentence.ts";
import { gripOf, gripsOf, pulledByScrew, shutIn } from "./fronts.ts";

export function boredOnTexts(work: Work, joints: readonly Joint[]): readonly Sentence[] {
  const holes = joints.flatMap((joint) => boredThrough(work, joint)).flatMap((i) => work.plan.holes[i] ?? []);
  const [first] = holes;
  if (!first) return [];
  const bit = work.print(first.stages[0]?.diameter ?? ZERO);
  const through = listed(work, [...new Set(holes.map(({ part }) => part))]);
  const pulled = pulledByScrew(work, joints);
  const kept = pulled && shutIn(work, joints);
  return [
    sentence(
      `${pulled ? "Take the screw that you pulled by out again. " : ""}With ${withArticle(bit)} bit, bore on through ${through} by ${holes.length === 1 ? "the hole" : "the holes"} in front, a piece of scrap held behind.${kept ? ` Screw its ${gripOf(work, joints)} on for now: nothing else opens the drawer once it is shut.` : ""}`,
      kept ? { puts: { on: gripsOf(work, joints) } } : {},
    ),
  ];
}
