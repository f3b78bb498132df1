import { roundTo } from "../../../../units/round.ts";
import type { Fastener } from "../../../design.ts";
import { numberWord, type Work } from "../draft.ts";
import type { Move } from "../moves.ts";
import { counted, countText } from "./driving.ts";

/** Keys are let in across a corner when it is dry. */
export const keyTexts = (work: Work, moves: readonly Move[]): readonly string[] =>
  counted(moves.flatMap(({ keys }) => keys.map(({ fastener }) => fastener))).map(({ item, list }) =>
    keyText(work, countText(item, list.length), list),
  );

function keyText({ print, part, design }: Work, these: string, list: readonly Fastener[]): string {
  const slots = list.flatMap(({ joint, through }) =>
    part(through[0] as string).features.filter((each) => each.for === joint && each.kind === "slot"),
  );
  const slot = slots[0];
  const size =
    slot && "size" in slot
      ? `${print(slot.size[1])} wide and ${print(roundTo(slot.size[2], design.precision))} deep `
      : "";
  const joints = new Set(list.map((fastener) => fastener.joint)).size;
  const each = list.length === joints ? "a slot" : `${numberWord(list.length / joints)} slots`;
  const corner = joints > 1 ? "each corner" : "the corner";
  const where = list.length === joints ? "in the middle of its thickness" : "evenly spaced";
  return `When the glue is dry, saw ${each} ${size}across the outside of ${corner}, square to the edge and ${where}. Glue in ${these}, and trim flush when dry.`;
}
