import { roundTo } from "../../../../units/round.ts";
import type { Fastener } from "../../../design.ts";
import { numberWord, type Work } from "../draft.ts";

/** Keys are let in across a corner when it is dry. `these` says how many of what. */
export function keyTexts({ print, part, design }: Work, these: string, list: readonly Fastener[]): readonly string[] {
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
  return [
    `When the glue is dry, saw ${each} ${size}across the outside of ${joints > 1 ? "each corner" : "the corner"}, square to the edge and evenly spaced.`,
    `Glue in ${these}, and trim flush when dry.`,
  ];
}
