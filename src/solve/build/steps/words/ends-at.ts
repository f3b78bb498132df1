/** The ends of a rail where what it carries lies on it: an end that is cut aslant lies elsewhere on each of its edges. */
import { isSame, type Length } from "../../../../units/length.ts";
import { less, max, min, rational } from "../../../../units/rational.ts";
import { indexOf } from "../../../design/space.ts";
import type { Fastener } from "../../../design.ts";
import type { Work } from "../draft.ts";

interface Ends {
  readonly low: Length;
  readonly high: Length;
  readonly slanting: boolean;
}

export function endsAt(work: Work, rail: string, fasteners: readonly Fastener[]): Ends {
  const { body, axes, features } = work.part(rail);
  const run = indexOf(axes.length);
  const whole = { low: body.low[run], high: body.high[run], slanting: false };
  // A tenon may reach up to the edge, and is measured from its shoulder.
  if (features.some(({ kind }) => kind === "tenon")) return whole;
  const joints = new Set(fasteners.map(({ joint }) => joint));
  const at = work.design.joints
    .filter(({ id }) => joints.has(id))
    .flatMap(({ contact }) => contact.flatMap(({ polygons }) => polygons.flat()))
    .map((point) => rational(Math.round(point[run])));
  const [first, ...more] = at;
  if (!first) return whole;
  const [low, high] = [max(whole.low, more.reduce(min, first)), min(whole.high, more.reduce(max, first))];
  const slanting = [
    [whole.low, low],
    [high, whole.high],
  ].some(([a, b]) => less(a as Length, b as Length) && !isSame(a as Length, b as Length));
  return slanting ? { low, high, slanting } : whole;
}
