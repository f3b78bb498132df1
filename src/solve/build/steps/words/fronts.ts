/** How the fronts of drawers are set in their places. */
import type { Length } from "../../../../units/length.ts";
import { compare, equal, less, subtract } from "../../../../units/rational.ts";
import { partsAt } from "../../../design/making/neighbours.ts";
import { indexOf } from "../../../design/space.ts";
import type { Face, Joint } from "../../../design.ts";
import { listed, type Work } from "../draft.ts";
import { gapsOf } from "./gaps.ts";

/**
 * A front is screwed on where it will stay: its gaps are made, not measured. One that covers its opening goes by measures. A clamp reaches
 * round neither of them while the drawer is shut: tape holds it until the drawer is out.
 */
export function setTexts(
  work: Work,
  joints: readonly Joint[],
  way: "shims" | "tape",
  fronts: string,
  boxes: string,
): readonly string[] {
  const several = joints.length > 1;
  const [front, box] = several ? ["each front", "its box"] : [fronts, boxes];
  const { under, beside } = shims(work, joints);
  const face = faceWords(work, joints);
  const set = several ? [`Set ${fronts} one after another, the lowest first.`] : [];
  if (under === null && way === "shims")
    return [
      ...set,
      `Pull the drawer out a hand's breadth, hold ${front} before ${box} by the measures below${beside}, and clamp it to the box. Push the drawer in and look before you bore; screw from inside with the drawer pulled out.`,
    ];
  return [
    ...set,
    `Put two strips of double-sided tape on ${several ? "the front of each box, and push the drawers in" : `${boxes}, and push the drawer in`}. ${under ? "Stand" : "Hold"} ${front} ${under ? `in its opening, on ${under}` : `before ${box} by the measures below${beside}`}${face}; press it hard against the tape.`,
    `Pull ${several ? "each" : "the"} drawer out with both hands on the box, so that nothing shifts. Clamp front and box together now that a clamp goes round them, and screw from inside.`,
  ];
}

/** ", its face flush with the chest post (J)": how far what looks outwards lies behind what stands beside the fronts, where that is the same of all. */
function faceWords(work: Work, joints: readonly Joint[]): string {
  const told = joints.map(({ parts: [box, id] }) => {
    const part = work.part(id);
    const axis = indexOf(part.axes.thickness);
    if (part.turned || axis === 2) return "";
    const low = less(part.body.low[axis], work.part(box).body.low[axis]);
    const side = axis === 1 ? ["left", "right"] : ["front", "back"];
    const beside = side.flatMap((face) => partsAt(face as Face, part, work.design.parts));
    const behind = beside.map(({ id: other, body }) => ({
      other,
      by: low ? subtract(part.body.low[axis], body.low[axis]) : subtract(body.high[axis], part.body.high[axis]),
    }));
    const by = behind[0]?.by;
    if (!by || behind.some((each) => !equal(each.by, by)) || by.n < 0n) return "";
    const those = listed(work, [...new Set(behind.map(({ other }) => other))]);
    return by.n === 0n ? `, its face flush with ${those}` : `, its face ${work.print(by)} behind that of ${those}`;
  });
  const words = new Set(told);
  return words.size === 1 ? (told[0] ?? "") : "";
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
