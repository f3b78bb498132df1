/** Parts and bodies called by where they are seen: names of openings and running numbers stand on no page. */

import { add } from "../../../../units/index.ts";
import { compare } from "../../../../units/rational.ts";
import { INDICES } from "../../../design/space.ts";
import { called, namesOf, series, type Work } from "../draft.ts";
import { partWords, rowOwner, theBody } from "./bodies.ts";
import { placeWord } from "./which.ts";

const SIDE = /^(?:left|right|front|back|upper|lower|top|bottom)(?:-|$)/u;

const pathOf = (id: string): readonly string[] => id.split(".");
const groupOf = (id: string): string => pathOf(id).slice(0, -1).join(".");
/** "rail" of top-rail and rail-1; "shelf" of the second copy of shelf. */
const kindOf = (id: string): string =>
  pathOf(id)
    .flatMap((word) => word.split("-"))
    .findLast((word) => !/^\d+$/u.test(word)) ?? id;
/** Called by nothing but a number. */
const isNumbered = (name: string): boolean => /(?:^|-)\d+$/u.test(name);

/**
 * "lower rail", "left short stile", "left packing of the middle drawer": how one of several parts of a mark is found in the piece, without its mark.
 */
export function placeWords(work: Work, id: string): string {
  const { name, parts } = work.line(id);
  const last = pathOf(id).at(-1) ?? id;
  const lowered = name.charAt(0).toLowerCase() + name.slice(1);
  if (isNumbered(last)) {
    const own = work.design.parts.map((part) => part.id).filter((other) => groupOf(other) === groupOf(id));
    const kin = own.filter((other) => kindOf(other) === kindOf(id));
    const middle = kin.length === 3 ? placeAmong(work, [id], kin.map(one)) : null;
    if (middle === "middle") return `middle ${kindOf(id)}`;
    const place = placeAmong(work, [id], parts.map(one));
    if (place !== null) return placed(place, lowered);
    const inRow = placeAmong(work, [id], kin.map(one));
    const row = rowOwner(id);
    if (inRow !== null && row !== null)
      return inRow.includes(" ") ? `${lowered} of ${row} that is ${inRow}` : `${inRow} ${lowered} of ${row}`;
  }
  const words = partWords(
    id,
    work.design.parts.map((part) => part.id),
  );
  const group = groupOf(id);
  const [, part = "", body = ""] = /^(.+) of (?:the )?(.+)$/u.exec(words) ?? [];
  const bodyName = pathOf(group).at(-1) ?? "";
  const listed = body === "" ? asListed(words, lowered) : `${asListed(part, lowered)} of the ${body}`;
  if (body === "" || SIDE.test(bodyName) || isNumbered(bodyName)) return listed;
  const same = new Map<string, string[]>();
  for (const other of work.design.parts.map((each) => each.id))
    if (pathOf(other).at(-1) === last && kindOf(groupOf(other)) === kindOf(group))
      same.set(groupOf(other), [...(same.get(groupOf(other)) ?? []), other]);
  const place = same.size > 1 ? placeAmong(work, same.get(group) ?? [], [...same.values()]) : null;
  return place === null ? listed : `${asListed(part, lowered)} of ${theBody(placed(place, kindOf(group)))}`;
}

/** The name in the lists, with the sides of the piece that its own words tell: "left front leg" of a left front post that is called leg. */
function asListed(words: string, name: string): string {
  const [told, own] = [words.split(" "), name.split(" ")];
  const isTold = (word: string): boolean => word.split("/").some((each) => told.includes(each));
  if (own.every(isTold)) return told.length === own.length && !name.includes("/") ? name : words;
  const sides = told.filter((word) => SIDE.test(word) && !own.includes(word));
  return sides.length > 0 ? [...sides, name].join(" ") : words;
}

/** "top rail (L)"; where several of its mark are among some, which of them: "front top rail (L)". */
export function calledAmong(work: Work, id: string, some: readonly string[]): string {
  const { mark, parts } = work.line(id);
  const several = parts.filter((other) => some.includes(other)).length > 1;
  return several ? `${placeWords(work, id)} (${mark})` : called(work, id);
}

/** The same by where it lies among these alone: "lower long lattice bar (P)". */
export function placedAmong(work: Work, id: string, some: readonly string[]): string {
  const { name, mark, parts } = work.line(id);
  const own = parts.filter((other) => some.includes(other));
  const place = own.length > 1 ? placeAmong(work, [id], own.map(one)) : null;
  return place === null
    ? calledAmong(work, id, some)
    : `${placed(place, name.charAt(0).toLowerCase() + name.slice(1))} (${mark})`;
}

/** "both legs (A)"; of a mark of which not all are among these, each by its place: "the back upper rail (G)". */
export function listedAmong(work: Work, ids: readonly string[]): string {
  const whole = (id: string): boolean => work.line(id).parts.every((other) => ids.includes(other));
  const told = ids.flatMap((id): readonly (readonly string[])[] => {
    if (!whole(id)) return [[`the ${placeWords(work, id)} (${work.line(id).mark})`]];
    const same = ids.filter((other) => work.line(other).mark === work.line(id).mark);
    return same[0] === id ? [namesOf(work, same)] : [];
  });
  return series(told.flat());
}

const one = (id: string): readonly string[] => [id];

/** "left rail", but "rail that is second from the left". */
const placed = (place: string, name: string): string =>
  place.includes(" ") ? `${name} that is ${place}` : `${place} ${name}`;

/** Where one of several stands, along the one direction in which they all differ; null where there is none. */
function placeAmong(work: Work, own: readonly string[], all: readonly (readonly string[])[]): string | null {
  const middle = (ids: readonly string[], axis: 0 | 1 | 2) => {
    const { low, high } = work.part(ids[0] as string).body;
    return add(low[axis], high[axis]);
  };
  const axis = INDICES.find((i) => {
    const at = all.map((ids) => middle(ids, i)).toSorted(compare);
    return at.every((value, j) => j === 0 || compare(value, at[j - 1] as typeof value) !== 0);
  });
  if (axis === undefined || all.length < 2) return null;
  const row = all.toSorted((a, b) => compare(middle(a, axis), middle(b, axis)));
  const at = row.findIndex((ids) => ids[0] === own[0]);
  return placeWord(at, row.length, axis);
}
