/** What a step closes or bores that only a section shows: hinges, bolts in cross dowels, figure-eight fasteners, panes below their beads; what has the same sizes once. */
import type { Build, Step } from "../../build.ts";
import type { CutThrough } from "../model/cut-through.ts";
import { mountedAt } from "../mounted.ts";
import { crossDowelCut } from "./cross-dowel.ts";
import { cupHingeCut } from "./cup-hinge.ts";
import { figureEightCut, recessCut } from "./figure-eight.ts";
import { hingeCut } from "./hinge.ts";
import { paneCut } from "./pane.ts";

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
  const bored = step.actions.flatMap((action) => (action.do === "machine" ? action.holes : []));
  return [
    ...bored.flatMap((i) => {
      const hole = build.holes[i];
      return hole ? (recessCut(build, hole) ?? []) : [];
    }),
    ...build.joints.flatMap((joint) =>
      hung.has(joint.id) ? (hingeCut(build, joint) ?? cupHingeCut(build, joint) ?? []) : [],
    ),
    ...build.fasteners.flatMap((each) =>
      driven.has(each.id) ? (crossDowelCut(build, each) ?? figureEightCut(build, build.holes, each) ?? []) : [],
    ),
    ...[
      paneCut(
        build,
        build.fasteners.filter(({ id }) => driven.has(id)),
      ),
    ].filter((cut) => cut !== null),
  ];
}

/** Parts of one mark, and their mirror images, show the same. */
const keyOf = ({ what, sizes }: CutThrough): string =>
  JSON.stringify([
    what,
    sizes.map(({ says, size }) => [says.replaceAll(/ [A-Z]+\d*(?= |$)/gu, " "), String(size.n), String(size.d)]),
  ]);
