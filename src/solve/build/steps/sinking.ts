/** What nothing holds up but a room along which it slides: it is packed while the glue is wet, or it sinks to the bench. */
import { type Length, UNITS_PER_MM } from "../../../units/length.ts";
import { subtract, toNumber } from "../../../units/rational.ts";
import { axisOf, common, extent, indexOf } from "../../design/space.ts";
import type { Direction, Joint } from "../../design.ts";
import { bottomOf, boxOf, lowestOf, topOf } from "./box-of.ts";
import { definite, type Work } from "./draft.ts";
import { lastCloses } from "./in-one-go.ts";
import { type Move, togetherAfter } from "./moves.ts";
import { groupedBy } from "./wishes/own-key.ts";

/** Where a part can still be shifted along its mate when the clamps go on. */
const SLIDING: ReadonlySet<Joint["method"]> = new Set(["dado", "rabbet", "groove", "glue"]);

/** What holds a part by its end alone, and not deeply. */
const SHALLOW: ReadonlySet<Joint["method"]> = new Set(["dado", "rabbet", "glue"]);

/** What the eye sees at once. */
const SEEN = UNITS_PER_MM;

/** Packing for what is glued in with nothing under it. Common practice, no source. */
export function sinkTexts(work: Work, moves: readonly Move[], up: Direction): readonly string[] {
  const joints = moves.flatMap((move) => move.work.map(({ joint }) => joint));
  const [first] = moves as readonly [Move];
  if (first.arrivesBuilt) return [];
  const all = togetherAfter(moves);
  const bottom = (id: string) => lowestOf(work, [id], up);
  // What reaches past the work as it stands is kept clear of the bench.
  const bench = lowestOf(work, first.starts ? all : first.present, up);
  const held = new Set(first.starts ? [] : first.present);
  const carries = ({ parts }: Joint, id: string): boolean =>
    parts.some((other) => other !== id && toNumber(subtract(bottom(id), bottom(other))) > SEEN);
  const sinking = all.filter((id) => {
    if (held.has(id) || toNumber(subtract(bottom(id), bench)) < SEEN) return false;
    const own = joints.filter(({ parts }) => parts.includes(id));
    return (
      own.some(({ method }) => SLIDING.has(method)) &&
      own.every((joint) => (SLIDING.has(joint.method) && slidesDown(joint, up)) || (!joint.glue && !carries(joint, id)))
    );
  });
  const packed = groupedBy(sinking, (id) => work.print(subtract(bottom(id), bench))).map((own) => {
    const gap = work.print(subtract(bottom(own[0] as string), bench));
    return `Put packing ${gap} thick under ${definite(work, own)}, besides what the rest lies on: nothing else keeps ${own.length === 1 ? "it" : "them"} from sinking so far while the glue is wet.`;
  });
  return [...packed, ...freeEndTexts(work, moves, up, sinking)];
}

/**
 * What is let in shallowly at one end, long before the other end is: packing carries it. Not what has tenons or runs in grooves, nor what lies on
 * something that comes before it.
 */
function freeEndTexts(work: Work, moves: readonly Move[], up: Direction, packed: readonly string[]): readonly string[] {
  const [first] = moves as readonly [Move];
  const last = moves.at(-1) as Move;
  if (first.arrivesBuilt || !lastCloses(work, moves)) return [];
  const bench = lowestOf(work, first.starts ? togetherAfter(moves) : first.present, up);
  const high = (id: string): Length => subtract(lowestOf(work, [id], up), bench);
  const there = new Set(first.starts ? [] : first.present);
  const free = moves.slice(0, -1).flatMap((move): readonly string[] => {
    const own = move.arriving.filter((id) => {
      const joints = move.work.filter(({ joint }) => joint.parts.includes(id)).map(({ joint }) => joint);
      const lies = joints.some(({ parts }) =>
        parts.some((other) => other !== id && there.has(other) && isUnder(work, id, other, up)),
      );
      return (
        !packed.includes(id) &&
        axisOf(up) !== indexOf(work.part(id).axes.length) &&
        toNumber(high(id)) > SEEN &&
        joints.length > 0 &&
        joints.every(({ method, glue }) => SHALLOW.has(method) || !glue) &&
        joints.every(({ method }) => method !== "groove") &&
        last.work.some(({ joint }) => joint.parts.includes(id)) &&
        !lies
      );
    });
    for (const id of move.arriving) there.add(id);
    return own;
  });
  const closing = last.arriving;
  return groupedBy(free, (id) => work.print(high(id))).map((own) => {
    const ends = own.length > 1 ? "free ends" : "free end";
    const [they, are] = own.length > 1 ? ["they", "are"] : ["it", "is"];
    return `Put packing ${work.print(high(own[0] as string))} thick, besides what the rest lies on, under the ${ends} of ${definite(work, own)} as soon as ${they} ${are} let in: nothing else carries ${own.length > 1 ? "them" : "it"} until ${definite(work, closing)} ${closing.length > 1 ? "are" : "is"} on.`;
  });
}

/** Whether one lies on the other along its whole length, or nearly so. */
function isUnder(work: Work, id: string, other: string, up: Direction): boolean {
  const [own, under] = [boxOf(work.part(id)), boxOf(work.part(other))];
  const i = indexOf(work.part(id).axes.length);
  return (
    Math.abs(toNumber(subtract(bottomOf(own, up), topOf(under, up)))) < SEEN &&
    toNumber(extent(common(own, under), i)) > toNumber(extent(own, i)) / 2
  );
}

/** No face of it lies across the way down. */
const slidesDown = ({ contact, insertion }: Joint, up: Direction): boolean =>
  Math.abs(insertion?.[axisOf(up)] ?? 0) < ALONG && contact.every(({ normal }) => Math.abs(normal[axisOf(up)]) < ALONG);

/** Cosine. */
const ALONG = 0.1;
