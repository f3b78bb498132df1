/** What nothing holds up but a room along which it slides: it is packed while the glue is wet, or it sinks to the bench. */
import { UNITS_PER_MM } from "../../../units/length.ts";
import { subtract, toNumber } from "../../../units/rational.ts";
import { axisOf } from "../../design/space.ts";
import type { Direction, Joint } from "../../design.ts";
import { lowestOf } from "./box-of.ts";
import { definite, type Work } from "./draft.ts";
import { type Move, togetherAfter } from "./moves.ts";
import { groupedBy } from "./wishes/own-key.ts";

/** Where a part can still be shifted along its mate when the clamps go on. */
const SLIDING: ReadonlySet<Joint["method"]> = new Set(["dado", "rabbet", "groove", "glue"]);

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
  return groupedBy(sinking, (id) => work.print(subtract(bottom(id), bench))).map((own) => {
    const gap = work.print(subtract(bottom(own[0] as string), bench));
    return `Put packing ${gap} thick under ${definite(work, own)}, besides what the rest lies on: nothing else keeps ${own.length === 1 ? "it" : "them"} from sinking so far while the glue is wet.`;
  });
}

/** No face of it lies across the way down. */
const slidesDown = ({ contact, insertion }: Joint, up: Direction): boolean =>
  Math.abs(insertion?.[axisOf(up)] ?? 0) < ALONG && contact.every(({ normal }) => Math.abs(normal[axisOf(up)]) < ALONG);

/** Cosine. */
const ALONG = 0.1;
