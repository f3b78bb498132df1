/** How parts meet in dados and rabbets. */
import type { Joint } from "../../../design.ts";
import { listed, type Work } from "../draft.ts";
import type { Move } from "../moves.ts";
import { type Sentence, sentence } from "../sentence.ts";
import { closesRound } from "./rabbets-last.ts";
import { roomsNamed, roomsToGlue } from "./rooms.ts";

type Housed = "dado" | "rabbet";
const HOUSED: readonly string[] = ["dado", "rabbet"] satisfies readonly Housed[];

export const isHoused = (method: Joint["method"]): method is Housed => HOUSED.includes(method);

interface Scene {
  readonly work: Work;
  /** All of them, those in dados, in rabbets and others. */
  readonly joints: readonly Joint[];
  readonly moves: readonly Move[];
}

/** Joints that close in the same way: what comes goes into the rooms that are there, or comes with its rooms over what is there. */
interface Meeting {
  readonly over: boolean;
  readonly joints: readonly Joint[];
}

/** Told with the first of its methods, in the order in which the parts come; where one method is glued and the other is not, each by itself. */
export function housedTexts(
  { work, joints, moves }: Scene,
  own: readonly Joint[],
  method: Housed,
): readonly Sentence[] {
  const all = joints.filter((joint) => isHoused(joint.method));
  // Nails and screws press on by themselves.
  const driven = new Set(moves.flatMap((move) => move.work.flatMap((w) => (w.drives.length > 0 ? [w.joint] : []))));
  const texts = textsOf(work, driven);
  const methods = [...new Set(joints.map((joint) => joint.method).filter(isHoused))];
  // What is set in when its frame is closed goes into all rooms at once, whenever it came.
  if (method === "rabbet" && closesRound(joints)) return texts(own, [], [method]);
  if (!sameGlue(all)) return texts(own, moves, [method]);
  return methods[0] === method ? texts(all, moves, methods) : [];
}

const sameGlue = ([first, ...others]: readonly Joint[]): boolean => others.every(({ glue }) => glue === first?.glue);

const textsOf =
  (work: Work, driven: ReadonlySet<Joint>) =>
  (own: readonly Joint[], moves: readonly Move[], methods: readonly Housed[]): readonly Sentence[] => {
    const glued = own.some((joint) => joint.glue);
    const clamped = own.some((joint) => joint.glue && !driven.has(joint));
    const called = methods.map((method) => [method, method] as const);
    const rooms = (joints: readonly Joint[]): string => roomsNamed(work, joints, called);
    const names = (joints: readonly Joint[], end: 0 | 1): string =>
      listed(work, [...new Set(joints.map(({ parts }) => parts[end]))]);
    const told = meetings(own, moves).map(({ over, joints }) =>
      over
        ? `Bring the ${rooms(joints)} in ${names(joints, 1)} over ${names(joints, 0)}`
        : `Set ${names(joints, 0)} into the ${rooms(joints)} in ${names(joints, 1)}`,
    );
    return [
      ...(glued
        ? [sentence(`Brush glue into the ${roomsToGlue(work, own, called, `in ${names(own, 1)}`)}.`, { glues: true })]
        : []),
      ...told.map((text, i) =>
        clamped && i === told.length - 1
          ? sentence(`${text} and clamp.`, { clamps: { later: `${text}.` }, brings: "together" })
          : sentence(`${text}${glued ? "" : ", without glue"}.`, { brings: "together" }),
      ),
    ];
  };

/** In the order in which the parts come, those in a row together that close in the same way. */
function meetings(own: readonly Joint[], moves: readonly Move[]): readonly Meeting[] {
  const place = new Map(moves.flatMap(({ arriving }, i) => arriving.map((id) => [id, i] as const)));
  const at = (id: string): number => place.get(id) ?? -1;
  const later = ({ parts }: Joint): number => Math.max(...parts.map(at));
  const met: { over: boolean; joints: Joint[] }[] = [];
  for (const joint of own.toSorted((a, b) => later(a) - later(b))) {
    const [joined, mate] = joint.parts;
    const over = at(mate) > at(joined);
    const last = met.at(-1);
    // Which goes into which is told one after another; a part that both goes in and receives would be told to go into itself.
    const alike = over || last?.joints[0]?.method === joint.method;
    const both = last?.joints.some(({ parts: [other, room] }) => other === mate || room === joined);
    if (last && last.over === over && alike && !both) last.joints.push(joint);
    else met.push({ over, joints: [joint] });
  }
  return met;
}
