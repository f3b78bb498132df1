import { noPlaneToEndOn } from "../../../findings/rules/no-plane-to-end-on.ts";
import { noRoom } from "../../../findings/rules/no-room.ts";
import { turnEdge } from "../../../findings/rules/turn-edge.ts";
import {
  aboutPoint,
  compose,
  inverse,
  mirroredPlacement,
  type Placement,
  placed,
  turnAbout,
  turned,
  turnInto,
} from "../../../geometry/index.ts";
import type { Face, Formula, PlaneDraft, TurnDraft } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { add, half, negate, rational, subtract, toNumber, ZERO } from "../../../units/rational.ts";
import type { Box, Point } from "../../design.ts";
import type { Entry } from "../expand/entry.ts";
import { taperPlane } from "../shapes/taper.ts";
import type { Cells } from "../sizes/cells.ts";
import { evaluateAngle, evaluateLength } from "../sizes/evaluate.ts";
import {
  type AxisIndex,
  axisAt,
  faceAxis,
  faceOf,
  INDICES,
  indexOf,
  isHigh,
  opposite,
  triple,
  unit,
} from "../space.ts";
import { type End, endOf, type LocalPlane } from "./ends.ts";
import { pointOf } from "./points.ts";
import type { Reach } from "./read-placing.ts";

/** How parts lie that are not square to the room, worked out on demand. Null: could not be found, and the maker has been told. */
export interface Slants {
  /** Undefined for a part that is square to the room. */
  readonly placement: (entry: Entry) => Placement | null | undefined;
  /** The line that a part is laid along, before turning: the direction of its length, its middle and how long. */
  readonly line: (entry: Entry) => Line | null | undefined;
  readonly ends: (entry: Entry) => readonly End[] | null;
}

export interface Line {
  readonly axis: AxisIndex;
  readonly middle: Point;
  readonly length: Length;
  readonly rotation: Placement;
}

export interface SlantsContext extends Reach {
  readonly cells: Cells;
  readonly print: (length: Length) => string;
  /** Faces as placed, before an end was moved to the plane that it ends on. */
  readonly pivot: (entry: Entry, face: Face) => Length | null;
  readonly box: (entry: Entry) => Box | null;
}

export const isTurned = ({ draft }: Entry): boolean => draft.turn !== undefined || draft.line !== undefined;

