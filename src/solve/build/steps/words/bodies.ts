/** What a body of several parts is called, by what the names of its parts have in common. */
import type { Joint } from "../../../design.ts";

/**
 * "left door" for `doors.left-stile` and `doors.left-rail`; "drawer 2" for `drawers.2.front` and `drawers.2.back`; null where the
 * names begin differently.
 */
export function bodyWords(ids: readonly string[]): string | null {
  if (ids.length < 2) return null;
  const main = mainOf(ids);
  if (main !== null) return said(main);
  const shared = common(ids.map((id) => id.split(".").slice(0, -1)));
  const last = shared.at(-1);
  if (last === undefined) return null;
  const [side = ""] = common(ids.map((id) => (id.split(".")[shared.length] ?? "").split("-")));
  if (SIDES.has(side)) return `${side} ${single(last)}`;
  const before = shared.at(-2);
  // The frame of a lid is the lid.
  if (last === "frame" && before) return said(before);
  return /^\d+$/.test(last) && before ? `${single(before)} ${last}` : said(last);
}

/** What hangs on hinges or runs goes by the name of the group that it does that by, whatever else is in it: a door with its lattice. */
export function movingWords(ids: readonly string[], joints: readonly Joint[]): string | null {
  const moving = joints.find(({ kind, parts }) => (kind === "hinged" || kind === "running") && isOneIn(ids, parts));
  const by = moving?.parts.find((id) => ids.includes(id));
  const group = by?.split(".").slice(0, -1).join(".");
  return group ? bodyWords(ids.filter((id) => id.startsWith(`${group}.`))) : null;
}

const isOneIn = (ids: readonly string[], parts: readonly string[]): boolean =>
  parts.filter((id) => ids.includes(id)).length === 1;

/** "loose-shelf-1" of `case.loose-shelf-1` and `case.loose-shelf-1-lip`: the part that the others are named after; null where there is none. */
export function mainOf(ids: readonly string[]): string | null {
  const names = ids.map((id) => id.split(".").at(-1) ?? "");
  const groups = new Set(ids.map((id) => id.split(".").slice(0, -1).join(".")));
  const main = names.find((name) => names.every((other) => other === name || other.startsWith(`${name}-`)));
  return ids.length > 1 && groups.size === 1 ? (main ?? null) : null;
}

/** "the left door", "drawer 2": a number is a name. */
export const theBody = (words: string): string => (/\d$/.test(words) ? words : `the ${words}`);

/** "drawer" for drawer 2 and for the tools drawer: bodies of which there are several; null for others. */
export function bodyKind(ids: readonly string[]): string | null {
  const words = bodyWords(ids) ?? "";
  return /^(.+) \d+(?:-\d+)*$/u.exec(words)?.[1] ?? /^.+ (drawer)$/u.exec(words)?.[1] ?? null;
}

const SIDES: ReadonlySet<string> = new Set(["left", "right", "front", "back", "upper", "lower"]);

/** The drawer in an opening that is itself called drawer 2 is drawer 2; that in the second of the first opening, neither of which has a name, drawer 1-2. */
const said = (name: string): string => {
  const [, numbers, what, own] = /^opening-(\d+(?:-\d+)*)-(\D+?)(-\d+)?$/u.exec(name) ?? [];
  if (numbers && what) return `${what.replace(/-/g, " ")} ${numbers}${own ?? ""}`;
  return once(name.replace(/-/g, " ").replace(/^(.+) (\d+) \1$/u, "$1 $2"));
};
/** The drawer in the drawer bay is the drawer, the one in the upper drawer bay the upper drawer. */
const once = (name: string): string => {
  const words = name.split(" ");
  const first = words.indexOf(words.at(-1) ?? "");
  const numbered = words.slice(first).some((word) => /\d/.test(word));
  return numbered ? name : words.slice(0, first + 1).join(" ");
};
const single = (name: string): string => said(name).replace(/(?<!s)s$/, "");

/** The words that all begin with. */
function common(lists: readonly (readonly string[])[]): readonly string[] {
  const [first = []] = lists;
  const differs = first.findIndex((word, i) => lists.some((words) => words[i] !== word));
  return differs < 0 ? first : first.slice(0, differs);
}

/** "the left frame": the group of a row of like parts, of the id of one, `left-frame.rail.2`; null where the row stands in no group. */
export function rowOwner(id: string): string | null {
  const owner = id.split(".").at(-3);
  return owner === undefined ? null : theBody(said(owner));
}

/** "front post of the left side": a part by its own name, with that of its group where others are called so too. */
export function partWords(id: string, all: readonly string[]): string {
  const last = (path: string): string => path.split(".").at(-1) ?? "";
  const own = said(last(id));
  const group = id.split(".").at(-2);
  const alone = group === undefined || all.every((other) => other === id || last(other) !== last(id));
  // "left-left-stile" of doors is the left stile of the left door; "front-left-leg" of one frame stands at its corner.
  const [, of = "", inner = ""] = /^(\w+) ((?:left|right|top|bottom|upper|lower) .+)$/u.exec(own) ?? [];
  const corner = /^(?:front|back) (?:left|right) /u.test(own);
  if (SIDES.has(of) && !corner && group !== undefined) return `${inner} of the ${of} ${single(group)}`;
  const [, name = own, side] = /^(.+) (\w+)$/u.exec(own) ?? [];
  const words = side && SIDES.has(side) ? `${side} ${name}` : own;
  return alone ? words : `${words} of ${theBody(said(group))}`;
}
