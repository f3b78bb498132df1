import { existsSync } from "node:fs";
import { posix } from "node:path";

const ROOTS = /^(src|tests|bin|scripts|docs|examples|assets|\.ci)(\/|$)/;

/** Every path that a Markdown text names: in backticks and beginning with a folder of ours, or as the target of a link. */
export function pathsIn(markdown: string): string[] {
  const quoted = [...markdown.matchAll(/`([^`\s]+)`/g)].map((m) => m[1] as string).filter((path) => ROOTS.test(path));
  const linked = [...markdown.matchAll(/\]\(([^)#\s]+)[^)]*\)/g)].map((m) => m[1] as string);
  return [...quoted, ...linked.filter((path) => !/^[a-z]+:/.test(path))].flatMap(alternatives);
}

/** `a/{b,c}.ts` is two paths. A name in angle brackets stands for many, so what counts is the folder before it. */
function alternatives(path: string): string[] {
  const braces = /^(.*)\{([^}]*)\}(.*)$/.exec(path);
  if (braces === null) return [path.replace(/\/[^/]*<.*$/, "")];
  const [, before = "", words = "", after = ""] = braces;
  return words.split(",").flatMap((word) => alternatives(`${before}${word}${after}`));
}

/** The paths that a Markdown file names and that do not exist. */
export const lostPaths = (file: string, markdown: string, exists: (path: string) => boolean = existsSync): string[] =>
  pathsIn(markdown).filter((path) => !exists(ROOTS.test(path) ? path : posix.join(posix.dirname(file), path)));
