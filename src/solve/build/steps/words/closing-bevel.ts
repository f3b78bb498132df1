/** The bevel of a door's closing edge, where its inner corner would all but rub as it swings out. */
import { circlePoint } from "../../../../geometry/angle.ts";
import { inches, millimetres, toMillimetres } from "../../../../units/length.ts";
import { roundTo } from "../../../../units/round.ts";
import { faceOf, indexOf } from "../../../design/space.ts";
import { type ClosingEdge, closingEdgeOf } from "../../checks/doors/closing-edge.ts";
import { doorsOf } from "../../checks/doors/doors.ts";
import { filmOf } from "../../finishing/products.ts";
import { listed, type Work } from "../draft.ts";

/** A corner that passes nearer than this, with the finish on it, rubs in damp weather or as the hinges wear. Common practice, no source. */
const CLEAR = toMillimetres(inches(1, 32));
/** What is marked; bevels that are planed by eye are whole degrees. */
const MARKED = { inch: inches(1, 64), mm: millimetres(1, 2) } as const;
const MOST = 10;

/** Of the door that some joint hangs: before it is hung, and so before it has its finish. None where the corner passes freely, or strikes: that is a finding. */
export function closingBevelTexts(work: Work, joint: string): readonly string[] {
  const given = { design: work.design, hardware: work.plan.hardware, motions: work.motions };
  return doorsOf(given).flatMap((door): readonly string[] => {
    if (door.joint.id !== joint) return [];
    const edge = closingEdgeOf(door, given);
    if (edge === null || edge.out >= edge.gap) return [];
    // Ends of tenons that show in it are planed with it.
    const along = edge.parts.filter(({ axes }) => indexOf(axes.length) !== door.wide);
    const ids = (along.length > 0 ? along : edge.parts).map(({ id }) => id);
    const finish = work.finishing.find(({ parts }) => parts.some((id) => ids.includes(id)));
    // On the edge, and on what it passes.
    const room = edge.gap - CLEAR - (finish ? 2 * filmOf(finish) : 0);
    const bevel = edge.out <= room ? null : bevelFor(edge, room);
    if (bevel === null) return [];
    const { degrees, off } = bevel;
    const { wide, thick, free, opens } = door;
    const [side, inner, outer] = [faceOf(wide, free > 0), faceOf(thick, opens < 0), faceOf(thick, opens > 0)];
    const by = work.print(roundTo(millimetres(Math.round(off * 1000), 1000), MARKED[work.design.units], "up"));
    const more = finish && filmOf(finish) > 0 ? ", and the finish takes of that too" : "";
    return [
      `Plane the ${side} edge of ${listed(work, ids)}, where the door closes, to a bevel of ${degrees}°: its ${inner} corner ${by} farther in than its ${outer} one, which stays. As the door opens, that corner swings out by nearly all of the gap${more}.`,
    ];
  });
}

/** The fewest whole degrees that leave the room, and how much goes off at the inner corner; null where it takes more than a bevel. */
function bevelFor({ far, deep, thick }: ClosingEdge, room: number) {
  for (let degrees = 2; degrees <= MOST; degrees += 1) {
    const [cos, sin] = circlePoint(degrees, 360);
    const off = (thick * sin) / cos;
    const inner = far - off;
    if (Math.sqrt(inner * inner + deep * deep) - far <= room) return { degrees, off };
  }
  return null;
}
