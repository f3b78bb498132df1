import { rational, toNumber } from "../../../../units/rational.ts";
import { roundTo } from "../../../../units/round.ts";
import { isInPlace } from "../../../design/shapes/in-place.ts";
import type { Fastener } from "../../../design.ts";
import { numberWord, type Work } from "../draft.ts";
import type { Move } from "../moves.ts";
import { counted, countText } from "./driving.ts";

/** How keys are made, their slots sawn, and they let in; `copies`: how many are built alike. */
export const keyTexts = (work: Work, moves: readonly Move[], copies: number): readonly string[] =>
  counted(moves.flatMap(({ keys }) => keys.map(({ fastener }) => fastener))).flatMap(({ item, list }) => [
    ...madeTexts(work, list, copies),
    keyText(work, countText(item, list.length), list),
  ]);

const slotOf = ({ part }: Work, { joint, through }: Fastener) =>
  part(through[0] as string)
    .features.filter(isInPlace)
    .find((each) => each.for === joint);

/** Their grain runs across the mitre: along it a key would split where the corner opens. Common practice, no source. */
function madeTexts(work: Work, list: readonly Fastener[], copies: number): readonly string[] {
  const { print, part, stock, design } = work;
  const [first] = list as [Fastener];
  const slot = slotOf(work, first);
  if (!slot) return [];
  const { form, label, species } = stock(part(first.through[0] as string).stock);
  const wood = form === "sheet" ? "hardwood" : (species ?? label);
  const side = roundTo(rational(Math.round(toNumber(slot.size[0]) * Math.SQRT1_2)), design.precision);
  const n = list.length * copies;
  const [many, their] = n === 1 ? ["a triangle", "its"] : [`${numberWord(n)} triangles`, "their"];
  return [
    `From an offcut of ${wood} saw ${many} ${print(slot.size[1])} thick, with a square corner and a little over ${print(side)} on the two sides at it, the grain along ${their} long side: it has to run across the mitre. Try ${n === 1 ? "it" : "them"} in a slot in scrap: ${n === 1 ? "it goes" : "they go"} in by hand, without play.`,
  ];
}

function keyText(work: Work, these: string, list: readonly Fastener[]): string {
  const { print, design } = work;
  const slot = slotOf(work, list[0] as Fastener);
  const size = slot ? `${print(slot.size[1])} wide and ${print(roundTo(slot.size[2], design.precision))} deep ` : "";
  const joints = new Set(list.map((fastener) => fastener.joint)).size;
  const each = list.length === joints ? "a slot" : `${numberWord(list.length / joints)} slots`;
  const corner = joints > 1 ? "each corner" : "the corner";
  const where = list.length === joints ? "in the middle of its thickness" : "evenly spaced";
  return `Saw ${each} ${size}across the outside of ${corner}, square to the edge and ${where}. Glue in ${these}, ${list.length === 1 ? "its long side" : "their long sides"} down on the bottom of the slot.`;
}
