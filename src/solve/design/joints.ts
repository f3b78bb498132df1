import type { Finding } from "../../findings/finding.ts";
import { headNotInJoint } from "../../findings/rules/head-not-in-joint.ts";
import { jointDoesNotTouch } from "../../findings/rules/joint-does-not-touch.ts";
import { partsOverlap } from "../../findings/rules/parts-overlap.ts";
import { shoulderStandsOpen } from "../../findings/rules/shoulder-stands-open.ts";
import { type Contact, distance, inverse, placed } from "../../geometry/index.ts";
import type { JointDraft, Method } from "../../parse/draft.ts";
import { type Length, TOLERANCE } from "../../units/length.ts";
import { max, rational, toNumber } from "../../units/rational.ts";
import type { Arrangement, Box, Joint, Part, Point } from "../design.ts";
import type { Directory } from "./expand/directory.ts";
import { fasten, openSiteOf } from "./fastening/fasten.ts";
import { held } from "./fastening/held.ts";
import { type FasteningMethod, fasteningOf } from "./fastening/methods.ts";
import { besidesOf, moverOf, stillOf } from "./fastening/movement.ts";
import type { FasteningContext, Member, Site } from "./fastening/site.ts";
import { siteOf } from "./fastening/site-of.ts";
import { asTheyStand, memberAtHome, pulledBack, pushHome } from "./home.ts";
import { CRAFTS } from "./joinery/crafts.ts";
import { openShoulder, taperBeside } from "./joinery/shoulder.ts";
import { standsApart } from "./joinery/touch.ts";
import type { Jointed } from "./joinery/work.ts";
import { cureOf, overlapOf, whyOverlap } from "./overlap.ts";
import { common } from "./space.ts";
import { placedArrangement } from "./turning.ts";

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
): readonly Joint[] => {
  const areas = (draft: JointDraft): readonly Box[] =>
    jointed.filter(({ joining }) => joining.draft === draft).map(({ joining }) => areaOf(joining, context));
  return jointed.flatMap((each) => finishJoint(each, () => areas(each.joining.draft), parts, context) ?? []);
};

const areaOf = ({ join, to }: Jointed["joining"], { member }: JointsContext): Box =>
  common(member(join.id).body, member(to.id).body);

function finishJoint(
  jointed: Jointed,
  areas: () => readonly Box[],
  parts: ReadonlyMap<string, Part>,
  context: JointsContext,
): Joint | null {
  const { joining, insertion, gap } = jointed;
  const { draft, id } = joining;
  const [join, to] = [parts.get(joining.join.id), parts.get(joining.to.id)];
  if (!join || !to) return null;
  const method = fasteningOf(draft);
  const home = standsApart(draft.with.value) ? asTheyStand(join, to) : pushHome(joining.touch, join, to);
  const { contacts } = home;
  if (contacts.length === 0 && !method?.apart) {
    reportApart(joining, join, to, context);
    return null;
  }
  const open = join.turned || to.turned ? 0 : openShoulder(joining, join, to, contacts);
  if (open > TOLERANCE) {
    const by = context.print(rational(Math.round(open)));
    context.report(
      shoulderStandsOpen(draft.at, { join: join.id, to: to.id, by, taper: taperBeside(join, to, context.print) }),
    );
  }
  const { glued, floats, loose } = CRAFTS[draft.with.value];
  const glue = draft.glue?.value ?? glued;
  const [first, second] = [memberAtHome(context.member(join.id), home), context.member(to.id)];
  // A method that lets wood move has its heads in the narrower part.
  const narrower = moverOf(first, second) === first ? second : first;
  const usual = method?.moves ? narrower : isPassed(joining, first, second) ? second : first;
  const headed = headOf(joining, usual.id, context);
  if (!headed) return null;
  const [head, hold] = headed === first.id ? [first, second] : [second, first];
  const found =
    method &&
    (method.apart ? openSite(id, draft, head, hold) : siteOf(id, draft, head, hold, contacts, head === first));
  const fast = besidesOf(joining, hold.id).map((each) => areaOf(each, context));
  const still = found && method?.moves ? stillOf(draft, hold, found.site.axis, { own: areas(), fast }, context) : null;
  const fastened =
    held(jointed, context) ??
    (method && found && (still || !method.moves)
      ? arrangements(method, { ...found, site: { ...found.site, still } }, context)
      : []);
  const free = fastened.some(({ fasteners }) => fasteners.some(({ slack }) => slack !== undefined));
  return {
    id,
    at: draft.at,
    parts: [join.id, to.id],
    kind: loose
      ? "resting"
      : method?.apart
        ? method.apart
        : free
          ? "sliding"
          : floats === "always" || (floats && !glue)
            ? "floating"
            : "fixed",
    method: draft.with.value,
    glue,
    gap: home.by && joining.touch.kind === "faces" ? max(gap, joining.touch.gap) : gap,
    ...(home.by && { roundedGap: true as const }),
    ...(still && { still }),
    contact: contacts,
    insertion: draft.with.value === "hangs on" ? downTheBevel(contacts) : insertion,
    ...(draft.tenon?.wedges?.value ? { wedged: true } : {}),
    ...(draft.setWith && { setWith: draft.setWith.value }),
    arrangements: fastened.map((each) => pulledBack(each, join.id, home)),
  };
}

