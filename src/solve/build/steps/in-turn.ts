/** What is done between placing and driving: the work held against the hammer, and proved square while one fastener a joint still lets it be shifted. */
import { dot } from "../../../geometry/vec.ts";
import type { Direction } from "../../design.ts";
import { LEVEL } from "./lying.ts";
import type { Move } from "./moves.ts";

/** Sentences that begin to drive: holes first, where there are any. */
const DRIVES = /^(?:Drive \d|Put in \d|Through the holes that are there, drill|For each (?:brad|nail) )/u;

const before = (texts: readonly string[], own: readonly string[]): readonly string[] => {
  const at = texts.findIndex((text) => DRIVES.test(text));
  return at < 0 ? texts : [...texts.slice(0, at), ...own, ...texts.slice(at)];
};

/** What is nailed from a side slides and springs, wet with glue: common practice, no source. */
export function heldWhileStruck(texts: readonly string[], moves: readonly Move[], up: Direction): readonly string[] {
  const struck = moves.filter(({ work }) =>
    work.some(({ joint, drives }) => joint.glue && drives.some(({ tool }) => tool === "hammer")),
  );
  const drives = struck.flatMap(({ work }) => work.flatMap((each) => each.drives));
  const from = (level: boolean): boolean =>
    drives.some(({ fastener }) => Math.abs(dot(fastener.direction, up)) < LEVEL === level);
  const one = moves.flatMap(({ arriving }) => arriving).length === 1;
  const what = one ? "it" : "each";
  // It hangs under what is hammered.
  if (from(false) && struck.some(({ along, starts }) => !starts && dot(along, up) > LEVEL))
    return before(texts, [
      `Prop ${what} from below while it is nailed: blocks cut to the height between the bench and it, one just under where the hammer strikes.`,
    ]);
  if (!from(true)) return texts;
  return before(texts, [
    `Hold ${what} while it is nailed: with clamps where they reach, else with props cut to length; and have a second person press a heavy block against the front of it, just behind where the hammer strikes.`,
  ]);
}

/** Whether a frame can be proved with one fastener in each joint. */
const isProvedFirst = (moves: readonly Move[]): boolean => {
  const works = moves.flatMap(({ work }) => work).filter(({ drives }) => drives.length > 0);
  return (
    works.length > 0 &&
    works.every(({ drives }) => drives.length > 1 && drives.every(({ fastener }) => fastener.kind.endsWith("screw")))
  );
};

/** One in each joint, the proof, then the others: driven all, they hold it as it is. Null where nothing is proved. */
export function oneFirst(texts: readonly string[], moves: readonly Move[], proof: string | null): readonly string[] {
  if (!proof || !isProvedFirst(moves)) return texts;
  const others = texts.filter((text) => text !== proof);
  const at = others.findLastIndex((text) => /^Drive \d/u.test(text));
  if (at < 0) return texts;
  return [
    ...others.slice(0, at + 1),
    `Of these drive one in each joint first. ${proof} Then drive the others: with all of them in nothing can be shifted.`,
    ...others.slice(at + 1),
  ];
}
