/** What takes no finish while what is round it does: pins and panes that are in their places, and holes for pins. Common practice, no source. */
import { panesOf } from "../../order/glazing.ts";
import type { Work } from "../draft.ts";
import { glazedLastOf } from "./glazed-last.ts";
import { pinsIn } from "./kept-in.ts";

/** Wet finish that runs between a shelf and a side glues the two. */
const LIFTED =
  "What lies loose on them stays in too: lift it off its pins while you coat beside its ends, keep it clear of what is wet, and lay it back when that is hard, or it sticks there.";

/** `last`: what is fixed is in its place by then. */
export function maskTexts(work: Work, parts: readonly string[], last: boolean): readonly string[] {
  const { design, plan } = work;
  const pins = pinsIn(work);
  const own = plan.holes.filter(({ kind, part }) => kind === "pin" && parts.includes(part));
  const isShut = ({ for: id, spare }: (typeof own)[number]): boolean => last && !spare && pins.has(id ?? "");
  const held = own.some(isShut);
  const others = held ? "the holes that are left" : "the holes of the shelf pins";
  const off = new Set(plan.removable.flatMap((body) => body.parts));
  const stays = last ? [...panesOf(design)].filter((id) => !off.has(id) && !glazedLastOf(work).has(id)) : [];
  return [
    ...(held ? ["The shelf pins stay in: tape them, or wipe off at once what gets on them.", LIFTED] : []),
    ...(own.every(isShut)
      ? []
      : [
          `Stop ${others} with bits of dowel or with tape, and take those out before the last coat is hard: where finish gets in, no pin goes in.`,
        ]),
    ...(stays.length > 0
      ? [
          "Where glass is in, tape its edges and cover it with paper, inside and outside; take the tape off before the last coat is hard.",
        ]
      : []),
  ];
}
