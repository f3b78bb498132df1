/** What a step closes that only a section shows: hinges, and bolts in cross dowels; what has the same sizes once. */
import type { Build, Step } from "../../build.ts";
import type { CutThrough } from "../model/cut-through.ts";
import { mountedAt } from "../mounted.ts";
import { crossDowelCut } from "./cross-dowel.ts";
import { cupHingeCut } from "./cup-hinge.ts";
import { hingeCut } from "./hinge.ts";

/** By the number of the first step that shows it. */
export function cutsThrough(build: Build): ReadonlyMap<number, CutThrough> {
  const told = new Set<string>();
  const cuts = new Map<number, CutThrough>();
  for (const step of build.steps) {
    const found = closedIn(build, step).find((each) => !told.has(keyOf(each)));
    if (!found) continue;
    told.add(keyOf(found));
    cuts.set(step.number, found);
  }
  return cuts;
}

function closedIn(build: Build, step: Step): readonly CutThrough[] {
  if (step.kind === "take-off") return [];
  const { before, after } = mountedAt(build, step);
  const hung = new Set(
    build.hardware.flatMap(({ id, joint }) => (joint !== null && after.has(id) && !before.has(id) ? [joint] : [])),
  );
  const driven = new Set(step.actions.flatMap((action) => (action.do === "drive" ? action.fasteners : [])));
  return [
    ...build.joints.flatMap((joint) =>
      hung.has(joint.id) ? (hingeCut(build, joint) ?? cupHingeCut(build, joint) ?? []) : [],
    ),
    ...build.fasteners.flatMap((each) => (driven.has(each.id) ? (crossDowelCut(build, each) ?? []) : [])),
  ];
}

/** Parts of one mark, and their mirror images, show the same. */
const keyOf = ({ what, sizes }: CutThrough): string =>
  JSON.stringify([
    what,
    sizes.map(({ says, size }) => [says.replaceAll(/ [A-Z]+\d*(?= |$)/gu, " "), String(size.n), String(size.d)]),
  ]);