/** What hangs on a bevel goes home down its slope. */
function downTheBevel(contacts: readonly Contact[]): Joint["insertion"] {
  const bevel = contacts.find(({ normal: [, , z] }) => Math.abs(z) > SLANTS && Math.abs(z) < 1 - SLANTS);
  if (!bevel) return null;
  const [x, y, z] = bevel.normal;
  const long = Math.sqrt(1 - z * z);
  // Zero stays zero: there is no −0 in the record.
  return [0 + (x * z) / long, 0 + (y * z) / long, (z * z - 1) / long];
}
const SLANTS = 1e-6;

type Placed = Omit<NonNullable<ReturnType<typeof siteOf>>, "site"> & { readonly site: Site };

function openSite(id: string, draft: JointDraft, head: Member, hold: Member) {
  const site = openSiteOf(id, draft, head, hold);
  return site && { site, placement: null };
}

/** The ways of fastening a joint, in the room. */
function arrangements(
  method: FasteningMethod,
  { site, placement }: Placed,
  context: JointsContext,
): readonly Arrangement[] {
  if (!placement) return fasten(method, site, context);
  const back = inverse(placement);
  const middle = placed(back, context.centre.map((n) => rational(Math.round(n))) as unknown as Point);
  const centre = middle.map(toNumber) as unknown as readonly [number, number, number];
  return fasten(method, site, { ...context, centre, reaches: () => null }).map((each) =>
    placedArrangement(each, placement),
  );
}

const THROUGH: readonly Method[] = [
  ...(["screws", "nails", "brads", "staples", "cleats", "lag screws", "bolts"] as const),
  "bolts and cross dowels",
];

/** Whether what is driven goes through the other part: it meets the end of the joined one with its broad face. */
const isPassed = ({ draft, touch }: Jointed["joining"], join: Member, to: Member): boolean =>
  THROUGH.includes(draft.with.value) &&
  touch.kind === "faces" &&
  join.frame.length === touch.axis &&
  to.frame.thickness === touch.axis;

/** Parts that were joined and do not touch: they lie in each other, or apart. */
function reportApart({ draft, to: mate }: Jointed["joining"], join: Part, to: Part, context: JointsContext): void {
  const { report, print } = context;
  const overlap = overlapOf(join, to);
  if (overlap) {
    const { way } = overlap;
    const by = print(overlap.by);
    const drafts = [join, to].map(({ id }) => context.directory.byId.get(id)?.draft);
    const cure = cureOf(drafts, overlap, by);
    const why = whyOverlap([join, to], drafts);
    const names = { first: join.id, second: to.id, by, way, cure, made: draft.made === true, ...why };
    report(partsOverlap(mate.at, names, { also: [{ at: draft.at, label: "joined here" }] }));
    return;
  }
  const apart = distance(join.solid, to.solid);
  report(
    jointDoesNotTouch(draft.at, {
      join: join.id,
      to: to.id,
      apart: apart > 0 ? print(rational(Math.round(apart))) : null,
      made: draft.made === true,
    }),
  );
}

/** The part under the head: the usual one, or whichever side `from` names. */
function headOf({ draft, join, to }: Jointed["joining"], usual: string, context: JointsContext): string | null {
  if (!draft.from) return usual;
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
