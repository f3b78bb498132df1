import { type Contact, contact, type Solid, translate } from "../../geometry/index.ts";
import { add, negate, subtract, ZERO } from "../../units/rational.ts";
import type { Arrangement, Box, Part, Point } from "../design.ts";
import type { Member } from "./fastening/site.ts";
import type { Jointed } from "./joinery/work.ts";
import { triple } from "./space.ts";

/** Two parts of a joint as they are looked at: where rounding left them apart, the joined one is pushed home. */
export interface Home {
  /** How far the joined part was moved; null where it touches as it is. */
  readonly by: Point | null;
  readonly joined: Solid;
  readonly contacts: readonly Contact[];
}

export function pushHome(touch: Jointed["joining"]["touch"], join: Part, to: Part): Home {
  const contacts = contact(join.solid, to.solid);
  if (contacts.length > 0 || touch.kind !== "faces" || touch.gap.n === 0n)
    return { by: null, joined: join.solid, contacts };
  const { axis, sign, gap } = touch;
  const by: Point = triple((i) => (i === axis ? (sign > 0 ? gap : negate(gap)) : ZERO));
  const joined = translate(join.solid, by);
  return { by, joined, contacts: contact(joined, to.solid) };
}

/** What hardware holds apart stays where it is. */
export const asTheyStand = (join: Part, to: Part): Home => ({
  by: null,
  joined: join.solid,
  contacts: contact(join.solid, to.solid),
});

/** The joined part as fasteners see it. */
export const memberAtHome = (member: Member, { by, joined }: Home): Member =>
  by === null ? member : { ...member, solid: joined, body: shiftBox(member.body, by) };

const shiftBox = (box: Box, by: Point): Box => ({
  low: triple((i) => add(box.low[i], by[i])),
  high: triple((i) => add(box.high[i], by[i])),
});

/** Fasteners and holes of a part that was pushed home, where they are with the part in its place. */
export function pulledBack(arrangement: Arrangement, part: string, { by }: Home): Arrangement {
  if (by === null) return arrangement;
  const back = (at: Point): Point => triple((i) => subtract(at[i], by[i]));
  return {
    ...arrangement,
    fasteners: arrangement.fasteners.map((fastener) =>
      fastener.through.includes(part)
        ? { ...fastener, head: { ...fastener.head, at: back(fastener.head.at) } }
        : fastener,
    ),
    holes: arrangement.holes.map((hole) => (hole.part === part ? { ...hole, at: back(hole.at) } : hole)),
  };
}
