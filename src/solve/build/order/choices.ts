/** Which arrangement of fasteners each joint gets. Taking one strikes out every arrangement whose holes would meet its holes. */
import { hullHits } from "../../../geometry/index.ts";
import type { Arrangement, Fastener, Hole, Part } from "../../design.ts";
import { outstanding, type Reach } from "../reach/index.ts";
import { holesMeet } from "./bores.ts";
import { fastenersStrike, isDriven, strikesHole } from "./driven.ts";
import { lanesOf } from "./lanes.ts";
import type { Link } from "./links.ts";
import type { Drive, JointWork } from "./plan.ts";

/** The arrangements taken so far, by the place of their joint. Never changed, only copied. */
export type Taken = ReadonlyMap<number, Arrangement>;

/** Why a joint cannot be made. */
export type Refusal =
  | { readonly why: "holes"; readonly link: Link }
  | { readonly why: "heads"; readonly link: Link; readonly fastener: Fastener; readonly part: Part }
  | { readonly why: "reach"; readonly link: Link; readonly fastener: Fastener };

export interface Choices {
  /** What must be fixed before anything moves: the arrangements that travel in their parts. */
  readonly travelling: Taken | Refusal;
  /**
   * Takes for each joint the first arrangement that is not struck out and can be driven on the body, which is what is there
   * when the joint is made; one that strikes out the last of another joint only where there is no other.
   */
  make(links: readonly Link[], body: readonly Part[], taken: Taken): Made | Refusal;
}

export interface Made {
  readonly work: readonly JointWork[];
  readonly taken: Taken;
}

/** `drawn`: holes that are there whatever is chosen. */
export function choicesOf(
  parts: readonly Part[],
  links: readonly Link[],
  reach: Reach,
  drawn: readonly Hole[] = parts.flatMap((part) => part.holes),
): Choices {
  const ways = lanesOf(parts, links);
  const left = new Map(
    links.map((link) => {
      const open = link.joint.arrangements.filter(
        ({ fasteners, holes }) => !meets(holes, drawn) && !standsIn(fasteners, parts),
      );
      const clear = open.filter(({ fasteners }) => !ways.meets(fasteners));
      return [link, clear.length > 0 ? clear : open] as const;
    }),
  );
  /** Why nothing is left of a joint's arrangements. */
  const none = (link: Link): Refusal => {
    const { arrangements } = link.joint;
    const stuck = arrangements.map(({ fasteners }) => standsIn(fasteners, parts));
    const [first] = stuck;
    return first && stuck.every((each) => each !== null) ? { why: "heads", link, ...first } : { why: "holes", link };
  };
  const known = new Map<Arrangement, Map<Arrangement, boolean>>();
  const conflict = (a: Arrangement, b: Arrangement): boolean => {
    const of = known.get(a) ?? new Map<Arrangement, boolean>();
    known.set(a, of);
    const found = of.get(b) ?? meets(a.holes, b.holes);
    of.set(b, found);
    return found;
  };
  const open = (link: Link, taken: Taken): readonly Arrangement[] => {
    const own = taken.get(link.index);
    if (own) return [own];
    return (left.get(link) ?? []).filter((a) => ![...taken.values()].some((other) => conflict(a, other)));
  };

  const struck = new Map<Arrangement, readonly Link[]>();
  /** The joints of which this arrangement strikes out some. */
  const strikes = (a: Arrangement): readonly Link[] => {
    const found =
      struck.get(a) ??
      links.filter((link) =>
        left.get(link)?.some((b) => b !== a && !link.joint.arrangements.includes(a) && conflict(a, b)),
      );
    struck.set(a, found);
    return found;
  };
  /** Whether every joint that is still to be made keeps some arrangement. */
  const leavesSome = (a: Arrangement, taken: Taken): boolean =>
    strikes(a).every((other) => {
      if (taken.has(other.index)) return true;
      const before = open(other, taken);
      return before.length === 0 || before.some((b) => !conflict(a, b));
    });

  const near = new Map<Arrangement, Map<Arrangement, boolean>>();
  /** Whether what one drives by blows strikes what the other drives or bores: such a row is taken only where there is no other. */
  const crowds = (a: Arrangement, b: Arrangement): boolean => {
    const of = near.get(a) ?? new Map<Arrangement, boolean>();
    near.set(a, of);
    const found = of.get(b) ?? (strike(a, b) || strike(b, a));
    of.set(b, found);
    return found;
  };
  const isClear = (a: Arrangement, taken: Taken): boolean =>
    !a.fasteners.some((each) => isDriven(each) && drawn.some((hole) => !hole.spare && strikesHole(each, hole))) &&
    ![...taken.values()].some((other) => other !== a && crowds(a, other));

  const one = (link: Link, body: readonly Part[], taken: Taken): Refusal | (JointWork & { chosen?: Arrangement }) => {
    const { joint } = link;
    if (joint.arrangements.length === 0) return { joint, drives: [] };
    let refusal: Refusal | undefined;
    const found = open(link, taken);
    const clear = found.filter((each) => isClear(each, taken));
    const all = [...clear, ...found.filter((each) => !clear.includes(each))];
    const considerate = all.filter((each) => leavesSome(each, taken));
    for (const chosen of [...considerate, ...all.filter((each) => !considerate.includes(each))]) {
      const drives = driven(chosen, body, reach);
      if ("drives" in drives) return { joint, drives: drives.drives, chosen };
      refusal ??= { why: "reach", link, ...drives };
    }
    return refusal ?? none(link);
  };

  return {
    travelling: travelling(links, open),
    make(wanted, body, before) {
      const taken = new Map(before);
      const work: JointWork[] = [];
      for (const link of wanted) {
        const made = one(link, body, taken);
        if ("why" in made) return made;
        if (made.chosen) taken.set(link.index, made.chosen);
        work.push({ joint: made.joint, drives: made.drives });
      }
      return { work, taken };
    },
  };
}

