/** From where wood moves that a joint lets move. */
import { toNumber } from "../../../../units/rational.ts";
import { faceOf, indexOf } from "../../../design/space.ts";
import type { Joint, Still } from "../../../design.ts";
import { called, capital, type Work } from "../draft.ts";
import { groupedBy } from "../wishes/own-key.ts";

/** One sentence for each part that moves; parts are named where they differ. */
export function stillTexts(work: Work, joints: readonly Joint[]): readonly string[] {
  const moving = joints.filter(({ still }) => still && woodMoves(work, still.part));
  const told = groupedBy(moving, ({ still }) => still?.part ?? "").map((own) => ({
    part: own[0]?.still?.part ?? "",
    says: heldWords(work, own),
  }));
  const words = [...new Set(told.map(({ says }) => says))];
  return words.length < 2
    ? words.map((says) => `It ${says}.`)
    : told.map(({ part, says }) => `${capital(`the ${called(work, part)}`)} ${says}.`);
}

/** Plywood stays as it is in what would let wood move. */
export const woodMoves = (work: Work, part: string): boolean =>
  work.stock(work.part(part).stock).movement !== undefined;

/** Buttons and clips hold nothing in one place: wood between them stays in the middle by itself. What other joints hold fast moves from there. */
function heldWords(work: Work, joints: readonly Joint[]): string {
  const still = joints[0]?.still as Still;
  const fasteners = joints.flatMap(({ id }) => work.plan.chosen.get(id)?.fasteners ?? []);
  const here = fasteners.some(({ slack }) => slack === undefined || slack.every((each) => each.n === 0n));
  const side = sideOf(work, still);
  const beside = side !== still.side && heldBeside(work, still);
  return here || beside ? `is held at its ${side}, and moves from there` : `is free to move both ways from its ${side}`;
}

/** In which third of its width the line lies. */
const THIRD = 1 / 3;

function sideOf(work: Work, { part, across, at, side }: Still): Still["side"] {
  if (side !== "middle") return side;
  const i = indexOf(across);
  const { low, high } = work.part(part).body;
  const share = (toNumber(at) - toNumber(low[i])) / (toNumber(high[i]) - toNumber(low[i]));
  return share < THIRD ? faceOf(i, false) : share > 1 - THIRD ? faceOf(i, true) : "middle";
}

/** Joints of its own that let nothing move. */
const heldBeside = ({ design }: Work, { part }: Still): boolean =>
  design.joints.some(({ parts, kind, still }) => kind === "fixed" && !still && parts.includes(part));
