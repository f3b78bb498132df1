import { type Contact, distance, solidBox } from "../../../geometry/index.ts";
import type { Method } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { absolute, subtract } from "../../../units/rational.ts";
import type { Part } from "../../design.ts";
import { type INDICES, indexOf } from "../space.ts";
import type { Joining } from "./work.ts";

const SHOULDERED: ReadonlySet<Method> = new Set([
  ...(["mortise and tenon", "through tenon", "haunched tenon", "drawbored tenon"] as const),
]);

/** How far the shoulder of a tenon stands off the part that it goes into, in units; zero where it touches. */
export function openShoulder({ draft, touch }: Joining, join: Part, to: Part, contacts: readonly Contact[]): number {
  if (touch.kind !== "faces" || !SHOULDERED.has(draft.with.value)) return 0;
  const { axis } = touch;
  const closed = contacts.some(
    ({ normal, centre }) => Math.abs(normal[axis]) > 1 - 1e-6 && isAtShoulder(centre[axis], join, axis, touch.sign),
  );
  if (closed) return 0;
  return distance(solidBox(join.body.low, join.body.high), to.solid);
}

function isAtShoulder(at: number, { body }: Part, axis: (typeof INDICES)[number], sign: 1 | -1): boolean {
  const face = sign > 0 ? body.high[axis] : body.low[axis];
  return Math.abs(at - Number(face.n) / Number(face.d)) < 200;
}

/** Where a part that was tapered begins to run in, and how far the part that is joined there lies from that end. */
export function taperBeside(join: Part, to: Part, print: (length: Length) => string) {
  const taper = to.features.find(({ kind }) => kind === "taper");
  if (!taper || !("normal" in taper)) return null;
  const axis = indexOf(to.axes.length);
  const high = taper.normal[axis] > 0;
  const from = (at: Length): Length => absolute(subtract(at, to.body[high ? "high" : "low"][axis]));
  return { begins: print(from(taper.origin[axis])), lies: print(from(join.body[high ? "high" : "low"][axis])) };
}
