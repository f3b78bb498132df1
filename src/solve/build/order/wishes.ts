/** What the maker wishes to be joined before what. */
import type { Finding } from "../../../findings/finding.ts";
import { wishImpossible } from "../../../findings/rules/wish-impossible.ts";
import type { Span } from "../../../findings/span.ts";
import type { Subject, Wish } from "../../design/model/wish.ts";
import type { Design } from "../../design.ts";
import type { Blocking } from "./blocking.ts";
import { components, type Halves, type Link } from "./links.ts";

/** Parts by their places: all of `first` are together before any of `next` is joined to one of them. */
export interface Sequence {
  readonly first: ReadonlySet<number>;
  readonly next: ReadonlySet<number>;
  readonly wish: Wish;
}

/** In the words of the source. */
export const saidOf = (subjects: readonly Subject[]): string => subjects.map(({ said }) => said).join(" and ");

const isJoining = ({ verb, cuts, parts }: Subject): boolean =>
  cuts === undefined && (verb === undefined || verb === "join") && parts !== null;

/** Wishes about parts rather than about work on them. */
export function sequencesOf({ parts, wishes = [] }: Pick<Design, "parts" | "wishes">): readonly Sequence[] {
  const place = new Map(parts.map(({ id }, i) => [id, i]));
  const places = (subjects: readonly Subject[]): ReadonlySet<number> =>
    new Set(subjects.flatMap((each) => each.parts ?? []).flatMap((id) => place.get(id) ?? []));
  return wishes.flatMap((wish): readonly Sequence[] =>
    wish.kind === "before" && [...wish.first, ...wish.next].every(isJoining)
      ? [{ first: places(wish.first), next: places(wish.next), wish }]
      : [],
  );
}

/** Bodies that are wished to be built by themselves, as places of their parts. */
export const unitsWished = ({ parts, wishes = [] }: Design): readonly (readonly number[])[] =>
  wishes.flatMap((wish) =>
    wish.kind === "unit" ? [parts.flatMap(({ id }, i) => (wish.parts.includes(id) ? [i] : []))] : [],
  );

/** Whether two halves come together in an order that the wish rules out. */
export function breaks({ first, next }: Sequence, { moving, staying }: Halves): boolean {
  const against = (own: readonly number[], other: readonly number[]): boolean => {
    if (!own.some((part) => next.has(part))) return false;
    const met = other.filter((part) => first.has(part) && !next.has(part)).length;
    if (met === 0) return false;
    // Some are elsewhere yet; or the only one arrives at what was joined before.
    const wanted = [...first].filter((part) => !next.has(part)).length;
    return met < wanted || (other.length === 1 && own.length > 1);
  };
  return against(moving, staying) || against(staying, moving);
}

/** Why the wish cannot be kept: the fewest parts that stand in the way of what comes later, or what falls apart without it. */
export function impossible(
  design: Design,
  { first, next, wish }: Sequence,
  links: readonly Link[],
  blocking: Blocking,
): Finding {
  const { parts } = design;
  const rest = parts.flatMap((_, i) => (next.has(i) ? [] : [i]));
  const names = (places: readonly number[]): readonly string[] => places.flatMap((i) => parts[i]?.id ?? []);
  const words =
    wish.kind === "before" ? { first: saidOf(wish.first), next: saidOf(wish.next) } : { first: "", next: "" };
  const bodies = components(rest, links).filter((body) => body.some((i) => first.has(i)));
  if (bodies.length > 1) {
    const apart = bodies.toSorted((a, b) => a.length - b.length)[0] ?? [];
    return wishImpossible(wish.at, { ...words, because: "loose", parts: names(apart) });
  }
  return wishImpossible(wish.at, { ...words, because: "blocked", parts: names(inTheWay([...next], rest, blocking)) });
}

/** What stands around a body that was wished to be built by itself, and was not. */
export function noUnit({ parts, wishes = [] }: Design, body: readonly number[], blocking: Blocking): Finding {
  const ids = body.flatMap((i) => parts[i]?.id ?? []);
  const rest = parts.flatMap((_, i) => (body.includes(i) ? [] : [i]));
  const wish = wishes.find((each) => each.kind === "unit" && ids.every((id) => each.parts.includes(id)));
  const way = inTheWay(body, rest, blocking).flatMap((i) => parts[i]?.id ?? []);
  const first = wish?.kind === "unit" ? wish.said : ids.join(", ");
  return wishImpossible(wish?.at ?? NOWHERE, { first, next: "", because: "no unit", parts: way });
}

const NOWHERE: Span = { start: 0, end: 0, line: 1, column: 1 };

/** In the direction in which the fewest are. */
function inTheWay(
  body: readonly number[],
  rest: readonly number[],
  { directions, blocked }: Blocking,
): readonly number[] {
  const blockers = directions.map((_, d) => rest.filter((b) => body.some((a) => blocked(a, b, d))));
  return blockers.reduce((so, one) => (one.length < so.length ? one : so), blockers[0] ?? []);
}
