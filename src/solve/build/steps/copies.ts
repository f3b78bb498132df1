import { congruence, type Shape, unite } from "../../../geometry/index.ts";
import { subtract, toNumber } from "../../../units/rational.ts";
import { enclosing } from "../../design/space.ts";
import type { Work } from "./draft.ts";
import { grouped } from "./grouped.ts";
import { moveKey, type Unit } from "./moves.ts";
import { bodyKind } from "./words/bodies.ts";

/** Units that are built alike, in the order of work: the first of them, with all that are the same when turned, or differ in height only. */
export interface Copies {
  readonly unit: Unit;
  readonly all: readonly Unit[];
}

/** Finds units of the same parts, joined in the same order, whose bodies are the same when turned; and units of one kind that are higher or lower. */
export function copiesOf(work: Work, units: readonly Unit[]): readonly Copies[] {
  const groups: { unit: Unit; all: Unit[] }[] = [];
  for (const unit of units) {
    const same = groups.find(({ unit: first }) => isSame(work, first, unit) || isLike(work, first, unit));
    if (same) same.all.push(unit);
    else groups.push({ unit, all: [unit] });
  }
  return groups;
}

const isSame = (work: Work, a: Unit, b: Unit): boolean =>
  signature(work, a, markOf) === signature(work, b, markOf) && congruent(work, a, b);

/** Drawers of several heights: called by the same names, as wide and as deep, and put together in the same steps. */
function isLike(work: Work, a: Unit, b: Unit): boolean {
  const kind = bodyKind(a.parts);
  if (kind === null || kind !== bodyKind(b.parts)) return false;
  if (signature(work, a, nameOf) !== signature(work, b, nameOf)) return false;
  const sizes = ({ parts }: Unit): string => {
    const [first, ...rest] = parts.map((id) => work.part(id).body);
    const whole = first && rest.reduce(enclosing, first);
    return whole ? ([0, 1] as const).map((i) => toNumber(subtract(whole.high[i], whole.low[i]))).join() : "";
  };
  const steps = (unit: Unit): string =>
    grouped(work, unit)
      .map(({ length }) => length)
      .join();
  return sizes(a) === sizes(b) && steps(a) === steps(b);
}

const markOf = (work: Work, id: string): string => work.line(id).mark;
const nameOf = (work: Work, id: string): string => work.line(id).name;

const signature = (work: Work, { moves }: Unit, called: typeof markOf): string =>
  moves
    .map((move) =>
      [
        moveKey(work, move),
        ...[move.present, move.arriving].map((ids) =>
          ids
            .map((id) => called(work, id))
            .sort()
            .join(),
        ),
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
