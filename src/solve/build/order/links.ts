/** Joints as what holds parts together. Parts are numbers here: their places in the source. */
import type { Design, Joint } from "../../design.ts";

export const LOOSE: readonly Joint["kind"][] = ["hinged", "running", "resting"];
/** What hangs, runs or lies loose on the rest and is taken off it; a piece that hangs on the wall is the rest itself. */
export const comesOff = ({ kind, method }: Joint): boolean => LOOSE.includes(kind) && !hangsOn({ method });
export const hangsOn = ({ method }: Pick<Joint, "method">): boolean => method === "hangs on";

/** A body of parts in two halves, all in source order. */
export interface Halves {
  readonly moving: readonly number[];
  readonly staying: readonly number[];
}

export interface Link {
  /** Its place in the source. */
  readonly index: number;
  readonly joint: Joint;
  readonly ends: readonly [number, number];
  /** The ends, and whatever else its fasteners go through or into: the joint is made when all of them are there. */
  readonly members: readonly number[];
}

/** Joints whose parts are unknown or are fastened to unknown parts are left out. */
export function linksOf({ parts, joints }: Pick<Design, "parts" | "joints">): readonly Link[] {
  const places = new Map(parts.map((part, i) => [part.id, i]));
  return joints.flatMap((joint, index) => {
    const fasteners = joint.arrangements.flatMap((arrangement) => arrangement.fasteners);
    const ids = new Set([...joint.parts, ...fasteners.flatMap(({ through, into }) => [...through, into])]);
    const members = [...ids].map((id) => places.get(id));
    const known = members.filter((i): i is number => i !== undefined);
    const [a, b] = known;
    if (a === undefined || b === undefined || known.length < members.length) return [];
    return [{ index, joint, ends: [a, b], members: known }];
  });
}

/** The parts of `body` divided into what hangs together by the joints inside it; each in source order, as are the lot. */
export function components(body: readonly number[], links: readonly Link[]): readonly (readonly number[])[] {
  const { find } = tied(body, links);
  const groups = new Map<number, number[]>();
  for (const part of body.toSorted((a, b) => a - b)) {
    const group = groups.get(find(part));
    if (group) group.push(part);
    else groups.set(find(part), [part]);
  }
  return [...groups.values()];
}

/** Bodies that hold fast together; what hangs, runs or lies loose on another is a body of its own. */
export const fastBodies = ({ parts, joints }: Pick<Design, "parts" | "joints">): readonly (readonly number[])[] =>
  components(
    parts.map((_, i) => i),
    linksOf({ parts, joints: joints.filter(({ kind }) => !LOOSE.includes(kind)) }),
  );

/** The same by the ids of their parts. */
export const fastIds = (design: Pick<Design, "parts" | "joints">): readonly (readonly string[])[] =>
  fastBodies(design).map((places) => places.flatMap((place) => design.parts[place]?.id ?? []));

export const hangsTogether = (body: readonly number[], links: readonly Link[]): boolean =>
  body.length === 1 || tied(body, links).pieces === 1;

const OUTSIDE = -1;

/** How many pieces a body is in, and the part that stands for the piece of each part. */
function tied(body: readonly number[], links: readonly Link[]) {
  const leader = new Int32Array(body.reduce((so, part) => Math.max(so, part), 0) + 1).fill(OUTSIDE);
  for (const part of body) leader[part] = part;
  const find = (part: number): number => {
    let at = part;
    for (let up = leader[at] ?? at; up !== at; up = leader[at] ?? at) at = up;
    return at;
  };
  let pieces = body.length;
  for (const { ends, members } of links) {
    if (!members.every((part) => (leader[part] ?? OUTSIDE) !== OUTSIDE)) continue;
    const [a, b] = [find(ends[0]), find(ends[1])];
    if (a === b) continue;
    leader[Math.max(a, b)] = Math.min(a, b);
    pieces -= 1;
  }
  return { pieces, find };
}

/** Ids of the joints of what opens on hinges. */
export const hingedIn = ({ joints }: Pick<Design, "joints">): ReadonlySet<string> =>
  new Set(joints.flatMap(({ id, kind }) => (kind === "hinged" ? [id] : [])));

/** Ids of the shelves that lie on pins. */
export const onPins = ({ joints }: Pick<Design, "joints">): ReadonlySet<string> =>
  new Set(joints.flatMap(({ method, parts: [shelf] }) => (method === "shelf pins" ? [shelf] : [])));

/** Ids of what lies on pins, with what is fixed to it. */
export const loadedOnPins = (design: Pick<Design, "parts" | "joints">): ReadonlySet<string> => {
  const shelves = onPins(design);
  return new Set(
    fastIds(design)
      .filter((ids) => ids.some((id) => shelves.has(id)))
      .flat(),
  );
};
