/** Which holes for dowels are set out by measures, and which are marked from those that they meet. */
import type { CutLine } from "../../build.ts";
import { isCutLater } from "../../design/making/plain.ts";
import { holeOnBench } from "../../design/turning.ts";
import type { Joint } from "../../design.ts";
import { cutsIn } from "./cuts.ts";
import type { Work } from "./draft.ts";
import { sideWord } from "./words/measured.ts";

/** A joint whose dowel holes are bored in one part by measures; in the other they are marked from there, where the order of work lets them. */
export interface Mating {
  readonly joint: Joint;
  readonly measured: string;
  readonly met: string;
}

/** Into an end or edge a jig or fence guides the bit: that part is bored first. */
export function matingsOf(work: Work): readonly Mating[] {
  return work.design.joints.flatMap((joint): readonly Mating[] => {
    if (joint.method !== "dowels") return [];
    const [a, b] = joint.parts;
    return [
      intoFace(work, joint, a) && !intoFace(work, joint, b)
        ? { joint, measured: b, met: a }
        : { joint, measured: a, met: b },
    ];
  });
}

function intoFace(work: Work, { id }: Joint, part: string): boolean {
  const ids = new Set(work.plan.chosen.get(id)?.fasteners.map((each) => each.id));
  const hole = work.plan.holes.find((each) => each.part === part && each.for !== null && ids.has(each.for));
  if (!hole) return false;
  const own = work.part(part);
  const { direction } = holeOnBench(own, hole);
  return sideWord(own, ([0, 1, 2] as const).find((i) => direction[i] !== 0) ?? 0) === "face";
}

/** The part that the dowels of a joint sit in while that travels. */
export const carrierOf = ({ plan }: Work, { id }: Joint): string | null =>
  plan.chosen.get(id)?.fasteners.find(({ travelsWith }) => travelsWith !== null)?.travelsWith ?? null;

/**
 * Whether a part has its dowels once a body is together: all are put in before the first joint closes over some, and before it is glued to anything.
 * What was glued is not hammered at.
 */
export const hasItsDowels = (work: Work, carrier: string, body: readonly string[]): boolean =>
  work.design.joints.some(
    (joint) =>
      joint.parts.every((id) => body.includes(id)) &&
      ((joint.method === "dowels" && carrierOf(work, joint) === carrier) ||
        (joint.glue && joint.parts.includes(carrier))),
  );

/**
 * Lines of the cut list, those with joints to cut before those with holes only, but so that holes are bored before others are marked from
 * them; what is fitted to something, as tenons are to their mortises, keeps its place behind it.
 */
export function markingOrder(work: Work, given: readonly CutLine[]): readonly CutLine[] {
  const hasCuts = ({ parts: [id = ""] }: CutLine): boolean => cutsIn(work.part(id)).length > 0;
  const lines = [...given.filter(hasCuts), ...given.filter((line) => !hasCuts(line))];
  const matings = matingsOf(work).map(({ measured, met }) => [work.line(measured).mark, work.line(met).mark] as const);
  const cut = lines.map(
    ({ parts }) => new Set(parts.flatMap((id) => work.part(id).features.flatMap((each) => each.for ?? []))),
  );
  const left = lines.map((line, i) => ({ line, i }));
  const order: CutLine[] = [];
  while (left.length > 0) {
    const fitted = ({ i }: (typeof left)[number]): boolean =>
      left.some((other) => other.i < i && [...(cut[other.i] ?? [])].some((joint) => cut[i]?.has(joint)));
    const waits = ({ line }: (typeof left)[number]): boolean =>
      left.some(
        (other) => other.line !== line && matings.some(([from, to]) => from === other.line.mark && to === line.mark),
      );
    const next = left.find((each) => !fitted(each) && !waits(each)) ?? left.find((each) => !fitted(each));
    const [taken] = left.splice(next ? left.indexOf(next) : 0, 1);
    if (taken) order.push(taken.line);
  }
  return order;
}

/** Joints whose second holes can be marked from the first: those are there by then. */
export function markedFrom(work: Work): readonly Mating[] {
  const lines = work.cutList.filter(({ parts: [id = ""] }) => !isCutLater(work.part(id)));
  const place = new Map(markingOrder(work, lines).map(({ mark }, i) => [mark, i]));
  return matingsOf(work).filter(({ measured, met }) => {
    const [from, to] = [place.get(work.line(measured).mark), place.get(work.line(met).mark)];
    return from !== undefined && (to === undefined ? isCutLater(work.part(met)) : from < to);
  });
}
