/** A sheet under the saw: every cut goes from edge to edge of one piece, and its kerf is lost. */

import type { Layout, Rectangle } from "./bought.ts";
import { near } from "./model.ts";
import { TOLERANCE } from "./overlap.ts";
import type { Check } from "./violation.ts";

export interface Room {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export const roomOf = ({ x, y, width, length }: Rectangle): Room => ({ x0: x, y0: y, x1: x + width, y1: y + length });
export const sameRoom = (a: Room, b: Room): boolean =>
  near(a.x0, b.x0) && near(a.y0, b.y0) && near(a.x1, b.x1) && near(a.y1, b.y1);
export const within = (a: Room, b: Room): boolean =>
  a.x0 >= b.x0 - TOLERANCE && a.y0 >= b.y0 - TOLERANCE && a.x1 <= b.x1 + TOLERANCE && a.y1 <= b.y1 + TOLERANCE;

/** The pieces that are there after all the cuts. */
export function replays(layout: Layout, start: Room, fault: (check: Check, message: string) => void): readonly Room[] {
  let pieces: readonly Room[] = [start];
  for (const cut of [...layout.cuts].sort((a, b) => a.number - b.number)) {
    const rip = cut.kind === "rip";
    const turn = (room: Room): Room => (rip ? room : { x0: room.y0, y0: room.x0, x1: room.y1, y1: room.x1 });
    const [at, end] = rip ? [cut.from[0], cut.to[0]] : [cut.from[1], cut.to[1]];
    const [from, to] = rip ? [cut.from[1], cut.to[1]] : [cut.from[0], cut.to[0]];
    const split = pieces.filter((piece) => {
      const { x0, x1, y0, y1 } = turn(piece);
      return at > x0 - TOLERANCE && at < x1 - TOLERANCE && near(y0, Math.min(from, to)) && near(y1, Math.max(from, to));
    });
    const [piece] = split;
    if (piece === undefined || split.length > 1 || !near(at, end)) {
      fault("cut splits one piece", `cut ${cut.number} splits ${split.length} pieces`);
      continue;
    }
    const room = turn(piece);
    if (!near(cut.fence, at - room.x0)) fault("fence is set to the cut", `cut ${cut.number} is ${at - room.x0} in`);
    const parts = [turn({ ...room, x1: at }), turn({ ...room, x0: at + layout.kerf })];
    pieces = [
      ...pieces.filter((other) => other !== piece),
      ...parts.filter((p) => p.x1 > p.x0 + TOLERANCE && p.y1 > p.y0 + TOLERANCE),
    ];
  }
  return pieces;
}
