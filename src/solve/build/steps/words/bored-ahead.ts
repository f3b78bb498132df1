/** What is said of holes for wall screws, in the room and before that. */
import { FIRST, type Work } from "../draft.ts";

/** What the drilling table says of the holes for wall screws, in the order of the work: a wide bit needs whole wood to be led in. */
export function wallBores({ plan, drill, print }: Work, these = "its holes through"): string {
  const own = new Set(plan.hardware.flatMap(({ id, item }) => (item.kind === "wall screw" ? [id] : [])));
  const holes = plan.holes.filter((hole) => hole.for !== null && own.has(hole.for));
  const [seat, through] = holes.find(({ stages }) => stages.length > 1)?.stages ?? [];
  if (seat && through)
    return `bore for each screw a seat for its head, ${drill(seat.diameter)} across and ${print(seat.depth)} deep, then ${drill(through.diameter)} right through`;
  const only = holes[0]?.stages.at(-1);
  return only ? `bore ${these}, ${drill(only.diameter)} across` : `bore ${these}`;
}

/** Before a wall is marked through the holes. `blind`: no drill goes in from this side. */
export const boredAheadText = (work: Work, blind: boolean): string =>
  `First ${wallBores(work)}${blind ? ", from the other side" : ""}, while it is on the bench.`;

/** The same before the finish; `places`: where the holes are. */
export function boredBareText(work: Work, blind: boolean, places: string): string {
  const wall = work.design.wall?.studs === null ? ", if it is to hang on solid masonry" : "";
  const through = wallBores(work, "right through");
  const lying = blind ? ", from behind, the work lying on its front on a blanket" : "";
  return `${FIRST}while the wood is bare, bore for the wall screws${wall}: ${places}. There ${through}${lying}.`;
}
