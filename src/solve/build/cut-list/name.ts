import type { Part } from "../../design.ts";

/** The part's own name, without its groups and the number of its copy. */
const ownName = (id: string): readonly string[] => {
  const path = id.split(".");
  const last = path.at(-1) as string;
  const name = /^\d+$/.test(last) && path.length > 1 ? (path.at(-2) as string) : last;
  return name.split("-");
};

/**
 * The printed name of parts that are alike: what the maker called one of them, else the words in which their names all end
 * (front-left-leg, back-left-leg: "Left leg"), else the first two names.
 */
export function nameOf(parts: readonly Pick<Part, "id" | "called">[]): string {
  const called = parts.find((part) => part.called !== null)?.called;
  if (called) return called;
  const names = parts.map((part) => ownName(part.id));
  const first = names[0] as readonly string[];
  const shared = first.filter((_, i) => {
    const end = first.slice(i).join("-");
    return names.every((name) => name.slice(-(first.length - i)).join("-") === end);
  });
  if (shared.length > 0) return capital(shared.join(" "));
  const distinct = [...new Set(names.map((name) => name.join(" ")))];
  return capital(distinct.length > 2 ? `${distinct[0]} and others` : distinct.join(" and "));
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
