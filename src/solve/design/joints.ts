import type { Finding } from "../../findings/finding.ts";
import { headNotInJoint } from "../../findings/rules/head-not-in-joint.ts";
import { jointDoesNotTouch } from "../../findings/rules/joint-does-not-touch.ts";
import { partsOverlap } from "../../findings/rules/parts-overlap.ts";
import { contact, distance, inverse, overlapDepth, placed } from "../../geometry/index.ts";
import type { Method } from "../../parse/draft.ts";
import { type Length, TOLERANCE } from "../../units/length.ts";
import { rational, toNumber } from "../../units/rational.ts";
import type { Arrangement, Joint, Part, Point } from "../design.ts";
import type { Directory } from "./expand/directory.ts";
import { type FasteningMethod, fasten, fasteningOf } from "./fastening/fasten.ts";
import type { FasteningContext, Member } from "./fastening/site.ts";
import { type PlacedSite, siteOf } from "./fastening/site-of.ts";
import type { Jointed } from "./joinery/work.ts";
import { placedArrangement } from "./turning.ts";

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
  const contacts = contact(join.solid, to.solid);
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
  const [headed, holding] = head === join.id ? [join, to] : [to, join];
  const found =
    method && siteOf(id, draft, context.member(headed.id), context.member(holding.id), contacts, headed === join);
  return {
    id,
    at: draft.at,
    parts: [join.id, to.id],
    kind: draft.with.value === "groove" && !glue ? "floating" : "fixed",
    method: draft.with.value,
    glue,
    gap,
    contact: contacts,
    insertion,
    arrangements: method && found ? arrangements(method, found, context) : [],
  };
}

/** The ways of fastening a joint, in the room. */
function arrangements(
  method: FasteningMethod,
  { site, placement }: PlacedSite,
  context: JointsContext,
): readonly Arrangement[] {
  if (!placement) return fasten(method, site, context);
  const back = inverse(placement);
  const middle = placed(back, context.centre.map((n) => rational(Math.round(n))) as unknown as Point);
  const centre = middle.map(toNumber) as unknown as readonly [number, number, number];
  return fasten(method, site, { ...context, centre }).map((each) => placedArrangement(each, placement));
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
