import type { Length } from "../../../units/length.ts";
import { equal, max } from "../../../units/rational.ts";
import type { Part } from "../../design.ts";
import { sidesOf } from "./sides.ts";

/** The part's own name, without its groups and the number of its copy. */
const ownName = (id: string): readonly string[] => {
  const path = id.split(".");
  const last = path.at(-1) as string;
  const name = /^\d+$/.test(last) && path.length > 1 ? (path.at(-2) as string) : last;
  // Numbers, and openings without a name of their own, tell nobody anything.
  const words = name.split("-").filter((word) => !/^\d+$/.test(word) && word !== "opening");
  return words.length > 0 ? words : [name];
};

/**
 * The printed name of parts that are alike: what the maker called one of them, else the words in which their names all end
 * (front-left-leg, back-left-leg: "Left leg"), else the first two names.
 */
export function nameOf(parts: NamedLine["parts"]): string {
  const called = parts.find((part) => part.called !== null)?.called;
  if (called) return capital(called);
  const names = parts.map((part) => ownName(part.id));
  const first = names[0] as readonly string[];
  const shared = first.filter((_, i) => {
    const end = first.slice(i).join("-");
    return names.every((name) => name.slice(-(first.length - i)).join("-") === end);
  });
  // bottom-board, top-board: a board alone could be any.
  const levels = [...new Set(names.map((name) => name[0] ?? ""))];
  if (
    shared.join(" ") === ANY.toLowerCase() &&
    names.every((name) => name.length === 2 && LEVELS.has(name[0] ?? "")) &&
    levels.length > 1
  )
    return capital(`${levels.join("/")} ${shared.join(" ")}`);
  if (shared.length > 0) return capital(shared.join(" "));
  // top-rail-front, top-rail-back: "Top rail".
  const differs = first.findIndex((word, i) => names.some((name) => name[i] !== word));
  if (differs > 1) return capital(first.slice(0, differs).join(" "));
  const distinct = [...new Set(names.map((name) => name.join(" ")))];
  if (distinct.length < 3) return capital(distinct.join(" and "));
  // left-board, right-board, bearer of a plinth: "Plinth end board and bearer".
  const ends = [...new Set(names.map((name) => name.at(-1) ?? ""))];
  const roles = ends.map((end) => {
    const sides = new Set(names.flatMap((name) => (name.at(-1) === end ? [name.slice(0, -1).join(" ")] : [])));
    return sides.size > 1 && [...sides].every((side) => side === "left" || side === "right") ? `end ${end}` : end;
  });
  const owner = ownerOf(parts);
  const name = roles.length > 2 ? `${roles[0]} and others` : roles.join(" and ");
  return capital(owner && !has(name, owner) ? `${owner} ${name}` : name);
}

/**
 * Names of lines that would be told apart by their marks alone: by what the parts belong to where that is another for each, "Drawer side"
 * and "Cabinet side"; of two lengths "Long plinth board" and "Short plinth board", else by the group of some, "Plinth board"; else by
 * where they are, "Left short cleat" of mirror images. A board alone could be any: it is of its group, "Plinth board".
 */
export function toldApart(lines: readonly NamedLine[]): readonly string[] {
  const names = byWords(lines);
  return names.map((name, i) => {
    const same = lines.filter((_, j) => names[j] === name);
    if (same.length < 2) return name;
    const placed = same.map(({ parts }) => parts.flatMap(({ solid }) => (solid ? [{ solid }] : [])));
    const side = placed.every((parts) => parts.length > 0)
      ? sidesOf(placed)[same.indexOf(lines[i] as NamedLine)]
      : null;
    return side && !name.toLowerCase().startsWith(`${side} `) ? capital(`${side} ${name.toLowerCase()}`) : name;
  });
}

function byWords(lines: readonly NamedLine[]): readonly string[] {
  const short = lines.map(({ parts }) => nameOf(parts));
  return lines.map(({ parts, length }, i) => {
    const name = short[i] as string;
    const same = lines.filter((_, j) => short[j] === name);
    const owner = ownerOf(parts);
    if (same.length < 2 && owner && name === ANY) return capital(`${owner} ${name.toLowerCase()}`);
    if (same.length < 2 || parts.some((part) => part.called !== null)) return name;
    const owners = same.map((each) => ownerOf(each.parts));
    if (owner && owners.every(Boolean) && new Set(owners).size === same.length && !has(name, owner))
      return capital(`${owner} ${name.toLowerCase()}`);
    const lengths = same
      .map((each) => each.length)
      .filter((each, j, all) => j === all.findIndex((x) => equal(x, each)));
    if (lengths.length === 2) {
      // A board alone could be any.
      const of =
        owner && owners.every((each) => each === owner) && !name.includes(" ") && !has(name, owner) ? `${owner} ` : "";
      return capital(`${equal(length, lengths.reduce(max)) ? "long" : "short"} ${of}${name.toLowerCase()}`);
    }
    const groups = [
      ...new Set(
        parts.map(({ id }) =>
          id
            .split(".")
            .slice(0, -1)
            .find((word) => !/^\d+$/.test(word)),
        ),
      ),
    ];
    const group = groups.length === 1 ? groups[0]?.replace(/-/g, " ") : undefined;
    if (group && !has(name, group)) return capital(`${group} ${name.toLowerCase()}`);
    const place = placeInRow(
      parts.map(({ id }) => id),
      same.flatMap((each) => each.parts.map(({ id }) => id)),
    );
    return place ? capital(`${place} ${name.toLowerCase()}`) : name;
  });
}

/** Also one of several: an apron is of the aprons. */
const has = (name: string, word: string): boolean =>
  [word, word.replace(/s$/, "")].some((each) => ` ${name.toLowerCase()} `.includes(` ${each} `));

/** What parts belong to, where it is one: their innermost group, of a drawer or a door in an opening only that. */
function ownerOf(parts: NamedLine["parts"]): string | null {
  const groups = new Set(
    parts.map(({ id }) => {
      const path = id.split(".");
      // The name of a copy is that of its row and its number.
      const groups = path.slice(0, /^\d+$/.test(path.at(-1) ?? "") ? -2 : -1);
      const group = groups.findLast((word) => !/^\d+$/.test(word)) ?? "";
      return /(?:^|-)(drawer|door)(?:-\d+)?$/.exec(group)?.[1] ?? group.replace(/-/g, " ");
    }),
  );
  const [only] = groups;
  return groups.size === 1 && only ? only : null;
}

/** Of a row whose parts are on two lines: those at both ends, and those between. */
function placeInRow(own: readonly string[], all: readonly string[]): "outer" | "inner" | null {
  const numbers = all.map((id) => Number(id.split(".").at(-1)));
  const row = new Set(all.map((id) => id.split(".").slice(0, -1).join(".")));
  if (row.size !== 1 || !numbers.every(Number.isInteger)) return null;
  const ends = [Math.min(...numbers), Math.max(...numbers)];
  const isEnd = (id: string): boolean => ends.includes(Number(id.split(".").at(-1)));
  const outer = all.filter(isEnd);
  if (own.every(isEnd) && own.length === outer.length) return "outer";
  return own.length === all.length - outer.length && !own.some(isEnd) ? "inner" : null;
}

export interface NamedLine {
  readonly parts: readonly (Pick<Part, "id" | "called"> & Partial<Pick<Part, "solid">>)[];
  readonly length: Length;
}

const ANY = "Board";
const LEVELS: ReadonlySet<string> = new Set(["top", "bottom", "upper", "lower"]);
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
