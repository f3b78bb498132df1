/** Drawings that are higher where their page would stay white below. */
import type { Frame } from "../style.ts";
import type { Placed, Sheet } from "./sheet.ts";

/** Less white space, in points, is not seen. */
const SEEN = 48;

/** What is placed, with what can be higher as high as the page has room, shared evenly, and the rest below it. */
export function higherOn({ placed, y }: Pick<Sheet, "placed" | "y">, frame: Frame): readonly Placed[] {
  let room = frame.y + frame.height - y;
  let able = placed.filter(({ atom }) => atom.higher !== undefined).length;
  if (room < SEEN || able === 0) return placed;
  let down = 0;
  return placed.map((each): Placed => {
    const at = { ...each, y: each.y + down };
    if (!each.atom.higher) return at;
    const most = each.atom.height + room / able--;
    const high = each.atom.higher(most);
    if (!high || high.height <= each.atom.height || high.height > most) return at;
    const more = high.height - each.atom.height;
    down += more;
    room -= more;
    return { ...at, atom: high };
  });
}
