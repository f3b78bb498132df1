import { congruence, type Mark, type Shape } from "../../../geometry/index.ts";
import { equal, toNumber } from "../../../units/rational.ts";
import { makingOf } from "../../design/making/plain.ts";
import { faceAxis, facePosition, indexOf, isFace, middle, normalOf, triple } from "../../design/space.ts";
import { holeOnBench, onBench } from "../../design/turning.ts";
import type { Face, Feature, Hole, Making, Part } from "../../design.ts";

/** A part with the holes that are bored at the bench. */
export interface Finished {
  readonly part: Part;
  readonly holes: readonly Hole[];
}

const holeMark = (hole: Hole): Mark => ({
  label: `${hole.kind} ${hole.stages.map((s) => `${toNumber(s.diameter)}×${toNumber(s.depth)}`).join("/")}${hole.slot ? ` ${toNumber(hole.slot.length)}` : ""}`,
  at: [toNumber(hole.at[0]), toNumber(hole.at[1]), toNumber(hole.at[2])],
  direction: hole.direction,
});

/** Cuts that meet or cancel in the solid still differ in the work: their middles are compared too. */
const featureMark = (feature: Feature): readonly Mark[] => {
  if (!("size" in feature)) return [];
  const at = ([0, 1, 2] as const).map((i) => {
    const half = ([feature.along, feature.across, feature.into] as const).reduce(
      (so, direction, k) => so + (direction[i] * toNumber(feature.size[k as 0 | 1 | 2])) / 2,
      toNumber(feature.origin[i]),
    );
    return half;
  });
  return [{ label: feature.kind, at: at as unknown as Mark["at"], direction: feature.into }];
};

/** Something that is true of one face. */
const faceMark = ({ body }: Part, face: Face, label: string): Mark => ({
  label,
  at: triple((i) => toNumber(i === faceAxis(face) ? facePosition(body, face) : middle(body, i))),
  direction: normalOf(face),
});

/** Compared as they lie on the bench: how a part is turned in the piece makes no other part of it. */
export const shapeOf = ({ part, holes }: Finished): Shape => ({
  solid: part.turned?.solid ?? part.solid,
  frame: {
    length: indexOf(part.axes.length),
    width: indexOf(part.axes.width),
    thickness: indexOf(part.axes.thickness),
  },
  marks: [
    ...holes.filter((hole) => hole.atBench).map((hole) => holeMark(holeOnBench(part, hole))),
    ...onBench(part).features.flatMap(featureMark),
    ...makingOf(part).banding.map((band) => faceMark(part, band.edge, `${band.item} ${band.deducted}`)),
    ...(part.goodFace !== null && isFace(part.goodFace) ? [faceMark(part, part.goodFace, "good face")] : []),
  ],
});

/** Parts that are the same when turned, and the earlier group that each is the mirror image of. In the order given. */
export interface AlikeParts {
  readonly members: readonly Finished[];
  readonly mirrors: AlikeParts | null;
}

export function groupAlike(parts: readonly Finished[]): readonly AlikeParts[] {
  const groups: { members: Finished[]; shape: Shape; mirrors: number | null }[] = [];
  for (const finished of parts) {
    const shape = shapeOf(finished);
    const relations = groups.map((group) =>
      sameMaking(group.members[0] as Finished, finished) ? congruence(group.shape, shape) : null,
    );
    const same = groups[relations.indexOf("same")];
    if (same) same.members.push(finished);
    else {
      const mirror = relations.indexOf("mirrored");
      groups.push({ members: [finished], shape, mirrors: mirror < 0 ? null : mirror });
    }
  }
  const done: AlikeParts[] = [];
  for (const { members, mirrors } of groups)
    done.push({ members, mirrors: mirrors === null ? null : (done[mirrors] ?? null) });
  return done;
}

/** The sizes that are measured where it goes. */
const measuredIn = ({ between = [] }: Making): string => between.map(({ size }) => size).join();

/** From one stock, in one way. */
function sameMaking({ part: a }: Finished, { part: b }: Finished): boolean {
  const [p, q] = [makingOf(a), makingOf(b)];
  const words = ({ goodFace }: Part): string | null => (goodFace !== null && isFace(goodFace) ? "a face" : goodFace);
  return (
    a.stock === b.stock &&
    p.boards === q.boards &&
    p.layers === q.layers &&
    p.cut === q.cut &&
    equal(p.over, q.over) &&
    measuredIn(p) === measuredIn(q) &&
    words(a) === words(b)
  );
}
