/** Parts that come between two faces which are fast by then, or reach round what is: no size on paper fits those as they came out. */

import type { Method } from "../../../parse/draft.ts";
import { RESERVED } from "../../design/making/making.ts";
import { makingOf } from "../../design/making/plain.ts";
import type { Between, Design, Making, Part } from "../../design.ts";
import { notchedRound } from "../notched.ts";
import { components, LOOSE, linksOf } from "../order/links.ts";
import { flushOn, roundIn } from "../round.ts";
import { SIZES, tightIn } from "../tight.ts";
import type { Work } from "./draft.ts";
import { grouped } from "./grouped.ts";
import { type Move, unitsOf } from "./moves.ts";

/** Where a part is measured, and what it is notched round. */
type Place = readonly [string, Pick<Making, "notchedRound"> & { readonly between: readonly Between[] }];

type Known = Pick<Work, "design" | "plan" | "motions" | "part" | "line">;

/**
 * The design with parts that come tight between such faces cut when the piece tells their size, unless the plan says how they are cut. The
 * order of work is that of the plan, and stays.
 */
export function withFitted(known: Known): Design {
  const { design } = known;
  const steps = unitsOf(known.plan).flatMap((unit) => grouped(known, unit));
  const shut = new Map([
    ...steps.flatMap((moves) => moves.flatMap((move) => shutApart(known, move))),
    ...steps.flatMap((moves) => shutIn(known, moves)),
  ]);
  for (const [id, place] of steps.flatMap((moves) => moves.flatMap((move) => hungOn(known, move, shut))))
    shut.set(id, place);
  if (shut.size === 0) return design;
  const over = RESERVED[design.units];
  const fitted = (part: Part): Part => {
    const room = shut.get(part.id);
    return room ? { ...part, making: { ...makingOf(part), cut: "piece", over, ...room } } : part;
  };
  return { ...design, parts: design.parts.map(fitted) };
}

/** Bodies with a part that is measured where they go: what stands there is put together first. */
export const measuredElsewhere = ({ plan, part }: Pick<Work, "plan" | "part">): readonly (readonly string[])[] =>
  unitsOf(plan).flatMap(({ moves }) =>
    moves.flatMap(({ arrivesBuilt, arriving, present }) => {
      const isThere = (id: string): boolean =>
        makingOf(part(id)).between?.some(({ parts }) => parts.every((each) => present.includes(each))) === true;
      return arrivesBuilt && arriving.some(isThere) ? [arriving] : [];
    }),
  );

/** The parts of a body that arrives as a whole which come between what stands there, by id: a ring that is joined by itself goes round it as it is. */
function shutApart(known: Known, move: Move): readonly Place[] {
  if (!move.arrivesBuilt || move.work.every(({ joint }) => LOOSE.includes(joint.kind))) return [];
  return betweenIn(known, move.arriving, move.present, false);
}

/** The parts of a lid or a door which lie on what is cut round something when it is shut, and end flush with that. */
function hungOn(known: Known, move: Move, shut: ReadonlyMap<string, Place[1]>): readonly Place[] {
  if (!move.arrivesBuilt || !move.work.some(({ joint }) => joint.kind === "hinged")) return [];
  const isRound = (id: string): boolean => shut.get(id)?.between.some(({ round }) => round) === true;
  const round = move.present.filter(isRound).map(known.part);
  return move.arriving.map(known.part).flatMap((part): readonly Place[] => {
    const between = SIZES.flatMap((size) => flushOn(part, size, round) ?? []);
    return isFree(known, part) && between.length > 0 ? [[part.id, { between }]] : [];
  });
}

/** The parts of a step that come between what stood before it, by id. */
function shutIn(known: Known, moves: readonly Move[]): readonly Place[] {
  const [first] = moves;
  if (!first || first.starts) return [];
  return betweenIn(
    known,
    moves.flatMap(({ arriving, arrivesBuilt }) => (arrivesBuilt ? [] : arriving)),
    first.present,
    true,
  );
}

/** Those of some parts that come tight between two which hold fast together, or, put on one by one, are mitred round them. */
function betweenIn(known: Known, ids: readonly string[], present: readonly string[], oneByOne: boolean) {
  const bodies = fastIn(known, present);
  return ids.map(known.part).flatMap((part): readonly Place[] => {
    if (!isFree(known, part)) return [];
    const holding = housing(known, part);
    const free = bodies.map((body) => body.filter(({ id, turned }) => !turned && !holding.has(id)));
    const between = SIZES.flatMap((size) =>
      free
        .flatMap((body) => tightIn(part, size, body, true) ?? (oneByOne ? roundIn(part, size, body) : null) ?? [])
        .slice(0, 1),
    );
    const round = free.flatMap((body) => notchedRound(part, body));
    return between.length + round.length > 0
      ? [[part.id, { between, ...(round.length > 0 && { notchedRound: round }) }] as const]
      : [];
  });
}

/** What goes into another part so, its depth gives room. */
const LET_IN: readonly Method[] = [
  ...(["dado", "groove", "sliding dovetail", "tongue and groove", "spline"] as const),
  ...(["mortise and tenon", "through tenon", "haunched tenon", "drawbored tenon", "loose tenon", "bridle"] as const),
];

/** Ids of the parts that a part is let into, or that are let into it. */
const housing = ({ design }: Known, { id }: Part): ReadonlySet<string> =>
  new Set(
    design.joints
      .filter(({ method, parts }) => parts.includes(id) && LET_IN.includes(method))
      .flatMap(({ parts }) => parts.filter((other) => other !== id)),
  );

/** Parts that hold fast together, as far as some of them stand. */
function fastIn({ design: { parts, joints } }: Known, ids: readonly string[]): readonly (readonly Part[])[] {
  const there = new Set(ids);
  const places = parts.flatMap(({ id }, i) => (there.has(id) ? [i] : []));
  const links = linksOf({ parts, joints: joints.filter(({ kind }) => !LOOSE.includes(kind)) });
  return components(places, links).map((body) => body.map((i) => parts[i] as Part));
}

/** Nothing was said of how it is cut, and it is sawn to size here. */
const isFree = ({ design }: Known, part: Part): boolean =>
  makingOf(part).cut === "list" &&
  makingOf(part).said !== true &&
  !part.turned &&
  design.stock.find(({ name }) => name === part.stock)?.form !== "pane";
