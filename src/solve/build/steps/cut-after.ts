/** After which step the parts around a part stand, so that it can be measured. */
import type { Finding } from "../../../findings/finding.ts";
import { noPieceToMeasure } from "../../../findings/rules/no-piece-to-measure.ts";
import type { LaterCut, Step } from "../../build.ts";
import { partsAt } from "../../design/making/neighbours.ts";
import { idsBetween, isCutLater, makingOf } from "../../design/making/plain.ts";
import { faceOf, indexOf } from "../../design/space.ts";
import type { Part } from "../../design.ts";
import { SIZES } from "../tight.ts";
import { boundsOf, groupsIn } from "./after-openings.ts";
import type { Work } from "./draft.ts";
import { glassReady } from "./glass-ordered.ts";
import { unitOf } from "./later.ts";
import { afterAction, type Bodies, firstTogether } from "./touched.ts";
import { measureTexts } from "./words/measuring.ts";

export interface CutAfter {
  /** For each part that is cut to the piece: the step after which it may be, if any. */
  readonly after: ReadonlyMap<string, number | null>;
  readonly later: readonly LaterCut[];
  readonly findings: readonly Finding[];
}

/** `units`: of each step its units, with its number. */
export function cutAfter(
  work: Work,
  steps: readonly Step[],
  units: readonly (readonly [unit: string, number: number])[],
): CutAfter {
  const findings: Finding[] = [];
  const after = new Map<string, number | null>();
  const groupOf = new Map(groupsIn(work, steps).flatMap((group) => group.parts.map(({ id }) => [id, group] as const)));
  for (const part of work.design.parts) {
    if (!isCutLater(part)) continue;
    const group = groupOf.get(part.id);
    if (group) {
      after.set(part.id, numberOf(boundsOf(group.openings), steps));
      continue;
    }
    const { between, notchedRound = [] } = makingOf(part);
    if (between) {
      after.set(part.id, numberOf([...idsBetween(between), ...notchedRound], steps));
      continue;
    }
    const { standing, missing } = aroundWhenUsed(work, part, steps);
    if (missing.length > 0 || standing.length === 0)
      findings.push(noPieceToMeasure(part.at, { part: part.id, bounds: missing.map(({ id }) => id) }));
    after.set(
      part.id,
      numberOf(
        standing.map(({ id }) => id),
        steps,
      ),
    );
  }
  const waiting = work.cutList.flatMap((line): readonly LaterCut[] => {
    const [first] = line.parts;
    if (first === undefined || !after.has(first)) return [];
    const numbers = line.parts.flatMap((id) => after.get(id) ?? []);
    return [
      {
        mark: line.mark,
        after: numbers.length === 0 ? null : Math.min(...numbers),
        steps: units.flatMap(([unit, number]) => (unit === unitOf(line.mark) ? [number] : [])),
        measure: groupOf.has(first) ? [] : measureTexts(work, line.parts, true),
      },
    ];
  });
  return { after, later: [...waiting, ...orderedGlass(work, steps)], findings };
}

/** Panes are cut where they are bought, when their rabbets can be measured. */
function orderedGlass(work: Work, steps: readonly Step[]): readonly LaterCut[] {
  const ready = glassReady(work, steps);
  return work.cutList.flatMap(({ mark, parts }): readonly LaterCut[] => {
    const places = ready.flatMap(({ pane, place }) => (place !== null && parts.includes(pane) ? [place + 1] : []));
    const numbers = [...new Set(places)].toSorted((a, b) => a - b);
    const [first] = numbers;
    return first === undefined ? [] : [{ mark, after: first, steps: numbers, measure: [], ordered: true }];
  });
}

/** The number of the first step after which parts stand together. */
function numberOf(ids: readonly string[], steps: readonly Step[]): number | null {
  const place = firstTogether(ids, steps);
  return place === null ? null : (steps[place]?.number ?? null);
}

/** What bounds a part: what it is joined to, and what lies at its edges and ends. */
function aroundOf(work: Work, part: Part) {
  const sides = SIZES.map((size) =>
    [false, true].map((high) => partsAt(faceOf(indexOf(part.axes[size]), high), part, work.design.parts)),
  );
  const mates = work.design.joints
    .filter((joint) => joint.parts.includes(part.id))
    .map((joint) => work.part(joint.parts.find((id) => id !== part.id) as string));
  return { sides, mates, all: [...new Set([...mates, ...sides.flat(2)])] };
}

/**
 * Which of them are in the body that the part is added to; and what is missing there: parts that it is joined to, unless they wait
 * themselves, and those of a side of which none is there, where both sides have some.
 */
function aroundWhenUsed(work: Work, part: Part, steps: readonly Step[]) {
  const { sides, mates, all } = aroundOf(work, part);
  const body = bodyBefore(part.id, steps);
  const standing = all.filter(({ id }) => body.has(id));
  const absent = sides
    .filter((pair) => pair.every((parts) => parts.length > 0))
    .flat()
    .filter((parts) => !parts.some(({ id }) => body.has(id)))
    .flat();
  const unjoined = mates.filter((mate) => !body.has(mate.id) && !isCutLater(mate));
  return { standing, missing: [...new Set([...absent, ...unjoined])] };
}

/** Bodies after a step. */
const grown = (bodies: Bodies, { actions }: Step): Bodies => actions.reduce(afterAction, bodies);

/** The body that a part is added to, as it stands before that step; empty where the part begins one. */
function bodyBefore(id: string, steps: readonly Step[]): ReadonlySet<string> {
  let bodies: Bodies = [];
  for (const step of steps) {
    const add = step.actions.find((action) => action.do === "add" && action.parts.includes(id));
    if (add?.do === "add") return bodies.find((body) => add.to.some((other) => body.has(other))) ?? new Set();
    bodies = grown(bodies, step);
  }
  return new Set();
}
