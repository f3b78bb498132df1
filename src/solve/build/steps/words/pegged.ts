/** Dowels are driven into one part while that is still loose, and the joint closes over them: nothing that was glued is hammered at. */
import type { Joint } from "../../../design.ts";
import { carrierOf, hasItsDowels } from "../dowelled.ts";
import { capital, listed, type Work } from "../draft.ts";
import type { Move } from "../moves.ts";
import { type Sentence, sentence } from "../sentence.ts";
import { groupedBy } from "../wishes/own-key.ts";
import { counted, countText } from "./driving.ts";
import { pegPlace } from "./peg-places.ts";
import { betweenTexts } from "./true.ts";

const glue = (words: string): Sentence => sentence(words, { glues: true });

/** More are not tapped in while glue is open. Common practice, no source. */
const MANY = 12;

/** How dowels come into the joints of some moves. `moves`: all of the step. */
export function peggedTexts(work: Work, moves: readonly Move[], joints: readonly Joint[]): readonly Sentence[] {
  const own = joints.filter(({ method }) => method === "dowels");
  const carriers = [...new Set(own.flatMap((joint) => carrierOf(work, joint) ?? []))];
  const set = carriers.filter((id) => isSet(work, moves, id));
  const bare = carriers.filter((id) => !set.includes(id));
  const glued = own.some(({ glue }) => glue);
  return [
    ...putInTexts(work, [...gluedNow(work, moves).filter((id) => !carriers.includes(id)), ...bare], own),
    ...(set.length > 0
      ? [glue(`${capital(listed(work, set))} ${set.length === 1 ? "has its" : "have their"} dowels already.`)]
      : []),
    ...(glued ? [glue("Put glue into the holes that the dowels go into."), ...betweenTexts(work, own)] : []),
  ];
}

/** Of a step that closes no joint with dowels, but glues what carries some for later. */
export const pegsBeforeGlue = (work: Work, moves: readonly Move[]): readonly Sentence[] =>
  jointsOf(moves).some(({ method }) => method === "dowels") ? [] : putInTexts(work, gluedNow(work, moves), []);

/** How dowels are put into parts, `own` of the joints that are closed now. */
function putInTexts(work: Work, bare: readonly string[], own: readonly Joint[]): readonly Sentence[] {
  const isGlued = (id: string): boolean => carriedBy(work, [id]).some(({ glue }) => glue);
  return groupedBy(bare, (id) => String(isGlued(id))).flatMap((ids) => {
    const pegs = pegsIn(work, ids);
    const glued = ids.some(isGlued);
    const isNow = ({ joint }: (typeof pegs)[number]): boolean => own.some(({ id }) => id === joint);
    const why = ": nothing that is glued is hammered at";
    const later = pegs.every(isNow)
      ? ""
      : pegs.some(isNow)
        ? `, at once also those that stand free until a later step${glued ? why : ""}`
        : `, though they stand free until a later step${why}`;
    return [
      glued
        ? glue(`Put glue into the dowel holes of ${listed(work, ids)}, and tap the dowels in${later}.`)
        : `Take ${listed(work, ids)}, and tap the dowels in without glue${later}.`,
      ...(glued && pegs.length > MANY
        ? [glue("There is no hurry with these: they may set in their holes before anything is put together.")]
        : []),
      ...counted(pegs).map(({ item, list }) =>
        sentence(`Use ${countText(item, list.length)}${pegPlace(work, list, pegs)}.`, { glues: true, counts: true }),
      ),
    ];
  });
}

const jointsOf = (moves: readonly Move[]): readonly Joint[] =>
  moves.flatMap((move) => move.work.map(({ joint }) => joint));

/** What is glued in a step and carries dowels that are not in yet. */
function gluedNow(work: Work, moves: readonly Move[]): readonly string[] {
  const glued = new Set(jointsOf(moves).flatMap(({ glue, parts }) => (glue ? parts : [])));
  return [...glued].filter((id) => carriedBy(work, [id]).length > 0 && !isSet(work, moves, id));
}

/** The joints whose dowels travel with some parts. */
const carriedBy = (work: Work, ids: readonly string[]): readonly Joint[] =>
  work.design.joints.filter((joint) => joint.method === "dowels" && ids.some((id) => carrierOf(work, joint) === id));

/** Dowels that travel with some parts, whatever they go into. */
const pegsIn = ({ design, plan }: Work, ids: readonly string[]) =>
  design.joints
    .filter(({ method }) => method === "dowels")
    .flatMap(({ id }) => plan.chosen.get(id)?.fasteners ?? [])
    .filter(({ travelsWith }) => travelsWith !== null && ids.includes(travelsWith));

/** Whether another joint closed over dowels of this part before, or it was glued: then all of them were put in. */
function isSet(work: Work, moves: readonly Move[], carrier: string): boolean {
  const bodies = moves.flatMap(({ present, arriving, arrivesBuilt }, i) => [
    ...(i === 0 ? [present] : []),
    ...(arrivesBuilt ? [arriving] : []),
  ]);
  return bodies.some((body) => hasItsDowels(work, carrier, body));
}
