/** How parts meet in dados and rabbets. */
import type { Joint } from "../../../design.ts";
import { listed, type Work } from "../draft.ts";
import { roomsNamed, roomsToGlue } from "./rooms.ts";

type Housed = "dado" | "rabbet";
const HOUSED: readonly string[] = ["dado", "rabbet"] satisfies readonly Housed[];

export const isHoused = (method: Joint["method"]): method is Housed => HOUSED.includes(method);

interface Scene {
  readonly work: Work;
  /** All of them, those in dados, in rabbets and others. */
  readonly joints: readonly Joint[];
  readonly arriving: readonly string[];
}

/**
 * What comes goes into the dados that are there; where the dados come, they go over what is there. A part that comes with dados and
 * rabbets for what is there goes over all of it at once: that is told with the last of them, `own` being those of one method.
 */
export function housedTexts(scene: Scene, own: readonly Joint[], method: Housed): readonly string[] {
  const { work, arriving, joints } = scene;
  const comes = ({ parts: [joined] }: Joint): boolean => arriving.includes(joined);
  const into = own.filter(comes);
  const over = own.filter((joint) => !comes(joint));
  const all = joints.filter((joint) => isHoused(joint.method) && !comes(joint));
  const methods = [...new Set(joints.map((joint) => joint.method).filter(isHoused))];
  const atOnce = over.length > 0 && new Set(all.map((joint) => joint.method)).size > 1 && sameGlue(all);
  if (!atOnce) return texts(work, into, over, [method]);
  const last = methods.at(-1) === method;
  return [...texts(work, into, [], [method]), ...(last ? texts(work, [], all, methods) : [])];
}

const sameGlue = ([first, ...others]: readonly Joint[]): boolean => others.every(({ glue }) => glue === first?.glue);

function texts(
  work: Work,
  into: readonly Joint[],
  over: readonly Joint[],
  methods: readonly Housed[],
): readonly string[] {
  const own = [...into, ...over];
  if (own.length === 0) return [];
  const glued = own.some((joint) => joint.glue);
  const names = (joints: readonly Joint[], end: 0 | 1): string =>
    listed(work, [...new Set(joints.map(({ parts }) => parts[end]))]);
  const called = methods.map((method) => [method, method] as const);
  const rooms = (joints: readonly Joint[]): string => roomsNamed(joints, called);
  // A part that both goes in and receives would be told to go into itself: then each that receives has words of its own.
  const both = into.some(({ parts: [, mate] }) => into.some(({ parts: [joined] }) => joined === mate));
  const mates = [...new Set(into.map(({ parts }) => parts[1]))];
  const shares = both
    ? mates.map((mate) => into.filter(({ parts }) => parts[1] === mate))
    : into.length > 0
      ? [into]
      : [];
  const how = glued ? " and clamp" : ", without glue";
  return [
    ...(glued ? [`Brush glue into the ${roomsToGlue(work, own, called, `in ${names(own, 1)}`)}.`] : []),
    ...shares.map((joints) => `Set ${names(joints, 0)} into the ${rooms(joints)} in ${names(joints, 1)}${how}.`),
    ...(over.length > 0 ? [`Bring the ${rooms(over)} in ${names(over, 1)} over ${names(over, 0)}${how}.`] : []),
  ];
}