export function createSlants(context: SlantsContext): Slants {
  const { cells, directory, report, scope } = context;

  const line = (entry: Entry): Line | null | undefined => {
    const said = entry.draft.line;
    if (!said) return undefined;
    return cells.get(`line ${entry.id}`, entry.id, said.at, () => {
      const [from, to] = [said.from, said.to].map((point) => {
        const at = pointOf(point, scope(entry), context);
        if (!at || point.kind === "place") return at;
        const [only, ...others] = point.of.path[0] === "outside" ? [] : (directory.find(point.of) ?? []);
        // A named point of a turned part is where it really is.
        const placement = only && others.length === 0 ? slants.placement(only) : undefined;
        return placement ? placed(placement, at) : placement === null ? null : at;
      });
      if (!from || !to) return null;
      const way = triple((i) => toNumber(subtract(to[i], from[i])));
      const axis = lengthOf(entry, way);
      const long = Math.round(Math.sqrt(way[0] * way[0] + way[1] * way[1] + way[2] * way[2]));
      if (long === 0) {
        report(
          noRoom(said.at, {
            name: entry.id,
            direction: axisAt(axis),
            room: context.print(ZERO),
            made: entry.draft.made !== undefined,
          }),
        );
        return null;
      }
      return {
        axis,
        middle: triple((i) => half(add(from[i], to[i]))),
        length: rational(long),
        rotation: turnInto(axis, way[axis] < 0 ? -1 : 1, way),
      };
    });
  };

  const turn = (entry: Entry, draft: TurnDraft, so: Placement | null): Placement | null => {
    const axis = indexOf(draft.about.value);
    const faces = draft.edge?.faces ?? [];
    if (draft.edge && faces.some((face) => faceAxis(face) === axis)) {
      report(turnEdge(draft.edge.at, { edge: faces.join(" "), about: draft.about.value }));
      return null;
    }
    const degrees = evaluateAngle(draft.by, scope(entry));
    const at = INDICES.map((i): Length | null => {
      // Where along its own line the first turn is held makes no difference.
      if (i === axis && so === null) return ZERO;
      const face = faces.find((each) => faceAxis(each) === i);
      if (face) return context.pivot(entry, face);
      const [low, high] = [context.pivot(entry, faceOf(i, false)), context.pivot(entry, faceOf(i, true))];
      return low && high && half(add(low, high));
    });
    if (!degrees || at.includes(null)) return null;
    const point = at as unknown as Point;
    const placement = aboutPoint(turnAbout(axis, degrees), so ? placed(so, point) : point);
    return so ? compose(placement, so) : placement;
  };

  const plane = (target: PlaneDraft, entry: Entry): LocalPlane | null => {
    const axis = faceAxis(target.face);
    const out = unit(axis, isHigh(target.face) ? 1 : -1).map((n) => rational(n)) as unknown as Point;
    if (target.path.length === 1 && target.path[0] === "outside") {
      const at = context.outside(target.face);
      // The part lies inside of the outside, but outside of any other part.
      return at && { point: triple((i) => (i === axis ? at : ZERO)), normal: triple((i) => negate(out[i])) };
    }
    const [other] = directory.find(target) ?? [];
    if (!other) return null;
    const at = context.position(other, target.face);
    const tapered = target.tapered ? taperOf(other, target.face) : null;
    if (target.tapered && !tapered) {
      const words = `${target.path.join(".")}.${target.face}`;
      if (tapered === undefined) report(noPlaneToEndOn(target.at, { part: entry.id, plane: words, tapered: true }));
      return null;
    }
    const placement = slants.placement(other);
    if (!at || placement === null) return null;
    const own: LocalPlane = tapered ?? { point: triple((i) => (i === axis ? at : ZERO)), normal: out };
    return placement ? { point: placed(placement, own.point), normal: turned(placement, own.normal) } : own;
  };

  /** Undefined: there is no taper on that face. */
  const taperOf = (other: Entry, face: Face): LocalPlane | null | undefined => {
    // A mirrored part has the shapes of its model, turned round as often as it was mirrored.
    const flips: AxisIndex[] = [];
    let model = other;
    while (model.mirror) {
      flips.push(model.mirror.axis);
      model = directory.byId.get(model.mirror.of) ?? { ...model, mirror: null };
    }
    const seen = (each: Face): Face =>
      flips.filter((axis) => axis === faceAxis(each)).length % 2 === 1 ? opposite(each) : each;
    const taper = model.draft.shapes.find((shape) => shape.shape === "taper" && shape.faces.map(seen).includes(face));
    if (taper?.shape !== "taper") return undefined;
    const body = context.box(other);
    const end = { ...taper.end, value: seen(taper.end.value) };
    const measure = (formula: Formula) => evaluateLength(formula, scope(model));
    return body && taperPlane({ ...taper, faces: taper.faces.map(seen), end }, face, body, measure);
  };

  const slants: Slants = {
    line,
    placement(entry) {
      if (!isTurned(entry)) return undefined;
      return cells.get(`placement ${entry.id}`, entry.id, entry.at, () => {
        const model = entry.mirror && directory.byId.get(entry.mirror.of);
        if (entry.mirror && model) {
          const { axis } = entry.mirror;
          const [low, high] = [context.outside(faceOf(axis, false)), context.outside(faceOf(axis, true))];
          const of = slants.placement(model);
          return of && low && high ? mirroredPlacement(of, axis, half(add(low, high))) : null;
        }
        const along = line(entry);
        if (along === null) return null;
        let so = along ? aboutPoint(along.rotation, along.middle) : null;
        for (const each of entry.draft.turn ?? []) {
          so = turn(entry, each, so);
          if (so === null) return null;
        }
        return so;
      });
    },
    ends(entry) {
      const said = entry.draft.endsOn;
      if (!said || entry.mirror) return [];
      return cells.get(`ends ${entry.id}`, entry.id, said[0]?.at ?? entry.at, () => {
        const along = line(entry);
        if (along === null) return null;
        const ends = said.map((target): End | null => {
          const found = plane(target, entry);
          const rotation = rotationOf(entry, along?.rotation ?? null);
          if (!found || rotation === null) return null;
          const end = endOf(target, found, rotation && inverse(rotation), along?.axis ?? null, {
            position: (face) => context.position(entry, face),
            back: () => {
              const placement = slants.placement(entry);
              return placement ? inverse(placement) : placement;
            },
          });
          if (!end) {
            const words =
              target.path[0] === "outside"
                ? `the ${target.face} of the outside`
                : `${target.path.join(".")}.${target.face}`;
            report(noPlaneToEndOn(target.at, { part: entry.id, plane: words, tapered: false }));
          }
          return end;
        });
        return ends.includes(null) ? null : (ends as readonly End[]);
      });
    },
  };

  /** The turns of a part without their places. */
  const rotationOf = (entry: Entry, along: Placement | null): Placement | null | undefined => {
    let so = along ?? undefined;
    for (const { about, by } of entry.draft.turn ?? []) {
      const degrees = evaluateAngle(by, scope(entry));
      if (!degrees) return null;
      const next = turnAbout(indexOf(about.value), degrees);
      so = so ? compose(next, so) : next;
    }
    return so;
  };
  return slants;
}

/** The direction that the length of a part along a line runs in before it is turned: as said, else the one that it is nearest to. */
function lengthOf({ draft }: Entry, way: readonly [number, number, number]): AxisIndex {
  if (draft.grain) return indexOf(draft.grain.value);
  const level = Math.abs(way[1]) > Math.abs(way[0]) ? 1 : 0;
  if (draft.attitude) return draft.attitude.value === "upright" ? 2 : level;
  return Math.abs(way[2]) > Math.abs(way[level]) ? 2 : level;
}
