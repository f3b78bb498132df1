/** The rooms of joints, and those that get glue in a step: no others of the same parts, where it would harden before its part comes. */
import type { Joint } from "../../../design.ts";
import { pluralOf, series, type Work } from "../draft.ts";
import { cutAs } from "./cut-as.ts";

/** What the room of each method is called, in the order in which they are told. */
type Rooms = readonly (readonly [method: Joint["method"], room: string])[];

/** How many joints there are for each name of a room. */
function counted(
  work: Work,
  joints: readonly Joint[],
  rooms: Rooms,
): readonly (readonly [room: string, count: number])[] {
  const words = new Map<string, number>();
  for (const [method, room] of rooms)
    for (const joint of joints)
      if (joint.method === method) {
        const word = cutAs(work.design.parts, joint) ?? room;
        words.set(word, (words.get(word) ?? 0) + 1);
      }
  return [...words];
}

/** "dado and the rabbets" */
export const roomsNamed = (work: Work, joints: readonly Joint[], rooms: Rooms): string =>
  series(
    counted(work, joints, rooms).map(
      ([room, count], i) => `${i > 0 ? "the " : ""}${count === 1 ? room : pluralOf(room)}`,
    ),
  );

/** "dado and the rabbet in the left side (C) that are filled now, and into no others" of the `joints` of one step; `of` says where. */
export function roomsToGlue(work: Work, joints: readonly Joint[], rooms: Rooms, of: string): string {
  const { design } = work;
  const own = new Set(joints.map(({ id }) => id));
  const mates = new Set(joints.map(({ parts: [, mate] }) => mate));
  const methods = rooms.map(([method]) => method);
  const others = design.joints.some(
    ({ id, method, parts: [, mate] }) => !own.has(id) && methods.includes(method) && mates.has(mate),
  );
  const all = counted(work, joints, rooms);
  const is = all.length === 1 && all[0]?.[1] === 1 ? "is" : "are";
  return `${roomsNamed(work, joints, rooms)} ${of}${others ? ` that ${is} filled now, and into no others` : ""}`;
}
