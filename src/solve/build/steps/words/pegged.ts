/** Dowels are driven into one part while that is still loose, and the joint closes over them: nothing that was glued is hammered at. */
import type { Joint } from "../../../design.ts";
import { carrierOf, hasItsDowels } from "../dowelled.ts";
import { listed, type Work } from "../draft.ts";
import type { Move } from "../moves.ts";
import { counted, countText } from "./driving.ts";
import { pegPlace } from "./peg-places.ts";
import { betweenTexts } from "./true.ts";

/** More are not tapped in while glue is open. Common practice, no source. */
const MANY = 12;

/** How dowels come into the joints of some moves. `moves`: all of the step. */
export function peggedTexts(work: Work, moves: readonly Move[], joints: readonly Joint[]): readonly string[] {
  const own = joints.filter(({ method }) => method === "dowels");
  const carriers = [...new Set(own.flatMap((joint) => carrierOf(work, joint) ?? []))];
  const set = carriers.filter((id) => isSet(work, moves, id));
  const bare = carriers.filter((id) => !set.includes(id));
  const glued = own.some(({ glue }) => glue);
  const all = pegsIn(work, bare);
  const later = all.some(({ joint }) => !own.some(({ id }) => id === joint));
  return [
    ...(bare.length > 0
      ? [
          glued
            ? `Put glue into the dowel holes of ${listed(work, bare)}, and tap the dowels in${later ? ", at once also those that stand free until a later step: nothing that is glued is hammered at" : ""}.`
            : `Take ${listed(work, bare)}, and tap the dowels in without glue${later ? ", at once also those that stand free until a later step" : ""}.`,
          ...(glued && all.length > MANY
            ? ["There is no hurry with these: they may set in their holes before anything is put together."]
            : []),
          ...counted(all).map(({ item, list }) => `Use ${countText(item, list.length)}${pegPlace(work, list, all)}.`),
        ]
      : []),
    ...(set.length > 0
      ? [
          `${listed(work, set).replace(/^./u, (c) => c.toUpperCase())} ${set.length === 1 ? "has its" : "have their"} dowels already.`,
        ]
      : []),
    ...(glued ? ["Put glue into the holes that the dowels go into.", ...betweenTexts(work, own)] : []),
  ];
}

/** Dowels that travel with some parts, whatever they go into. */
const pegsIn = ({ design, plan }: Work, ids: readonly string[]) =>
  design.joints
    .filter(({ method }) => method === "dowels")
    .flatMap(({ id }) => plan.chosen.get(id)?.fasteners ?? [])
    .filter(({ travelsWith }) => travelsWith !== null && ids.includes(travelsWith));

/** Whether another joint closed over dowels of this part before: then all of them were put in. */
function isSet(work: Work, moves: readonly Move[], carrier: string): boolean {
  const bodies = moves.flatMap(({ present, arriving, arrivesBuilt }, i) => [
    ...(i === 0 ? [present] : []),
    ...(arrivesBuilt ? [arriving] : []),
  ]);
  return bodies.some((body) => hasItsDowels(work, carrier, body));
}
