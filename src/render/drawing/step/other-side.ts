/** Where a step's picture hides the heads of what holds its parts, or what something runs on: another direction from which they are seen. */
import { Stage, type View } from "../../../geometry/picture/index.ts";
import type { Vec } from "../../../geometry/types.ts";
import { dot } from "../../../geometry/vec.ts";
import type { Build } from "../../../solve/build.ts";
import { type Length, subtract } from "../../../units/index.ts";
import type { Marked } from "../labels.ts";
import { shareSeen } from "../visibility.ts";
import type { Scene } from "./scene.ts";
import type { Driven } from "./screws.ts";
import { candidates } from "./views.ts";

export interface OtherSide {
  readonly view: View;
  readonly scene: Scene;
  /** Where no more is drawn than this, since the rest hides it from every side: what it is, in words; else null. */
  readonly only: string | null;
  /** How far its front ends are from the edge of what it is on: above zero past it, below zero behind it. */
  readonly past?: Length;
}

/** Of the heads: where no fewer are seen one knows how the others go in; and where no more are, another picture shows nothing. */
const [SOME, MOST] = [1 / 3, 1 / 2];
/** The whole, while it hides no more of what is seen of the joined parts alone. */
const AS_GOOD = 0.75;

export const otherSide = (build: Build, scene: Scene, first: View, ceiling: Vec): OtherSide | null =>
  sideOfHeads(build, scene, first, ceiling) ?? runnersAlone(build, scene, first, ceiling);

/** Null where the first view shows some heads, or none shows many. */
function sideOfHeads(build: Build, scene: Scene, first: View, ceiling: Vec): OtherSide | null {
  const screws = scene.screws.filter(({ isDowel }) => !isDowel);
  if (screws.length === 0 || headsSeen(screws, new Stage(scene.items, first)) >= SOME) return null;
  const held = joinedBy(build, screws);
  const joined = scene.items.filter(({ id }) => held.has(id));
  const fresh = scene.items.filter(({ id }) => scene.fresh.has(id));
  const [whole, alone] = [scene.items, joined].map((items) =>
    best(first, ceiling, (view) => {
      const stage = new Stage(items, view);
      return { view, heads: headsSeen(screws, stage), parts: partsSeen(fresh, stage) };
    }),
  ) as [Looked, Looked];
  const isAlone = whole.heads < AS_GOOD * alone.heads;
  const { view, heads } = isAlone ? alone : whole;
  if (heads < MOST) return null;
  // Which way it goes the first has told.
  return isAlone
    ? { view, only: "what the screws join", scene: aloneIn(scene, joined) }
    : { view, only: null, scene: { ...scene, groups: [] } };
}

/** Less of hardware than this is not seen; of so much of it one knows how the rest lies. */
const [UNSEEN, MANY] = [0.1, 2 / 3];

/** A part that stands, with what runs on it: the rest hides it where the drawers are in. Null where the first view shows some, and where they only go in again. */
function runnersAlone(build: Build, scene: Scene, first: View, ceiling: Vec): OtherSide | null {
  if (scene.goes.size > 0) return null;
  const running = new Set(build.joints.flatMap(({ id, kind }) => (kind === "running" ? [id] : [])));
  const stage = new Stage(scene.items, first);
  const runners = build.hardware.flatMap(({ id, joint, carriedBy }) => {
    const item = scene.items.find((each) => each.id === id);
    return item && scene.hardware.has(id) && joint !== null && running.has(joint) && !scene.fresh.has(carriedBy)
      ? [{ item, carriedBy, isHidden: shareSeen(item, stage) < UNSEEN }]
      : [];
  });
  const hidden = runners.filter(({ isHidden }) => isHidden);
  if (hidden.length < MANY * runners.length || hidden.length === 0) return null;
  const on = (id: string) => hidden.filter(({ carriedBy }) => carriedBy === id);
  const carriers = scene.items.filter(({ id }) => on(id).length > 0);
  const carrier = carriers.reduce((one, other) => (on(other.id).length > on(one.id).length ? other : one));
  const own = runners.filter(({ carriedBy }) => carriedBy === carrier.id).map(({ item }) => item);
  const items = [...own, carrier];
  const { view } = best(first, ceiling, (from) => {
    return { view: from, heads: 0, parts: partsSeen(own, new Stage(items, from)) };
  });
  const past = pastEdge(build, own, carrier.id);
  return {
    ...{ view, only: `${carrier.mark} and what runs on it`, scene: aloneIn({ ...scene, screws: [] }, items) },
    ...(past && past.n !== 0n && { past }),
  };
}

/** How far the front end of the first of some runners stands past the edge of the part that they are on, where drawers come out. */
function pastEdge({ motions, parts, hardware }: Build, [runner]: readonly Marked[], on: string): Length | null {
  const out = motions.find(({ kind }) => kind === "slide")?.poses.at(-1)?.shift ?? [0, 0, 0];
  const run = ([0, 1, 2] as const).find((i) => Math.abs(out[i]) > 0);
  const own = hardware.find(({ id }) => id === runner?.id);
  const part = parts.find(({ id }) => id === on);
  if (run === undefined || !own || !part) return null;
  return out[run] > 0 ? subtract(own.at[run], part.body.high[run]) : subtract(part.body.low[run], own.at[run]);
}

interface Looked {
  readonly view: View;
  /** Shares, 0 to 1. */
  readonly heads: number;
  readonly parts: number;
}

/** Heads first, then the parts that they hold, from above sooner than from below; then what turns least from the first view. */
const points = ({ view, heads, parts }: Looked, first: View, ceiling: Vec): number =>
  heads + 0.25 * parts + (dot(view.towards, ceiling) > 0 ? 0.1 : 0) + 0.01 * dot(view.towards, first.towards);

/** The direction with the most points, the first of several with as many. */
const best = (first: View, ceiling: Vec, look: (view: View) => Looked): Looked =>
  candidates(ceiling)
    .map(look)
    .reduce((one, other) => (points(other, first, ceiling) > points(one, first, ceiling) + 1e-9 ? other : one));

export function headsSeen(screws: readonly Driven[], stage: Stage): number {
  const { towards } = stage.view;
  const seen = screws.filter(({ mouth, direction }) => dot(direction, towards) < 0 && !stage.hides(mouth));
  return seen.length / screws.length;
}

export const partsSeen = (fresh: readonly Marked[], stage: Stage): number =>
  fresh.reduce((sum, item) => sum + shareSeen(item, stage), 0) / Math.max(1, fresh.length);

/** Ids of the parts that the screws hold together; of screws through buttons those that the buttons hold. */
function joinedBy({ fasteners, hardware, joints }: Build, screws: readonly Driven[]): ReadonlySet<string> {
  const driven = new Set(screws.map(({ id }) => id));
  const held = new Map(joints.map(({ id, parts }) => [id, parts]));
  return new Set([
    ...fasteners.flatMap(({ id, joint, through, into }) =>
      driven.has(id) ? [...through, ...(held.get(joint) ?? []), into] : [],
    ),
    ...hardware.flatMap(({ id, carriedBy }) => (driven.has(id) ? [carriedBy] : [])),
  ]);
}

function aloneIn(scene: Scene, items: readonly Marked[]): Scene {
  const here = new Set(items.map(({ id }) => id));
  return {
    ...scene,
    items,
    fresh: new Set([...scene.fresh].filter((id) => here.has(id))),
    hardware: new Map([...scene.hardware].filter(([id]) => here.has(id))),
    ...{ groups: [], open: [], arms: [] },
  };
}
