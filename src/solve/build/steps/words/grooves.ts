import { indexOf } from "../../../design/space.ts";
import type { Joint } from "../../../design.ts";
import { listed, type Work } from "../draft.ts";
import type { Move } from "../moves.ts";
import { type Sentence, sentence } from "../sentence.ts";
import { woodMoves } from "./still.ts";

/** ": 1/8 in of room stays at each of its edges along the grain, for it to swell", where it is the same in all grooves. */
function roomText(work: Work, panels: readonly string[]): string {
  const gaps = work.design.joints.flatMap(({ parts: [id], gap, insertion }) => {
    const across = indexOf(work.part(id).axes.width);
    return panels.includes(id) && insertion && Math.abs(insertion[across]) > 0.99 && gap.n > 0n
      ? [work.print(gap)]
      : [];
  });
  const [room, ...more] = [...new Set(gaps)];
  const [its, it] = panels.length === 1 ? ["its", "it"] : ["their", "them"];
  return room === undefined || more.length > 0
    ? ""
    : `: ${room} of room stays at each of ${its} edges along the grain, for ${it} to swell`;
}

/** What a step joins. */
interface Grooving {
  readonly work: Work;
  readonly arriving: readonly string[];
  readonly joints: readonly Joint[];
  readonly moves: readonly Move[];
}

/** Whether a part goes into its groove from the side, not along it. */
function isPressed({ insertion, parts: [id] }: Joint, moves: readonly Move[]): boolean {
  const along = moves.find(({ arriving }) => arriving.includes(id))?.along;
  if (!insertion || !along) return false;
  return Math.abs(insertion.reduce((so, each, i) => so + each * (along[i as 0 | 1 | 2] ?? 0), 0)) > 0.99;
}

/** A panel goes into grooves, or a grooved part goes over a panel that is there. */
export function grooveText(
  { work, arriving, joints, moves }: Grooving,
  own: readonly Joint[],
  glued: boolean,
): Sentence {
  const panels = [...new Set(own.map((joint) => joint.parts[0]))];
  const floats = own.some(({ parts: [panel] }) => woodMoves(work, panel));
  const how = glued ? "with glue" : floats ? "without glue, so that it can move" : "without glue";
  const when = own.length < joints.length ? ", before the frame is closed" : "";
  if (panels.every((id) => arriving.includes(id))) {
    const pressed = own.every((joint) => isPressed(joint, moves));
    const room = floats && !glued ? roomText(work, panels) : "";
    return sentence(
      `${pressed ? "Press" : "Slide"} ${listed(work, panels)} into the ${own.length === 1 ? "groove" : "grooves"}${when}, ${how}${room}.`,
      { brings: "together" },
    );
  }
  const closing = [...new Set(own.map(({ parts: [, frame] }) => frame))].filter((id) => arriving.includes(id));
  const as =
    closing.length > 0 ? `As ${listed(work, closing)} ${closing.length === 1 ? "comes" : "come"}` : "As it comes";
  return `${as}, let the edge of ${listed(work, panels)} go into its groove, ${how}.`;
}
