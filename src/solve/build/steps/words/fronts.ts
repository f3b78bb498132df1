/** How the fronts of drawers are set in their places. */
import type { Length } from "../../../../units/length.ts";
import { compare } from "../../../../units/rational.ts";
import type { Joint } from "../../../design.ts";
import type { Work } from "../draft.ts";
import { gapsOf } from "./gaps.ts";

/** A front is screwed on where it will stay: its gaps are made, not measured. One that covers its opening goes by measures. */
export function setTexts(
  work: Work,
  joints: readonly Joint[],
  way: "shims" | "tape",
  fronts: string,
  boxes: string,
): readonly string[] {
  const several = joints.length > 1;
  const [front, box, before] = several ? ["each front", "its box", "its box"] : [fronts, "the box", boxes];
  const { under, beside } = shims(work, joints);
  const how = way === "tape" ? "press it hard against the tape" : `clamp it to ${box}, or have somebody hold it`;
  return [
    ...(way === "tape" ? [`Put double-sided tape on ${boxes}.`] : []),
    ...(several ? [`Set ${fronts} one after another, the lowest first.`] : []),
    `Push the drawer in. ${under ? "Stand" : "Hold"} ${front} ${under ? "in its place " : ""}before ${before}${
      under ? `, on ${under}` : ` by the measures below${beside}`
    }; ${how}.`,
    "Pull the drawer out with both hands on the box, so that nothing shifts, and screw from inside.",
  ];
}

/** What keeps the gaps of fronts open, as thick as they are drawn: what they stand on, if anything, or else what goes beside them. */
function shims(work: Work, joints: readonly Joint[]): { readonly under: string | null; readonly beside: string } {
  const fronts = joints
    .map(({ parts: [, id] }) => id)
    .toSorted((a, b) => compare(work.part(a).body.low[2], work.part(b).body.low[2]));
  const [lowest, ...others] = fronts.map((id) => gapsOf(work, id));
  const told = (gaps: readonly (Length | null | undefined)[]): string =>
    [...new Set(gaps.flatMap((gap) => (gap ? [work.print(gap)] : [])))].join(" or ");
  const beside = told([lowest, ...others].map((gaps) => gaps?.beside));
  const [own, above] = [told([lowest?.below]), told(others.map(({ below }) => below))];
  const below = above === "" ? own : above;
  if (below === "") return { under: null, beside: beside === "" ? "" : `, with shims ${beside} thick beside it` };
  if (own === below && below === beside) return { under: `shims ${below} thick, below it and beside it`, beside };
  const lower = own === "" || own === below ? "" : ` (${own} under the lowest)`;
  return {
    under: `shims ${below} thick below it${lower}${beside === "" ? "" : ` and ${beside} thick beside it`}`,
    beside,
  };
}