const meets = (some: readonly Hole[], others: readonly Hole[]): boolean =>
  some.some((a) => others.some((b) => holesMeet(a, b)));

const strike = (a: Arrangement, b: Arrangement): boolean =>
  a.fasteners.some(
    (own) =>
      isDriven(own) &&
      (b.fasteners.some((other) => fastenersStrike(own, other)) ||
        b.holes.some((hole) => !hole.spare && strikesHole(own, hole))),
  );

/** The first head that stands proud, or nut on the far side, inside the wood of a part that its fastener does not name; null where there is none. */
function standsIn(
  fasteners: readonly Fastener[],
  parts: readonly Part[],
): { readonly fastener: Fastener; readonly part: Part } | null {
  for (const fastener of fasteners) {
    const named = [...fastener.through, fastener.into];
    const rooms = outstanding(fastener);
    const part =
      rooms.length > 0 &&
      parts.find(({ id, solid }) => !named.includes(id) && rooms.some((room) => hullHits(room, solid)));
    if (part) return { fastener, part };
  }
  return null;
}

/** How each fastener that does not travel in its part is driven, or the first that nothing reaches. */
function driven(
  { fasteners }: Arrangement,
  body: readonly Part[],
  reach: Reach,
): { drives: Drive[] } | { fastener: Fastener } {
  const drives: Drive[] = [];
  for (const fastener of fasteners) {
    if (fastener.travelsWith !== null) continue;
    const reached = reach.toolFor(fastener, body);
    if (!reached) return { fastener };
    drives.push({ fastener, ...reached });
  }
  return { drives };
}

function travelling(
  links: readonly Link[],
  open: (link: Link, taken: Taken) => readonly Arrangement[],
): Taken | Refusal {
  const taken = new Map<number, Arrangement>();
  for (const link of links) {
    const travels = ({ fasteners }: Arrangement) => fasteners.some(({ travelsWith }) => travelsWith !== null);
    if (!link.joint.arrangements.some(travels)) continue;
    const [first] = open(link, taken);
    if (!first) return { why: "holes", link };
    taken.set(link.index, first);
  }
  return taken;
}
