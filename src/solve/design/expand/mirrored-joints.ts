/** Joints and fittings of groups that are mirror images: a drawer that opens to the back has what holds the one in front together. */
import type {
  Axis,
  Draft,
  Face,
  FittingDraft,
  Formula,
  JointDraft,
  NodeDraft,
  PartDraft,
  Reference,
} from "../../../parse/draft.ts";
import { axisAt, faceAxis, faceOf, indexOf, opposite } from "../space.ts";
import { flatten } from "./expand.ts";
import { matchPath } from "./match.ts";

type Path = readonly string[];

interface Held {
  readonly joints: readonly JointDraft[];
  readonly fittings: readonly FittingDraft[];
}
const NOTHING: Held = { joints: [], fittings: [] };
const together = (all: readonly Held[]): Held => ({
  joints: all.flatMap(({ joints }) => joints),
  fittings: all.flatMap(({ fittings }) => fittings),
});

/** The same with the joints and fittings that were written in a group for each of its mirror images as well. */
export function withMirroredJoints(draft: Draft): Draft {
  const nodes = flatten(draft.piece);
  const paths = nodes.map(({ path }) => path);
  const mirrors = nodes.filter((node): node is PartDraft => node.kind === "part" && node.mirrorOf !== undefined);
  const modelOf = ({ mirrorOf }: PartDraft): NodeDraft | undefined => {
    const [only, ...more] = mirrorOf ? matchPath(paths, mirrorOf) : [];
    return more.length === 0 && only !== undefined ? nodes[only] : undefined;
  };

  /** What was written in a group, and what belongs to mirror images in it. */
  const within = (group: Path, seen: readonly PartDraft[]): Held => {
    const isIn = (home: Path | undefined): boolean => home !== undefined && startsWith(home, group);
    const own = {
      joints: draft.joints.filter(({ join: [first] }) => isIn(first?.home)),
      fittings: draft.fittings.filter(({ to: [first] }) => isIn(first?.home)),
    };
    return together([own, ...mirrors.filter(({ path }) => startsWith(path, group)).map((each) => image(each, seen))]);
  };
  const image = (mirror: PartDraft, seen: readonly PartDraft[]): Held => {
    const model = modelOf(mirror);
    if (model === undefined || !mirror.about || seen.includes(mirror)) return NOTHING;
    const further = [...seen, mirror];
    const held =
      model.kind === "group" ? within(model.path, further) : model.mirrorOf ? image(model, further) : NOTHING;
    const way: Way = { from: model.path, to: mirror.path, axis: mirror.about.value };
    return {
      joints: held.joints.map((joint) => mirroredJoint(joint, way)),
      fittings: held.fittings.map((fitting) => mirroredFitting(fitting, way)),
    };
  };
  const { joints, fittings } = together(mirrors.map((mirror) => image(mirror, [])));
  if (joints.length === 0 && fittings.length === 0) return draft;
  return { ...draft, joints: [...draft.joints, ...joints], fittings: [...draft.fittings, ...fittings] };
}

const startsWith = (path: Path, start: Path): boolean => start.every((name, i) => path[i] === name);

interface Way {
  readonly from: Path;
  readonly to: Path;
  readonly axis: Axis;
}

/** The name as it is meant in the image: what the group does not have is looked for round it, as before. */
const renamed = <R extends Reference>(name: R, { from, to }: Way): R => ({
  ...name,
  path: startsWith(name.path, from) ? [...to, ...name.path.slice(from.length)] : name.path,
  ...(name.home && { home: [...to, ...name.home.slice(from.length)] }),
});

const turned = (face: Face, { axis }: Way): Face => (axisAt(faceAxis(face)) === axis ? opposite(face) : face);

/** Measures are the same; sides are changed. What opens to the front, when nothing is said, opens to the back. */
function mirroredJoint(joint: JointDraft, way: Way): JointDraft {
  const { from, opens, stopped, joinSide, holdStill, tenon, fasteners } = joint;
  const located = <T extends { readonly value: Face }>(said: T): T => ({ ...said, value: turned(said.value, way) });
  const away = opens ?? (way.axis === "deep" ? { value: "front" as const, at: joint.at } : undefined);
  return {
    ...joint,
    join: joint.join.map((name) => renamed(name, way)),
    to: joint.to.map((name) => renamed(name, way)),
    ...(from && { from: renamed(from, way) }),
    ...(away && { opens: located(away) }),
    ...(stopped && { stopped: { ...stopped, from: turned(stopped.from, way) } }),
    ...(joinSide && { joinSide: located(joinSide) }),
    ...(holdStill && {
      holdStill: holdStill.value === "middle" ? holdStill : { at: holdStill.at, value: turned(holdStill.value, way) },
    }),
    ...(tenon?.inFrom && {
      tenon: { ...tenon, inFrom: { ...tenon.inFrom, face: turned(tenon.inFrom.face, way) } },
    }),
    ...(fasteners?.side && { fasteners: { ...fasteners, side: located(fasteners.side) } }),
  };
}

/** A place is worked out in the group that is mirrored, and counted from the other end of the piece. */
function mirroredFitting(fitting: FittingDraft, way: Way): FittingDraft {
  const { against, face, place, through } = fitting;
  const own = place[way.axis];
  return {
    ...fitting,
    to: fitting.to.map((name) => renamed(name, way)),
    ...(against && { against: renamed(against, way) }),
    ...(face && { face: { ...face, value: turned(face.value, way) } }),
    ...(own && { place: { ...place, [way.axis]: fromTheOtherEnd(own, way.axis) } }),
    ...(through && { through: through.map((name) => renamed(name, way)) }),
  };
}

function fromTheOtherEnd(place: Formula, axis: Axis): Formula {
  const { at } = place;
  const end = (high: boolean): Formula => ({ kind: "name", path: ["outside", faceOf(indexOf(axis), high)], at });
  const ends: Formula = { kind: "operation", operator: "+", left: end(false), right: end(true), at };
  return { kind: "operation", operator: "-", left: ends, right: place, at };
}
