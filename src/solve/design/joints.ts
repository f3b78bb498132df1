import type { Finding } from "../../findings/finding.ts";
import { headNotInJoint } from "../../findings/rules/head-not-in-joint.ts";
import { jointDoesNotTouch } from "../../findings/rules/joint-does-not-touch.ts";
import { partsOverlap } from "../../findings/rules/parts-overlap.ts";
import { contact, distance, overlapDepth, translate } from "../../geometry/index.ts";
import type { Method } from "../../parse/draft.ts";
import { type Length, TOLERANCE } from "../../units/length.ts";
import { add, max, negate, rational, subtract, ZERO } from "../../units/rational.ts";
import type { Arrangement, Box, Joint, Part, Point } from "../design.ts";
import type { Directory } from "./expand/directory.ts";
import { fasten, fasteningOf, siteOf } from "./fastening/fasten.ts";
import type { FasteningContext, Member } from "./fastening/site.ts";
import type { Jointed } from "./joinery/work.ts";
import { triple } from "./space.ts";

/** Methods that are glued when nothing is said. */
const GLUED: readonly Method[] = ["glue", "dowels", "mortise and tenon", "half lap", "dado", "rabbet"];

export interface JointsContext extends FasteningContext {
  readonly directory: Directory;
  readonly member: (id: string) => Member;
  readonly report: (finding: Finding) => void;
  readonly print: (length: Length) => string;
}

/** The joints of finished parts: what touches, and how it may be fastened. */
export const finishJoints = (
  jointed: readonly Jointed[],
  parts: ReadonlyMap<string, Part>,
  context: JointsContext,
): readonly Joint[] => jointed.flatMap((each) => finishJoint(each, parts, context) ?? []);

function finishJoint(
  { joining, insertion, gap }: Jointed,
  parts: ReadonlyMap<string, Part>,
  context: JointsContext,
): Joint | null {
  const { draft, id } = joining;
  const [join, to] = [parts.get(joining.join.id), parts.get(joining.to.id)];
  if (!join || !to) return null;
  // Where rounding left the two apart, the joint is looked at with the joined part pushed home.
  const asCut = contact(join.solid, to.solid);
  const home = asCut.length > 0 ? null : pushedHome(joining.touch);
  const joined = home === null ? join.solid : translate(join.solid, home);
  const contacts = home === null ? asCut : contact(joined, to.solid);
  if (contacts.length === 0) {
    const apart = distance(join.solid, to.solid);
    const inside = overlapDepth(join.solid, to.solid);
    if (inside > TOLERANCE) {
      const by = context.print(rational(Math.round(inside)));
      context.report(
        partsOverlap(
          joining.to.at,
          { first: join.id, second: to.id, by },
          { also: [{ at: draft.at, label: "joined here" }] },
        ),
      );
      return null;
    }
    context.report(
      jointDoesNotTouch(draft.at, {
        join: join.id,
        to: to.id,
        apart: apart > 0 ? context.print(rational(Math.round(apart))) : null,
      }),
    );
    return null;
  }
  const glue = draft.glue?.value ?? GLUED.includes(draft.with.value);
  const head = headOf(joining, context);
  if (!head) return null;
  const method = fasteningOf(draft);
  const member = (name: string): Member => {
    const own = context.member(name);
    return name === join.id && home ? { ...own, solid: joined, body: shiftBox(own.body, home) } : own;
  };
  const [headed, holding] = head === join.id ? [join, to] : [to, join];
  const site = method && siteOf(id, draft, member(headed.id), member(holding.id), contacts, headed === join);
  return {
    id,
    at: draft.at,
    parts: [join.id, to.id],
    kind: draft.with.value === "groove" && !glue ? "floating" : "fixed",
    method: draft.with.value,
    glue,
    gap: home && joining.touch.kind === "faces" ? max(gap, joining.touch.gap) : gap,
    ...(home && { roundedGap: true as const }),
    contact: contacts,
    insertion,
    arrangements: method && site ? fasten(method, site, context).map((each) => pulledBack(each, join.id, home)) : [],
  };
}

/** How far a part has to move to touch the other, where rounding left it short; null where it touches. */
function pushedHome(touch: Jointed["joining"]["touch"]): Point | null {
  if (touch.kind !== "faces" || touch.gap.n === 0n) return null;
  const { axis, sign, gap } = touch;
  return triple((i) => (i === axis ? (sign > 0 ? gap : negate(gap)) : ZERO));
}

const shiftBox = (box: Box, by: Point): Box => ({
  low: triple((i) => add(box.low[i], by[i])),
  high: triple((i) => add(box.high[i], by[i])),
});

/** Fasteners and holes of a part that was pushed home, where they are with the part in its place. */
function pulledBack(arrangement: Arrangement, part: string, home: Point | null): Arrangement {
  if (home === null) return arrangement;
  const back = (at: Point): Point => triple((i) => subtract(at[i], home[i]));
  return {
    fasteners: arrangement.fasteners.map((fastener) =>
      fastener.through.includes(part)
        ? { ...fastener, head: { ...fastener.head, at: back(fastener.head.at) } }
        : fastener,
    ),
    holes: arrangement.holes.map((hole) => (hole.part === part ? { ...hole, at: back(hole.at) } : hole)),
  };
}

/** The part under the head: the joined one, or whichever side `from` names. */
function headOf({ draft, join, to }: Jointed["joining"], context: JointsContext): string | null {
  if (!draft.from) return join.id;
  const named = context.directory.find(draft.from);
  if (!named) return null;
  if (named.includes(join)) return join.id;
  if (named.includes(to)) return to.id;
  // `from` may name the mate of another pair of the same entry: then this pair has its head on the same side.
  const mates = draft.to.flatMap((name) => context.directory.find(name) ?? []);
  const joined = draft.join.flatMap((name) => context.directory.find(name) ?? []);
  if (named.every((entry) => mates.includes(entry))) return to.id;
  if (named.every((entry) => joined.includes(entry))) return join.id;
  context.report(headNotInJoint(draft.from.at, { name: draft.from.path.join(".") }));
  return null;
}
