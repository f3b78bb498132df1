import { congruence, type Shape, unite } from "../../../geometry/index.ts";
import type { Work } from "./draft.ts";
import { moveKey, type Unit } from "./moves.ts";

/** Units that are built alike, in the order of work: the first of them, with all that are the same when turned. */
export interface Copies {
  readonly unit: Unit;
  readonly all: readonly Unit[];
}

/** Finds units of the same parts, joined in the same order, whose bodies are the same when turned. */
export function copiesOf(work: Work, units: readonly Unit[]): readonly Copies[] {
  const groups: { unit: Unit; all: Unit[] }[] = [];
  for (const unit of units) {
    const same = groups.find(
      (group) => signature(work, group.unit) === signature(work, unit) && congruent(work, group.unit, unit),
    );
    if (same) same.all.push(unit);
    else groups.push({ unit, all: [unit] });
  }
  return groups;
}

const signature = (work: Work, { moves }: Unit): string =>
  moves
    .map((move) =>
      [
        moveKey(work, move),
        move.present
          .map((id) => work.line(id).mark)
          .sort()
          .join(),
        move.arriving
          .map((id) => work.line(id).mark)
          .sort()
          .join(),
        move.work.map(({ joint, drives }) => `${joint.method} ${joint.glue} ${drives.length}`).join(),
      ].join("<"),
    )
    .join(";");

/** As one solid, whichever of the three axes is taken for its length: a unit has no grain. */
function congruent(work: Work, a: Unit, b: Unit): boolean {
  const solid = (unit: Unit) => unite(unit.parts.map((id) => work.part(id).solid));
  const [first, second] = [solid(a), solid(b)];
  const frames: readonly Shape["frame"][] = [
    { length: 2, width: 1, thickness: 0 },
    { length: 2, width: 0, thickness: 1 },
    { length: 1, width: 2, thickness: 0 },
  ];
  const start = frames[0] as Shape["frame"];
  return frames.some(
    (frame) => congruence({ solid: first, frame: start, marks: [] }, { solid: second, frame, marks: [] }) === "same",
  );
}
